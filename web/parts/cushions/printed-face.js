// What of a printed cloth lands on a drawn face: the part of the repeat that its panel was laid on, turned as it lies.
//
// PrintedFace({printed, w, l, onto, outline})   `printed` {repeat, panel}, null for a plain face: the repeat as of tiles.js,
//                                              in mm of the cloth, and the panel as it is laid, with the `face` seen of it, in nm;
//                                              the others as of face-parts.js
import { html, useState } from '../html.js';
import { Tiles } from '../picture/tiles.js';

const NM = 1e6; // in a mm
let drawnSoFar = 0;

// A point of the cloth, counted from the lower left corner of a panel that is `w` by `l`, counted on the upright panel.
const UPRIGHT = {
  0: (x, y) => [x, y],
  90: (x, y, w) => [y, w - x],
  180: (x, y, w, l) => [w - x, l - y],
  270: (x, y, w, l) => [l - y, x],
};

/** The matrix that takes the drawn cloth, in mm with y downwards, to the face on the screen. */
function matrixOf({ x, y, width, length, turn, face }, w, l, onto) {
  const place = (mm, down) => {
    const [across, up] = UPRIGHT[turn](mm * NM - x, -down * NM - y, width, length);
    return onto(((across - face.x) / face.width) * w, ((up - face.y) / face.length) * l);
  };
  const [[ex, ey], [ax, ay], [bx, by]] = [place(0, 0), place(1, 0), place(0, 1)];
  return `matrix(${[ax - ex, ay - ey, bx - ex, by - ey, ex, ey].join(' ')})`;
}

export function PrintedFace({ printed, w, l, onto, outline }) {
  const [id] = useState(() => `printed-face-${drawnSoFar += 1}`);
  if (!printed) return null;
  const { repeat, panel } = printed;
  const box = { x: panel.x / NM, y: -(panel.y + panel.length) / NM, width: panel.width / NM, height: panel.length / NM };
  return html`<clipPath id=${id}><path d=${outline} /></clipPath>
    <g class="printed-face" clip-path=${`url(#${id})`}><g transform=${matrixOf(panel, w, l, onto)}><${Tiles} repeat=${repeat} box=${box} /></g></g>
    <path class="printed-face-edge" d=${outline} />`;
}
