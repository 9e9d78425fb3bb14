// Fingers, wheel and keys that move a view: one finger pans, two pinch, Ctrl and the wheel zoom, keys do the same.
import { useRef } from './html.js';
import { isFitted, panned, zoomed } from './plan-view.js';

const MIDDLE = { across: 0.5, down: 0.5 };
const KEY_PAN = 0.15;
export const KEY_ZOOM = 1.5;

/** Distance and middle of the fingers on `box`, in shares of its size. */
function spread(points, box) {
  const [a, b = a] = points;
  return {
    apart: Math.hypot(a.x - b.x, a.y - b.y),
    across: ((a.x + b.x) / 2 - box.left) / box.width,
    down: ((a.y + b.y) / 2 - box.top) / box.height,
  };
}

/** Handlers for the drawing; `change(view => view)` is told every step, `fitted` is the view that shows all.
 *  It gives back the view as it was and as it is. */
export function usePlanGestures(fitted, change) {
  const fingers = useRef(new Map());
  const move = (event, act) => {
    const box = event.currentTarget.getBoundingClientRect();
    const before = spread([...fingers.current.values()], box);
    act();
    const after = spread([...fingers.current.values()], box);
    const [was, is] = change((view) => {
      const slid = panned(view, fitted, before.across - after.across, before.down - after.down);
      return before.apart ? zoomed(slid, fitted, after.apart / before.apart, after) : slid;
    });
    // At the end of the cloth the page goes on where the drawing cannot.
    if (!before.apart && was.y === is.y && !isFitted(is, fitted)) scrollBy(0, (before.down - after.down) * box.height);
  };
  const lift = (event) => fingers.current.delete(event.pointerId);
  return {
    onPointerDown: (event) => {
      if (event.button > 0 || fingers.current.size === 2) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      fingers.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
    },
    onPointerMove: (event) => {
      if (!fingers.current.has(event.pointerId)) return;
      move(event, () => fingers.current.set(event.pointerId, { x: event.clientX, y: event.clientY }));
    },
    onPointerUp: lift,
    onPointerCancel: lift,
    onWheel: (event) => {
      if (!event.ctrlKey) return;
      event.preventDefault();
      const box = event.currentTarget.getBoundingClientRect();
      const point = spread([{ x: event.clientX, y: event.clientY }], box);
      change((view) => zoomed(view, fitted, event.deltaY < 0 ? 1.2 : 1 / 1.2, point));
    },
    onKeyDown: (event) => {
      const pans = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
      const zooms = { '+': KEY_ZOOM, '=': KEY_ZOOM, '-': 1 / KEY_ZOOM };
      if (pans[event.key]) change((view) => panned(view, fitted, pans[event.key][0] * KEY_PAN, pans[event.key][1] * KEY_PAN));
      else if (zooms[event.key]) change((view) => zoomed(view, fitted, zooms[event.key], MIDDLE));
      else if (event.key === '0') change(() => fitted);
      else return;
      event.preventDefault();
    },
  };
}

/** One press of a zoom button. */
export function zoomedByButton(view, fitted, factor) {
  return zoomed(view, fitted, factor, MIDDLE);
}
