// Measure: the cushions of the job, or the one measure that is being taken.
import { html } from '../../parts/html.js';
import { isReachable, patternOf } from '../../store/pointer.js';
import { job, openJob } from '../../store/session.js';
import { go, inJob } from '../../store/place.js';
import { say } from '../../words/words.js';
import { Field, Fields } from '../field.js';
import { addEntry, freeId } from '../setting.js';
import { newCushion } from '../new-job.js';
import { chosenIn } from '../chooser.js';
import { NextBar } from '../next-bar.js';
import { show } from '../visit.js';
import { Cushions } from './cushions.js';
import { Counting } from './counting.js';
import { nextStep } from './next.js';
import { OutlineReading } from './outline-reading.js';
import { Reading } from './reading.js';

// The fields that are taken on the station itself (`view` in words/controls.js), and how.
const VIEWS = {
  ...Object.fromEntries(['width', 'length', 'diameter', 'thickness']
    .flatMap((name) => [[`/cushions/*/insert/${name}`, Reading], [`/cushions/*/insert/again/${name}`, Reading]])),
  '/cushions/*/insert/sides/*': OutlineReading,
  '/cushions/*/insert/diagonals/*/*': OutlineReading,
  '/cushions/*/quantity': Counting,
};

function addCushion() {
  const id = freeId('c', job.value.cushions);
  addEntry('/cushions', newCushion(id, job.value.cloths[0]?.id ?? 'k1'));
  show(`/cushions/${id}/insert/width`);
}

const JobFields = () => html`<${Fields} title=${say('measure.job')}>
  ${['/name', '/client', '/notes', '/units'].map((at) => html`<${Field} key=${at} at=${at} />`)}<//>`;

export function Measure({ field }) {
  const View = field && VIEWS[patternOf(field)];
  if (View && isReachable(job.value, field)) return html`<${View} key=${field} at=${field} />`;
  const chosen = chosenIn('/cushions', field);
  return html`<main class="screen-body">
      <div class="columns measure-columns">
        <div class="column"><${Cushions} chosen=${chosen} onAdd=${addCushion}
          onChoose=${(path) => go(inJob(openJob.value.id, 'measure', path))} /></div>
        <div class="column"><${JobFields} /></div>
      </div>
    </main>
    <${NextBar} step=${nextStep(chosen)} />`;
}
