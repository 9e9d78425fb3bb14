// A round knife-edge cushion as it lies: a circle with its seam stitched.
import { html } from '../html.js';
import { Below } from './dimension.js';
import { Closing } from './closing.js';
import { PrintedFace } from './printed-face.js';
import { inProportion, placedWithFlange } from './proportions.js';
import { Frill, Rims } from './rims.js';

/** The lower half of the rim, from left to right. */
const lowerHalf = (r) => (u, aside = 0) =>
  [r - (r + aside) * Math.cos(Math.PI * u), r + (r + aside) * Math.sin(Math.PI * u)];

/** Across the middle from rim to rim, or `aside` px below the middle. */
const chord = (r) => (u, aside = 0) => {
  const half = Math.sqrt(Math.max(r ** 2 - aside ** 2, 0));
  return [r + half * (2 * u - 1), r + aside];
};

const circle = (r) => `M0 ${r}A${r} ${r} 0 0 1 ${2 * r} ${r}A${r} ${r} 0 0 1 0 ${r}Z`;

function Draw({ measures, labels, focus, edge, closing, printed }) {
  const { diameter, sure } = inProportion(measures, knifeEdgeRound.usual);
  const { scale, beyond, x, y } = placedWithFlange(edge, diameter, diameter);
  const d = diameter * scale;
  const r = d / 2;
  const lines = {
    bottom: { along: lowerHalf(r), nm: sure && (diameter * Math.PI) / 2 },
    back: { along: chord(r), nm: sure && diameter, hidden: true },
  };
  return html`<g transform="translate(${x} ${y})">
      ${beyond > 0 && html`<circle class="drawing-flange" cx=${r} cy=${r} r=${r + beyond} />`}
      <${Frill} edge=${edge} paths=${[circle(r)]} scale=${scale} />
      <path class="drawing-face${sure ? '' : ' drawing-unsure'}" d=${circle(r)} />
      ${sure && html`<${PrintedFace} printed=${printed} w=${d} l=${d} onto=${(across, up) => [across, d - up]} outline=${circle(r)} />`}
      <circle class="drawing-stitch" cx=${r} cy=${r} r=${r - 9} />
      <${Rims} edge=${edge} paths=${[circle(r)]} />
      <${Closing} closing=${closing} lines=${lines} scale=${scale} />
    </g>
    <${Below} x1=${x} x2=${x + d} y=${y + d + beyond} text=${labels.diameter} focused=${focus === 'diameter'} />`;
}

export const knifeEdgeRound = { word: 'roundDrawing', usual: { diameter: 1 }, Draw };
