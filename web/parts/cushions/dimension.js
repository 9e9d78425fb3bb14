// A dimension line between two points, with its bars and its text; in the accent colour while that measure is taken.
//
// Dimension({from, to, text?, focused, textAt, anchor})   points as [x, y]; `anchor` as of an SVG text
// SvgFractions({text})   a text inside an SVG in which every "5/8" is set as a true fraction
import { html } from '../html.js';

const BAR = 5;

export function SvgFractions({ text }) {
  return text.split(/(\d+\/\d+)/).map((piece, place) => (place % 2 ? html`<tspan class="fraction">${piece}</tspan>` : piece));
}

export function Dimension({ from, to, text, focused, textAt, anchor }) {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const [x, y] = [((from[1] - to[1]) / long) * BAR, ((to[0] - from[0]) / long) * BAR];
  const bar = (at) => `M${at[0] - x} ${at[1] - y}L${at[0] + x} ${at[1] + y}`;
  return html`<g class="dimension${focused ? ' dimension-focused' : ''}">
    <path d="${bar(from)}M${from[0]} ${from[1]}L${to[0]} ${to[1]}${bar(to)}" />
    ${text && html`<text x=${textAt[0]} y=${textAt[1]} text-anchor=${anchor}><${SvgFractions} text=${text} /></text>`}
  </g>`;
}

/** The dimension below a shape, from x1 to x2. */
export const Below = ({ x1, x2, y, ...rest }) => html`<${Dimension} from=${[x1, y + 16]} to=${[x2, y + 16]}
  textAt=${[(x1 + x2) / 2, y + 40]} anchor="middle" ...${rest} />`;

/** The dimension to the right of a shape, from y1 to y2. */
export const RightOf = ({ x, y1, y2, ...rest }) => html`<${Dimension} from=${[x + 18, y1]} to=${[x + 18, y2]}
  textAt=${[x + 29, (y1 + y2) / 2 + 6]} anchor="start" ...${rest} />`;

/** The dimension to the left of a shape, from y1 to y2. */
export const LeftOf = ({ x, y1, y2, ...rest }) => html`<${Dimension} from=${[x - 16, y1]} to=${[x - 16, y2]}
  textAt=${[x - 27, (y1 + y2) / 2 + 6]} anchor="end" ...${rest} />`;
