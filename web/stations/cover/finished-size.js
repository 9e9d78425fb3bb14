// The finished size of a cover in large figures, as the core worked it out, with the sentences that say how.
import { html, useState } from '../../parts/html.js';
import { Figure, Fractions } from '../../parts/figure.js';
import { Sheet } from '../../parts/sheet.js';
import { valueAt } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { say } from '../../words/words.js';

const Size = ({ width, length }) => html`<span class="size"><${Figure} text=${width.text} size="m" />
  <span class="size-by" aria-hidden="true">×</span><${Figure} text=${length.text} size="m" /></span>`;

export const Working = ({ sentences }) => html`<ol class="working">${sentences.map(({ text }) => html`
  <li key=${text}><${Fractions} text=${text} /></li>`)}</ol>`;

function How({ sentences }) {
  const [open, setOpen] = useState(false);
  return html`<button type="button" class="button-plain" onClick=${() => setOpen(true)}>${say('cover.how')}</button>
    ${open && html`<${Sheet} title=${say('cover.howTitle')} onClose=${() => setOpen(false)}>
      <${Working} sentences=${sentences} /><//>`}`;
}

// `size` is the answer's entry for this cushion; undefined until there is one.
export function FinishedSize({ cushion, size }) {
  const { width, length } = valueAt(job.value, `${cushion}/insert`);
  if (!size) return html`<p class="note">${say(width && length ? 'cover.coming' : 'cover.unknown')}</p>`;
  const isWanted = valueAt(job.value, `${cushion}/size_from`) === 'finished';
  return html`<div class="finished"><div class="finished-sizes">
    <p class="finished-line"><span class="note">${say('cover.finished')}</span><${Size} ...${size.finished} /></p>
    ${isWanted && html`<p class="finished-line"><span class="note">${say('cover.pad')}</span><${Size} ...${size.pad} /></p>`}
    </div><${How} sentences=${size.working} />
  </div>`;
}
