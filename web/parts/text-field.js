// Words typed with the phone's keyboard: names, notes. Never used for measures or money.
//
// TextField({label, value, onInput, problem?, hint?, rows?, optional?, autoComplete?, autoFocus?, maxLength?})
//   rows   more than one: a note of that many lines
import { html, useEffect, useId, useRef } from './html.js';
import { Icon } from './icon.js';
import { say } from './words.js';

export function TextField({ label, value, onInput, problem, hint, rows = 1, optional, autoComplete = 'off', autoFocus, maxLength }) {
  const id = useId();
  const field = useRef(null);
  useEffect(() => {
    if (autoFocus) field.current.focus();
  }, []);
  const described = [hint && `${id}-hint`, problem && `${id}-problem`].filter(Boolean).join(' ') || undefined;
  const common = {
    id, ref: field, value, maxLength, autoComplete, class: 'field-input', 'aria-describedby': described,
    'aria-invalid': problem ? 'true' : undefined, onInput: (event) => onInput(event.target.value),
  };
  return html`<div class="field">
    <label class="field-label" for=${id}>${label}${optional && html` <span class="field-optional">${say('optional')}</span>`}</label>
    ${rows > 1 ? html`<textarea rows=${rows} ...${common}></textarea>` : html`<input type="text" ...${common} />`}
    ${hint && html`<p class="field-hint" id="${id}-hint">${hint}</p>`}
    ${problem && html`<p class="field-problem" id="${id}-problem"><${Icon} name="warn" size=${20} /><span>${problem}</span></p>`}
  </div>`;
}
