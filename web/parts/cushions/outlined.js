// A cushion of another straight-sided outline: lying flat, or as a seat with its boxing, its corners lettered.
import { html } from '../html.js';
import { Closing } from './closing.js';
import { SvgFractions } from './dimension.js';
import { PrintedFace } from './printed-face.js';
import { between, placedWithFlange } from './proportions.js';
import { Rims } from './rims.js';
import { bentCorners } from './outline-corners.js';
import { sketchOf } from './outline-sketch.js';

const ROOM = { x: 66, y: 20, width: 184, height: 116 };
// A seat is seen from above its front: how far a length that runs back goes to the right and up, of its true size.
const LYING = { right: 0, up: 1 };
const SEEN = { right: 0.28, up: 0.62 };
const THIN = 0.1; // of its width, where nothing tells how thick it is beside that
const LETTER = 11;
const MITRED = 1.8; // a corner of a flange stands out further than its sides
const MOST_LABELLED = 4;

export const cornerName = (corner) => String.fromCharCode(65 + corner);

/** The outline that stands in a picture where none is known yet: a bay. */
const BARE = { count: 4, taped: [], notches: [] };

const path = (points) => `M${points.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}Z`;
const extent = (values) => Math.max(...values) - Math.min(...values);

/** The corners on the screen and the points drawn at each of them (`bends`), `thick` px of boxing below them, or
 *  `beyond` px of flange around. */
function seen(corners, bends, thickness, edge, { right, up }) {
  const flatten = ([x, y]) => [x + y * right, -y * up];
  const flat = corners.map(flatten);
  const [xs, ys] = [0, 1].map((axis) => flat.map((point) => point[axis]));
  const { scale, beyond, x, y } = placedWithFlange(edge, extent(xs), extent(ys) + thickness, ROOM);
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const onScreen = ([px, py]) => [x + (px - left) * scale, y + (py - top) * scale];
  const onto = (point) => onScreen(flatten(point));
  return { scale, beyond, onto, thick: thickness * scale, points: flat.map(onScreen), bends: bends.map((bend) => bend.map(onto)) };
}

const sidesOf = (points) => points.map((point, corner) => [point, points[(corner + 1) % points.length]]);

const lowered = ([x, y], thick) => [x, y + thick];

/** The boxing wall by wall, what is further back first, so that the nearer covers it; round a corner it has no edges. */
function Boxing({ bends, thick, unsure }) {
  const ends = bends.flatMap((bend) => bend.map((point) => ({ point, isEdge: bend.length < 4 })));
  const [least, most] = [Math.min, Math.max].map((pick) => pick(...ends.map(({ point }) => point[0])));
  const hasEdge = ({ point, isEdge }) => isEdge || point[0] === least || point[0] === most;
  const walls = sidesOf(ends).toSorted(([one, other], [third, fourth]) => one.point[1] + other.point[1] - third.point[1] - fourth.point[1]);
  return walls.map(([one, other]) => {
    const low = [lowered(one.point, thick), lowered(other.point, thick)];
    const edges = [`M${low.map((point) => point.join(' ')).join('L')}`,
      ...[one, other].filter(hasEdge).map(({ point: [x, y] }) => `M${x} ${y}V${y + thick}`)];
    return html`<g key=${one.point.join(' ')}><path class="drawing-wall" d=${path([one.point, other.point, low[1], low[0]])} />
      <path class="drawing-wall-edge${unsure}" d=${edges.join('')} /></g>`;
  });
}

/** A point so far outside the outline at a corner, or at the middle of a side. */
function outside([x, y], before, after, away) {
  const long = Math.hypot(after[0] - before[0], after[1] - before[1]) || 1;
  return [x - ((after[1] - before[1]) / long) * away, y + ((after[0] - before[0]) / long) * away];
}

const Letters = ({ points, thick, beyond }) => points.map((point, corner) => {
  const [before, after] = [points.at(corner - 1), points[(corner + 1) % points.length]];
  const [x, y] = outside(point, before, after, LETTER + beyond * MITRED);
  return html`<text key=${corner} class="drawing-letter" x=${x} y=${y + 5 + (y > point[1] + 3 ? thick : 0)} text-anchor="middle">${cornerName(corner)}</text>`;
});

const Lengths = ({ points, thick, beyond, texts }) => sidesOf(points).map(([one, other], side) => {
  const middle = [(one[0] + other[0]) / 2, (one[1] + other[1]) / 2];
  const [x, y] = outside(middle, one, other, 10 + beyond);
  const anchor = Math.abs(x - middle[0]) < 5 ? 'middle' : x < middle[0] ? 'end' : 'start';
  const low = anchor === 'middle' && y > middle[1] ? thick + 10 : 3;
  return texts[side] && html`<text key=${side} class="drawing-length" x=${x} y=${y + low} text-anchor=${anchor}><${SvgFractions} text=${texts[side]} /></text>`;
});

