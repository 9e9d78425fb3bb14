// The motifs of a cloth on the repeat that was marked: dragged there, each is as far across and along as the core tells.
import { ask } from '../../boot/core.js';
import { html, useRef, useState } from '../../parts/html.js';
import { Icon } from '../../parts/icon.js';
import { PointHandle } from '../../parts/picture/point-handle.js';
import { placeOf } from '../../parts/readings.js';
import { insert, put } from '../../store/changes.js';
import { valueAt } from '../../store/pointer.js';
import { readings } from '../../store/readings.js';
import { edit, job } from '../../store/session.js';
import { say } from '../../words/words.js';
import { nameOf } from '../catalogue.js';
import { freeId } from '../setting.js';
import { RepeatPicture } from './repeat-picture.js';
import { repeatSize } from './repeat-size.js';

const FINE = 10_000; // parts of a repeat that a finger is told apart by
const STEP = 0.005; // of the repeat, by an arrow key
const MIDDLE = [0.5, 0.5];

// How far a part of the repeat is, as text: a length that the tape can show. A direction that does not repeat has no parts.
async function lengthAt(cloth, name, share, before) {
  const of = valueAt(job.value, `${cloth}/repeat/${name}`);
  const unit = job.value.units;
  if (!of) return before ?? `0 ${unit}`;
  const { ok } = await ask({ do: 'part', of, part: [Math.round(share * FINE), FINE], unit });
  return ok.text;
}

const placeOn = async (cloth, [x, y], motif) => ({
  across: await lengthAt(cloth, 'across', x, motif?.across), along: await lengthAt(cloth, 'along', 1 - y, motif?.along) });

// What of a length lies within one repeat, as a share of it.
function shareOf(text, repeat) {
  const nm = readings.value && text ? placeOf(readings.value, text) : null;
  return nm === null ? 0.5 : (((nm % repeat) + repeat) % repeat) / repeat;
}

function Handle({ cloth, motif, frame, letter }) {
  const at = `${cloth}/motifs/${motif.id}`;
  const { across, along } = repeatSize(cloth);
  // Where the handle was moved to, until the core has told the length; by arrow keys, until the handle is left.
  const [moved, setMoved] = useState(null);
  const [isActive, untold] = [useRef(false), useRef(null)];
  const settle = () => { if (!isActive.current && !untold.current) setMoved(null); };
  const move = (place) => {
    untold.current = place;
    setMoved(place);
  };
  const activate = (isNow) => {
    isActive.current = isNow;
    settle();
  };
  const rest = async () => {
    const place = untold.current;
    const told = place && (await placeOn(cloth, place, motif).catch(() => null));
    if (untold.current !== place) return;
    untold.current = null;
    if (told) edit([put(`${at}/across`, told.across), put(`${at}/along`, told.along)]);
    settle();
  };
  const shown = moved ?? [shareOf(motif.across, across), 1 - shareOf(motif.along, along)];
  return html`<${PointHandle} at=${shown} frame=${frame} step=${[STEP, STEP]} kind="motif-handle" letter=${letter}
    name=${say('cloth.motifHandle', { motif: nameOf(job.value, at) })} onMove=${move} onRest=${rest} onActive=${activate} />`;
}

const hasRepeat = (cloth) => ['across', 'along'].some((name) => valueAt(job.value, `${cloth}/repeat/${name}`));

export function MotifMarks({ cloth, href }) {
  const frame = useRef(null);
  const list = `${cloth}/motifs`;
  const motifs = valueAt(job.value, list) ?? [];
  const add = async () => {
    const place = await placeOn(cloth, MIDDLE).catch(() => null);
    if (place) edit([insert(list, motifs.length, { id: freeId('m', motifs), ...place })]);
  };
  if (!hasRepeat(cloth)) return html`<${RepeatPicture} cloth=${cloth} href=${href} />`;
  const { across, along } = repeatSize(cloth);
  const shape = { aspectRatio: `${across} / ${along}`, maxWidth: `calc(15rem * ${across / along})` };
  return html`<div class="motif-marks" style=${shape}><${RepeatPicture} cloth=${cloth} href=${href} />
      <div class="motif-room" ref=${frame}>${motifs.map((motif, at) => html`<${Handle} key=${motif.id} cloth=${cloth} motif=${motif}
        frame=${frame} letter=${at + 1} />`)}</div></div>
    <p class="note">${say('cloth.motifDrag')}</p>
    <button type="button" class="button" onClick=${add}><${Icon} name="plus" />${say('cloth.motifHere')}</button>`;
}
