// Paths into a job document: "/cushions/c2/insert/width". A list entry is named by its id, or by its index where it has none.

export const split = (path) => path.split('/').slice(1).map((part) => part.replaceAll('~1', '/').replaceAll('~0', '~'));

export const join = (...parts) => parts.map((part) => `/${String(part).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');

export const parentOf = (path) => path.slice(0, path.lastIndexOf('/'));

export const lastOf = (path) => split(path).at(-1);

// Where in `list` the entry stands that a path calls `name`; -1 where there is none.
export function indexIn(list, name) {
  const byId = list.findIndex((entry) => entry?.id === name);
  if (byId >= 0) return byId;
  return /^\d+$/.test(name) && Number(name) < list.length ? Number(name) : -1;
}

// The own value under `name`; never one inherited, whatever a file calls its fields (fault B35).
function inside(value, name) {
  if (Array.isArray(value)) return value[indexIn(value, name)];
  if (value && typeof value === 'object' && Object.hasOwn(value, name)) return value[name];
  return undefined;
}

export const valueAt = (job, path) => split(path).reduce(inside, job);

// The core points by index ("/cushions/0/insert/width"); the screens name entries by id.
export function pathOf(job, pointer) {
  let here = job;
  const names = split(pointer).map((part) => {
    const entry = Array.isArray(here) ? here[Number(part)] : inside(here, part);
    const name = Array.isArray(here) ? (entry?.id ?? part) : part;
    here = entry;
    return name;
  });
  return join(...names);
}

// The kind of place a path names: "/cushions/c2/insert/width" is "/cushions/*/insert/width".
const IS_NUMBER = /^\d+$/;
const LISTS = new Set(['cushions', 'cloths', 'motifs', 'flaws', 'items']);

// Whether every list entry on the way of a path is there; a field itself may well be unset.
export function isReachable(job, path) {
  let here = job;
  return split(path).every((name, at, names) => {
    if (LISTS.has(names[at - 1]) && (!Array.isArray(here) || indexIn(here, name) < 0)) return false;
    here = inside(here ?? {}, name);
    return true;
  });
}

export function patternOf(path) {
  const names = split(path);
  return join(...names.map((name, at) => (LISTS.has(names[at - 1]) || IS_NUMBER.test(name) ? '*' : name)));
}

// The list entry a path lies in: "/cushions/c2/insert/width" lies in "/cushions/c2"; of the job itself, "".
export function entryOf(path) {
  const [list, id] = split(path);
  return LISTS.has(list) && id !== undefined ? join(list, id) : '';
}
