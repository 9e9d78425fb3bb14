// A small whole number: one less, the number, one more. How many cushions.
//
// Stepper({label, value, min?, max?, onInput(number), hint?})   value is a whole number; default 1 … 999
import { html, useId } from './html.js';
import { Icon } from './icon.js';
import { say } from './words.js';

const STEPS = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1, PageUp: 10, PageDown: -10 };

export function Stepper({ label, value, min = 1, max = 999, onInput, hint }) {
  const id = useId();
  const go = (to) => {
    const next = Math.min(Math.max(to, min), max);
    if (next !== value) onInput(next);
  };
  const onKeyDown = (event) => {
    if (event.key === 'Home') go(min);
    else if (event.key === 'End') go(max);
    else if (STEPS[event.key]) go(value + STEPS[event.key]);
    else return;
    event.preventDefault();
  };
  return html`<div class="field" role="group" aria-labelledby="${id}-label">
    <div class="stepper-line">
      <div><span class="field-label" id="${id}-label">${label}</span>${hint && html`<p class="field-hint">${hint}</p>`}</div>
      <div class="stepper">
        <button type="button" class="stepper-key" aria-label=${say('lessOf', { label })} aria-disabled=${String(value <= min)}
          onClick=${() => go(value - 1)}><${Icon} name="minus" /></button>
        <span class="stepper-value" role="spinbutton" tabindex="0" aria-labelledby="${id}-label" aria-valuenow=${value}
          aria-valuemin=${min} aria-valuemax=${max} onKeyDown=${onKeyDown}>${value}</span>
        <button type="button" class="stepper-key" aria-label=${say('moreOf', { label })} aria-disabled=${String(value >= max)}
          onClick=${() => go(value + 1)}><${Icon} name="plus" /></button>
      </div>
    </div>
  </div>`;
}
