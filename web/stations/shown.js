// Which fields make sense beside the rest of the job, and which of their choices.
import { entryOf, lastOf, parentOf, patternOf, valueAt } from '../store/pointer.js';
import { CLOSURES } from './closures.js';
import { facesOf, isOutlined, measuresMadeSmaller, measuresOfCushion, shapesOf } from './kinds.js';

const whenSet = (job, path) => valueAt(job, path) !== undefined;
const ofCushion = (name) => (job, path) => valueAt(job, `${entryOf(path)}/${name}`);
const beside = (name) => (job, path) => valueAt(job, `${parentOf(path)}/${name}`);
const when = (read, ...values) => (job, path) => values.includes(read(job, path));

const pattern = (job, path) => valueAt(job, path.replace(/\/(motif|group|offset\/\w+)$/, '/pattern'));
// Not said, a cover is sewn up by hand.
const closing = (job, path) => ofCushion('cover/closure/kind')(job, path) ?? 'hand-sewn';
const isPadTaped = (job, path) => when(ofCushion('insert/measured'), 'insert', 'foam', undefined)(job, path)
  && ofCushion('size_from')(job, path) !== 'finished';

const edgeIs = (...kinds) => when(beside('kind'), ...kinds);

// Fields that make sense only after another; a value that is there is always shown.
const conditions = [
  [/\/(motif|offset\/across)$/, when(pattern, 'centred', 'stripe-centred')],
  [/\/offset\/along$/, when(pattern, 'centred')],
  [/\/group$/, when(pattern, 'alike')],
  [/\/insert\/clearance$/, when(beside('measured'), 'opening')],
  [/\/insert\/again\/\w+$/, () => false],
  [/\/insert\/label\/\w+$/, (job, path) => whenSet(job, path.replace('/label/', '/')) && isPadTaped(job, path)],
  [/\/insert\/measured$/, (job, path) => ofCushion('size_from')(job, path) !== 'finished'],
  [/\/(rates|operations|prices)\/\w+\/per$|\/travel\/trips$|\/tax\/(included|rounding)$/, (job, path) => whenSet(job, parentOf(path))],
  [/\/price\/(per|currency)$/, (job, path) => whenSet(job, parentOf(path))],
  [/\/square\/(along|across|before_across)$/, (job, path) => whenSet(job, parentOf(path))],
  [/\/wash$/, (job, path) => whenSet(job, `${parentOf(path)}/shrinkage`)],
  [/\/piece\/motif_along$/, (job, path) => ['repeat', 'motifs'].some((name) => whenSet(job, `${entryOf(path)}/${name}`))],
  [/\/piece\/flaws\/[^/]+\/across$/, (job, path) => beside('corner')(job, path) === undefined],
  [/\/piece\/flaws\/[^/]+\/along$/, (job, path) => beside('corner')(job, path) === undefined && beside('length')(job, path) !== 'all'],
  [/\/piece\/flaws\/[^/]+\/cut$/, (job, path) => beside('corner')(job, path) !== undefined],
  [/\/cloths\/[^/]+\/start$/, (job, path) => ['repeat', 'motifs', 'flaws'].some((name) => whenSet(job, `${parentOf(path)}/${name}`))],
  [/\/instead_of$/, (job) => job.cloths.length > 1],
  [/\/side_seam$/, when(ofCushion('insert/shape'), 'rectangle')],
  [/\/corners\/kind$/, when(ofCushion('insert/shape'), 'rectangle', 'polygon')],
  [/\/edge\/rims$/, (job, path) => edgeIs('piped', 'frilled', 'trimmed')(job, path) && ofCushion('kind')(job, path) !== 'knife-edge'],
  [/\/edge\/join$/, edgeIs('piped', 'trimmed')],
  [/\/edge\/pack$/, edgeIs('trimmed')],
  [/\/edge\/(cord|cords|joined|thickness)$/, edgeIs('piped')],
  [/\/edge\/(cloth|strip|shortest)$/, edgeIs('piped', 'frilled')],
  [/\/edge\/flange$/, edgeIs('flanged')],
  [/\/edge\/(depth|gather|fullness|frill)$/, edgeIs('frilled')],
  [/\/edge\/hem$/, when(beside('frill'), 'hemmed')],
  [/\/edge\/hidden_joins$/, (job, path) => whenSet(job, `${parentOf(path)}/pack`)],
  [/\/corners\/(depth|run)$/, when(beside('kind'), 'tapered')],
  [/\/corners\/radius$/, when(beside('kind'), 'rounded')],
  [/\/closure\/opening$/, when(closing, 'hand-sewn')],
  [/\/closure\/(length|zip_seam)$/, when(closing, 'zip')],
  [/\/closure\/overlap$/, when(closing, 'envelope', 'buttons')],
  [/\/closure\/hem$/, when(closing, 'envelope', 'buttons', 'ties', 'open')],
  [/\/closure\/seam$/, when(closing, 'hand-sewn', 'zip')],
  [/\/cover\/(front|back)\/joined$/, when(ofCushion('insert/shape'), 'rectangle', 'bolster')],
  [/\/join_pattern$/, (job, path) => when(beside('pattern'), 'centred', 'stripe-centred')(job, path) && when(beside('joined'), 'both-ends', 'one-side')(job, path)],
  [/\/made\/kind$/, when(ofCushion('insert/shape'), 'rectangle', 'bolster')],
  [/\/made\/cloth$/, when(beside('kind'), 'border', 'band')],
  [/\/made\/width$/, when(beside('kind'), 'border', 'band', 'inset')],
  [/\/made\/corners$/, when(beside('kind'), 'border')],
  [/\/made\/lies$/, when(beside('kind'), 'band')],
  [/\/made\/from_edge$/, when(beside('kind'), 'band', 'inset')],
  [/\/layers\/wrap\/cloth$/, when(ofCushion('insert/fill'), 'foam')],
  [/\/layers\/interlining\/cloth$/, (job, path) => ofCushion('cover/ends')(job, path) !== 'gathered' || ofCushion('kind')(job, path) !== 'bolster'],
  [/\/layers\/\w+\/joined$/, (job, path) => whenSet(job, `${parentOf(path)}/cloth`) && when(ofCushion('insert/shape'), 'rectangle', 'bolster')(job, path)],
  [/\/boxing\/(kind|run)$/, when(ofCushion('kind'), 'boxed')],
  [/\/boxing\/returns$/, (job, path) => ofCushion('kind')(job, path) === 'boxed' && closing(job, path) === 'zip'],
  [/\/cover\/ends$/, when(ofCushion('kind'), 'bolster')],
  [/\/closure\/side$/, (job, path) => isOutlined(job, entryOf(path)) && placeClosed(valueAt(job, entryOf(path))) !== 'back'],
  [/\/repeat\/drop$/, (job, path) => whenSet(job, parentOf(path))],
];

