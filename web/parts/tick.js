// A line that is ticked off with a finger: it stays where it is and is struck through.
//
// Tick({label, note?, isTicked, onTick(boolean)})   several of them stand in a card: Rows of parts/row.js
import { html, useId } from './html.js';
import { Fractions } from './figure.js';
import { Icon } from './icon.js';

export function Tick({ label, note, isTicked, onTick }) {
  const id = useId();
  return html`<label class="row tick">
    <input type="checkbox" checked=${isTicked} aria-labelledby="${id}-label" aria-describedby=${note ? `${id}-note` : undefined}
      onChange=${(event) => onTick(event.currentTarget.checked)} />
    <span class="tick-box">${isTicked && html`<${Icon} name="check" size=${20} />`}</span>
    <span class="tick-words"><span class="tick-label" id="${id}-label"><${Fractions} text=${label} /></span>
      ${note && html`<span class="tick-note" id="${id}-note"><${Fractions} text=${note} /></span>`}</span>
  </label>`;
}
