// The rims of a drawn cover: a tube of cord along each that is piped, threads hanging from each that is trimmed.
//
// Rims({edge, paths, room?})   `edge` {kind, rims?} as of the cover, null for a plain one; `paths` the outlines of the rims
//                             in sight, the front's first; `room` px between two rims: the tubes stay thinner than that
import { html } from '../html.js';

const THICK = 6;

const Piping = ({ d, thick }) => html`<path class="drawing-cord" d=${d} stroke-width=${thick} />
  <path class="drawing-cord-light" d=${d} stroke-width=${thick * 0.45} />`;

const Trim = ({ d, thick }) => html`<path class="drawing-trim" d=${d} stroke-width=${thick} />`;

const DRAWN = { piped: Piping, trimmed: Trim };

export function Rims({ edge, paths, room = Infinity }) {
  const Drawn = DRAWN[edge?.kind];
  if (!Drawn) return null;
  const rims = edge.rims === 'both' ? paths : paths.slice(0, 1);
  return html`<g class="drawing-rims">${rims.map((d) => html`<${Drawn} key=${d} d=${d} thick=${Math.min(THICK, room * 0.6)} />`)}</g>`;
}
