// A straight-sided outline to draw while it is taped: corners drawn together until the sides and diagonals taped so far
// have their lengths, those not taped yet keeping to a usual shape.
const TURNS = 600;
const SOFT = 0.02; // how strongly a side not taped yet holds to its usual length

/** The usual shapes, corners from the front left on, back upwards. */
const BAY = [[0, 0], [9, 0], [7.5, 3.4], [1.5, 3.4]];
const ELL = [[0, 0], [6, 0], [6, 2.4], [2.4, 2.4], [2.4, 5], [0, 5]];
const TEE = [[0, 0], [6.4, 0], [6.4, 1.2], [5.4, 1.2], [5.4, 5], [1, 5], [1, 1.2], [0, 1.2]];
const USUAL = [[BAY, []], [ELL, [3]], [TEE, [3, 6]]];

const isSame = (some, others) => some.length === others.length && some.every((one) => others.includes(one));

/** Corners around a middle, the first at the front left; those that turn inwards nearer to it. */
const aroundMiddle = (count, notches) => Array.from({ length: count }, (_, corner) => {
  const turn = Math.PI * (1.5 + (2 * corner - 1) / count);
  const reach = notches.includes(corner) ? 1.4 : 4;
  return [Math.cos(turn) * reach, Math.sin(turn) * reach];
});

const usualShape = (count, notches) =>
  USUAL.find(([points, inwards]) => points.length === count && isSame(inwards, notches))?.[0] ?? aroundMiddle(count, notches);

const apart = (points, [one, other]) => Math.hypot(points[other][0] - points[one][0], points[other][1] - points[one][1]);

function draw(points, [one, other], length, share) {
  const now = apart(points, [one, other]) || 1;
  const by = (((now - length) / now) * share) / 2;
  const [x, y] = [(points[other][0] - points[one][0]) * by, (points[other][1] - points[one][1]) * by];
  points[one] = [points[one][0] + x, points[one][1] + y];
  points[other] = [points[other][0] - x, points[other][1] - y];
}

/** Turned about the first corner until the front lies level. */
function level(points) {
  const [[x0, y0], [x1, y1]] = points;
  const long = Math.hypot(x1 - x0, y1 - y0) || 1;
  const [cos, sin] = [(x1 - x0) / long, (y1 - y0) / long];
  return points.map(([x, y]) => [(x - x0) * cos + (y - y0) * sin, (y - y0) * cos - (x - x0) * sin]);
}

/**
 * The corners of an outline with so many sides. `taped` are [corner, corner, length], what was measured so far in any
 * unit; `notches` the corners that turn inwards.
 */
export function sketchOf(count, taped, notches) {
  const usual = usualShape(count, notches);
  const shares = taped.map(([one, other, length]) => length / apart(usual, [one, other]));
  const unit = shares.length > 0 ? shares.reduce((sum, share) => sum + share, 0) / shares.length : 1;
  const points = usual.map(([x, y]) => [x * unit, y * unit]);
  const known = new Set(taped.map(([one, other]) => `${one} ${other}`));
  const free = usual.map((_, corner) => [corner, (corner + 1) % count]).filter((ends) => !known.has(ends.join(' ')))
    .map((ends) => [...ends, apart(usual, ends) * unit]);
  for (let turn = 0; turn < TURNS; turn += 1) {
    for (const [one, other, length] of free) draw(points, [one, other], length, SOFT);
    for (const [one, other, length] of taped) draw(points, [one, other], length, 1);
  }
  return level(points);
}
