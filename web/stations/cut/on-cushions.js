// What lands on each cushion: every face that is cut from a cloth with a picture, drawn with its part of the repeat.
import { html } from '../../parts/html.js';
import { valueAt } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { say } from '../../words/words.js';
import { CushionPicture } from '../measure/picture.js';
import { printedFaces } from '../printed.js';
import { calledIn } from './called.js';

const MOST = 24; // drawn at once; the plan above shows them all

const Face = ({ cushion, label, printed }) => html`<figure class="printed-cushion">
  <${CushionPicture} cushion=${`/cushions/${cushion}`} printed=${printed} />
  <figcaption><strong>${label}</strong> ${calledIn('/cushions', cushion)}</figcaption></figure>`;

export function OnCushions({ plan, cloth }) {
  const faces = printedFaces(plan, cloth).filter(({ cushion }) => valueAt(job.value, `/cushions/${cushion}`));
  if (faces.length === 0) return null;
  return html`<section class="stack">
    <h3 class="section-title">${say('cut.onCushions')}</h3>
    <div class="printed-cushions">${faces.slice(0, MOST).map((face) => html`<${Face} key="${face.label} ${face.cushion}" ...${face} />`)}</div>
    ${faces.length > MOST && html`<p class="note">${say('cut.moreFaces', { count: faces.length - MOST })}</p>`}
  </section>`;
}
