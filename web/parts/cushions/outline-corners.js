// The corners of a drawn outline that point outwards: rounded or tapered, at whatever angle the outline turns there.
const STEPS = 8;
const LEAST_DEPTH = 0.008; // of the width of the outline: a taper that could not be seen is drawn deeper

const minus = ([ax, ay], [bx, by]) => [ax - bx, ay - by];
const along = ([x, y], [dx, dy], far) => [x + dx * far, y + dy * far];

/** How the outline turns at a corner: the ways of its two sides, their lengths, sine and cosine of the turn. */
function turnAt(points, corner) {
  const [here, before, after] = [points[corner], points.at(corner - 1), points[(corner + 1) % points.length]];
  const [into, out] = [minus(here, before), minus(after, here)];
  const long = [Math.hypot(...into) || 1, Math.hypot(...out) || 1];
  const ways = [into.map((part) => part / long[0]), out.map((part) => part / long[1])];
  return { here, long, ways, sine: ways[0][0] * ways[1][1] - ways[0][1] * ways[1][0], cosine: ways[0][0] * ways[1][0] + ways[0][1] * ways[1][1] };
}

function rounded({ here, long, ways, sine, cosine }, { radius }) {
  const share = sine / (1 + cosine);
  const r = Math.min(radius, Math.min(...long) / 2 / share);
  const start = along(here, ways[0], -r * share);
  const centre = along(start, [-ways[0][1], ways[0][0]], r);
  const turn = Math.atan2(sine, cosine);
  return Array.from({ length: STEPS + 1 }, (_, step) => {
    const [cos, sin] = [Math.cos((turn * step) / STEPS), Math.sin((turn * step) / STEPS)];
    const [x, y] = [ways[0][1], -ways[0][0]];
    return [centre[0] + r * (x * cos - y * sin), centre[1] + r * (x * sin + y * cos)];
  });
}

function tapered({ here, long, ways, sine }, { depth, run }, wide) {
  const [a, b] = long.map((side) => Math.min(run.share ? run.share * side : run.nm, side / 2));
  const deep = Math.max(depth, LEAST_DEPTH * wide) / sine;
  const inner = [here[0] + deep * (ways[1][0] - ways[0][0]), here[1] + deep * (ways[1][1] - ways[0][1])];
  return [along(here, ways[0], -a), inner, along(here, ways[1], b)];
}

/**
 * The points that are drawn at every corner of an outline that runs anticlockwise: [[point, …], …]. `corners` is
 * {radius} or {depth, run: {share} or {nm}} in the units of the points; null for corners as they are.
 */
export function bentCorners(points, corners) {
  const xs = points.map(([x]) => x);
  const wide = Math.max(...xs) - Math.min(...xs);
  return points.map((point, corner) => {
    const turn = turnAt(points, corner);
    if (turn.sine < 0.05 || !corners) return [point];
    return corners.radius ? rounded(turn, corners) : tapered(turn, corners, wide);
  });
}
