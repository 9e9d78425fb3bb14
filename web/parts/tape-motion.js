// How the tape moves: it follows the finger, is drawn towards the marks, coasts on and always ends on a mark.
// Places are nanometres as in readings.json, times are milliseconds; nothing here touches the screen.

const COAST_MS = 320;
const GLIDE_MS = 70;
const VELOCITY_WINDOW_MS = 90;
const FLICK_PX_PER_S = 90;
const MAGNET_FADES_AT_PX_PER_S = 420;
const MAGNET_POWER = 2.4;
const ARRIVED_PX = 0.25;
const BEYOND_END = 0.3;

export class TapeMotion {
  /** `grid` is {step, last, pxPerNm}: nm per mark, index of the last mark, scale of the drawing. */
  constructor(place, grid) {
    this.place = place;
    this.grid = grid;
    this.phase = 'rest';
    this.trail = [];
  }

  get moving() {
    return this.phase !== 'rest';
  }

  get mark() {
    return Math.min(Math.max(Math.round(this.place / this.grid.step), 0), this.grid.last);
  }

  markPlace(index) {
    return Math.min(Math.max(index, 0), this.grid.last) * this.grid.step;
  }

  /** The finger comes down at x px: whatever moved is caught where it is. */
  press(x, now) {
    this.phase = 'held';
    this.heldAt = { x, place: this.place };
    this.trail = [{ x, now }];
  }

  /** The finger is at x px: the place under the hairline follows, slower near a mark. */
  drag(x, now) {
    this.trail.push({ x, now });
    while (this.trail.length > 2 && now - this.trail[0].now > VELOCITY_WINDOW_MS) this.trail.shift();
    const wanted = this.heldAt.place - (x - this.heldAt.x) / this.grid.pxPerNm;
    this.place = this.drawnToMark(this.heldBack(wanted), Math.abs(this.velocity(now)));
  }

  /** px per second over the last moments of the drag; 0 when the finger had come to rest. */
  velocity(now) {
    const first = this.trail[0];
    const last = this.trail[this.trail.length - 1];
    if (!first || last.now === first.now || now - last.now > VELOCITY_WINDOW_MS) return 0;
    return ((last.x - first.x) / (last.now - first.now)) * 1000;
  }

  /** Beyond either end the tape gives way only a little. */
  heldBack(place) {
    const end = this.grid.last * this.grid.step;
    if (place < 0) return place * BEYOND_END;
    return place > end ? end + (place - end) * BEYOND_END : place;
  }

  /** The magnet: flat around each mark for a slow finger, absent for a fast one. */
  drawnToMark(place, speed) {
    const pull = Math.max(0, 1 - speed / MAGNET_FADES_AT_PX_PER_S);
    const mark = Math.round(place / this.grid.step);
    const off = place / this.grid.step - mark;
    const flat = Math.sign(off) * 0.5 * Math.abs(2 * off) ** MAGNET_POWER;
    return (mark + off + (flat - off) * pull) * this.grid.step;
  }

  /** The finger leaves: coast on to a mark, or glide to the nearest one where nothing is to coast. */
  release(now, { momentum }) {
    const velocity = this.velocity(now);
    if (momentum && Math.abs(velocity) > FLICK_PX_PER_S) {
      const far = this.place - ((velocity / 1000) * COAST_MS) / this.grid.pxPerNm;
      this.approach(this.markPlace(Math.round(far / this.grid.step)), COAST_MS, now);
    } else {
      this.approach(this.markPlace(this.mark), GLIDE_MS, now);
    }
  }

  /** Move to a place by itself; `over` ms is the time constant, 0 puts it there at once. */
  approach(target, over, now) {
    this.phase = over ? 'coasting' : 'rest';
    this.course = { from: this.place, target, over, since: now };
    if (!over) this.place = target;
  }

  glideTo(target, now, { momentum }) {
    this.approach(target, momentum ? GLIDE_MS : 0, now);
  }

  /** Bring the place up to date for a frame; true at the frame in which it comes to rest. */
  frame(now) {
    if (this.phase !== 'coasting') return false;
    const { from, target, over, since } = this.course;
    const left = (from - target) * Math.exp(-Math.max(now - since, 0) / over);
    if (Math.abs(left) * this.grid.pxPerNm > ARRIVED_PX) {
      this.place = target + left;
      return false;
    }
    this.place = target;
    this.phase = 'rest';
    return true;
  }
}
