// The cuts over the drawn cloth: every line, and round markers with their numbers in order.
//
// A cut within a row has no number of its own (`full_width` false): the rows are told in words. Cuts across whose
// markers would lie over one another share one, "3–5".
import { html } from './html.js';
import { units } from './plan-pieces.js';

const ASIDE_PX = 17; // from the edge of the cloth to the middle of a marker
const RADIUS_PX = { across: 11, along: 9.5 };
const LEAST_ALONG_PX = 36;
const DIGIT_PX = 6.4;

function ends({ kind, x, y, length }) {
  const [left, low] = [units(x), -units(y)];
  return kind === 'across' ? [left, low, left + units(length), low] : [left, low, left, low - units(length)];
}

const line = (cut) => {
  const [x, y, toX, toY] = ends(cut);
  return `M${x} ${y}L${toX} ${toY}`;
};

const isNumbered = (cut) => cut.full_width !== false;

/** Markers beside the cloth, each for one cut across or several that lie close together. */
function markersAcross(cuts, sheet, px) {
  const radius = RADIUS_PX.across * px;
  const markers = [];
  for (const cut of cuts.filter((one) => one.kind === 'across' && isNumbered(one))) {
    const y = -units(cut.y);
    const last = markers.at(-1);
    if (last && cut.number === last.to + 1 && Math.abs(last.y - y) < 2 * radius) last.to = cut.number;
    else markers.push({ from: cut.number, to: cut.number, x: sheet.usable + sheet.selvedge + ASIDE_PX * px, y, radius });
  }
  return markers;
}

/** Markers in the middle of cuts along, stepping aside from one another. */
function markersAlong(cuts, px) {
  const radius = RADIUS_PX.along * px;
  const markers = [];
  for (const cut of cuts.filter((one) => one.kind === 'along' && isNumbered(one) && units(one.length) / px >= LEAST_ALONG_PX)) {
    const [x, low, , high] = ends(cut);
    let y = (low + high) / 2;
    while (markers.some((other) => Math.hypot(other.x - x, other.y - y) < 2 * radius)) y += 2.1 * radius;
    markers.push({ from: cut.number, to: cut.number, x, y, radius });
  }
  return markers;
}

function Marker({ from, to, x, y, radius, px, current }) {
  const words = from === to ? `${from}` : `${from}–${to}`;
  const isNow = from <= current && current <= to;
  const width = Math.max(2 * radius, (words.length * DIGIT_PX + 8) * px);
  const tall = isNow ? radius * 1.25 : radius;
  const left = x - radius;
  return html`<g class="plan-cut${isNow ? ' plan-cut-now' : ''}">
    ${from === to
      ? html`<circle cx=${x} cy=${y} r=${tall} />`
      : html`<rect x=${left} y=${y - tall} width=${width} height=${2 * tall} rx=${tall} />`}
    <text x=${from === to ? x : left + width / 2} y=${y + 4.3 * px} font-size=${(from === to ? 12 : 11) * px} text-anchor="middle">${words}</text></g>`;
}

export function Cuts({ cuts, sheet, px, current }) {
  const across = markersAcross(cuts, sheet, px);
  const leaders = across.map(({ x, y }) => `M${sheet.usable} ${y}H${x}`);
  const now = cuts.find(({ number }) => number === current);
  return html`<g class="plan-cut"><path d=${[...cuts.map(line), ...leaders].join('')} /></g>
    ${now && html`<g class="plan-cut plan-cut-now"><path d=${line(now)} /></g>`}
    ${[...across, ...markersAlong(cuts, px)].map((marker) => html`<${Marker} key=${marker.from} ...${marker} px=${px} current=${current} />`)}`;
}
