// The tape: a strip with true inch and centimetre graduations that slides under the finger; a slider for ears and keys.
//
// Tape({label, value, unit, readings, onChange, restAt?, place?})
//   value     text as in readings.json ('17 5/8 in', '44.8 cm') or '' (nothing read yet)
//   unit      'in' | 'cm' | 'mm': which scale is the upper, larger one and which marks the tape stops at.
//             Changing it changes neither the value nor the place.
//   readings  the object of readings.json
//   onChange(text, {settled, by})   at every mark passed (settled false) and once at rest (settled true);
//                                   by: 'finger' | 'key'
//   restAt    text at which an empty tape lies (default the zero end)
//   place     nanometres, for a value that stands in neither table (a text the core has read)
import { html, useEffect, useLayoutEffect, useRef } from './html.js';
import { findReading, nearestMark, placeOf, scaleOf } from './readings.js';
import { TapeMotion } from './tape-motion.js';
import { paintTape, pixelsPerNanometre } from './tape-paint.js';
import { say } from './words.js';

const LEAP = { in: 16, mm: 10 };

function gridOf(readings, scale) {
  const { step_nm: step, rows } = readings[scale];
  return { step, last: rows.length - 1, pxPerNm: pixelsPerNanometre(readings) };
}

function coloursOf(element) {
  const style = getComputedStyle(element);
  const token = (name) => style.getPropertyValue(name).trim();
  return { tape: token('--tape'), edge: token('--tape-edge'), ink: token('--ink'), ink2: token('--ink-2') };
}

function momentumWanted() {
  return { momentum: !matchMedia('(prefers-reduced-motion: reduce)').matches };
}

/** Everything of one tape that lives between renders: motion, canvas and the frame that is asked for. */
class TapeStrip {
  constructor(place, readings, scale) {
    this.readings = readings;
    this.scale = scale;
    this.motion = new TapeMotion(place, gridOf(readings, scale));
    this.reported = null;
    this.sent = new Set();
    this.asked = 0;
  }

  attach(canvas) {
    this.canvas = canvas;
    this.context = canvas.getContext('2d');
    this.measure();
  }

  measure() {
    const { width, height } = this.canvas.getBoundingClientRect();
    const dpr = globalThis.devicePixelRatio || 1;
    this.size = { width, height, dpr };
    this.canvas.width = Math.round(width * dpr);
    this.canvas.height = Math.round(height * dpr);
    this.recolour();
  }

  recolour() {
    this.colours = coloursOf(this.canvas);
    this.ask();
  }

  setScale(scale) {
    this.scale = scale;
    this.motion.grid = gridOf(this.readings, scale);
    this.ask();
  }

  ask() {
    if (!this.asked) this.asked = requestAnimationFrame((now) => this.frame(now));
  }

  frame(now) {
    this.asked = 0;
    const arrived = this.motion.frame(now);
    const slid = this.motion.phase === 'held' && this.moved;
    if (slid || this.motion.phase === 'coasting' || arrived) this.report(arrived);
    paintTape(this.context, {
      ...this.size, place: this.motion.place, primary: this.scale, readings: this.readings,
      pxPerNm: this.motion.grid.pxPerNm, colours: this.colours,
    });
    if (this.motion.phase === 'coasting') this.ask();
  }

  /** Tell a new mark; a glide that only follows a value set from outside (`quiet`) tells nothing. */
  report(settled) {
    if (this.quiet) {
      if (settled) this.quiet = false;
      return;
    }
    const text = this.readings[this.scale].rows[this.motion.mark][0];
    if (text === this.reported && !settled) return;
    this.reported = text;
    this.sent.add(text);
    this.onChange(text, { settled, by: 'finger' });
  }

  /** The value came from outside: lie there, unless it is the echo of what this tape said itself. */
  follow(text, place) {
    const echo = this.sent.has(text);
    if (text === this.reported) this.sent.clear();
    if (echo || this.motion.phase === 'held') return;
    this.reported = text;
    if (place === this.motion.place) return;
    this.quiet = true;
    this.motion.glideTo(place, performance.now(), momentumWanted());
    if (!this.motion.moving) this.quiet = false;
    this.ask();
  }

  press(x, now) {
    this.quiet = false;
    this.moved = false;
    this.wasMoving = this.motion.moving;
    this.motion.press(x, now);
  }

  drag(x, now) {
    if (!this.moved && Math.abs(x - this.motion.heldAt.x) < 2) return;
    this.moved = true;
    this.motion.drag(x, now);
    this.ask();
  }

  release(now) {
    if (!this.moved && !this.wasMoving) {
      this.motion.phase = 'rest';
      return;
    }
    this.motion.release(now, momentumWanted());
    this.ask();
  }

