// Everything that keeps the job from being answered, at once, each leading to its field.
import { html } from '../../parts/html.js';
import { Row } from '../../parts/row.js';
import { job, openJob } from '../../store/session.js';
import { go, inJob, lookAt } from '../../store/place.js';
import { entryOf } from '../../store/pointer.js';
import { say } from '../../words/words.js';
import { fullName, isField, stationOf } from '../catalogue.js';
import { takesItself } from '../measure/measure.js';
import { troubles } from '../problems.js';

const stationFor = (path) => stationOf(path) ?? (path.startsWith('/cloths') ? 'cloth' : 'measure');

export function toTrouble({ path }) {
  const at = (field) => inJob(openJob.value.id, stationFor(path), field);
  if (takesItself(path)) return go(at(path));
  go(at(entryOf(path)));
  if (isField(path)) lookAt(at(path));
}

export function Troubles() {
  const list = troubles.value;
  if (list.length === 0) return null;
  return html`<section class="stack" role="alert">
    <h2 class="troubles-title">${say('job.problems', { count: list.length })}</h2>
    <div class="card card-rows">${list.map((trouble) => html`
      <${Row} key=${trouble.at + trouble.code} label=${fullName(job.value, trouble.path) || say('measure.job')} note=${trouble.text}
        action=${say('cut.goThere')} onOpen=${() => toTrouble(trouble)} />`)}</div>
  </section>`;
}
