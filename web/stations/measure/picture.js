// The cushion as it is drawn on the stations: its measures, its edge and its closing, to proportion.
import { html } from '../../parts/html.js';
import { CushionDrawing } from '../../parts/cushion-drawing.js';
import { placeOf } from '../../parts/readings.js';
import { lastOf, valueAt } from '../../store/pointer.js';
import { nearAnswer, workedCushions } from '../../store/answers.js';
import { job } from '../../store/session.js';
import { readings } from '../../store/readings.js';
import { fields } from '../../words/controls.js';
import { isOutlined, measuresOfCushion } from '../kinds.js';
import { outlineAt } from '../outlines.js';

const USUAL_RADIUS = fields['/cushions/*/cover/corners/radius'].usual;
const USUAL_RUN = fields['/cushions/*/cover/corners/run'].usual;

const drawn = (text) => (readings.value && text ? placeOf(readings.value, text) : null);

// The taper as the core laid it out: the second and third points of a tapered outline are (depth, depth) and (run, 0).
function taperOf(id) {
  const outline = nearAnswer.value?.pieces.find((piece) => piece.cushion === id)?.outline;
  return outline?.length > 4 ? { depth: outline[1][0], run: outline[2][0] } : null;
}

// A taper as it is said, of a side a share or a length, and as deep as the core takes it.
function runOf(text = USUAL_RUN) {
  const [part, whole = 1] = text.split('/').map(Number);
  return Number.isNaN(part) || !whole ? { nm: drawn(text) } : { share: part / whole };
}

function saidTaper(id, { depth, run }) {
  const worked = workedCushions.value.find((cushion) => cushion.id === id)?.corners;
  const [deep, far] = [drawn(depth) ?? worked?.depth?.nm, runOf(run)];
  return deep && (far.share || far.nm) ? { depth: deep, run: far } : null;
}

function cornersOf(id, { corners }, hasOutline) {
  if (corners?.kind === 'rounded') return { radius: drawn(corners.radius) ?? drawn(USUAL_RADIUS[job.value.units]) };
  if (corners?.kind !== 'tapered') return null;
  return hasOutline ? saidTaper(id, corners) : taperOf(id);
}

// The closing as the core worked it out for this kind of closing; before that, what is said of it.
function closingOf(id, { closure }) {
  if (!closure) return null;
  const { closing: worked, finished } = workedCushions.value.find((cushion) => cushion.id === id) ?? {};
  if (worked?.kind !== closure.kind) return { kind: closure.kind, at: closure.at, side: closure.side };
  return { kind: worked.kind, at: worked.at, nm: (worked.overlap ?? worked.length).nm, side: worked.side ?? undefined,
    edge: worked.edge.nm, up: worked.up ? worked.up.nm / finished.length.nm : undefined };
}

// What is taped of an outline so far; it is drawn from that, whether or not it closes.
function outlineOf(cushion) {
  const { sides, diagonals, notches } = outlineAt(job.value, cushion);
  const all = [...sides.map((text, side) => [side, (side + 1) % sides.length, drawn(text)]),
    ...diagonals.map(([one, other, text]) => [one, other, drawn(text)])];
  return { count: sides.length, taped: all.filter(([, , nm]) => nm), notches, sure: all.every(([, , nm]) => nm) };
}

// The edge as the core made it; before that, what is said of it.
function edgeOf(id, { edge }) {
  if (!edge) return null;
  const worked = workedCushions.value.find((cushion) => cushion.id === id)?.edge;
  return worked?.kind === edge.kind ? { kind: edge.kind, rims: worked.rims, nm: (worked.flange ?? worked.depth)?.nm } : edge;
}

const PART = fields['/cushions/*/cover/front/made/width'].usual;

// The parts of the front, as it is said; what is left out is the usual. A band lies in the middle where nothing else is said.
function partsOf({ front }) {
  const { kind, width, from_edge: far, ...made } = front?.made ?? {};
  const usual = drawn(PART[job.value.units]);
  return kind && { ...made, kind, width: drawn(width) ?? usual, fromEdge: drawn(far) ?? (kind === 'inset' ? usual : undefined) };
}

export function CushionPicture({ cushion, focus, isLabelled, printed }) {
  const { kind, insert, cover } = valueAt(job.value, cushion);
  const texts = Object.fromEntries(measuresOfCushion(job.value, cushion).map((name) => [name, insert[name]]));
  const outline = isOutlined(job.value, cushion) ? outlineOf(cushion) : undefined;
  const measures = Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, drawn(text)]));
  return html`<${CushionDrawing} kind=${kind} shape=${insert.shape} measures=${measures} outline=${outline}
    texts=${{ ...texts, sides: insert.sides?.length }} focus=${focus} labels=${isLabelled ? { ...texts, sides: insert.sides } : undefined}
    edge=${edgeOf(lastOf(cushion), cover)} closing=${closingOf(lastOf(cushion), cover)} made=${partsOf(cover)} printed=${printed}
    corners=${cornersOf(lastOf(cushion), cover, Boolean(outline))} />`;
}
