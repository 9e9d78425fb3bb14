// A line that says what is set and opens its editor when touched; several of them make a card.
//
// Row({label, value, onOpen, note?, problem?, icon?, action?, muted?})
//   value    text ('' or absent: "not set"); fractions are set as true fractions
//   muted    true: the value is what usually holds, not what the maker said
//   onOpen   left out: the line only tells
//   action   words in the accent colour at the right instead of a value ("Will it do?")
// Rows({children}) the card around them
import { html, useId } from './html.js';
import { Fractions } from './figure.js';
import { Icon } from './icon.js';
import { say } from './words.js';

/** What stands under the line: told as the description of the button, not as its name. */
function Under({ id, note, problem }) {
  return html`${note && html`<p class="row-note" id="${id}-note"><${Fractions} text=${note} /></p>`}
    ${problem && html`<p class="row-problem" id="${id}-problem"><${Icon} name="warn" size=${18} /><span><${Fractions} text=${problem} /></span></p>`}`;
}

export function Row({ label, value, onOpen, note, problem, icon, action, muted }) {
  const id = useId();
  const shown = action ?? (value || say('notSet'));
  const tone = action ? 'row-action' : `row-value${value && !muted ? '' : ' row-empty'}`;
  const line = html`${icon && html`<${Icon} name=${icon} />`}<span class="row-label">${label}</span>${' '}<span class=${tone}><${Fractions} text=${shown} /></span>`;
  const under = html`<${Under} id=${id} note=${note} problem=${problem} />`;
  if (!onOpen) return html`<div class="row"><div class="row-line">${line}</div>${under}</div>`;
  const described = [note && `${id}-note`, problem && `${id}-problem`].filter(Boolean).join(' ') || undefined;
  return html`<div class="row row-opens"><button type="button" class="row-line" onClick=${onOpen} aria-describedby=${described}
      aria-label=${action ? undefined : say('change', { label, value: shown })}>${line}${!action && html`<${Icon} name="pencil" size=${20} />`}</button>${under}</div>`;
}

export function Rows({ children }) {
  return html`<div class="card card-rows rows">${children}</div>`;
}
