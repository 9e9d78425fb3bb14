// A knife-edge cushion as it lies: sides bow in, corners stand out, less so where they are tapered or rounded.
import { html } from '../html.js';
import { Below, RightOf } from './dimension.js';
import { Closing } from './closing.js';
import { FaceParts } from './face-parts.js';
import { PrintedFace } from './printed-face.js';
import { between, inProportion, placedWithFlange } from './proportions.js';
import { Frill, Rims } from './rims.js';

const BOW = 0.045;

/** Corners rounded by `r`; the sides between them straight. */
const rounded = (w, l, r) => `M${r} 0H${w - r}A${r} ${r} 0 0 1 ${w} ${r}V${l - r}A${r} ${r} 0 0 1 ${w - r} ${l}H${r}A${r} ${r} 0 0 1 0 ${l - r}V${r}A${r} ${r} 0 0 1 ${r} 0Z`;

function outlineOf(w, l, { radius, taper }) {
  if (radius) return rounded(w, l, Math.min(radius, w / 2, l / 2));
  const bow = Math.min(w, l) * BOW;
  if (!taper) {
    return `M0 0Q${w / 2} ${bow * 2} ${w} 0Q${w - bow * 2} ${l / 2} ${w} ${l}Q${w / 2} ${l - bow * 2} 0 ${l}Q${bow * 2} ${l / 2} 0 0Z`;
  }
  const { depth: d, runAcross: a, runAlong: b } = taper;
  return `M${d} ${d}L${a} 0H${w - a}L${w - d} ${d}L${w} ${b}V${l - b}L${w - d} ${l - d}L${w - a} ${l}H${a}L${d} ${l - d}L0 ${l - b}V${b}Z`;
}

function taperOf({ run: nm, depth }, w, l, scale) {
  if (!nm) return null;
  const run = nm * scale;
  return { depth: Math.max(depth * scale, 3), runAcross: Math.min(run, w * 0.45), runAlong: Math.min(run, l * 0.45) };
}

function closingLines(nm, w, l, { taper, radius }) {
  const low = l - (taper || radius ? 0 : Math.min(w, l) * BOW);
  return {
    bottom: { along: between([0, low], [w, low]), nm },
    back: { along: between([0, l / 2], [w, l / 2]), nm, hidden: true },
  };
}

function Draw({ measures, labels, focus, corners, edge, closing, made, printed }) {
  const { width, length, sure } = inProportion(measures, knifeEdge.usual);
  const { scale, beyond, x, y } = placedWithFlange(edge, width, length);
  const [w, l] = [width * scale, length * scale];
  const cut = corners && sure ? { taper: taperOf(corners, w, l, scale), radius: (corners.radius ?? 0) * scale } : {};
  const outline = outlineOf(w, l, beyond ? {} : cut);
  const onto = (across, up) => [across, l - up];
  const inset = Math.min(9, w * 0.12, l * 0.12);
  return html`<g transform="translate(${x} ${y})">
      ${beyond > 0 && html`<path class="drawing-flange" d=${rounded(w + 2 * beyond, l + 2 * beyond, cut.radius || 1)} transform="translate(${-beyond} ${-beyond})" />`}
      <${Frill} edge=${edge} paths=${[outline]} scale=${scale} />
      <path class="drawing-face${sure ? '' : ' drawing-unsure'}" d=${outline} />
      ${sure && html`<${PrintedFace} printed=${printed} w=${w} l=${l} onto=${onto} outline=${outline} />
        <${FaceParts} made=${made} w=${w} l=${l} scale=${scale} onto=${onto} outline=${outline} />`}
      <path class="drawing-stitch" d=${outline} transform="translate(${inset} ${inset}) scale(${(w - 2 * inset) / w} ${(l - 2 * inset) / l})" />
      <${Rims} edge=${edge} paths=${[outline]} />
      <${Closing} closing=${closing} lines=${closingLines(sure && width, w, l, cut)} scale=${scale} />
    </g>
    <${Below} x1=${x} x2=${x + w} y=${y + l + beyond} text=${labels.width} focused=${focus === 'width'} />
    <${RightOf} x=${x + w + beyond} y1=${y} y2=${y + l} text=${labels.length} focused=${focus === 'length'} />`;
}

export const knifeEdge = { word: 'cushionDrawing', usual: { width: 1, length: 1 }, Draw };