// What this kind of cover does not have waits unseen, in case the kind is changed back: a measure, a face.
const MEASURE = /\/(insert|label|smaller_by)\/(width|length|diameter|thickness)$/;
const FACE = /\/cover\/(front|back|sides)\/[^/]/;
const OF_OUTLINE = /\/(insert\/(sides|diagonals|notches)|closure\/side|mirrored)\b/;
const measuresAt = (job, path) => (path.includes('/smaller_by/') ? measuresMadeSmaller : measuresOfCushion)(job, entryOf(path));
const isForeign = (job, path) => (MEASURE.test(path) && !measuresAt(job, path).includes(lastOf(path)))
  || (OF_OUTLINE.test(path) && !isOutlined(job, entryOf(path)))
  || (FACE.test(path) && !facesOf(valueAt(job, entryOf(path))).includes(path.match(FACE)[1]));

export function isShown(job, path) {
  if (isForeign(job, path)) return false;
  const condition = conditions.find(([fits]) => fits.test(path));
  return !condition || whenSet(job, path) || condition[1](job, path);
}

const closuresOf = ({ kind, insert }) => CLOSURES[`${kind} ${insert.shape}`] ?? {};

/** Where a cover that is closed in this way can be closed. */
export const closedAt = (cushion, way) => closuresOf(cushion)[way ?? 'hand-sewn'] ?? [];

const placeClosed = (cushion) => cushion.cover.closure?.at ?? closedAt(cushion, cushion.cover.closure?.kind)[0];

// Choices that a field has only beside others of the same cover; the one that is chosen is always shown.
const limits = {
  '/cushions/*/cover/front/made/kind': (cushion, made) => cushion.kind !== 'bolster' || !['border', 'inset'].includes(made),
  '/cushions/*/cover/front/pattern': ({ insert }, pattern) => pattern !== 'flow' || insert.shape === 'rectangle',
  '/cushions/*/cover/sides/pattern': ({ kind, insert }, pattern) => pattern !== 'match-front' || `${kind} ${insert.shape}` === 'boxed rectangle',
  '/cushions/*/insert/shape': (cushion, shape) => shapesOf(cushion.kind).includes(shape),
  '/cushions/*/cover/corners/kind': (cushion, corners) => corners !== 'tapered' || cushion.kind === 'knife-edge',
  '/cushions/*/cover/edge/kind': (cushion, edge) => edge !== 'flanged' || cushion.kind === 'knife-edge',
  '/cushions/*/cover/closure/kind': (cushion, way) => Object.hasOwn(closuresOf(cushion), way),
  '/cushions/*/cover/closure/at': (cushion, at) => closedAt(cushion, cushion.cover.closure?.kind).includes(at),
};

export function isOffered(job, path, value) {
  const limit = limits[patternOf(path)];
  return !limit || value === valueAt(job, path) || limit(valueAt(job, entryOf(path)), value);
}
