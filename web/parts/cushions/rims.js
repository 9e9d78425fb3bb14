// The rims of a drawn cover where it is piped: a tube of cord along each.
//
// Rims({edge, paths, room?})   `edge` as of the cover ('piped' draws them), `paths` the outlines of the rims in sight,
//                             `room` px between two rims: the tubes stay thinner than that
import { html } from '../html.js';

const THICK = 6;

export function Rims({ edge, paths, room = Infinity }) {
  if (edge !== 'piped') return null;
  const thick = Math.min(THICK, room * 0.6);
  return html`<g class="drawing-piping">${paths.map((d) => html`<path key=${d} class="drawing-cord" d=${d} stroke-width=${thick} /><path class="drawing-cord-light" d=${d} stroke-width=${thick * 0.45} />`)}</g>`;
}
