// A round boxed cushion on its seat, seen from the front and above: its face is an ellipse, its boxing stands upright.
import { html } from '../html.js';
import { Below, LeftOf } from './dimension.js';
import { Closing } from './closing.js';
import { PrintedFace } from './printed-face.js';
import { SOLID, inProportion, placed } from './proportions.js';
import { Frill, Rims } from './rims.js';

// How high the round face is seen, of its true diameter.
const SEEN = 0.4;

/** Across the middle of the face, from rim to rim; `aside` px of true length towards the front. */
const acrossFace = (d, e) => (u, aside = 0) => {
  const half = Math.sqrt(Math.max((d / 2) ** 2 - aside ** 2, 0));
  return [d / 2 + half * (2 * u - 1), e + aside * SEEN];
};

function Draw({ measures, labels, focus, edge, closing, printed }) {
  const { diameter, thickness, sure } = inProportion(measures, boxedRound.usual);
  const { scale, x, y } = placed(diameter, thickness + diameter * SEEN, SOLID);
  const [d, e, t] = [diameter * scale, (diameter * SEEN * scale) / 2, thickness * scale];
  const unsure = sure ? '' : ' drawing-unsure';
  const near = (low) => `M0 ${e + low}A${d / 2} ${e} 0 0 0 ${d} ${e + low}`;
  const face = `${near(0)}A${d / 2} ${e} 0 0 0 0 ${e}Z`;
  const boxing = `${near(t)}V${e}A${d / 2} ${e} 0 0 1 0 ${e}Z`;
  const half = (down) => (u, aside = 0) => [(d / 2) * (1 - Math.cos(Math.PI * u)), e + down * e * Math.sin(Math.PI * u) + aside];
  const lines = {
    boxing: { along: (u) => half(-1)(u, t / 2), nm: sure && (diameter * Math.PI) / 2, hidden: true },
    bottom: { along: (u) => half(1)(u, t), nm: sure && (diameter * Math.PI) / 2 },
    back: { along: acrossFace(d, e), nm: sure && diameter, hidden: true },
  };
  return html`<g transform="translate(${x} ${y})">
      <path class="drawing-boxing${unsure}" d=${boxing} /><${Frill} edge=${edge} paths=${[face, near(t)]} scale=${scale} /><path class="drawing-face${unsure}" d=${face} />
      ${sure && html`<${PrintedFace} printed=${printed} w=${d} l=${d} onto=${(across, up) => [across, (d - up) * SEEN]} outline=${face} />`}
      <${Rims} edge=${edge} room=${t} paths=${[face, near(t)]} />
      <${Closing} closing=${closing} lines=${lines} scale=${scale} />
    </g>
    <${Below} x1=${x} x2=${x + d} y=${y + 2 * e + t} text=${labels.diameter} focused=${focus === 'diameter'} />
    <${LeftOf} x=${x} y1=${y + e} y2=${y + e + t} text=${labels.thickness} focused=${focus === 'thickness'} />`;
}

export const boxedRound = { word: 'boxedRoundDrawing', usual: { diameter: 1, thickness: 0.2 }, Draw };
