// The cushion in true proportion: a soft knife-edge outline with its stitch line, and the two measures beside it.
//
// CushionDrawing({shape?, width, length, labels?, focus?, corners?, opening?})
//   width, length   nm or null (not measured yet: drawn square and dashed)
//   labels          {width, length} texts beside the dimension lines
//   focus           'width' | 'length' | null: the one drawn in the accent colour
//   corners         {depth, run} nm for tapered corners, or null
//   opening         {nm, text} left open in the bottom side, or null
import { html } from './html.js';
import { Fractions } from './figure.js';
import { say } from './words.js';

const BOX = { width: 188, height: 124 };
const PLACE = { x: 62, y: 12 };
const VIEW = { width: 340, bare: 160, labelled: 186 };
const BOW = 0.045;

/** The drawn size: the longer side fills the box, extreme proportions are kept. */
function drawnSize(width, length) {
  if (!width || !length) return { w: BOX.height, l: BOX.height, scale: 0 };
  const scale = Math.min(BOX.width / width, BOX.height / length);
  return { w: width * scale, l: length * scale, scale };
}

/** The outline of a knife-edge cushion: sides bow in, corners stand out (less so where they are tapered). */
function knifeEdge(w, l, taper) {
  const bow = Math.min(w, l) * BOW;
  if (!taper) {
    return `M0 0Q${w / 2} ${bow * 2} ${w} 0Q${w - bow * 2} ${l / 2} ${w} ${l}Q${w / 2} ${l - bow * 2} 0 ${l}Q${bow * 2} ${l / 2} 0 0Z`;
  }
  const { depth: d, runAcross: a, runAlong: b } = taper;
  return `M${d} ${d}L${a} 0H${w - a}L${w - d} ${d}L${w} ${b}V${l - b}L${w - d} ${l - d}L${w - a} ${l}H${a}L${d} ${l - d}L0 ${l - b}V${b}Z`;
}

function taperOf(corners, { w, l, scale }) {
  if (!corners || !scale) return null;
  const run = corners.run * scale;
  return { depth: Math.max(corners.depth * scale, 3), runAcross: Math.min(run, w * 0.45), runAlong: Math.min(run, l * 0.45) };
}

function Dimension({ from, to, across, text, focused, textAt, anchor }) {
  const bar = across ? [0, 5] : [5, 0];
  const end = ([x, y]) => `M${x - bar[0]} ${y - bar[1]}L${x + bar[0]} ${y + bar[1]}`;
  return html`<g class="dimension${focused ? ' dimension-focused' : ''}">
    <path d="${end(from)}M${from[0]} ${from[1]}L${to[0]} ${to[1]}${end(to)}" />
    ${text && html`<text x=${textAt[0]} y=${textAt[1]} text-anchor=${anchor}><${SvgFractions} text=${text} /></text>`}
  </g>`;
}

/** Fractions inside an SVG text. */
export function SvgFractions({ text }) {
  return text.split(/(\d+\/\d+)/).map((piece, place) => (place % 2 ? html`<tspan class="fraction">${piece}</tspan>` : piece));
}

export function CushionDrawing({ shape = 'rectangle', width, length, labels = {}, focus = null, corners = null, opening = null }) {
  const size = drawnSize(width, length);
  const { w, l, scale } = size;
  const x = PLACE.x + (BOX.width - w) / 2;
  const y = PLACE.y + (BOX.height - l) / 2;
  const inset = Math.min(9, w * 0.12, l * 0.12);
  const outline = knifeEdge(w, l, taperOf(corners, size));
  const below = y + l + 16;
  const beside = x + w + 18;
  const gap = opening && scale ? Math.min(opening.nm * scale, w - 8) : 0;
  const name = scale ? say('cushionDrawing', { width: labels.width ?? '', length: labels.length ?? '' }) : say('cushionUnmeasured');
  return html`<svg class="drawing cushion-drawing" viewBox="0 0 ${VIEW.width} ${labels.width ? VIEW.labelled : VIEW.bare}" role="img" aria-label=${name} data-shape=${shape}>
    <g transform="translate(${x} ${y})">
      <path class="drawing-face${scale ? '' : ' drawing-unsure'}" d=${outline} />
      <path class="drawing-stitch" d=${outline} transform="translate(${inset} ${inset}) scale(${(w - 2 * inset) / w} ${(l - 2 * inset) / l})" />
      ${gap > 0 && html`<path class="drawing-opening" d="M${(w - gap) / 2} ${l - (corners ? 0 : Math.min(w, l) * BOW)}h${gap}" />`}
    </g>
    <${Dimension} across from=${[x, below]} to=${[x + w, below]} text=${labels.width} focused=${focus === 'width'}
      textAt=${[x + w / 2, below + 24]} anchor="middle" />
    <${Dimension} from=${[beside, y]} to=${[beside, y + l]} text=${labels.length} focused=${focus === 'length'}
      textAt=${[beside + 11, y + l / 2 + 6]} anchor="start" />
  </svg>
  ${opening && html`<p class="drawing-note"><${Fractions} text=${say('opening', { length: opening.text })} /></p>`}`;
}
