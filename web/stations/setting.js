// Setting and emptying fields of the open job, with what has to go along: a price needs its unit, a closure its kind.
import { clear, drop, insert, put, remove } from '../store/changes.js';
import { lastOf, parentOf, valueAt } from '../store/pointer.js';
import { edit, job } from '../store/session.js';
import { settings } from '../store/settings.js';

// The field that gives its group a meaning: without it the group goes, and the group cannot be without it.
const HEADS = [
  [/\/closure\/\w+$/, 'kind', () => 'hand-sewn'],
  [/\/corners\/\w+$/, 'kind', () => 'tapered'],
  [/\/edge\/\w+$/, 'kind', () => 'trimmed'],
  [/\/price\/amount$/, 'per', () => (job.value.units === 'in' ? 'yd' : 'm')],
  [/\/price\/amount$/, 'currency', () => settings.value.currency],
];

function companions(at) {
  return HEADS.filter(([pattern, name]) => pattern.test(at) && lastOf(at) !== name)
    .map(([, name, value]) => [`${parentOf(at)}/${name}`, value()])
    .filter(([beside]) => valueAt(job.value, beside) === undefined)
    .map(([beside, value]) => put(beside, value));
}

// A length that held for both sides stays with the other one when one side gets its own.
function parted(at, value) {
  const both = /\/smaller_by\/\w+$/.test(at) ? valueAt(job.value, parentOf(at)) : undefined;
  if (typeof both !== 'string') return put(at, value);
  return put(parentOf(at), { width: both, length: both, [lastOf(at)]: value });
}

export function setField(at, value) {
  edit([...companions(at), parted(at, value)]);
}

const IS_HEAD = /\/((closure|corners|edge)\/kind|price\/amount)$/;

export function clearField(at) {
  if (valueAt(job.value, at) === undefined) return;
  edit([IS_HEAD.test(at) ? drop(parentOf(at)) : clear(job.value, at)]);
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
