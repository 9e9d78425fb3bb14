// A line that says what is set and opens its editor when touched; several of them make a card.
//
// Row({label, value, onOpen, note?, problem?, icon?, action?, muted?})
//   value    text ('' or absent: "not set"); fractions are set as true fractions
//   muted    true: the value is what usually holds, not what the maker said
//   onOpen   left out: the line only tells
//   action   words in the accent colour at the right instead of a value ("Will it do?")
// Rows({children}) the card around them
import { html } from './html.js';
import { Fractions } from './figure.js';
import { Icon } from './icon.js';
import { say } from './words.js';

export function Row({ label, value, onOpen, note, problem, icon, action, muted }) {
  const shown = action ?? (value || say('notSet'));
  const words = html`${icon && html`<${Icon} name=${icon} />`}
    <span class="row-words"><span class="row-label">${label}</span>
      ${note && html`<span class="row-note"><${Fractions} text=${note} /></span>`}
      ${problem && html`<span class="row-problem"><${Icon} name="warn" size=${18} /><${Fractions} text=${problem} /></span>`}</span>
    <span class="${action ? 'row-action' : 'row-value'}${action || (value && !muted) ? '' : ' row-empty'}"><${Fractions} text=${shown} /></span>`;
  if (!onOpen) return html`<div class="row">${words}</div>`;
  return html`<button type="button" class="row row-opens" onClick=${onOpen}
      aria-label=${action ? undefined : say('change', { label, value: shown })}>
    ${words}${!action && html`<${Icon} name="pencil" size=${20} />`}</button>`;
}

export function Rows({ children }) {
  return html`<div class="card card-rows rows">${children}</div>`;
}
