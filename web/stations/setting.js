// Setting and emptying fields of the open job, with what has to go along: a price needs its unit, a closure its kind.
import { clear, drop, insert, put, remove } from '../store/changes.js';
import { entryOf, lastOf, parentOf, patternOf, valueAt } from '../store/pointer.js';
import { edit, job } from '../store/session.js';
import { settings } from '../store/settings.js';
import { madeInto, measuresMadeSmaller } from './kinds.js';
import { closedAt } from './shown.js';

// The field that gives its group a meaning: without it the group goes, and the group cannot be without it.
const HEADS = [
  [/\/closure\/\w+$/, 'kind', () => 'hand-sewn'],
  [/\/cover\/corners\/\w+$/, 'kind', () => 'tapered'],
  [/\/edge\/\w+$/, 'kind', () => 'trimmed'],
  [/\/made\/\w+$/, 'kind', () => 'border'],
  [/\/(rates\/handling\/amount|operations\/(press_cloth|overlock|make_piping|attach_piping|frill|make_up)\/minutes)$/, 'per',
    () => (job.value.units === 'in' ? 'yd' : 'm')],
  [/\/rates\/travel\/amount$/, 'per', () => (job.value.units === 'in' ? 'mi' : 'km')],
  [/\/price\/amount$/, 'per', () => (job.value.units === 'in' ? 'yd' : 'm')],
  [/\/price\/amount$/, 'currency', () => settings.value.currency],
];

function companions(at) {
  return HEADS.filter(([pattern, name]) => pattern.test(at) && lastOf(at) !== name)
    .map(([, name, value]) => [`${parentOf(at)}/${name}`, value()])
    .filter(([beside]) => valueAt(job.value, beside) === undefined)
    .map(([beside, value]) => put(beside, value));
}

// The first thing said of a price says its currency as well: that of the cloths, else the usual one.
const currencyOfPrice = () => job.value.cloths.find(({ price }) => price?.currency)?.price.currency ?? settings.value.currency;
const withCurrency = (at) => (at.startsWith('/quote/') && at !== '/quote/currency' && valueAt(job.value, '/quote/currency') === undefined
  ? [put('/quote/currency', currencyOfPrice())] : []);

// A length that held for every measure stays with the others when one gets its own.
function parted(at, value) {
  const both = /\/smaller_by\/\w+$/.test(at) ? valueAt(job.value, parentOf(at)) : undefined;
  if (typeof both !== 'string') return put(at, value);
  const names = measuresMadeSmaller(job.value, entryOf(at));
  return put(parentOf(at), { ...Object.fromEntries(names.map((name) => [name, both])), [lastOf(at)]: value });
}

// Closed in another way, a cover may have to be closed elsewhere: the place is left out, and the usual one taken.
function closedBy(at, kind) {
  const cushion = valueAt(job.value, entryOf(at));
  const { at: place } = cushion.cover.closure ?? {};
  return [put(at, kind), ...(place && !closedAt(cushion, kind).includes(place) ? [drop(`${parentOf(at)}/at`)] : [])];
}

// Fields whose change takes others along.
const leading = {
  '/cushions/*/kind': (at, value) => madeInto(job.value, entryOf(at), value),
  '/cushions/*/insert/shape': (at, value) => madeInto(job.value, entryOf(at), valueAt(job.value, `${entryOf(at)}/kind`), value),
  '/cushions/*/cover/closure/kind': closedBy,
};

export function setField(at, value) {
  const lead = leading[patternOf(at)];
  edit(lead ? lead(at, value) : [...withCurrency(at), ...companions(at), parted(at, value)]);
}

// What is left out together with the rest of its group.
const IS_HEAD = new RegExp('/((closure|corners|edge|made)/kind|price/amount|layers/\\w+/cloth'
  + '|(rates|prices)/\\w+/amount|operations/\\w+/minutes)$');

export function clearField(at) {
  if (valueAt(job.value, at) === undefined) return;
  edit([clear(job.value, IS_HEAD.test(at) ? parentOf(at) : at)]);
}

// An id of the job's own kind (c1, k2, m3) that its list does not have yet.
export function freeId(letter, list) {
  const taken = new Set((list ?? []).map((entry) => entry.id));
  let number = 1;
  while (taken.has(`${letter}${number}`)) number += 1;
  return `${letter}${number}`;
}

export function addEntry(list, entry, index = valueAt(job.value, list)?.length ?? 0) {
  edit([insert(list, index, entry)]);
}

// The last of an optional list takes the list away with it.
export function removeEntry(at) {
  const list = valueAt(job.value, parentOf(at));
  const optional = !['/cushions', '/cloths'].includes(parentOf(at));
  edit([optional && list.length === 1 ? clear(job.value, parentOf(at)) : remove(at)]);
}
