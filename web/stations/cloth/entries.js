// The motifs and flaws of a cloth, and the flaws of a piece in hand: short lists whose entries are added, measured and
// removed on the spot.
import { html } from '../../parts/html.js';
import { Icon } from '../../parts/icon.js';
import { Rows } from '../../parts/row.js';
import { valueAt } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { say } from '../../words/words.js';
import { nameOf } from '../catalogue.js';
import { Field } from '../field.js';
import { addEntry, freeId, removeEntry } from '../setting.js';
import { open } from '../visit.js';
import { ToPiece } from './to-piece.js';

// `adds`: what can be added, the field that is asked for first, and what it begins with.
const KINDS = [
  [/\/motifs$/, { one: 'cloth.motif', title: 'cloth.motifs', hint: 'cloth.motifsHint', remove: 'cloth.removeMotif',
    fields: ['name', 'across', 'along'], adds: [{ add: 'cloth.addMotif', first: 'across', fresh: (list) => ({ id: freeId('m', list) }) }] }],
  [/\/piece\/flaws$/, { one: 'cloth.place', title: 'cloth.places', hint: 'cloth.placesHint', remove: 'cloth.removePlace',
    fields: ['corner', 'cut', 'across', 'along', 'width', 'length'],
    adds: [{ add: 'cloth.addPlace', first: 'across', fresh: () => ({}) },
      { add: 'cloth.addCorner', first: 'corner', fresh: () => ({ corner: 'end-right' }) }] }],
  [/\/bought$/, { one: 'cloth.bought', title: 'cloth.boughts', hint: 'cloth.boughtsHint', remove: 'cloth.removeBought',
    fields: ['length', 'left', 'right', 'width', 'paid', 'on', 'batch', 'roll', 'cut_by'], also: ToPiece,
    adds: [{ add: 'cloth.addBought', first: 'length', fresh: () => ({}) }] }],
  [/\/flaws$/, { one: 'cloth.flaw', title: 'cloth.flaws', hint: 'cloth.flawsHint', remove: 'cloth.removeFlaw',
    fields: ['across', 'along', 'width', 'length'], adds: [{ add: 'cloth.addFlaw', first: 'across', fresh: () => ({}) }] }],
];

function Entry({ path, number, kind }) {
  const name = nameOf(job.value, path);
  return html`<div role="group" aria-label=${say(kind.one, { number })} class="stack">
    <${Rows}>
      <h3 class="entry-name">${name}</h3>
      ${kind.fields.map((field) => html`<${Field} key=${field} at=${`${path}/${field}`} />`)}
      ${kind.also && html`<${kind.also} path=${path} />`}
      <button type="button" class="button-plain" onClick=${() => removeEntry(path)}>
        <${Icon} name="bin" size=${20} />${say(kind.remove, { motif: name, flaw: name })}</button>
    <//>
  </div>`;
}

// `isHeaded`: its title and hint stand above it.
export function Entries({ list, isHeaded = true }) {
  const [, kind] = KINDS.find(([pattern]) => pattern.test(list));
  const entries = valueAt(job.value, list) ?? [];
  const addWith = ({ first, fresh: begin }) => () => {
    const fresh = begin(entries);
    addEntry(list, fresh);
    open(`${list}/${fresh.id ?? entries.length}/${first}`);
  };
  return html`<section class="stack">
    ${isHeaded && html`<h2 class="section-title">${say(kind.title)}</h2><p class="note">${say(kind.hint)}</p>`}
    ${entries.map((entry, at) => html`<${Entry} key=${entry.id ?? at} path=${`${list}/${entry.id ?? at}`}
      number=${at + 1} kind=${kind} />`)}
    ${kind.adds.map((one) => html`<button key=${one.add} type="button" class="button" onClick=${addWith(one)}>
      <${Icon} name="plus" />${say(one.add)}</button>`)}
  </section>`;
}
