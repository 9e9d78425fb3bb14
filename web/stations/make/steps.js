// The steps of a sheet, numbered, each ticked off by a touch anywhere on it; the next one stands out.
import { html } from '../../parts/html.js';
import { Rows } from '../../parts/row.js';
import { Tick } from '../../parts/tick.js';
import { say } from '../../words/words.js';
import { isDone, markDone, problemOf } from './progress.js';

export const Steps = ({ steps, next }) => html`<section class="stack"><h2 class="section-title">${say('make.steps')}</h2>
  <${Rows}>${steps.map((step, place) => html`<${Tick} key=${step.id} number=${place + 1} label=${step.title} figure=${step.figure}
    note=${step.text} isNow=${step === next} problem=${problemOf(step)} isTicked=${isDone(step)} onTick=${(done) => markDone(step, done)} />`)}<//></section>`;
