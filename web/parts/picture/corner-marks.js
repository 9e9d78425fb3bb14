// The four corners of a repeat on a photo, each moved by a finger beside a magnifier, or by the arrow keys.
//
// CornerMarks({src, size, corners, isWrong, onMove})
//   src, size   the photo and its {width, height} in px
//   corners     [[x, y], …] in shares of the photo: A, B, C and D
//   isWrong     whether the corners cannot be those of a repeat
//   onMove      told the corners at every step
import { html, useRef, useState } from '../html.js';
import { say } from '../words.js';
import { PointHandle } from './point-handle.js';

const LETTERS = ['A', 'B', 'C', 'D'];
const CLOSER = 3; // times what is seen in the magnifier
const SHOWN = 112; // px of its width, as in picture.css

const percent = (share) => `${Math.round(share * 1000) / 10} %`;

/** What lies under a corner, closer, in the upper corner of the photo that the finger is not at. */
function Magnifier({ src, frame, corner: [x, y] }) {
  const { width, height } = frame.getBoundingClientRect();
  const place = { width: `${width * CLOSER}px`, height: `${height * CLOSER}px`,
    left: `${SHOWN / 2 - x * width * CLOSER}px`, top: `${SHOWN / 2 - y * height * CLOSER}px` };
  return html`<div class="magnifier${x < 0.5 ? ' magnifier-right' : ''}" aria-hidden="true"><img src=${src} alt="" style=${place} />
    <svg viewBox="-50 -50 100 100"><path d="M-50 0H-5M5 0H50M0 -50V-5M0 5V50" /></svg></div>`;
}

export function CornerMarks({ src, size, corners, isWrong, onMove }) {
  const frame = useRef(null);
  const [active, setActive] = useState(null);
  const shape = { aspectRatio: `${size.width} / ${size.height}`, maxWidth: `calc(46dvh * ${size.width / size.height})` };
  return html`<div class="corner-marks" ref=${frame} style=${shape}>
    <img src=${src} alt=${say('photoOfCloth')} draggable=${false} />
    <svg class="corner-lines${isWrong ? ' corner-lines-wrong' : ''}" viewBox="0 0 1 1" preserveAspectRatio="none" aria-hidden="true">
      <path d="M${corners.map((corner) => corner.join(' ')).join('L')}Z" /></svg>
    ${corners.map((corner, at) => html`<${PointHandle} key=${at} at=${corner} frame=${frame} step=${[1 / size.width, 1 / size.height]}
      kind="corner-${LETTERS[at]}" letter=${LETTERS[at]} onActive=${(isActive) => setActive(isActive ? at : null)}
      onMove=${(place) => onMove(corners.with(at, place))}
      name=${say('corner', { letter: LETTERS[at], place: say(`corner${LETTERS[at]}`), x: percent(corner[0]), y: percent(corner[1]) })} />`)}
    ${active !== null && html`<${Magnifier} src=${src} frame=${frame.current} corner=${corners[active]} />`}
  </div>`;
}
