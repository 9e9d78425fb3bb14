// The straightened repeat side by side, as it runs over a cloth: for drawings, in the units of the drawing.
//
// Tiles({repeat, box})   repeat  {href, across, along, drop, x, y}: the picture, its size, how much higher each column to the
//                                right begins, and where the lower left corner of one of them lies; y downwards
//                        box     {x, y, width, height}: what is covered
import { html, useState } from '../html.js';

const MOST_COLUMNS = 200;
const OVER = 1.004; // columns lie a hair over each other, so that no ground shows between them

let drawnSoFar = 0;

/** The columns that are drawn: all as one where they begin at one height. */
function columnsOf({ across, along, drop, x, y }, box) {
  if (drop % along === 0) return [{ x, y, from: box.x, width: box.width }];
  const first = Math.floor((box.x - x) / across);
  const count = Math.min(Math.ceil((box.x + box.width - x) / across) - first, MOST_COLUMNS);
  return Array.from({ length: count }, (_, at) => {
    const left = x + (first + at) * across;
    const from = Math.max(left, box.x);
    return { x: left, y: y - (first + at) * drop, from, width: Math.min((left + across) - from, box.x + box.width - from) };
  });
}

export function Tiles({ repeat, box }) {
  const [id] = useState(() => `tiles-${drawnSoFar += 1}`);
  const { href, across, along } = repeat;
  return columnsOf(repeat, box).map((column, at) => html`<pattern key="p${at}" id="${id}-${at}" patternUnits="userSpaceOnUse"
      x=${column.x} y=${column.y - along} width=${across} height=${along}>
      <image href=${href} width=${across * OVER} height=${along * OVER} preserveAspectRatio="none" /></pattern>
    <rect key="r${at}" x=${column.from} y=${box.y} width=${column.width} height=${box.height} fill="url(#${id}-${at})" />`);
}
