// An amount of money by keys. What was typed is the value; the core says what it means.
//
// MoneyPad({label, value, currency, onInput(text), decimals?, per?, ask?, problem?, autoFocus?})
//   value     the amount as text ('32.00') or ''
//   currency  its code, shown beside the amount; decimals: how many its coins have (default 2)
//   per       small words after the amount ('per yd')
//   ask       the core's door; reads an amount pasted from elsewhere ("1.234,56"), asking rather than guessing
import { html, useEffect, useRef, useSignal } from './html.js';
import { Icon } from './icon.js';
import { DigitKeys, Face, Key } from './key.js';
import { say } from './words.js';

const MOST_DIGITS = 9;

/** After a digit: a finished amount is not continued beyond its coins; null when the digit does not fit. */
function withMoneyDigit(typed, digit, decimals) {
  const next = `${typed}${digit}`.replace(/^0+(?=\d)/, '');
  const [whole, coins = ''] = next.split('.');
  return coins.length > decimals || whole.length > MOST_DIGITS ? null : next;
}

export function MoneyPad({ label, value, currency, onInput, decimals = 2, per, ask, problem, autoFocus }) {
  const typed = useSignal(null);
  const message = useSignal('');
  const root = useRef(null);
  useEffect(() => {
    if (autoFocus) root.current.focus({ preventScroll: true });
  }, []);
  const take = (text) => {
    typed.value = text;
    message.value = '';
    onInput(text.replace(/\.$/, ''));
  };
  const shown = typed.value?.endsWith('.') ? typed.value : value;
  const onDigit = (digit) => {
    const next = withMoneyDigit(typed.value ?? '', digit, decimals);
    if (next === null) message.value = say((typed.value ?? '').includes('.') ? 'finestMoney' : 'noMoreDigits');
    else take(next);
  };
  const onBackspace = () => take(shown.slice(0, -1));
  const onPoint = () => {
    const before = typed.value ?? '';
    if (decimals && !before.includes('.')) take(`${before || '0'}.`);
  };
  const onKeyDown = (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    if (/^\d$/.test(event.key)) onDigit(event.key);
    else if (event.key === '.' || event.key === ',') onPoint();
    else if (event.key === 'Backspace') onBackspace();
    else return;
    event.preventDefault();
  };
  const onPaste = async (event) => {
    const text = event.clipboardData.getData('text').trim();
    event.preventDefault();
    if (!text) return;
    const reply = ask ? await ask({ do: 'read-money', text, currency }) : { ok: { amount: text } };
    take(reply.ok ? reply.ok.amount : text);
    if (reply.problems) message.value = reply.problems[0].text;
  };
  const told = problem || message.value;
  return html`<div class="pad" ref=${root} role="group" aria-label=${label} tabindex="-1" onKeyDown=${onKeyDown} onPaste=${onPaste}>
    <div class="pad-top"><span class="field-label">${label}</span>
      <output class="pad-value${shown ? '' : ' pad-empty'}">${shown || '–'} <span class="pad-unit">${currency}${per && ` ${per}`}</span></output></div>
    <div role="status">${told && html`<p class="field-problem"><${Icon} name="warn" size=${20} /><span>${told}</span></p>`}</div>
    <div class="keys keys-three"><${DigitKeys} label=${label} onDigit=${onDigit} onBackspace=${onBackspace}
      last=${decimals > 0 && html`<${Key} tone="soft" name=${say('point')} onPress=${onPoint}><${Face} text="." /><//>`} /></div>
  </div>`;
}
