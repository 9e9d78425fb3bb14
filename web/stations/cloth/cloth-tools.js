// Another cloth for the job, or one fewer: a cloth that a cover is cut from stays.
import { html } from '../../parts/html.js';
import { Icon } from '../../parts/icon.js';
import { lastOf } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { say } from '../../words/words.js';
import { nameOf } from '../catalogue.js';
import { removeEntry } from '../setting.js';

// Whether a part of a cover, or a part of that part, is cut from the cloth.
const isCutFrom = (part, id) => part?.cloth === id
  || (typeof part === 'object' && Object.values(part).some((inner) => isCutFrom(inner, id)));
const isUsed = (id) => job.value.cushions.some(({ cover }) => isCutFrom(cover, id));

export function ClothTools({ cloth, onAdd }) {
  const name = cloth && nameOf(job.value, cloth);
  return html`<div class="stack">
    <button type="button" class="button" onClick=${onAdd}><${Icon} name="plus" />${say('cloth.add')}</button>
    ${job.value.cloths.length > 1 && (isUsed(lastOf(cloth))
      ? html`<p class="note">${say('cloth.used', { cloth: name })}</p>`
      : html`<button type="button" class="button-plain" onClick=${() => removeEntry(cloth)}>
          <${Icon} name="bin" size=${20} />${say('cloth.remove', { cloth: name })}</button>`)}
  </div>`;
}
