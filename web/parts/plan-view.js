// Which part of the lay plan is in view: fitting, zooming about a point and panning. Lengths in millimetres of cloth.
//
// A view is {x, y, width, height}, the viewBox; `frame` is {width, height} of the drawing on the screen in px.

const CLOSEST = 30;
const LONG = 2.2; // times as long as what would be in the frame at the full width

/** The view that shows `content` ({x, y, width, height}) at `scale` units a pixel, its lower edge in sight. */
function viewAt(content, frame, margins, scale) {
  const spareAcross = frame.width * scale - content.width - (margins.left + margins.right) * scale;
  const spareAlong = frame.height * scale - content.height - (margins.top + margins.bottom) * scale;
  return {
    x: content.x - margins.left * scale - spareAcross / 2,
    y: content.y - margins.top * scale - (spareAlong < 0 ? spareAlong : spareAlong / 2),
    width: frame.width * scale,
    height: frame.height * scale,
  };
}

/** The view of the whole plan, and the one to begin with: of a plan so long that nothing could be read on it, the
 *  end that is cut first, over the full width of the cloth. `whole.across` is what is worth seeing from side to side. */
export function viewsOf(content, frame, margins) {
  const across = content.width / Math.max(frame.width - margins.left - margins.right, 40);
  const along = content.height / Math.max(frame.height - margins.top - margins.bottom, 40);
  const close = viewAt(content, frame, margins, across);
  const whole = { ...viewAt(content, frame, margins, Math.max(across, along)), across: { from: close.x, to: close.x + close.width } };
  return { whole, begin: along > LONG * across ? close : whole };
}

/** The view kept within the whole: never further away, never off the cloth. */
function kept(view, whole) {
  if (isFitted(view, whole)) return whole;
  const width = Math.max(view.width, whole.width / CLOSEST);
  const height = (width / whole.width) * whole.height;
  const { from, to } = whole.across;
  return {
    x: width < to - from ? Math.min(Math.max(view.x, from), to - width) : (from + to - width) / 2,
    y: Math.min(Math.max(view.y, whole.y), whole.y + whole.height - height),
    width,
    height,
  };
}

/** A view of one plan taken over to another, or to another frame: what is near stays near. */
export function carried(view, before, whole) {
  if (isFitted(view, before)) return whole;
  return before === whole ? view : kept(view, whole);
}

/** Zoom by `factor` (above 1: closer) so that the point at the shares (across, down) of the frame stays put. */
export function zoomed(view, whole, factor, { across, down }) {
  const width = Math.min(Math.max(view.width / factor, whole.width / CLOSEST), whole.width);
  const height = (width / view.width) * view.height;
  return kept({
    x: view.x + (view.width - width) * across,
    y: view.y + (view.height - height) * down,
    width,
    height,
  }, whole);
}

/** Pan by shares of the frame: positive moves the view right and down. */
export function panned(view, whole, across, down) {
  return kept({ ...view, x: view.x + across * view.width, y: view.y + down * view.height }, whole);
}

export function isFitted(view, whole) {
  return view.width >= whole.width * 0.999;
}
