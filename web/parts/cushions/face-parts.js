// The parts of a drawn face: the strips of a border with their mitres, a band from edge to edge, or trim set in.
//
// FaceParts({made, w, l, scale, onto, outline})   `made` {kind, corners?, lies?, width, fromEdge} in nm, null for a plain
//                                                face; `w` and `l` px of the face, `onto` from px across and up the face to
//                                                a point, `outline` the path of the face: nothing is drawn beyond it
import { html, useState } from '../html.js';

let drawnSoFar = 0;

const corners = (left, low, right, high) => [[left, low], [right, low], [right, high], [left, high]];

/** The rings or strips that a face has, and the lines of its mitres: each a list of points across and up the face. */
const DRAWN = {
  border({ width, corners: meet }, w, l) {
    const inner = corners(width, width, w - width, l - width);
    const outer = corners(0, 0, w, l);
    const butts = [[[0, width], [w, width]], [[0, l - width], [w, l - width]]];
    return { rings: [[outer, inner]], seams: meet === 'butted' ? butts : outer.map((corner, at) => [corner, inner[at]]) };
  },
  band({ width, lies, fromEdge }, w, l) {
    const side = lies === 'upright' ? w : l;
    const start = fromEdge ?? (side - width) / 2;
    const strip = lies === 'upright' ? corners(start, 0, start + width, l) : corners(0, start, w, start + width);
    return { rings: [[strip]], seams: [] };
  },
  inset({ width, fromEdge: far }, w, l) {
    return { rings: [[corners(far, far, w - far, l - far), corners(far + width, far + width, w - far - width, l - far - width)]], seams: [] };
  },
};

const inPx = ({ width, fromEdge, ...made }, scale) => ({ ...made, width: width * scale, fromEdge: fromEdge && fromEdge * scale });

export function FaceParts({ made, w, l, scale, onto, outline }) {
  const [id] = useState(() => `face-parts-${drawnSoFar += 1}`);
  if (!DRAWN[made?.kind]) return null;
  const path = (points) => `M${points.map(([across, up]) => onto(across, up).join(' ')).join('L')}`;
  const { rings, seams } = DRAWN[made.kind](inPx(made, scale), w, l);
  return html`<clipPath id=${id}><path d=${outline} /></clipPath><g class="drawing-parts" clip-path=${`url(#${id})`}>
    ${rings.map((ring) => html`<path class="drawing-part" fill-rule="evenodd" d=${ring.map((points) => `${path(points)}Z`).join('')} />`)}
    ${seams.map((seam) => html`<path class="drawing-part-seam" d=${path(seam)} />`)}</g>`;
}
