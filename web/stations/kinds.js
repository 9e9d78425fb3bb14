// The kinds of cover and their shapes: what the tape is laid on for each, and how a cushion becomes another.
import { measuresOf } from '../parts/cushion-drawing.js';
import { put } from '../store/changes.js';
import { valueAt } from '../store/pointer.js';
import { controls } from '../words/controls.js';
import { OUTLINES, begunAs, outlinePaths } from './outlines.js';

// Every kind in every shape it is made in: {kind, shape}.
export const kindsInShapes = Object.keys(controls.measure.kind[1]).map((named) => {
  const [kind, shape] = named.split(' ');
  return { kind, shape };
});

export const shapesOf = (kind) => kindsInShapes.filter((one) => one.kind === kind).map(({ shape }) => shape);

const shapeOf = (job, cushion) => valueAt(job, `${cushion}/insert/shape`);

export const isOutlined = (job, cushion) => shapeOf(job, cushion) === 'polygon';

/** The measures of a cushion's insert that have a name, in the order of the tape: ['width', 'length']. */
export const measuresOfCushion = (job, cushion) => measuresOf(valueAt(job, `${cushion}/kind`), shapeOf(job, cushion));

/** The measures that a cover may be made smaller in: never the thickness; of an outline those of the box around it. */
export const measuresMadeSmaller = (job, cushion) => (isOutlined(job, cushion) ? ['width', 'length']
  : measuresOfCushion(job, cushion).filter((name) => name !== 'thickness'));

/** All measures, sides and ways across included, by where they stand in the document. */
export const measurePaths = (job, cushion) => [...(isOutlined(job, cushion) ? outlinePaths(job, cushion) : []),
  ...measuresOfCushion(job, cushion).map((name) => `${cushion}/insert/${name}`)];

export const isMeasured = (job, cushion) => measurePaths(job, cushion).some((path) => valueAt(job, path));

/** The first measure still to be taken, as its path; undefined once all are. */
export const missingMeasure = (job, cushion) => measurePaths(job, cushion).find((path) => !valueAt(job, path));

const FACES = { 'knife-edge': ['front', 'back'], boxed: ['front', 'back', 'sides'], bolster: ['front', 'sides'] };

/** The faces of a cushion's cover; one whose body is gathered over its ends has no other. */
export const facesOf = ({ kind, cover }) => (kind === 'bolster' && cover.ends === 'gathered' ? ['front'] : FACES[kind]);

/** The changes that make a cushion of that kind; its shape stays where the kind is made in it, else the kind's first. */
export function madeInto(job, cushion, kind, shape = shapeOf(job, cushion)) {
  const next = shapesOf(kind).includes(shape) ? shape : shapesOf(kind)[0];
  const { cover } = valueAt(job, cushion);
  const needsBack = FACES[kind].includes('back') && !cover.back;
  return [put(`${cushion}/kind`, kind), put(`${cushion}/insert/shape`, next),
    ...(next === 'polygon' && outlinePaths(job, cushion).length === 0 ? begunAs(cushion, OUTLINES.bay) : []),
    ...(needsBack ? [put(`${cushion}/cover/back`, { cloth: cover.front.cloth })] : [])];
}
