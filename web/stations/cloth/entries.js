// The motifs and the flaws of a cloth: short lists whose entries are added, measured and removed on the spot.
import { html } from '../../parts/html.js';
import { Icon } from '../../parts/icon.js';
import { Rows } from '../../parts/row.js';
import { lastOf, valueAt } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { say } from '../../words/words.js';
import { nameOf } from '../catalogue.js';
import { Field } from '../field.js';
import { addEntry, freeId, removeEntry } from '../setting.js';
import { open } from '../visit.js';

const KINDS = {
  motifs: { one: 'cloth.motif', title: 'cloth.motifs', hint: 'cloth.motifsHint', add: 'cloth.addMotif', remove: 'cloth.removeMotif',
    fields: ['name', 'across', 'along'], first: 'across', fresh: (list) => ({ id: freeId('m', list) }) },
  flaws: { one: 'cloth.flaw', title: 'cloth.flaws', hint: 'cloth.flawsHint', add: 'cloth.addFlaw', remove: 'cloth.removeFlaw',
    fields: ['across', 'along', 'width', 'length'], first: 'across', fresh: () => ({}) },
};

function Entry({ path, number, kind }) {
  const name = nameOf(job.value, path);
  return html`<div role="group" aria-label=${say(kind.one, { number })} class="stack">
    <${Rows}>
      <h3 class="entry-name">${name}</h3>
      ${kind.fields.map((field) => html`<${Field} key=${field} at=${`${path}/${field}`} />`)}
      <button type="button" class="button-plain" onClick=${() => removeEntry(path)}>
        <${Icon} name="bin" size=${20} />${say(kind.remove, { motif: name, flaw: name })}</button>
    <//>
  </div>`;
}

export function Entries({ list }) {
  const kind = KINDS[lastOf(list)];
  const entries = valueAt(job.value, list) ?? [];
  const add = () => {
    const fresh = kind.fresh(entries);
    addEntry(list, fresh);
    open(`${list}/${fresh.id ?? entries.length}/${kind.first}`);
  };
  return html`<section class="stack">
    <h2 class="section-title">${say(kind.title)}</h2>
    <p class="note">${say(kind.hint)}</p>
    ${entries.map((entry, at) => html`<${Entry} key=${entry.id ?? at} path=${`${list}/${entry.id ?? at}`}
      number=${at + 1} kind=${kind} />`)}
    <button type="button" class="button" onClick=${add}><${Icon} name="plus" />${say(kind.add)}</button>
  </section>`;
}
