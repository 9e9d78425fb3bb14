// A whole number by keys, for numbers too large to step to.
//
// NumberPad({label, value, min?, max?, onInput(number | null), unit?, problem?, autoFocus?})
//   value   a whole number or null; unit: small words after the figure
// A number outside min … max is shown with a message and passed on as typed.
import { html, useEffect, useRef, useSignal } from './html.js';
import { Icon } from './icon.js';
import { DigitKeys } from './key.js';
import { say } from './words.js';

const MOST_DIGITS = 6;

export function NumberPad({ label, value, min = 1, max = 9999, onInput, unit, problem, autoFocus }) {
  const typed = useSignal(null);
  const root = useRef(null);
  useEffect(() => {
    if (autoFocus) root.current.focus({ preventScroll: true });
  }, []);
  const shown = value === null ? '' : String(value);
  const take = (digits) => {
    typed.value = digits;
    onInput(digits === '' ? null : Number(digits));
  };
  const onDigit = (digit) => {
    const next = `${typed.value ?? ''}${digit}`.replace(/^0+(?=\d)/, '');
    if (next.length <= MOST_DIGITS) take(next);
  };
  const onBackspace = () => take(shown.slice(0, -1));
  const onKeyDown = (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    if (/^\d$/.test(event.key)) onDigit(event.key);
    else if (event.key === 'Backspace') onBackspace();
    else return;
    event.preventDefault();
  };
  const told = problem || (value !== null && value < min && say('smallest', { min })) || (value > max && say('largest', { max }));
  return html`<div class="pad" ref=${root} role="group" aria-label=${label} tabindex="-1" onKeyDown=${onKeyDown}>
    <div class="pad-top"><span class="field-label">${label}</span>
      <output class="pad-value${shown ? '' : ' pad-empty'}">${shown || '–'}${unit && html` <span class="pad-unit">${unit}</span>`}</output></div>
    <div role="status">${told && html`<p class="field-problem"><${Icon} name="warn" size=${20} /><span>${told}</span></p>`}</div>
    <div class="keys keys-three"><${DigitKeys} label=${label} onDigit=${onDigit} onBackspace=${onBackspace} last=${null} /></div>
  </div>`;
}
