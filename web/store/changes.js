// Changes to a job document as data: what to do, done without touching the old document, and what undoes it.
import { indexIn, isReachable, join, lastOf, parentOf, split, valueAt } from './pointer.js';

export const put = (at, value) => ({ do: 'put', at, value });
export const drop = (at) => ({ do: 'drop', at });
export const insert = (at, index, value) => ({ do: 'insert', at, index, value });
export const remove = (at) => ({ do: 'remove', at });

// Objects a document keeps though empty; any other is dropped with its last field.
const KEPT = /^\/cushions\/[^/]+\/(insert|cover)$|^\/(cushions|cloths)\/[^/]+$|^$/;

// Empties a field, and the objects that would be left empty by it.
export function clear(job, path) {
  let at = path;
  for (let up = parentOf(at); !KEPT.test(up); up = parentOf(at)) {
    const holder = valueAt(job, up);
    if (Array.isArray(holder) || Array.isArray(valueAt(job, parentOf(up))) || holder === undefined || Object.keys(holder).length > 1) break;
    at = up;
  }
  return drop(at);
}

function without(object, name) {
  const { [name]: _gone, ...rest } = object;
  return rest;
}

// A copy of `holder` in which `edit` has been done to the object or list that `names` lead to.
function edited(holder, names, edit) {
  if (names.length === 0) return edit(holder);
  const [name, ...rest] = names;
  if (Array.isArray(holder)) {
    const index = indexIn(holder, name);
    if (index < 0) return holder;
    return holder.with(index, edited(holder[index], rest, edit));
  }
  const inner = Object.hasOwn(holder, name) ? holder[name] : {};
  return { ...holder, [name]: edited(inner, rest, edit) };
}

const steps = {
  put(job, { at, value }) {
    if (at === '') return { job: value, undo: put('', job) };
    const name = lastOf(at);
    const next = edited(job, split(parentOf(at)), (holder) =>
      Array.isArray(holder) ? holder.with(indexIn(holder, name), value) : { ...holder, [name]: value });
    return { job: next, undo: undoOfPut(job, at) };
  },
  drop(job, { at }) {
    const value = valueAt(job, at);
    if (value === undefined) return { job, undo: null };
    return { job: edited(job, split(parentOf(at)), (holder) => without(holder, lastOf(at))), undo: put(at, value) };
  },
  insert(job, { at, index, value }) {
    const place = Math.min(index, valueAt(job, at)?.length ?? 0);
    const next = edited(job, split(parentOf(at)), (holder) => ({
      ...holder, [lastOf(at)]: (holder[lastOf(at)] ?? []).toSpliced(place, 0, value) }));
    if (valueAt(job, at) === undefined) return { job: next, undo: drop(at) };
    return { job: next, undo: remove(`${at}${join(value?.id ?? place)}`) };
  },
  remove(job, { at }) {
    const list = valueAt(job, parentOf(at));
    const index = Array.isArray(list) ? indexIn(list, lastOf(at)) : -1;
    if (index < 0) return { job, undo: null };
    const value = list[index];
    const next = edited(job, split(parentOf(parentOf(at))), (holder) => ({
      ...holder, [lastOf(parentOf(at))]: list.toSpliced(index, 1) }));
    return { job: next, undo: insert(parentOf(at), index, value) };
  },
};

// Undoing the first value of a new object takes the new objects away as well.
function undoOfPut(job, at) {
  let missing = at;
  while (parentOf(missing) !== '' && valueAt(job, parentOf(missing)) === undefined) missing = parentOf(missing);
  const old = valueAt(job, missing);
  return old === undefined ? drop(missing) : put(missing, old);
}

// Makes `changes` in order: the new document, and the changes that take it back again. A change to a cushion or cloth
// that another tab has taken away is left out.
export function make(job, changes) {
  const undo = [];
  for (const change of changes) {
    if (!isReachable(job, change.at)) continue;
    const made = steps[change.do](job, change);
    job = made.job;
    if (made.undo) undo.unshift(made.undo);
  }
  return { job, undo };
}
