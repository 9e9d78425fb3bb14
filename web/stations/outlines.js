// Straight-sided outlines in a job: their corners by letter, the outlines to begin with, and the changes that make them.
import { drop, put } from '../store/changes.js';
import { entryOf, split, valueAt } from '../store/pointer.js';
import { cornerName } from '../parts/cushions/outlined.js';

/** The outlines to begin with: how many sides, which corners turn inwards, what is taped from corner to corner. */
export const OUTLINES = {
  bay: { count: 4, notches: [], across: [[0, 2], [1, 3]] },
  ell: { count: 6, notches: [3], across: [[0, 2], [0, 3], [0, 4], [3, 5]] },
  tee: { count: 8, notches: [3, 6], across: [[0, 2], [0, 3], [1, 6], [1, 7], [3, 5], [4, 6]] },
};

export const MOST_SIDES = 12;

export const outlineAt = (job, cushion) => {
  const { sides = [], diagonals = [], notches = [] } = valueAt(job, `${cushion}/insert`) ?? {};
  return { sides, diagonals, notches };
};

/** What a measure of an outline leads from and to, as corners; undefined for a path that is none. */
export function endsOf(job, path) {
  const [, , , list, number] = split(path);
  const { sides, diagonals } = outlineAt(job, entryOf(path));
  if (list === 'sides') return [Number(number), (Number(number) + 1) % Math.max(sides.length, 1)];
  return list === 'diagonals' ? diagonals[Number(number)]?.slice(0, 2) : undefined;
}

export const named = (corners) => corners.map(cornerName).join('');

export const sideName = (job, cushion, side) => named([side, (side + 1) % outlineAt(job, cushion).sides.length]);

/** The measures of an outline, side by side and then across, as paths. */
export function outlinePaths(job, cushion) {
  const { sides, diagonals } = outlineAt(job, cushion);
  return [...sides.map((_, side) => `${cushion}/insert/sides/${side}`),
    ...diagonals.map((_, number) => `${cushion}/insert/diagonals/${number}/2`)];
}

const isPair = (one, other) => one.every((corner) => other.includes(corner));

/** Every way from corner to corner that is no side. */
export const waysAcross = (count) => Array.from({ length: count }, (_, one) => one)
  .flatMap((one) => Array.from({ length: count }, (_, other) => [one, other]))
  .filter(([one, other]) => other - one > 1 && !(one === 0 && other === count - 1));

// Each corner held from the first, and one way more that checks them.
const usualAcross = (count) => waysAcross(count).filter(([one, other]) => one === 0 || (one === 1 && other === count - 1));

/** What is taped across, the lengths that were taped kept. */
const taped = (diagonals, across) =>
  across.map((pair) => [...pair, diagonals.find(([one, other]) => isPair(pair, [one, other]))?.[2] ?? '']);

const withNotches = (cushion, notches) =>
  (notches.length > 0 ? put(`${cushion}/insert/notches`, notches) : drop(`${cushion}/insert/notches`));

const made = (cushion, texts, diagonals, notches) => [put(`${cushion}/insert/sides`, texts),
  put(`${cushion}/insert/diagonals`, diagonals), withNotches(cushion, notches)];

/** The changes that let a cushion begin anew with one of the outlines, nothing of it taped. */
export const begunAs = (cushion, { count, notches, across }) =>
  made(cushion, Array(count).fill(''), across.map((pair) => [...pair, '']), notches);

/** The changes that give an outline more or fewer sides; what was taped of those that stay is kept. */
export function withSides(job, cushion, count) {
  const { sides, diagonals, notches } = outlineAt(job, cushion);
  return made(cushion, Array.from({ length: count }, (_, side) => sides[side] ?? ''), taped(diagonals, usualAcross(count)),
    notches.filter((corner) => corner < count));
}

/** The changes that let one corner turn the other way. */
export function turnedAt(job, cushion, corner) {
  const { notches } = outlineAt(job, cushion);
  const next = notches.includes(corner) ? notches.filter((one) => one !== corner) : [...notches, corner].sort((a, b) => a - b);
  return [withNotches(cushion, next)];
}

export const isTaped = (diagonals, pair) => diagonals.some(([one, other]) => isPair(pair, [one, other]));

/** The changes that take one way across in among those that are taped, or out of them. */
export function tapedAcross(job, cushion, pair) {
  const { diagonals } = outlineAt(job, cushion);
  const next = isTaped(diagonals, pair) ? diagonals.filter(([one, other]) => !isPair(pair, [one, other])) : [...diagonals, [...pair, '']];
  return [put(`${cushion}/insert/diagonals`, next)];
}
