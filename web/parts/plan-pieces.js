// What lies on the drawn cloth: the panels with their names and tops, what is left over, and the points of the repeat.
//
// Places come in nm, x from the left usable edge and y from the cut end; a user unit of the drawing is a millimetre,
// y downwards. `px` is how many units a screen pixel is: words are as large as there is room for, or left out.
import { html } from './html.js';
import { SvgFractions } from './cushions/dimension.js';
import { say } from './words.js';

const NM_PER_UNIT = 1e6;
const ARROWS = { away: 0, right: 90, toward: 180, left: 270 };
const SIGN_PX = 6.6;
const LEAST_PX_ACROSS_WORDS = 18;
const LEAST_PX_WITH_WORDS = 13;
const LEAST_PX_WITH_TWO_LINES = 34;
const LEAST_PX_BETWEEN_POINTS = 12;
const LEAST_PX_OF_LETTERS = 8;
const WIDE_LETTER = 0.58; // of the size of the letters

/** The size of letters at which words have room across, never more than `most`; px. */
const sizeAcross = (words, across, most) => Math.min(most, (across - 6) / (words.length * WIDE_LETTER));

export const units = (nm) => nm / NM_PER_UNIT;

function nameLines(label) {
  const match = /^(\S+) (.+)$/.exec(label);
  return match ? [match[1], match[2]] : [label, ''];
}

function Arrow({ x, y, size, up }) {
  return html`<path class="plan-arrow" d="M0 ${size * 0.5}V${-size * 0.5}M${-size * 0.32} ${-size * 0.16}L0 ${-size * 0.5}L${size * 0.32} ${-size * 0.16}"
    transform="translate(${x} ${y}) rotate(${ARROWS[up]})" />`;
}

const panelBox = ({ x, y, width, length }) =>
  ({ x: units(x), y: -units(y + length), width: units(width), height: units(length) });

/** Where the words on a panel have room: the whole of it, or what the core says of one that is no rectangle. */
const roomOf = ({ x, y, room, ...rest }) => (room ? { ...room, x: x + room.x, y: y + room.y } : { ...rest, x, y });

export const isBack = ({ part, label }) => String(part ?? label ?? '').includes('back');

export function PanelFace({ entry }) {
  const name = `plan-panel${isBack(entry) ? ' plan-panel-back' : ''}`;
  return entry.outline
    ? html`<path class=${name} d="M${entry.outline.map(([x, y]) => `${units(entry.x + x)} ${-units(entry.y + y)}`).join('L')}Z" />`
    : html`<rect class=${name} ...${panelBox(entry)} />`;
}

/** The words on a panel that points of the repeat lie on: along its lower edge, the arrow in its upper corner. */
function MarkedPanelWords({ entry, box, px }) {
  const across = box.width / px;
  const along = box.height / px;
  const label = entry.label ?? '';
  const words = across >= 62 && sizeAcross(label, across, 13) >= LEAST_PX_OF_LETTERS ? label : nameLines(label)[0];
  const size = sizeAcross(words, across, Math.min(13, along * 0.3));
  const roomy = across >= 34 && along >= 40;
  return html`<text class="plan-name plan-halo${isBack(entry) ? ' plan-halo-back' : ''}" x=${box.x + box.width / 2} y=${box.y + box.height - 5 * px}
      font-size=${size * px} stroke-width=${5 * px} text-anchor="middle">${words}</text>
    ${roomy && entry.up && html`<${Arrow} x=${box.x + 10 * px} y=${box.y + 11 * px} size=${10 * px} up=${entry.up} />`}`;
}

/** The whole label in one line along a long narrow panel: boxing, zip bands. Null where it is not one, or too short. */
function StripWords({ entry, box, px }) {
  const [across, along] = [box.width / px, box.height / px];
  const label = entry.label ?? '';
  const size = Math.min(13, Math.min(across, along) * 0.6);
  if (Math.min(across, along) >= LEAST_PX_WITH_TWO_LINES || Math.max(across, along) < label.length * size * 0.62 + 8) return null;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  return html`<text class="plan-name" x=${x} y=${y} font-size=${size * px} text-anchor="middle" dominant-baseline="central"
    transform=${along > across ? `rotate(-90 ${x} ${y})` : undefined}>${label}</text>`;
}

function PlainPanelWords({ entry, box, px }) {
  const strip = StripWords({ entry, box, px });
  if (strip) return strip;
  const across = box.width / px;
  const along = box.height / px;
  const [first, rest] = nameLines(entry.label ?? '');
  const middle = box.x + box.width / 2;
  const centre = box.y + box.height / 2;
  const small = sizeAcross(rest, across, 12.5);
  const fits = rest && small >= LEAST_PX_OF_LETTERS;
  const roomy = across >= 44 && along >= 62;
  const line = along >= 40 && fits && across >= LEAST_PX_WITH_TWO_LINES;
  const large = sizeAcross(first, across, roomy ? 20 : Math.min(17, along * 0.45, across * 0.5));
  const shift = roomy ? 0 : line ? -large * 0.42 : 0;
  return html`${roomy && entry.up && html`<${Arrow} x=${middle} y=${centre - 21 * px} size=${11 * px} up=${entry.up} />`}
    <text class="plan-name" x=${middle} y=${centre + (shift + large * 0.36 + (roomy ? 1 : 0)) * px} font-size=${large * px} text-anchor="middle">${first}</text>
    ${(roomy || line) && fits && html`<text class="plan-part" x=${middle} y=${centre + (roomy ? 26 : shift + large * 0.36 + 14) * px}
      font-size=${small * px} text-anchor="middle">${rest}</text>`}
    ${!roomy && entry.up && along >= 24 && across >= 40 && html`<${Arrow} x=${box.x + 9 * px} y=${centre} size=${9 * px} up=${entry.up} />`}`;
}

