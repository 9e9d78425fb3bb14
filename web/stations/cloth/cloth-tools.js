// Another cloth for the job, or one fewer: a cloth that a cover is cut from stays.
import { html } from '../../parts/html.js';
import { Icon } from '../../parts/icon.js';
import { lastOf } from '../../store/pointer.js';
import { edit, job } from '../../store/session.js';
import { say } from '../../words/words.js';
import { nameOf } from '../catalogue.js';
import { drop, remove } from '../../store/changes.js';

// Whether a part of a cover, or a part of that part, is cut from the cloth.
const isCutFrom = (part, id) => part?.cloth === id
  || (typeof part === 'object' && Object.values(part).some((inner) => isCutFrom(inner, id)));
const isUsed = (id) => job.value.cushions.some(({ cover }) => isCutFrom(cover, id));

// Those that might have taken its place stand for themselves then.
const removeCloth = (cloth) => edit([
  ...job.value.cloths.filter((one) => one.instead_of === lastOf(cloth)).map(({ id }) => drop(`/cloths/${id}/instead_of`)), remove(cloth)]);

export function ClothTools({ cloth, onAdd }) {
  const name = cloth && nameOf(job.value, cloth);
  return html`<div class="stack">
    <button type="button" class="button" onClick=${onAdd}><${Icon} name="plus" />${say('cloth.add')}</button>
    ${job.value.cloths.length > 1 && (isUsed(lastOf(cloth))
      ? html`<p class="note">${say('cloth.used', { cloth: name })}</p>`
      : html`<button type="button" class="button-plain" onClick=${() => removeCloth(cloth)}>
          <${Icon} name="bin" size=${20} />${say('cloth.remove', { cloth: name })}</button>`)}
  </div>`;
}
