// How a drawn cover is closed: a seam left open, a zip's teeth with its slider, the flap of an envelope, ties or buttons.
//
// Closing({closing, lines, scale})
//   closing   {kind, at?, nm?}: a kind of DRAWN; `nm` is how much of its edge it takes, left out: most of it
//   lines     by place ('bottom', 'back', …): {along(u, aside) => [x, y], nm, hidden?}; the first is taken where `at` is
//             not among them. u runs from 0 to 1 along the edge, whose true length is `nm` once it is known; a hidden
//             one lies behind.
//   scale     px for a nm
import { html } from '../html.js';

const STEPS = 24;
const MOST = 0.8;
const FLAP = 0.09; // of its line, to either side, where the overlap is not known

const path = (points) => `M${points.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}`;

/** The part of an edge that a closing takes, from its middle out: [from, to] as shares of the edge. */
function partOf(closing, { nm }) {
  const share = closing.nm && nm ? Math.min(closing.nm / nm, 1) : MOST;
  return [(1 - share) / 2, (1 + share) / 2];
}

function run(line, [from, to], aside = 0) {
  const points = Array.from({ length: STEPS + 1 }, (_, step) => line.along(from + ((to - from) * step) / STEPS, aside));
  return path(points);
}

const Opening = ({ line, part }) => html`<path class="drawing-opening" d=${run(line, part)} />`;

function Zip({ line, part }) {
  const [x, y] = line.along(part[0]);
  const [x2, y2] = line.along(part[0] + 0.02);
  const turn = (Math.atan2(y2 - y, x2 - x) * 180) / Math.PI;
  return html`<path class="drawing-zip-tape" d=${run(line, part)} /><path class="drawing-zip-teeth" d=${run(line, part)} />
    <path class="drawing-zip-slider" d="M-2 -3.5H5L7 0L5 3.5H-2Z" transform="translate(${x} ${y}) rotate(${turn})" />`;
}

function Envelope({ line, closing, scale }) {
  const [[x1, y1], [x2, y2]] = [line.along(0), line.along(1)];
  const apart = closing.nm && line.nm ? (closing.nm * scale) / 2 : Math.hypot(x2 - x1, y2 - y1) * FLAP;
  return html`<path class="drawing-flap" d="${run(line, [0, 1], -apart)}${run(line, [0, 1], apart)}" />`;
}

/** So many places along a closing, none of them at its ends. */
const spread = (part, many) => Array.from({ length: many }, (_, at) => part[0] + ((part[1] - part[0]) * (at + 0.5)) / many);

const Ties = ({ line }) => spread([0, 1], 3).map((u) => {
  const [x, y] = line.along(u);
  return html`<path key=${u} class="drawing-tie" d="M${x} ${y}c-7 -6 -11 0 -5 1.5L${x} ${y}l-6 9M${x} ${y}c7 -6 11 0 5 1.5L${x} ${y}l6 9" />`;
});

const Buttons = ({ line }) => spread([0, 1], 3).map((u) => {
  const [x, y] = line.along(u, -7);
  return html`<g key=${u}><circle class="drawing-button" cx=${x} cy=${y} r="4.2" /><path class="drawing-button" d="M${x - 1.2} ${y}h.01M${x + 1.2} ${y}h.01" /></g>`;
});

const Open = ({ line }) => html`<${Opening} line=${line} part=${[0.02, 0.98]} />`;

const DRAWN = { 'hand-sewn': Opening, zip: Zip, envelope: Envelope, ties: Ties, buttons: Buttons, open: Open };

export function Closing({ closing, lines, scale }) {
  const Drawn = closing && DRAWN[closing.kind];
  const line = lines[closing?.at] ?? Object.values(lines)[0];
  if (!Drawn) return null;
  return html`<g class="drawing-closing${line.hidden ? ' drawing-behind' : ''}" data-closing=${closing.kind}>
    <${Drawn} closing=${closing} line=${line} part=${partOf(closing, line)} scale=${scale} /></g>`;
}
