// The proportions of a drawn cushion: measures not taken yet stand in a usual proportion to those that were.

// The part of the view that a cushion fills, by how it is seen: lying flat, or from the front with its depth behind it.
export const FLAT = { x: 62, y: 12, width: 188, height: 124 };
export const SOLID = { x: 90, y: 12, width: 164, height: 124 };

/** The measures (nm or null) with their stand-ins, in proportion to the shares of `usual`; `sure` when all were taken. */
export function inProportion(measures, usual) {
  const names = Object.keys(usual);
  const taken = names.filter((name) => measures[name]);
  const unit = taken.length > 0 ? measures[taken[0]] / usual[taken[0]] : 1;
  const sizes = names.map((name) => [name, measures[name] || usual[name] * unit]);
  return { ...Object.fromEntries(sizes), sure: taken.length === names.length };
}

/** Where a shape of `width` by `height` nm stands in the middle of `room`, as large as it fits: {scale, x, y}. */
export function placed(width, height, room) {
  const scale = Math.min(room.width / width, room.height / height);
  return { scale, x: room.x + (room.width - width * scale) / 2, y: room.y + (room.height - height * scale) / 2 };
}

// A flange whose width is not known yet, of the shorter side.
const USUAL_FLANGE = 0.1;

/** The same for a flat cushion with room for the flange of its edge, which is `beyond` px wide on every side. */
export function placedWithFlange(edge, width, height, room = FLAT) {
  const nm = edge?.kind === 'flanged' ? edge.nm ?? USUAL_FLANGE * Math.min(width, height) : 0;
  const { scale, x, y } = placed(width + 2 * nm, height + 2 * nm, room);
  const beyond = nm * scale;
  return { scale, beyond, x: x + beyond, y: y + beyond };
}

/** A point `u` of the way from one point to another, `aside` px to the right of that way. */
export function between([x1, y1], [x2, y2]) {
  const long = Math.hypot(x2 - x1, y2 - y1) || 1;
  const [across, down] = [(y1 - y2) / long, (x2 - x1) / long];
  return (u, aside = 0) => [x1 + (x2 - x1) * u + across * aside, y1 + (y2 - y1) * u + down * aside];
}
