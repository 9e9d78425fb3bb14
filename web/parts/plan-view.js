// Which part of the lay plan is in view: fitting, zooming about a point and panning. Lengths in millimetres of cloth.
//
// A view is {x, y, width, height}, the viewBox; `frame` is {width, height} of the drawing on the screen in px.

const CLOSEST = 30;

/** The view that shows `content` ({x, y, width, height}) with `margins` in px around it. */
export function fitView(content, frame, margins) {
  const roomAcross = Math.max(frame.width - margins.left - margins.right, 40);
  const roomAlong = Math.max(frame.height - margins.top - margins.bottom, 40);
  const scale = Math.max(content.width / roomAcross, content.height / roomAlong);
  const spareAcross = (roomAcross * scale - content.width) / 2;
  const spareAlong = (roomAlong * scale - content.height) / 2;
  return {
    x: content.x - margins.left * scale - spareAcross,
    y: content.y - margins.top * scale - spareAlong,
    width: frame.width * scale,
    height: frame.height * scale,
  };
}

/** The view kept inside the fitted one: never further away, never off the cloth. */
function kept(view, fitted) {
  if (isFitted(view, fitted)) return fitted;
  const width = Math.max(view.width, fitted.width / CLOSEST);
  const height = (width / fitted.width) * fitted.height;
  return {
    x: Math.min(Math.max(view.x, fitted.x), fitted.x + fitted.width - width),
    y: Math.min(Math.max(view.y, fitted.y), fitted.y + fitted.height - height),
    width,
    height,
  };
}

/** Zoom by `factor` (above 1: closer) so that the point at the shares (across, down) of the frame stays put. */
export function zoomed(view, fitted, factor, { across, down }) {
  const width = Math.min(Math.max(view.width / factor, fitted.width / CLOSEST), fitted.width);
  const height = (width / view.width) * view.height;
  return kept({
    x: view.x + (view.width - width) * across,
    y: view.y + (view.height - height) * down,
    width,
    height,
  }, fitted);
}

/** Pan by shares of the frame: positive moves the view right and down. */
export function panned(view, fitted, across, down) {
  return kept({ ...view, x: view.x + across * view.width, y: view.y + down * view.height }, fitted);
}

export function isFitted(view, fitted) {
  return view.width >= fitted.width * 0.999;
}
