// A bolster lying on its side, one flat end in sight: body and diameter to one scale.
import { html } from '../html.js';
import { Below, RightOf } from './dimension.js';
import { Closing } from './closing.js';
import { FaceParts } from './face-parts.js';
import { PrintedFace } from './printed-face.js';
import { FLAT, between, inProportion, placed } from './proportions.js';
import { Frill, Rims } from './rims.js';

// How wide an end is seen, of its true diameter.
const SEEN = 0.34;

function Draw({ measures, labels, focus, edge, closing, made, printed }) {
  const { diameter, length, sure } = inProportion(measures, bolster.usual);
  const { scale, x, y } = placed(length + diameter * SEEN, diameter, FLAT);
  const [d, e, l] = [diameter * scale, (diameter * SEEN * scale) / 2, length * scale];
  const onto = (across, up) => [e + across, d - up];
  const unsure = sure ? '' : ' drawing-unsure';
  const far = `M${e} ${d}A${e} ${d / 2} 0 0 1 ${e} 0`;
  const body = `${far}H${e + l}A${e} ${d / 2} 0 0 1 ${e + l} ${d}Z`;
  const end = `M${e + l} 0A${e} ${d / 2} 0 0 1 ${e + l} ${d}A${e} ${d / 2} 0 0 1 ${e + l} 0Z`;
  const seam = d * 0.82;
  const lines = { bottom: { along: between([e * 0.6, seam], [e * 0.6 + l, seam]), nm: sure && length } };
  return html`<g transform="translate(${x} ${y})">
      <${Frill} edge=${edge} paths=${[far, end]} scale=${scale} />
      <path class="drawing-face${unsure}" d=${body} />
      ${sure && html`<${PrintedFace} printed=${printed} w=${l} l=${d} onto=${onto} outline=${body} />
        <${FaceParts} made=${made} w=${l} l=${d} scale=${scale} onto=${onto} outline=${body} />`}
      <path class="drawing-boxing${unsure}" d=${end} />
      <${Rims} edge=${edge} paths=${[far, end]} />
      <${Closing} closing=${closing} lines=${lines} scale=${scale} />
    </g>
    <${Below} x1=${x + e} x2=${x + e + l} y=${y + d} text=${labels.length} focused=${focus === 'length'} />
    <${RightOf} x=${x + l + 2 * e} y1=${y} y2=${y + d} text=${labels.diameter} focused=${focus === 'diameter'} />`;
}

export const bolster = { word: 'bolsterDrawing', usual: { diameter: 1, length: 2.4 }, Draw };
