// How many covers of this measure, and what fills them: the last two things said at the sofa.
import { html } from '../../parts/html.js';
import { Choice } from '../../parts/choice.js';
import { Stepper } from '../../parts/stepper.js';
import { entryOf, valueAt } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { labelOf, optionsOf } from '../catalogue.js';
import { MOST_COVERS } from '../entries/figures.js';
import { Problems } from '../field.js';
import { setField } from '../setting.js';
import { NextBar } from '../next-bar.js';
import { stepAfter } from './next.js';
import { CushionPicture } from './picture.js';

export function Counting({ at }) {
  const cushion = entryOf(at);
  const filling = `${cushion}/insert/fill`;
  return html`<main class="screen-body measuring counting">
      <div class="columns">
        <div class="column"><${CushionPicture} cushion=${cushion} isLabelled /></div>
        <div class="column">
          <${Stepper} label=${labelOf(job.value, at)} value=${valueAt(job.value, at)} min=${1} max=${MOST_COVERS}
            onInput=${(count) => setField(at, count)} />
          <${Choice} label=${labelOf(job.value, filling)} options=${optionsOf(job.value, filling)} layout="grid"
            value=${valueAt(job.value, filling)}
            onInput=${(fill) => setField(filling, fill)} />
          <${Problems} at=${at} />
          <${Problems} at=${filling} />
        </div>
      </div>
    </main>
    <${NextBar} step=${stepAfter(cushion, at)} />`;
}
