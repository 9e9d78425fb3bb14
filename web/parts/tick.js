// A line that is ticked off with a finger: it stays where it is and is struck through.
//
// Tick({label, note?, number?, figure?, isNow?, problem?, isTicked, onTick(boolean)})   several stand in a card: Rows of parts/row.js
//   number   stands in the box until the line is ticked
//   figure   the figure to look at, large beneath the label
//   isNow    true: the line that is to be done next
//   problem  what is wrong with its being ticked
import { html, useId } from './html.js';
import { Fractions } from './figure.js';
import { Icon } from './icon.js';

const Box = ({ number, isTicked }) => html`<span class="tick-box" aria-hidden="true">
  ${isTicked ? html`<${Icon} name="check" size=${20} />` : number}</span>`;

export function Tick({ label, note, number, figure, isNow, problem, isTicked, onTick }) {
  const id = useId();
  const described = [problem && `${id}-problem`, figure && `${id}-figure`, note && `${id}-note`].filter(Boolean).join(' ') || undefined;
  return html`<label class="row tick${number ? ' tick-numbered' : ''}${isNow ? ' tick-now' : ''}" aria-current=${isNow ? 'step' : undefined}>
    <input type="checkbox" checked=${isTicked} aria-labelledby="${id}-label" aria-describedby=${described}
      onChange=${(event) => onTick(event.currentTarget.checked)} />
    <${Box} number=${number} isTicked=${isTicked} />
    <span class="tick-words"><span class="tick-label" id="${id}-label"><${Fractions} text=${label} /></span>
      ${figure && html`<span class="tick-figure" id="${id}-figure"><${Fractions} text=${figure} /></span>`}
      ${problem && html`<span class="tick-problem" id="${id}-problem"><${Icon} name="warn" size=${18} /><span><${Fractions} text=${problem} /></span></span>`}
      ${note && html`<span class="tick-note" id="${id}-note"><${Fractions} text=${note} /></span>`}</span>
  </label>`;
}
