// What the screens know of a field by its path: its name, its entry, its choices, and the words for its value.
import { CushionSketch } from '../parts/cushion-drawing.js';
import { html } from '../parts/html.js';
import { entryOf, parentOf, patternOf, valueAt } from '../store/pointer.js';
import { settings } from '../store/settings.js';
import { fields } from '../words/controls.js';
import { has, say } from '../words/words.js';
import { percentOf } from './percent.js';
import { endsOf, named, outlineAt, sideName } from './outlines.js';
import { isOffered } from './shown.js';

export const isField = (path) => Object.hasOwn(fields, patternOf(path));
// Whether a field is taken on its station itself; any other is a sheet over it.
export const isView = (path) => Boolean(fields[patternOf(path)]?.view);
export const stationOf = (path) => fields[patternOf(path)]?.station;
export const kindOf = (path) => fields[patternOf(path)].kind;
const ICONS = {
  '/cloths/*/direction': { 'one-way': 'up', 'two-way': 'height', any: 'turn' },
  '/cloths/*/up': { away: 'up', toward: 'down', left: 'back', right: 'forward' },
};

// The key of a field's name: some are called otherwise in some kinds of cover.
export function labelKey(job, path) {
  const pattern = patternOf(path);
  const kind = entryOf(path).startsWith('/cushions/') ? valueAt(job, `${entryOf(path)}/kind`) : undefined;
  return fields[pattern].names?.[kind] ? `${pattern}=${kind}` : pattern;
}

// What is filled in for the {ends} of its name: the corners that a measure of an outline leads from and to.
export const placesIn = (job, path) => ({ ends: named(endsOf(job, path) ?? []) });

export const labelOf = (job, path) => say(`field:${labelKey(job, path)}`, placesIn(job, path));

// The front's explanations serve the other faces as well, and the layers.
const hintKey = (path) => `hint:${patternOf(path).replace(/\/cover\/(back|sides|layers\/\w+)\//, '/cover/front/')}`;
const wordAt = (key) => (has(key) ? say(key) : undefined);
export const hintOf = (job, path) => wordAt(`hint:${labelKey(job, path)}`) ?? wordAt(hintKey(path));

// A kind is drawn in the cushion's shape, a shape in the cushion's kind.
const sketches = {
  '/cushions/*/kind': (cushion, kind) => ({ kind, shape: cushion.insert.shape }),
  '/cushions/*/insert/shape': (cushion, shape) => ({ kind: cushion.kind, shape }),
};

function pictureOf(job, path, value) {
  const sketch = sketches[patternOf(path)];
  return sketch && html`<${CushionSketch} ...${sketch(valueAt(job, entryOf(path)), value)} />`;
}

export function optionsOf(job, path) {
  const pattern = patternOf(path);
  return Object.keys(fields[pattern].options).filter((value) => isOffered(job, path, value)).map((value) => ({
    value, text: say(`option:${pattern}=${value}`), hint: wordAt(`${hintKey(path)}=${value}`), icon: ICONS[pattern]?.[value],
    picture: pictureOf(job, path, value) }));
}

const optionText = (path, value) => wordAt(`option:${patternOf(path)}=${value}`);

// What an entry of a list is called: the maker's own name for it, or its number.
export function nameOf(job, path) {
  const entry = valueAt(job, path);
  if (entry?.name) return entry.name;
  const list = valueAt(job, parentOf(path));
  const kind = path.match(/(cushion|cloth|motif|flaw|bought)s?\/[^/]*$/)[1];
  return say({ cushion: 'measure.cushion', cloth: 'cloth.cloth', motif: 'cloth.motif', bought: 'cloth.bought',
    flaw: path.includes('/piece/') ? 'cloth.place' : 'cloth.flaw' }[kind],
    { number: list.indexOf(entry) + 1 });
}

// The path of the list entry with this id, as "/cloths/k1".
export const clothPath = (id) => `/cloths/${id}`;

// A day in words; it is told as the day it is in every zone of time.
const dayInWords = (day) => (Number.isNaN(Date.parse(day)) ? day
  : new Intl.DateTimeFormat(settings.value.words, { dateStyle: 'long', timeZone: 'UTC' }).format(Date.parse(day)));

const words = {
  date: (_path, value) => dayInWords(value),
  choice: (path, value) => optionText(path, value) ?? value,
  times: (path, value) => optionText(path, value) ?? value,
  length: (path, value) => optionText(path, value) ?? value,
  number: (path, value) => `${value} ${fields[patternOf(path)].unit ?? ''}`.trim(),
  percent: (_path, value) => say('cloth.percent', { percent: percentOf(value) }),
  signed: (path, value) => `${value.replace(/^[-−]/, '')}, ${sideOf(path, value)}`,
  side: (path, value, job) => sideName(job, entryOf(path), value),
  flag: (path, value) => optionText(path, String(value)) ?? String(value),
  cloths: (_path, value, job) => value.map((id) => words.cloth(_path, id, job)).join(', '),
  cloth: (_path, value, job) => (valueAt(job, clothPath(value)) ? nameOf(job, clothPath(value)) : value),
  motif: (path, value, job) => motifName(job, path, value),
};

const sideOf = (path, value) => optionText(path, /^[-−]/.test(value) ? '-' : '').toLowerCase();

// The cloth a face is cut from, as the path of its entry; sides that name none are cut from that of the front.
export const clothOfFace = (job, path) => clothPath(valueAt(job, `${parentOf(path)}/cloth`)
  ?? valueAt(job, `${entryOf(path)}/cover/front/cloth`));

function motifName(job, path, id) {
  const at = `${clothOfFace(job, path)}/motifs/${id}`;
  return valueAt(job, at) ? nameOf(job, at) : id;
}

const inWords = (job, path, value) => (words[kindOf(path)] ?? ((_path, plain) => String(plain)))(path, value, job);

function outlineInWords(job, cushion) {
  const { sides, notches } = outlineAt(job, cushion);
  const count = say('measure.sideCount', { count: sides.length });
  return notches.length > 0 ? say('measure.withNotches', { count, corners: notches.map((corner) => named([corner])).join(', ') }) : count;
}

// The value of a field in words; undefined where it is not set, or set side by side by fields of their own.
export function shownValue(job, path) {
  if (kindOf(path) === 'outline') return outlineInWords(job, entryOf(path));
  const value = valueAt(job, path);
  return value === undefined || (typeof value === 'object' && kindOf(path) !== 'cloths') ? undefined : inWords(job, path, value);
}

// What the core takes while the field is not set, in words; undefined where that depends on the rest of the job.
export function usualValue(job, path) {
  const { usual } = fields[patternOf(path)];
  if (usual === undefined) return undefined;
  return inWords(job, path, typeof usual === 'object' ? usual[job.units] : usual);
}

// A field's name with its cushion or cloth before it, for lists of problems: "long sofa, Width".
export function fullName(job, path) {
  const entry = entryOf(path);
  if (!isField(path)) return entry && valueAt(job, entry) ? nameOf(job, entry) : '';
  return entry ? say('job.entryField', { entry: nameOf(job, entry), field: labelOf(job, path) }) : labelOf(job, path);
}
