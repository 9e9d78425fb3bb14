// Draws the tape on a canvas: both scales, true to each other, sharp on every screen.

const INCH_TICKS = [[16, 1], [8, 0.66], [4, 0.5], [2, 0.37], [1, 0.24]];
const MM_TICKS = [[10, 1], [5, 0.62], [1, 0.36]];
const SCALES = {
  in: { ticks: INCH_TICKS, perNumber: 16, text: (index) => String(index / 16) },
  mm: { ticks: MM_TICKS, perNumber: 10, text: (index) => String(index / 10) },
};

/** Width of one inch of tape on the screen, in CSS pixels: a thumb can pick a sixteenth. */
export const INCH_PX = 84;

/** CSS pixels per nanometre, from the table itself: sixteen of its steps are an inch. */
export function pixelsPerNanometre(readings) {
  return INCH_PX / (16 * readings.in.step_nm);
}

function tickShare(ticks, index) {
  return ticks.find(([every]) => index % every === 0)[1];
}

function numberSize(primary, scale, index) {
  if (!primary) return scale === 'in' ? 16 : 13;
  if (scale === 'in') return 27;
  return index >= 1000 ? 15 : 21;
}

/** One scale along one edge; `edge` is {y, towards: 1 downwards | -1 upwards, long, numberAt}. */
function paintScale(context, view, scale, edge, primary) {
  const { ticks, perNumber, text } = SCALES[scale];
  const { step_nm: step, rows } = view.readings[scale];
  const reach = view.width / 2 / view.pxPerNm;
  const first = Math.max(0, Math.floor((view.place - reach) / step) - perNumber);
  const last = Math.min(rows.length - 1, Math.ceil((view.place + reach) / step));
  const heavy = Math.max(1, Math.round((primary ? 1.6 : 1) * view.dpr)) / view.dpr;
  const fine = Math.max(1, Math.round(view.dpr * 0.9)) / view.dpr;
  context.fillStyle = primary ? view.colours.ink : view.colours.ink2;
  for (let index = first; index <= last; index += 1) {
    const x = view.width / 2 + (index * step - view.place) * view.pxPerNm;
    const share = tickShare(ticks, index);
    const long = edge.long * share;
    const wide = share === 1 ? heavy : fine;
    context.fillRect(Math.round((x - wide / 2) * view.dpr) / view.dpr, edge.towards > 0 ? edge.y : edge.y - long, wide, long);
    if (index % perNumber === 0 && index > 0) {
      context.font = `${primary ? 700 : 600} ${numberSize(primary, scale, index)}px Inter, system-ui, sans-serif`;
      context.fillText(text(index), x + (primary ? 5 : 3), edge.numberAt);
    }
  }
}

/** The whole strip; `view` is {width, height, dpr, place, primary, readings, pxPerNm, colours}. */
export function paintTape(context, view) {
  const { width, height, dpr, place, pxPerNm, colours, readings, primary } = view;
  const other = primary === 'in' ? 'mm' : 'in';
  context.setTransform(dpr, 0, 0, dpr, 0, 0);
  context.clearRect(0, 0, width, height);
  const end = Math.max(...['in', 'mm'].map((scale) => readings[scale].step_nm * (readings[scale].rows.length - 1)));
  const left = Math.max(-2, width / 2 - place * pxPerNm);
  const right = Math.min(width + 2, width / 2 + (end - place) * pxPerNm);
  context.fillStyle = colours.tape;
  context.fillRect(left, 0, right - left, height);
  context.fillStyle = colours.edge;
  context.fillRect(left, 0, right - left, 1);
  context.fillRect(left, height - 1, right - left, 1);
  context.fillStyle = colours.ink;
  context.fillRect(left - 2, 0, 2, height);
  context.fillRect(right, 0, 2, height);
  context.textBaseline = 'alphabetic';
  context.textAlign = 'left';
  const top = primary === 'in' ? { long: height * 0.5, numberAt: height * 0.5 } : { long: height * 0.31, numberAt: height * 0.5 };
  paintScale(context, view, primary, { y: 1, towards: 1, ...top }, true);
  paintScale(context, view, other, { y: height - 1, towards: -1, long: height * 0.24, numberAt: height * 0.82 }, false);
}
