// The rims of a drawn cover: a tube of cord along each that is piped, threads hanging from each that is trimmed, and
// behind the cover a band in folds round each that has a frill.
//
// Rims({edge, paths, room?})   `edge` {kind, rims?, nm?} as of the cover, null for a plain one; `paths` the outlines of the
//                             rims in sight, the front's first; `room` px between two rims: the tubes stay thinner than that
// Frill({edge, paths, scale})  to be drawn before the faces, which hide its inner half; `edge.nm` is how far it stands out
import { html } from '../html.js';

const THICK = 6;
const FRILL = { least: 5, usual: 9, most: 11 };

const Piping = ({ d, thick }) => html`<path class="drawing-cord" d=${d} stroke-width=${thick} />
  <path class="drawing-cord-light" d=${d} stroke-width=${thick * 0.45} />`;

const Trim = ({ d, thick }) => html`<path class="drawing-trim" d=${d} stroke-width=${thick} />`;

const DRAWN = { piped: Piping, trimmed: Trim };

const rimsOf = ({ rims }, paths) => (rims === 'both' ? paths : paths.slice(0, 1));

export function Frill({ edge, paths, scale }) {
  if (edge?.kind !== 'frilled') return null;
  const thick = 2 * Math.min(edge.nm ? Math.max(edge.nm * scale, FRILL.least) : FRILL.usual, FRILL.most);
  return html`<g class="drawing-frill">${rimsOf(edge, paths).map((d) => html`<path key=${d} class="drawing-frill-edge" d=${d} stroke-width=${thick + 2} />
    <path key="g${d}" class="drawing-frill-ground" d=${d} stroke-width=${thick - 1} /><path key="f${d}" class="drawing-frill-folds" d=${d} stroke-width=${thick} />`)}</g>`;
}

export function Rims({ edge, paths, room = Infinity }) {
  const Drawn = DRAWN[edge?.kind];
  if (!Drawn) return null;
  return html`<g class="drawing-rims">${rimsOf(edge, paths).map((d) => html`<${Drawn} key=${d} d=${d} thick=${Math.min(THICK, room * 0.6)} />`)}</g>`;
}
