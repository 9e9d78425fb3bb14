// "How so?": the working of every length and every size, in the core's own sentences.
import { html, useState } from '../../parts/html.js';
import { Sheet } from '../../parts/sheet.js';
import { answer } from '../../store/answers.js';
import { say } from '../../words/words.js';
import { calledIn } from './called.js';
import { Working } from '../cover/finished-size.js';

const Part = ({ title, sentences }) => html`<section class="stack"><h3 class="section-title">${title}</h3>
  <${Working} sentences=${sentences} /></section>`;

export function Why() {
  const [open, setOpen] = useState(false);
  const { cloths, cushions } = answer.value;
  return html`<button type="button" class="button" onClick=${() => setOpen(true)}>${say('cut.why')}</button>
    ${open && html`<${Sheet} title=${say('cut.whyTitle')} onClose=${() => setOpen(false)}>
      <div class="stack">
        ${cloths.map(({ cloth, working }) => html`<${Part} key=${cloth} title=${calledIn('/cloths', cloth)} sentences=${working} />`)}
        ${cushions.map(({ id, working }) => html`<${Part} key=${id} title=${calledIn('/cushions', id)} sentences=${working} />`)}
      </div><//>`}`;
}
