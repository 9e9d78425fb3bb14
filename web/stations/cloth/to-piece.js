// A length that was cut, taken over as the piece in hand by one tap, so that it is planned as it is.
import { html } from '../../parts/html.js';
import { Icon } from '../../parts/icon.js';
import { put } from '../../store/changes.js';
import { entryOf, valueAt } from '../../store/pointer.js';
import { edit, job } from '../../store/session.js';
import { say } from '../../words/words.js';

// Its measures as a piece tells them: the edges where they were measured, else the length.
function asPiece({ left, right, length, width }) {
  const long = left ?? right ? { left, right } : { length };
  return Object.fromEntries(Object.entries({ ...long, width }).filter(([, value]) => value !== undefined));
}

export function ToPiece({ path }) {
  const cut = valueAt(job.value, path);
  if (!(cut.left ?? cut.right ?? cut.length)) return null;
  return html`<button type="button" class="button-plain" onClick=${() => edit([put(`${entryOf(path)}/piece`, asPiece(cut))])}>
    <${Icon} name="check" size=${20} />${say('cloth.toPiece')}</button>`;
}
