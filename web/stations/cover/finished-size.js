// The finished size of a cover in large figures, as the core worked it out, with the sentences that say how.
import { html, useState } from '../../parts/html.js';
import { Figure, Fractions } from '../../parts/figure.js';
import { measuresOf } from '../../parts/cushion-drawing.js';
import { Sheet } from '../../parts/sheet.js';
import { valueAt } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { say } from '../../words/words.js';

// The measures of a size, as many as its kind has; its `size` is their text.
const Size = ({ size: _, ...measures }) => html`<span class="size">${Object.values(measures).map(({ text }, place) => html`
  ${place > 0 && html`<span class="size-by" aria-hidden="true">×</span>`}<${Figure} text=${text} size="m" />`)}</span>`;

export const Working = ({ sentences }) => html`<ol class="working">${sentences.map(({ text }) => html`
  <li key=${text}><${Fractions} text=${text} /></li>`)}</ol>`;

function How({ size: { working, filling } }) {
  const [open, setOpen] = useState(false);
  return html`<button type="button" class="button-plain" onClick=${() => setOpen(true)}>${say('cover.how')}</button>
    ${open && html`<${Sheet} title=${say('cover.howTitle')} onClose=${() => setOpen(false)}>
      <${Working} sentences=${working} />
      ${filling && html`<section class="stack"><h3 class="section-title">${say('cover.filling')}</h3>
        <${Working} sentences=${filling.working} />
        ${filling.geometry.map(({ text }) => html`<p key=${text} class="note"><${Fractions} text=${text} /></p>`)}</section>`}<//>`}`;
}

// `size` is the answer's entry for this cushion; undefined until there is one.
export function FinishedSize({ cushion, size }) {
  const { kind, insert } = valueAt(job.value, cushion);
  const isMeasured = measuresOf(kind, insert.shape).every((name) => insert[name]);
  if (!size) return html`<p class="note">${say(isMeasured ? 'cover.coming' : 'cover.unknown')}</p>`;
  const isWanted = valueAt(job.value, `${cushion}/size_from`) === 'finished';
  return html`<div class="finished"><div class="finished-sizes">
    <p class="finished-line"><span class="note">${say('cover.finished')}</span><${Size} ...${size.finished} /></p>
    ${isWanted && html`<p class="finished-line"><span class="note">${say('cover.pad')}</span><${Size} ...${size.pad} /></p>`}
    ${size.filling && html`<p class="finished-line"><span class="note">${say('cover.filling')}</span>
      <span><${Fractions} text=${size.filling.text} /></span></p>`}
    </div><${How} size=${size} />
  </div>`;
}
