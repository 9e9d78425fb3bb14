// A day without a time, chosen from the device's own calendar, or today's by one tap.
//
// DateField({label, value, onInput(text)})
//   value   the day as ISO 8601 text ('2026-07-10') or ''; no zone of time ever moves it
import { html, useId } from './html.js';
import { say } from './words.js';

const two = (number) => String(number).padStart(2, '0');

function today() {
  const now = new Date();
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

export function DateField({ label, value, onInput }) {
  const id = useId();
  return html`<div class="field">
    <label class="field-label" for=${id}>${label}</label>
    <input type="date" id=${id} class="field-input" value=${value} min="1900-01-01" max="9999-12-31"
      onInput=${(event) => onInput(event.target.value)} />
    <button type="button" class="button" onClick=${() => onInput(today())}>${say('today')}</button>
  </div>`;
}
