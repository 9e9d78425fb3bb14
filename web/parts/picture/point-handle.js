// A point of a picture under a handle of 48 px, moved by a finger, which need not be on the point itself, or by the arrow keys.
//
// PointHandle({at, frame, step, name, kind, letter, onMove, onRest?, onActive?})
//   at, step    [x, y], the place in shares of the picture, y downwards, and how far an arrow key moves it
//   frame       a ref of the element that shows the picture
//   name, kind  what it is called, and the classes it is drawn by; `letter` stands beside it
//   onMove      told every new place within the picture, onRest once the handle rests, onActive whether it is at work
import { html, useRef } from '../html.js';

const STEPS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
const COARSE = 10; // times as far with Shift held

const within = (share) => Math.min(Math.max(share, 0), 1);

export function PointHandle({ at, frame, step, name, kind, letter, onMove, onRest = () => {}, onActive = () => {} }) {
  const held = useRef(null);
  const moved = (x, y) => onMove([within(x), within(y)]);
  const grasp = (event) => {
    event.currentTarget.setPointerCapture(event.pointerId);
    held.current = { at, x: event.clientX, y: event.clientY };
    onActive(true);
  };
  const drag = (event) => {
    if (!held.current) return;
    const { at: [x, y], ...from } = held.current;
    const { width, height } = frame.current.getBoundingClientRect();
    moved(x + (event.clientX - from.x) / width, y + (event.clientY - from.y) / height);
  };
  const letGo = () => {
    if (!held.current) return;
    held.current = null;
    onActive(false);
    onRest();
  };
  const onKeyDown = (event) => {
    if (!STEPS[event.key]) return;
    event.preventDefault();
    const [across, down] = STEPS[event.key].map((way) => way * (event.shiftKey ? COARSE : 1));
    onActive(true);
    moved(at[0] + across * step[0], at[1] + down * step[1]);
    onRest();
  };
  return html`<button type="button" class="point-handle ${kind}" style=${{ left: `${at[0] * 100}%`, top: `${at[1] * 100}%` }} aria-label=${name}
    onPointerDown=${grasp} onPointerMove=${drag} onPointerUp=${letGo} onPointerCancel=${letGo} onKeyDown=${onKeyDown}
    onBlur=${() => onActive(false)}><span>${letter}</span></button>`;
}
