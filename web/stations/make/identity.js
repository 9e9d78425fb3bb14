// Which cover this is: its code to sew in, its name and size, what it may be taken for, and how far it is.
import { html } from '../../parts/html.js';
import { Fractions } from '../../parts/figure.js';
import { Notice } from '../../parts/notice.js';
import { say } from '../../words/words.js';
import { calledIn } from '../cut/called.js';
import { valueAt } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { countDone } from './progress.js';

function Progress({ sheet }) {
  const done = countDone(sheet);
  const all = sheet.steps.length;
  return html`<div class="progress" role="progressbar" aria-label=${say('make.progress')} aria-valuemin="0" aria-valuemax=${all}
      aria-valuenow=${done}><span style=${{ transform: `scaleX(${done / all})` }}></span></div>
    <p class="note" role="status">${say('make.stepsDone', { done, all })}</p>`;
}

export function Identity({ sheet }) {
  const count = valueAt(job.value, `/cushions/${sheet.cushion}/quantity`) ?? 1;
  return html`<section class="card stack identity">
      <div><p class="note">${say('make.code')}</p><p class="identity-code">${sheet.code}</p>
        <p class="identity-name">${calledIn('/cushions', sheet.cushion)}</p>
        <p class="note"><${Fractions} text=${say('make.size', { covers: say('home.covers', { count }), size: sheet.finished.size })} /></p></div>
      <${Progress} sheet=${sheet} />
    </section>
    ${sheet.twins.length > 0 && html`<${Notice} level="warn" text=${[say('make.twins'), ...sheet.twins].join(' ')} />`}`;
}
