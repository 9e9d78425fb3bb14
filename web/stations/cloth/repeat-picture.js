// The straightened repeat beside itself, two across and two along, so that one sees whether the pattern runs on.
import { html } from '../../parts/html.js';
import { Tiles } from '../../parts/picture/tiles.js';
import { say } from '../../words/words.js';
import { repeatSize } from './repeat-size.js';

const TIMES = 2;
const UNITS = 100; // of the drawing, for the longer side of a repeat

export function RepeatPicture({ cloth, href }) {
  const { across, along, drop } = repeatSize(cloth);
  const scale = UNITS / Math.max(across, along);
  const [width, height] = [across * scale, along * scale];
  const box = { x: 0, y: 0, width: width * TIMES, height: height * TIMES };
  const repeat = { href, across: width, along: height, drop: drop * scale, x: 0, y: box.height };
  return html`<svg class="drawing repeat-picture" viewBox="0 0 ${box.width} ${box.height}" role="img" aria-label=${say('cloth.repeatPicture')}>
    <${Tiles} repeat=${repeat} box=${box} />
    <path class="repeat-edge" d="M0 ${box.height}v${-height}h${width}v${height}Z" /></svg>`;
}