  /** Put the tape on a mark by key; told at once, drawn gliding. */
  step(index) {
    const place = this.motion.markPlace(index);
    const text = this.readings[this.scale].rows[place / this.motion.grid.step][0];
    this.reported = text;
    this.sent.add(text);
    this.quiet = true;
    this.motion.glideTo(place, performance.now(), momentumWanted());
    if (!this.motion.moving) this.quiet = false;
    this.ask();
    this.onChange(text, { settled: true, by: 'key' });
  }

  /** The mark a key press leads to, counted from where the tape is or is already gliding. */
  markAfter(key, shift) {
    const { step, last } = this.motion.grid;
    const from = (this.motion.phase === 'coasting' ? this.motion.course.target : this.motion.place) / step;
    const leap = LEAP[this.scale];
    const by = (amount) => (amount > 0 ? Math.floor(from) : Math.ceil(from)) + amount;
    switch (key) {
      case 'ArrowRight': case 'ArrowUp': return by(shift ? leap : 1);
      case 'ArrowLeft': case 'ArrowDown': return by(shift ? -leap : -1);
      case 'PageUp': return by(leap);
      case 'PageDown': return by(-leap);
      case 'Home': return 0;
      case 'End': return last;
      default: return null;
    }
  }
}

function useWatchedLooks(strip) {
  useEffect(() => {
    const tape = strip.current;
    const recolour = () => tape.recolour();
    const sizes = new ResizeObserver(() => tape.measure());
    sizes.observe(tape.canvas);
    const light = new MutationObserver(recolour);
    light.observe(document.documentElement, { attributes: true, attributeFilter: ['data-light'] });
    const dark = matchMedia('(prefers-color-scheme: dark)');
    dark.addEventListener('change', recolour);
    document.fonts.load('700 27px Inter', '0123456789').then(recolour, recolour);
    return () => {
      sizes.disconnect();
      light.disconnect();
      dark.removeEventListener('change', recolour);
      cancelAnimationFrame(tape.asked);
    };
  }, []);
}

export function Tape({ label, value, unit, readings, onChange, restAt = '', place = null }) {
  const canvas = useRef(null);
  const strip = useRef(null);
  const scale = scaleOf(unit);
  const lies = placeOf(readings, value) ?? place ?? placeOf(readings, restAt) ?? 0;
  if (!strip.current) {
    strip.current = new TapeStrip(lies, readings, scale);
    strip.current.reported = value;
  }
  const tape = strip.current;
  tape.onChange = onChange;

  useLayoutEffect(() => tape.attach(canvas.current), []);
  useWatchedLooks(strip);
  useLayoutEffect(() => tape.setScale(scale), [scale]);
  useLayoutEffect(() => tape.follow(value, lies), [value, lies]);

  const onKeyDown = (event) => {
    const index = event.altKey || event.ctrlKey || event.metaKey ? null : tape.markAfter(event.key, event.shiftKey);
    if (index === null) return;
    event.preventDefault();
    tape.step(index);
  };
  const onPointerDown = (event) => {
    if (!event.isPrimary || event.button > 0) return;
    canvas.current.setPointerCapture(event.pointerId);
    tape.press(event.clientX, event.timeStamp);
  };
  const onPointerMove = (event) => {
    if (event.isPrimary && tape.motion.phase === 'held') tape.drag(event.clientX, event.timeStamp);
  };
  const onPointerUp = (event) => {
    if (event.isPrimary && tape.motion.phase === 'held') tape.release(event.timeStamp);
  };
  const onWheel = (event) => {
    if (Math.abs(event.deltaX) <= Math.abs(event.deltaY)) return;
    event.preventDefault();
    tape.step(tape.markAfter(event.deltaX > 0 ? 'ArrowRight' : 'ArrowLeft', false));
  };

  const found = findReading(readings, value);
  return html`<div class="tape" role="slider" tabindex="0" aria-orientation="horizontal"
      aria-label=${say('tapeFor', { label })} aria-valuemin="0" aria-valuemax=${readings[scale].rows.length - 1}
      aria-valuenow=${nearestMark(readings, scale, lies)}
      aria-valuetext=${found ? found.row[2] : value || say('noReading')}
      onKeyDown=${onKeyDown}>
    <canvas class="tape-strip" ref=${canvas} aria-hidden="true" onPointerDown=${onPointerDown}
      onPointerMove=${onPointerMove} onPointerUp=${onPointerUp} onPointerCancel=${onPointerUp} onWheel=${onWheel}></canvas>
    <span class="tape-hairline" aria-hidden="true"></span>
  </div>`;
}
