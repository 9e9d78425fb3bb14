// A boxed cushion on its seat: the front boxing in true size, the face running back from it, everything to one scale.
import { html } from '../html.js';
import { Below, Dimension, LeftOf } from './dimension.js';
import { Closing } from './closing.js';
import { FaceParts } from './face-parts.js';
import { PrintedFace } from './printed-face.js';
import { SOLID, between, inProportion, placed } from './proportions.js';
import { Frill, Rims } from './rims.js';

// How far a length that runs back goes to the right and up, of its true size.
const BACK = 0.4;

/** Across the middle of the face, from side to side; `aside` px of true length towards the front. */
const acrossFace = (w, b) => (u, aside = 0) => [b / 2 + w * u - aside * BACK, b / 2 + aside * BACK];

function Draw({ measures, labels, focus, edge, closing, made, printed }) {
  const { width, length, thickness, sure } = inProportion(measures, boxed.usual);
  const { scale, x, y } = placed(width + length * BACK, thickness + length * BACK, SOLID);
  const [w, b, t] = [width * scale, length * BACK * scale, thickness * scale];
  const onto = (across, up) => [across + up * BACK, b - up * BACK];
  const unsure = sure ? '' : ' drawing-unsure';
  const face = `M0 ${b}L${b} 0H${w + b}L${w} ${b}Z`;
  const front = `M0 ${b}H${w}V${b + t}H0Z`;
  const side = `M${w} ${b}L${w + b} 0V${t}L${w} ${b + t}Z`;
  const lines = {
    boxing: { along: between([b, t / 2], [w + b, t / 2]), nm: sure && width, hidden: true },
    bottom: { along: between([0, b + t], [w, b + t]), nm: sure && width },
    back: { along: acrossFace(w, b), nm: sure && width, hidden: true },
  };
  return html`<g transform="translate(${x} ${y})">
      <path class="drawing-boxing${unsure}" d=${front} /><path class="drawing-boxing${unsure}" d=${side} />
      <${Frill} edge=${edge} paths=${[face, `M0 ${b + t}H${w}L${w + b} ${t}`]} scale=${scale} />
      <path class="drawing-face${unsure}" d=${face} />
      ${sure && html`<${PrintedFace} printed=${printed} w=${w} l=${length * scale} onto=${onto} outline=${face} />
        <${FaceParts} made=${made} w=${w} l=${length * scale} scale=${scale} onto=${onto} outline=${face} />`}
      <${Rims} edge=${edge} room=${t} paths=${[face, `M0 ${b + t}H${w}L${w + b} ${t}`]} />
      <${Closing} closing=${closing} lines=${lines} scale=${scale} />
    </g>
    <${Below} x1=${x} x2=${x + w} y=${y + b + t} text=${labels.width} focused=${focus === 'width'} />
    <${Dimension} from=${[x + w + 12, y + b + t + 10]} to=${[x + w + b + 12, y + t + 10]} text=${labels.length}
      focused=${focus === 'length'} textAt=${[x + w + b / 2 + 24, y + b / 2 + t + 22]} anchor="start" />
    <${LeftOf} x=${x} y1=${y + b} y2=${y + b + t} text=${labels.thickness} focused=${focus === 'thickness'} />`;
}

export const boxed = { word: 'boxedDrawing', usual: { width: 1, length: 1, thickness: 0.2 }, Draw };