/** The words on a panel, as large as there is room for. */
export function PanelWords({ entry, px, marked }) {
  const box = panelBox(roomOf(entry));
  if (Math.min(box.width, box.height) / px < LEAST_PX_WITH_WORDS) return null;
  return html`<${marked ? MarkedPanelWords : PlainPanelWords} entry=${entry} box=${box} px=${px} />`;
}

// Strips of one piece that lie side by side are one block: drawn one by one, and named together.
const goesOn = (last, next) => last.piece === next.piece && next.grain !== 'bias'
  && ((last.x + last.width === next.x && last.y === next.y && last.length === next.length)
    || (last.y + last.length === next.y && last.x === next.x && last.width === next.width));

function blocksOf(strips) {
  const blocks = [];
  for (const strip of strips) {
    const last = blocks.at(-1);
    if (last && goesOn(last.at(-1), strip)) last.push(strip);
    else blocks.push([strip]);
  }
  return blocks;
}

/** A block as one panel: from its first strip to its last. */
function asOne(block) {
  const [first, last] = [block[0], block.at(-1)];
  const [from, what] = nameLines(first.label);
  const label = block.length > 1 ? `${from}–${nameLines(last.label)[0]} ${what}` : first.label;
  return { ...first, label, width: last.x + last.width - first.x, length: last.y + last.length - first.y };
}

const BiasLines = ({ entry }) => html`<path class="plan-bias" d=${entry.lines.map((line) => `M${line.map(([x, y]) => `${units(entry.x + x)} ${-units(entry.y + y)}`).join('L')}`).join('')} />`;

/** What is cut in strips: straight ones, or a block with the lines of its bias strips. */
export function Strips({ strips, px }) {
  return html`<g class="plan-strips">
    ${strips.map((entry) => html`<rect key="${entry.piece} ${entry.copy}" class="plan-panel plan-strip" ...${panelBox(entry)} />
      ${entry.lines && html`<${BiasLines} entry=${entry} />`}`)}
    ${blocksOf(strips).map(asOne).map((block) => html`<${StripName} key="n${block.piece} ${block.copy}" block=${block} px=${px} />`)}</g>`;
}

function StripName({ block, px }) {
  const box = panelBox(block);
  const fitting = fittingWords([block.label, nameLines(block.label)[1]], box, px);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  return fitting && html`<text class="plan-strip-name" x=${x} y=${y} font-size=${11 * px} stroke-width=${4 * px} text-anchor="middle"
    dominant-baseline="central" transform=${fitting.upright ? `rotate(-90 ${x} ${y})` : undefined}>${fitting.words}</text>`;
}

const offcutBox = ({ x, y, width, length }) =>
  ({ x: units(x), y: -units(y + length.nm), width: units(width.nm), height: units(length.nm) });

/** The fullest words that there is room for along a box, and whether they stand upright; null where there are none. */
function fittingWords(choices, box, px) {
  const [across, along] = [box.width / px, box.height / px];
  for (const words of choices) {
    const needed = words.length * SIGN_PX + 8;
    if (across >= needed && along > LEAST_PX_ACROSS_WORDS) return { words, upright: false };
    if (along >= needed && across > LEAST_PX_ACROSS_WORDS) return { words, upright: true };
  }
  return null;
}

export function Offcut({ offcut, px }) {
  const box = offcutBox(offcut);
  const fitting = fittingWords([say('left', { size: offcut.size }), offcut.size], box, px);
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  return html`<g class="plan-offcut"><rect ...${box} />
    ${fitting && html`<text x=${x} y=${y} font-size=${12 * px} text-anchor="middle" dominant-baseline="central"
      transform=${fitting.upright ? `rotate(-90 ${x} ${y})` : undefined}><${SvgFractions} text=${fitting.words} /></text>`}</g>`;
}

/** A place that is kept clear: named where there is room, else crossed out. */
export function Flaw({ flaw, px }) {
  const box = panelBox(flaw);
  const fitting = fittingWords([say('keptClear')], box, px);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const shape = flaw.outline
    ? `M${flaw.outline.map(([dx, dy]) => `${units(flaw.x + dx)} ${-units(flaw.y + dy)}`).join('L')}Z`
    : `M${box.x} ${box.y}h${box.width}v${box.height}h${-box.width}Z`;
  const isNarrow = Math.max(box.width, box.height) > 6 * Math.min(box.width, box.height);
  const cross = flaw.outline || isNarrow ? '' : `M${box.x} ${box.y}l${box.width} ${box.height}m0 ${-box.height}l${-box.width} ${box.height}`;
  return html`<g class="plan-flaw"><path d=${shape} />${!fitting && cross && html`<path class="plan-flaw-cross" d=${cross} />`}
    ${fitting && html`<text x=${x} y=${y} font-size=${11.5 * px} text-anchor="middle" dominant-baseline="central"
      transform=${fitting.upright ? `rotate(-90 ${x} ${y})` : undefined}>${fitting.words}</text>`}</g>`;
}

/** A cross on every point of the repeat, as one path; none where they would stand closer than can be told apart.
 *  `room` is how many square units there are for each. */
export function MotifPoints({ points, room, px }) {
  if (room / px ** 2 < LEAST_PX_BETWEEN_POINTS ** 2) return null;
  const arm = 4 * px;
  const cross = ([x, y]) => `M${units(x) - arm} ${-units(y)}h${2 * arm}M${units(x)} ${-units(y) - arm}v${2 * arm}`;
  return html`<path class="plan-motif" d=${points.map(cross).join('')} />`;
}
