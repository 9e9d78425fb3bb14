// The kinds of cover as pictures, in the place of the drawing while nothing has been measured: one tap chooses.
import { html } from '../../parts/html.js';
import { Choice } from '../../parts/choice.js';
import { CushionSketch } from '../../parts/cushion-drawing.js';
import { valueAt } from '../../store/pointer.js';
import { edit, job, openJob } from '../../store/session.js';
import { inJob, moveTo } from '../../store/place.js';
import { say } from '../../words/words.js';
import { kindsInShapes, madeInto, measurePaths } from '../kinds.js';

const named = (kind, shape) => `${kind} ${shape}`;

export function KindChoice({ cushion }) {
  const options = kindsInShapes.map(({ kind, shape }) => ({ value: named(kind, shape),
    text: say(`choice:measure.kind=${named(kind, shape)}`), picture: html`<${CushionSketch} kind=${kind} shape=${shape} />` }));
  const choose = (value) => {
    const [kind, shape] = value.split(' ');
    edit(madeInto(job.value, cushion, kind, shape));
    moveTo(inJob(openJob.value.id, 'measure', measurePaths(job.value, cushion)[0]));
  };
  const { kind, insert } = valueAt(job.value, cushion);
  return html`<${Choice} label=${say('measure.kindTitle')} hideLabel layout="strip" options=${options} value=${named(kind, insert.shape)} onInput=${choose} />`;
}
