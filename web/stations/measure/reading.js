// One measure being taken: the cushion drawn to proportion, the tape with its keys, and what comes after it.
import { html } from '../../parts/html.js';
import { entryOf, lastOf, valueAt } from '../../store/pointer.js';
import { job, openJob } from '../../store/session.js';
import { inJob, moveTo } from '../../store/place.js';
import { say } from '../../words/words.js';
import { hintOf, labelOf } from '../catalogue.js';
import { TapeEntry } from '../entries/lengths.js';
import { Problems } from '../field.js';
import { clearField, setField } from '../setting.js';
import { measuresOfCushion } from '../kinds.js';
import { NextBar } from '../next-bar.js';
import { MeasurePicture } from './measure-picture.js';
import { stepAfter } from './next.js';

// A square pad is measured once; its height is the same text, not a new reading.
function SameHeight({ cushion, at }) {
  const width = valueAt(job.value, `${cushion}/insert/width`);
  const isSquareable = measuresOfCushion(job.value, cushion).includes('width') && at === `${cushion}/insert/length`;
  if (!isSquareable || !width || valueAt(job.value, at) === width) return null;
  return html`<button type="button" class="button" onClick=${() => setField(at, width)}>${say('measure.square')}</button>`;
}

function ReadAgain({ cushion, name }) {
  if (valueAt(job.value, `${cushion}/insert/${name}`) === undefined) return null;
  const second = inJob(openJob.value.id, 'measure', `${cushion}/insert/again/${name}`);
  return html`<button type="button" class="button" onClick=${() => moveTo(second)}>${say('measure.again')}</button>`;
}

export function Reading({ at }) {
  const cushion = entryOf(at);
  const name = lastOf(at);
  const isSecond = at.includes('/again/');
  const firstAt = `${cushion}/insert/${name}`;
  const secondAt = `${cushion}/insert/again/${name}`;
  const second = valueAt(job.value, secondAt) ?? '';
  const look = (there) => moveTo(inJob(openJob.value.id, 'measure', there));
  return html`<main class="screen-body measuring">
      <div class="columns">
        <div class="column"><${MeasurePicture} cushion=${cushion} at=${firstAt} focus=${name} /></div>
        <div class="column">
          <${TapeEntry} label=${labelOf(job.value, firstAt)} value=${valueAt(job.value, firstAt)} second=${isSecond ? second : undefined}
            hint=${hintOf(job.value, firstAt)} restAt=${name === 'length' ? valueAt(job.value, `${cushion}/insert/width`) : undefined}
            onInput=${(text) => (text ? setField(at, text) : clearField(at))}
            onReading=${(reading) => look(reading === 1 ? firstAt : secondAt)} />
          <${Problems} at=${firstAt} />
          <${Problems} at=${secondAt} />
        </div>
      </div>
    </main>
    <${NextBar} step=${stepAfter(cushion, firstAt)}>
      <${SameHeight} cushion=${cushion} at=${at} />
      ${!isSecond && html`<${ReadAgain} cushion=${cushion} name=${name} />`}
    <//>`;
}
