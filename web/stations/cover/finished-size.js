// The finished size of a cover in large figures, as the core worked it out, with the sentences that say how.
import { Fragment, html, useState } from '../../parts/html.js';
import { Figure, Fractions } from '../../parts/figure.js';
import { Sheet } from '../../parts/sheet.js';
import { valueAt } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { measuresMadeSmaller, missingMeasure } from '../kinds.js';
import { say } from '../../words/words.js';

const By = () => html`<span class="size-by" aria-hidden="true">×</span>`;

const Measure = ({ name, text }) => html`<${Figure} text=${text} size="m" />
  ${name === 'diameter' && html`<span class="note">${say('cover.across')}</span>`}`;

// The measures of a size, in the order of the tape: 17 in × 17 in, 16 in across.
const Size = ({ names, sizes }) => html`<span class="size">${names.map((name, place) => html`<${Fragment} key=${name}>
  ${place > 0 && html`<${By} />`}<${Measure} name=${name} text=${sizes[name].text} /><//>`)}</span>`;

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
  if (!size) return html`<p class="note">${say(missingMeasure(job.value, cushion) ? 'cover.unknown' : 'cover.coming')}</p>`;
  const names = [...measuresMadeSmaller(job.value, cushion), 'thickness'].filter((name) => size.finished[name]);
  const isWanted = valueAt(job.value, `${cushion}/size_from`) === 'finished';
  return html`<div class="finished"><div class="finished-sizes">
    <p class="finished-line"><span class="note">${say('cover.finished')}</span><${Size} names=${names} sizes=${size.finished} /></p>
    ${isWanted && html`<p class="finished-line"><span class="note">${say('cover.pad')}</span><${Size} names=${names} sizes=${size.pad} /></p>`}
    ${size.filling && html`<p class="finished-line"><span class="note">${say('cover.filling')}</span>
      <span><${Fractions} text=${size.filling.text} /></span></p>`}
    </div><${How} size=${size} />
  </div>`;
}
