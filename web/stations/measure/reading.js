// One measure being taken: the cushion drawn to proportion, the tape with its keys, and what comes after it.
import { html } from '../../parts/html.js';
import { CushionDrawing, measuresOf } from '../../parts/cushion-drawing.js';
import { placeOf } from '../../parts/readings.js';
import { entryOf, lastOf, valueAt } from '../../store/pointer.js';
import { nearAnswer } from '../../store/answers.js';
import { job, openJob } from '../../store/session.js';
import { inJob, moveTo } from '../../store/place.js';
import { readings } from '../../store/readings.js';
import { say } from '../../words/words.js';
import { labelOf } from '../catalogue.js';
import { TapeEntry } from '../entries/lengths.js';
import { Problems } from '../field.js';
import { clearField, setField } from '../setting.js';
import { NextBar } from '../next-bar.js';
import { stepAfter } from './next.js';

const drawn = (text) => (readings.value && text ? placeOf(readings.value, text) : null);

// The taper as the core laid it out: the second and third points of a tapered outline are (depth, depth) and (run, 0).
function taperOf(id) {
  const outline = nearAnswer.value?.pieces.find((piece) => piece.cushion === id)?.outline;
  return outline?.length > 4 ? { depth: outline[1][0], run: outline[2][0] } : null;
}

// The closing as it is drawn: what it takes of its edge is its opening.
function closingOf({ closure }) {
  return closure ? { kind: closure.kind, at: closure.at, nm: drawn(closure.opening) } : null;
}

export function CushionPicture({ cushion, focus, isLabelled }) {
  const { kind, insert, cover } = valueAt(job.value, cushion);
  const texts = Object.fromEntries(measuresOf(kind, insert.shape).map((name) => [name, insert[name]]));
  const measures = Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, drawn(text)]));
  return html`<${CushionDrawing} kind=${kind} shape=${insert.shape} measures=${measures} texts=${texts} focus=${focus}
    labels=${isLabelled ? texts : undefined} edge=${cover.edge?.kind} closing=${closingOf(cover)}
    corners=${cover.corners?.kind === 'tapered' ? taperOf(lastOf(cushion)) : null} />`;
}

// A square pad is measured once; its height is the same text, not a new reading.
function SameHeight({ cushion, at }) {
  const width = valueAt(job.value, `${cushion}/insert/width`);
  if (at !== `${cushion}/insert/length` || !width || valueAt(job.value, at) === width) return null;
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
        <div class="column"><${CushionPicture} cushion=${cushion} focus=${name} /></div>
        <div class="column">
          <${TapeEntry} label=${labelOf(firstAt)} value=${valueAt(job.value, firstAt)} second=${isSecond ? second : undefined}
            restAt=${name === 'length' ? valueAt(job.value, `${cushion}/insert/width`) : undefined}
            onInput=${(text) => (text ? setField(at, text) : clearField(at))}
            onReading=${(reading) => look(reading === 1 ? firstAt : secondAt)} />
          <${Problems} at=${firstAt} />
          <${Problems} at=${secondAt} />
        </div>
      </div>
    </main>
    <${NextBar} step=${stepAfter(cushion, name)}>
      <${SameHeight} cushion=${cushion} at=${at} />
      ${!isSecond && html`<${ReadAgain} cushion=${cushion} name=${name} />`}
    <//>`;
}
