// One side of an outline being taped, or one way across it: drawn to proportion from what is taped so far.
import { html } from '../../parts/html.js';
import { entryOf, valueAt } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { hintOf, labelOf } from '../catalogue.js';
import { TapeEntry } from '../entries/lengths.js';
import { Problems } from '../field.js';
import { endsOf } from '../outlines.js';
import { setField } from '../setting.js';
import { NextBar } from '../next-bar.js';
import { stepAfter } from './next.js';
import { MeasurePicture } from './measure-picture.js';

export function OutlineReading({ at }) {
  const cushion = entryOf(at);
  return html`<main class="screen-body measuring">
      <div class="columns">
        <div class="column under-problems"><${MeasurePicture} cushion=${cushion} at=${at} focus=${endsOf(job.value, at)} />
          <div class="over-picture"><${Problems} at=${at} /></div></div>
        <div class="column">
          <${TapeEntry} label=${labelOf(job.value, at)} value=${valueAt(job.value, at) || undefined} hint=${hintOf(job.value, at)}
            onInput=${(text) => setField(at, text ?? '')} />
        </div>
      </div>
    </main>
    <${NextBar} step=${stepAfter(cushion, at)} />`;
}
