// The cushions of the job as a list; the chosen one is open, with its drawing, its measures and what it is made from.
import { html } from '../../parts/html.js';
import { Icon } from '../../parts/icon.js';
import { Fractions } from '../../parts/figure.js';
import { valueAt } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { say } from '../../words/words.js';
import { nameOf } from '../catalogue.js';
import { Field } from '../field.js';
import { isMeasured, isOutlined, measuresOfCushion } from '../kinds.js';
import { outlinePaths } from '../outlines.js';
import { addEntry, freeId, removeEntry } from '../setting.js';
import { show } from '../visit.js';
import { CushionPicture } from './picture.js';

const MEASURES = ['width', 'length', 'diameter', 'thickness'];
const each = (group) => MEASURES.map((name) => `insert/${group}${name}`);
const SHAPE = ['kind', 'insert/shape', 'insert/notches'];
const ROWS = [...each(''), ...each('again/'), 'quantity', 'mirrored', 'insert/fill', 'name', 'size_from',
  'insert/measured', 'insert/clearance', ...each('label/')];

const sizeBy = (name, text) => (name === 'diameter' ? say('measure.diameterOf', { text }) : text);

export function summary(path) {
  if (!isMeasured(job.value, path)) return say('measure.unmeasured');
  const { quantity, insert } = valueAt(job.value, path);
  const outlined = isOutlined(job.value, path) ? [say('measure.sideCount', { count: insert.sides.length })] : [];
  return [quantity, ...outlined, ...measuresOfCushion(job.value, path).map((name) => sizeBy(name, insert[name] ?? '?'))].join(' × ');
}

function duplicate(path) {
  const list = job.value.cushions;
  const cushion = valueAt(job.value, path);
  const id = freeId('c', list);
  addEntry('/cushions', { ...cushion, id }, list.indexOf(cushion) + 1);
  show(`/cushions/${id}`);
}

function Tools({ path, name }) {
  const isOnly = job.value.cushions.length === 1;
  return html`<div class="entry-tools">
    <button type="button" class="button-plain" onClick=${() => duplicate(path)}>
      <${Icon} name="copy" size=${20} />${say('measure.duplicate', { cushion: name })}</button>
    ${!isOnly && html`<button type="button" class="button-plain" onClick=${() => removeEntry(path)}>
      <${Icon} name="bin" size=${20} />${say('measure.remove', { cushion: name })}</button>`}
  </div>`;
}

const outlineRows = (path) => (isOutlined(job.value, path) ? outlinePaths(job.value, path) : []);
const rowsOf = (path) => [...SHAPE.map((row) => `${path}/${row}`), ...outlineRows(path), ...ROWS.map((row) => `${path}/${row}`)];

function OpenCushion({ path }) {
  const name = nameOf(job.value, path);
  return html`<section class="card card-rows cushion-open" aria-label=${name}>
    <div class="cushion-head"><div><h2 class="entry-name">${name}</h2>
      <p class="note"><${Fractions} text=${summary(path)} /></p></div></div>
    <${CushionPicture} cushion=${path} isLabelled />
    <div class="rows">${rowsOf(path).map((at) => html`<${Field} key=${at} at=${at} />`)}</div>
    <${Tools} path=${path} name=${name} />
  </section>`;
}

const ClosedCushion = ({ path, onChoose }) => html`
  <button type="button" class="card entry-closed" onClick=${() => onChoose(path)}>
    <span class="entry-name">${nameOf(job.value, path)}</span>
    <span class="note"><${Fractions} text=${summary(path)} /></span>
    <${Icon} name="forward" size=${20} />
  </button>`;

export function Cushions({ chosen, onChoose, onAdd }) {
  const paths = job.value.cushions.map(({ id }) => `/cushions/${id}`);
  return html`<div class="stack">
    ${paths.map((path) => (path === chosen
      ? html`<${OpenCushion} key=${path} path=${path} />`
      : html`<${ClosedCushion} key=${path} path=${path} onChoose=${onChoose} />`))}
    <button type="button" class="button" onClick=${onAdd}><${Icon} name="plus" />${say('measure.add')}</button>
  </div>`;
}
