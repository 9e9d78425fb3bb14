// The projective map of the unit square onto four corners: how a flat repeat lies in a photo that was taken askew.
//
// Corners are [[x, y], …] in the order A, B, C, D of the repeat: (0, 0), (1, 0), (1, 1) and (0, 1), with y of the photo
// downwards. The eight unknowns follow from eight linear equations, two for each corner, with the ninth number set to 1
// (the direct linear transform; Hartley and Zisserman, Multiple View Geometry, 2nd edition, chapter 4, from memory).

const SQUARE = [[0, 0], [1, 0], [1, 1], [0, 1]];
const FLATTEST = 1e-3; // the least area of a corner's triangle, in shares of the photo

/** Whether the corners go round a repeat as A, B, C, D do, none of them pushed in, so that there is a map at all. */
export const goRound = (corners) => corners.every(([x, y], at) => {
  const [nx, ny] = corners[(at + 1) % 4];
  const [ox, oy] = corners[(at + 2) % 4];
  return (nx - x) * (oy - ny) - (ny - y) * (ox - nx) < -FLATTEST;
});

function equations(corners) {
  return corners.flatMap(([x, y], at) => {
    const [u, v] = SQUARE[at];
    return [[u, v, 1, 0, 0, 0, -u * x, -v * x, x], [0, 0, 0, u, v, 1, -u * y, -v * y, y]];
  });
}

/** The unknowns of linear equations, each a row of factors with its sum last: elimination by the largest pivot. */
function solved(equationRows) {
  let rows = equationRows;
  for (let column = 0; column < rows.length; column += 1) {
    const below = rows.slice(column).map((row) => Math.abs(row[column]));
    const largest = column + below.indexOf(Math.max(...below));
    [rows[column], rows[largest]] = [rows[largest], rows[column]];
    const pivot = rows[column].map((factor) => factor / rows[column][column]);
    rows = rows.map((row, at) => (at === column ? pivot : row.map((factor, place) => factor - row[column] * pivot[place])));
  }
  return rows.map((row) => row.at(-1));
}

/** Where a point (u, v) of the repeat lies among the corners, as a function: (u, v) => [x, y]. */
export function projection(corners) {
  const [a, b, c, d, e, f, g, h] = solved(equations(corners));
  return (u, v) => {
    const w = g * u + h * v + 1;
    return [(a * u + b * v + c) / w, (d * u + e * v + f) / w];
  };
}
