// The shopping list: what to ask for, shop by shop, ticked off with a finger.
import { html, useState } from '../../parts/html.js';
import { Rows } from '../../parts/row.js';
import { Sheet } from '../../parts/sheet.js';
import { Tick } from '../../parts/tick.js';
import { answer } from '../../store/answers.js';
import { tick, ticked } from '../../store/ticks.js';
import { changedSince } from '../changed-since.js';
import { say } from '../../words/words.js';

const workingOf = (id) => answer.value.materials.find((material) => material.id === id)?.working;
// An answer kept from an older core has no list.
const shops = () => answer.value.shopping ?? [];

const Shop = ({ name, lines }) => html`<section class="stack"><h3 class="section-title">${name}</h3>
  <${Rows}>${lines.map(({ id, text }) => html`<${Tick} key=${id} label=${text} note=${workingOf(id)}
    problem=${changedSince(id, text)} isTicked=${ticked.value.includes(id)} onTick=${(isTicked) => tick(id, isTicked, text)} />`)}<//></section>`;

export function Shopping() {
  const [open, setOpen] = useState(false);
  const lines = shops().flatMap((shop) => shop.lines);
  if (lines.length === 0) return null;
  const bought = lines.filter(({ id }) => ticked.value.includes(id)).length;
  return html`<div class="stack">
    <button type="button" class="button" onClick=${() => setOpen(true)}>${say('cut.shopping')}</button>
    <p class="note">${say('cut.bought', { bought, all: lines.length })}</p>
    ${open && html`<${Sheet} title=${say('cut.shopping')} onClose=${() => setOpen(false)}>
      <div class="stack">${shops().map((shop) => html`<${Shop} key=${shop.shop} ...${shop} />`)}</div><//>`}
  </div>`;
}