/** Across the face at this share of its height, from side to side; `aside` px of true length towards the front. */
function acrossFace(points, share, { up }) {
  const ys = points.map(([, y]) => y);
  const [high, low] = [Math.min(...ys), Math.max(...ys)];
  return (u, aside = 0) => {
    const level = Math.min(Math.max(low - (low - high) * share + aside * up, high), low);
    const xs = sidesOf(points).filter(([[, a], [, b]]) => Math.min(a, b) <= level && level <= Math.max(a, b) && a !== b)
      .map(([[ax, ay], [bx, by]]) => ax + ((bx - ax) * (level - ay)) / (by - ay));
    const [left, right] = [Math.min(...xs), Math.max(...xs)];
    return [left + (right - left) * u, level];
  };
}

const IN_THE_BACK = ['envelope', 'buttons'];
const MIDDLE = 0.5;

const isAcross = ({ kind, at }) => at === 'back' || (!at && IN_THE_BACK.includes(kind));

function closingLines({ points, bends, thick }, { side, at, kind, up = MIDDLE }, nm, view) {
  if (isAcross({ at, kind })) return { back: { along: acrossFace(bends.flat(), up, view), nm, hidden: true } };
  const [from, to] = sidesOf(points)[side];
  const hidden = thick > 0 && from[0] > to[0];
  const down = (share) => between(lowered(from, thick * share), lowered(to, thick * share));
  return { bottom: { along: down(1), nm, hidden }, boxing: { along: down(0.5), nm, hidden } };
}

/** What stands out beyond the stitching as far as the face hides the rest of it. */
const Flange = ({ d, beyond }) => html`<path class="drawing-flange-edge" d=${d} stroke-width=${2 * beyond + 2} />
  <path class="drawing-flange-ground" d=${d} stroke-width=${2 * beyond - 2} />`;

/** The rim along the front that is in sight below the boxing: from the middle of its first corner to that of its second. */
const lowRim = ([first, second], thick) => [...first.slice(first.length >> 1), ...second.slice(0, (second.length >> 1) + 1)]
  .map((point) => lowered(point, thick).join(' ')).join('L');

function drawnAs(view) {
  return function Draw({ measures, labels, focus, corners, edge, closing, printed, outline = BARE }) {
    const sharp = sketchOf(outline.count, outline.taped, outline.notches);
    const least = [0, 1].map((axis) => Math.min(...sharp.map((point) => point[axis])));
    const wide = extent(sharp.map(([x]) => x));
    const thickness = (outline.taped.length > 0 && measures.thickness) || wide * THIN;
    const bent = bentCorners(sharp, outline.sure ? corners : null);
    const { points, bends, thick, scale, beyond, onto } = seen(sharp, bent, view === SEEN ? thickness : 0, view === LYING ? edge : null, view);
    const unsure = outline.sure ? '' : ' drawing-unsure';
    const face = path(bends.flat());
    return html`<g>
        ${thick > 0 && html`<${Boxing} bends=${bends} thick=${thick} unsure=${unsure} />`}
        ${beyond > 0 && html`<${Flange} d=${face} beyond=${beyond} />`}
        <path class="drawing-face${unsure}" d=${face} />
        ${outline.sure && html`<${PrintedFace} printed=${printed} w=${wide} l=${extent(sharp.map(([, y]) => y))}
          onto=${(across, up) => onto([least[0] + across, least[1] + up])} outline=${face} />`}
        <${Rims} edge=${edge} room=${thick || undefined} paths=${[face, `M${lowRim(bends, thick)}`]} />
        ${closing && (closing.side !== undefined || isAcross(closing)) && html`<${Closing} closing=${closing} scale=${scale}
          lines=${closingLines({ points, bends, thick }, closing, outline.sure && closing.edge, view)} />`}
        ${Array.isArray(focus) && html`<g class="dimension dimension-focused"><path d="M${points[focus[0]].join(' ')}L${points[focus[1]].join(' ')}" /></g>`}
        ${outline !== BARE && html`<${Letters} points=${points} thick=${thick} beyond=${beyond} />`}
        ${labels.sides && outline.count <= MOST_LABELLED && html`<${Lengths} points=${points} thick=${thick} beyond=${beyond} texts=${labels.sides} />`}
      </g>`;
  };
}

export const outlinedFlat = { word: 'outlineDrawing', usual: {}, Draw: drawnAs(LYING) };
export const outlinedSeat = { word: 'outlineDrawing', usual: { thickness: 0.1 }, Draw: drawnAs(SEEN) };
