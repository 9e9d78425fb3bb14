// What the screens know of a field by its path: its name, its entry, the words for its value, and when it is shown.
import { entryOf, parentOf, patternOf, valueAt } from '../store/pointer.js';
import { fields } from '../words/controls.js';
import { has, say } from '../words/words.js';
import { percentOf } from './percent.js';

export const isField = (path) => Object.hasOwn(fields, patternOf(path));
// Whether a field is taken on its station itself; any other is a sheet over it.
export const isView = (path) => Boolean(fields[patternOf(path)]?.view);
export const stationOf = (path) => fields[patternOf(path)]?.station;
export const kindOf = (path) => fields[patternOf(path)].kind;
const ICONS = {
  '/cloths/*/direction': { 'one-way': 'up', 'two-way': 'height', any: 'turn' },
  '/cloths/*/up': { away: 'up', toward: 'down', left: 'back', right: 'forward' },
};

export const labelOf = (path) => say(`field:${patternOf(path)}`);

// The front's explanations serve the back as well.
const hintKey = (path) => `hint:${patternOf(path).replace(/\/cover\/(back|sides)\//, '/cover/front/')}`;
const wordAt = (key) => (has(key) ? say(key) : undefined);
export const hintOf = (path) => wordAt(hintKey(path));

export function optionsOf(path) {
  const pattern = patternOf(path);
  return Object.keys(fields[pattern].options).map((value) => ({
    value, text: say(`option:${pattern}=${value}`), hint: wordAt(`${hintKey(path)}=${value}`), icon: ICONS[pattern]?.[value] }));
}

// What an entry of a list is called: the maker's own name for it, or its number.
export function nameOf(job, path) {
  const entry = valueAt(job, path);
  if (entry?.name) return entry.name;
  const list = valueAt(job, parentOf(path));
  const kind = path.match(/(cushion|cloth|motif|flaw)s\/[^/]*$/)[1];
  return say({ cushion: 'measure.cushion', cloth: 'cloth.cloth', motif: 'cloth.motif', flaw: 'cloth.flaw' }[kind],
    { number: list.indexOf(entry) + 1 });
}

// The path of the list entry with this id, as "/cloths/k1".
export const clothPath = (id) => `/cloths/${id}`;

const words = {
  choice: (path, value) => optionsOf(path).find((option) => option.value === value)?.text ?? value,
  length: (path, value) => optionsOf(path).find((option) => option.value === value)?.text ?? value,
  percent: (_path, value) => say('cloth.percent', { percent: percentOf(value) }),
  signed: (path, value) => `${value.replace(/^[-−]/, '')}, ${sideOf(path, value)}`,
  cloth: (_path, value, job) => (valueAt(job, clothPath(value)) ? nameOf(job, clothPath(value)) : value),
  motif: (path, value, job) => motifName(job, path, value),
};

const sideOf = (path, value) => optionsOf(path)[/^[-−]/.test(value) ? 1 : 0].text.toLowerCase();

// The cloth a face is cut from, as the path of its entry; sides that name none are cut from that of the front.
export const clothOfFace = (job, path) => clothPath(valueAt(job, `${parentOf(path)}/cloth`)
  ?? valueAt(job, `${entryOf(path)}/cover/front/cloth`));

function motifName(job, path, id) {
  const at = `${clothOfFace(job, path)}/motifs/${id}`;
  return valueAt(job, at) ? nameOf(job, at) : id;
}

const inWords = (job, path, value) => (words[kindOf(path)] ?? ((_path, plain) => String(plain)))(path, value, job);

// The value of a field in words; undefined where it is not set, or set side by side by fields of their own.
export function shownValue(job, path) {
  const value = valueAt(job, path);
  return value === undefined || typeof value === 'object' ? undefined : inWords(job, path, value);
}

// What the core takes while the field is not set, in words; undefined where that depends on the rest of the job.
export function usualValue(job, path) {
  const { usual } = fields[patternOf(path)];
  if (usual === undefined) return undefined;
  return inWords(job, path, typeof usual === 'object' ? usual[job.units] : usual);
}

const whenPattern = (job, path, pattern) => valueAt(job, path.replace(/\/(motif|group|offset\/\w+)$/, '/pattern')) === pattern;
const whenSet = (job, path) => valueAt(job, path) !== undefined;

const isPadTaped = (job, insert) => ['insert', 'foam', undefined].includes(valueAt(job, `${insert}/measured`))
  && valueAt(job, `${entryOf(insert)}/size_from`) !== 'finished';

// Fields that make sense only after another; a value that is there is always shown.
const conditions = [
  [/\/(motif|offset\/\w+)$/, (job, path) => whenPattern(job, path, 'centred')],
  [/\/group$/, (job, path) => whenPattern(job, path, 'alike')],
  [/\/insert\/clearance$/, (job, path) => valueAt(job, `${parentOf(path)}/measured`) === 'opening'],
  [/\/insert\/again\/\w+$/, () => false],
  [/\/insert\/label\/\w+$/, (job, path) => whenSet(job, path.replace('/label/', '/')) && isPadTaped(job, parentOf(parentOf(path)))],
  [/\/insert\/measured$/, (job, path) => valueAt(job, `${entryOf(path)}/size_from`) !== 'finished'],
  [/\/price\/(per|currency)$/, (job, path) => whenSet(job, parentOf(path))],
  [/\/wash$/, (job, path) => whenSet(job, `${parentOf(path)}/shrinkage`)],
  [/\/start$/, (job, path) => ['repeat', 'motifs', 'flaws'].some((name) => whenSet(job, `${parentOf(path)}/${name}`))],
  [/\/edge\/(rims|join|pack)$/, (job, path) => valueAt(job, `${parentOf(path)}/kind`) === 'trimmed'],
  [/\/edge\/hidden_joins$/, (job, path) => whenSet(job, `${parentOf(path)}/pack`)],
  [/\/corners\/(depth|run)$/, (job, path) => valueAt(job, `${parentOf(path)}/kind`) === 'tapered'],
  [/\/corners\/radius$/, (job, path) => valueAt(job, `${parentOf(path)}/kind`) === 'rounded'],
  [/\/repeat\/drop$/, (job, path) => whenSet(job, parentOf(path))],
];

export function isShown(job, path) {
  const condition = conditions.find(([pattern]) => pattern.test(path));
  return !condition || whenSet(job, path) || condition[1](job, path);
}

// A field's name with its cushion or cloth before it, for lists of problems: "long sofa, Width".
export function fullName(job, path) {
  const entry = entryOf(path);
  if (!isField(path)) return entry && valueAt(job, entry) ? nameOf(job, entry) : '';
  return entry ? say('job.entryField', { entry: nameOf(job, entry), field: labelOf(path) }) : labelOf(path);
}
