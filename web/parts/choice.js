// One of a few: a radio group with large targets, a hint under each choice where it helps.
//
// Choice({label, options: [{value, text, hint?, icon?, picture?}], value, onInput, layout?, hideLabel?, problem?})
//   layout   'list' (default, one under another) | 'row' (side by side, wrapping) | 'grid' (two columns) |
//            'pictures' (each a drawing with its name beneath) | 'strip' (such pictures in one line)
import { html, useId } from './html.js';
import { Fractions } from './figure.js';
import { Icon } from './icon.js';

function Sign({ icon, picture }) {
  return picture ?? (icon ? html`<${Icon} name=${icon} size=${28} />` : html`<span class="choice-dot" aria-hidden="true"></span>`);
}

export function Choice({ label, options, value, onInput, layout = 'list', hideLabel, problem }) {
  const id = useId();
  return html`<fieldset class="choice" aria-describedby=${problem ? `${id}-problem` : undefined}>
    <legend class=${hideLabel ? 'visually-hidden' : 'field-label'}>${label}</legend>
    <div class="choice-${layout}">${options.map((option) => html`<label key=${option.value} class="choice-one${option.value === value ? ' choice-chosen' : ''}">
      <input type="radio" name=${id} value=${option.value} checked=${option.value === value}
        onChange=${() => onInput(option.value)} aria-describedby=${option.hint ? `${id}-${option.value}` : undefined}
        aria-label=${option.text} />
      <${Sign} ...${option} />
      <span class="choice-words"><span class="choice-text"><${Fractions} text=${option.text} /></span>
        ${option.hint && html`<span class="choice-hint" id="${id}-${option.value}"><${Fractions} text=${option.hint} /></span>`}
      </span>
    </label>`)}</div>
    ${problem && html`<p class="field-problem" id="${id}-problem"><${Icon} name="warn" size=${20} /><span>${problem}</span></p>`}
  </fieldset>`;
}
