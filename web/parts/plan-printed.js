// The cloth's own picture under a lay plan: the repeat side by side over the cloth, what is no panel veiled.
//
// PrintedCloth({repeat, box, panels})   repeat as of picture/tiles.js, box {x, y, width, height} in units of the drawing
import { html } from './html.js';
import { Tiles } from './picture/tiles.js';
import { units } from './plan-pieces.js';

const pathOf = ({ x, y, width, length, outline = [[0, 0], [width, 0], [width, length], [0, length]] }) =>
  `M${outline.map(([dx, dy]) => `${units(x + dx)} ${-units(y + dy)}`).join('L')}Z`;

export function PrintedCloth({ repeat, box, panels }) {
  const { x, y, width, height } = box;
  return html`<${Tiles} repeat=${repeat} box=${box} />
    <path class="plan-veil" fill-rule="evenodd" d="M${x} ${y}h${width}v${height}h${-width}Z${panels.map(pathOf).join('')}" />`;
}
