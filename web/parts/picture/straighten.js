// Straightens a repeat: every pixel of its picture is looked up in the photo, between the four pixels nearest to it.
import { projection } from './projection.js';

const MOST = 640; // px of the longer side of a straightened repeat
const LEAST = 16;
const MOST_SAMPLES = 3; // in each direction, where a pixel of the repeat covers several of the photo

const apart = ([ax, ay], [bx, by]) => Math.hypot(bx - ax, by - ay);

/** How large the picture of a repeat is worth being, by its corners in px of the photo: {width, height, samples}. */
export function sizeOf([a, b, c, d]) {
  const across = Math.max(apart(a, b), apart(d, c));
  const along = Math.max(apart(a, d), apart(b, c));
  const scale = Math.min(1, MOST / Math.max(across, along));
  const [width, height] = [across, along].map((side) => Math.max(Math.round(side * scale), LEAST));
  return { width, height, samples: Math.min(Math.ceil(1 / scale), MOST_SAMPLES) };
}

/** Adds the colour of a photo at a point, between its pixels, to `sums`; beyond its edge that of the edge. */
function addColour({ data, width, height }, [x, y], sums) {
  const px = Math.min(Math.max(x - 0.5, 0), width - 1);
  const py = Math.min(Math.max(y - 0.5, 0), height - 1);
  const [left, top] = [Math.floor(px), Math.floor(py)];
  const [right, low] = [Math.min(left + 1, width - 1), Math.min(top + 1, height - 1)];
  const [fx, fy] = [px - left, py - top];
  const [upper, lower] = [top * width, low * width];
  for (let channel = 0; channel < 3; channel += 1) {
    const above = data[(upper + left) * 4 + channel] * (1 - fx) + data[(upper + right) * 4 + channel] * fx;
    const below = data[(lower + left) * 4 + channel] * (1 - fx) + data[(lower + right) * 4 + channel] * fx;
    sums[channel] += above * (1 - fy) + below * fy;
  }
}

/** The picture {data, width, height} of the repeat that lies at `corners` (px) of a photo {data, width, height}. The
 *  side from A to B is its lower edge, as the cut end of a cloth is. */
export function straightened(photo, corners) {
  const { width, height, samples } = sizeOf(corners);
  const place = projection(corners);
  const data = new Uint8ClampedArray(width * height * 4);
  const count = samples * samples;
  for (let row = 0; row < height; row += 1) {
    for (let column = 0; column < width; column += 1) {
      const sums = [0, 0, 0];
      for (let sample = 0; sample < count; sample += 1) {
        const u = (column + ((sample % samples) + 0.5) / samples) / width;
        const v = 1 - (row + (Math.floor(sample / samples) + 0.5) / samples) / height;
        addColour(photo, place(u, v), sums);
      }
      const at = (row * width + column) * 4;
      for (let channel = 0; channel < 3; channel += 1) data[at + channel] = sums[channel] / count;
      data[at + 3] = 255;
    }
  }
  return { data, width, height };
}
