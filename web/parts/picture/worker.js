// The worker that handles pictures, so that the page never waits for one: makes a photo small, straightens a repeat.
//
// {do: 'shrink', file, size: {width, height}} → {bytes}, and {do: 'straighten', bytes, corners} → {bytes}, corners in
// shares of the photo. Bytes are a JPEG, the one form that every phone can write. {error} where it could not be done.
import { straightened } from './straighten.js';

const MOST_BYTES = 300_000;
const QUALITIES = [0.86, 0.78, 0.68, 0.56, 0.44];
const SMALLER = 0.8; // of the sides, where no quality is enough

function canvasOf(width, height) {
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  // What is seen through is cloth on a white table.
  context.fillStyle = '#fff';
  context.fillRect(0, 0, width, height);
  return { canvas, context };
}

/** The picture on a canvas, at the best quality that is small enough. */
async function pressed(canvas) {
  for (const quality of QUALITIES) {
    const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality });
    if (blob.size <= MOST_BYTES) return blob.arrayBuffer();
  }
  const [width, height] = [canvas.width, canvas.height].map((side) => Math.max(Math.round(side * SMALLER), 1));
  const smaller = canvasOf(width, height);
  smaller.context.imageSmoothingQuality = 'high';
  smaller.context.drawImage(canvas, 0, 0, width, height);
  return pressed(smaller.canvas);
}

/** A photo drawn at a size; its bitmap is let go of at once, since that of a large one fills a small phone. */
async function drawn(file, { width, height }) {
  const bitmap = await createImageBitmap(file, { resizeWidth: width, resizeHeight: height, resizeQuality: 'high' });
  const { canvas, context } = canvasOf(width, height);
  context.drawImage(bitmap, 0, 0);
  bitmap.close();
  return canvas;
}

async function whole(bytes) {
  const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/jpeg' }));
  const { width, height } = bitmap;
  const { context } = canvasOf(width, height);
  context.drawImage(bitmap, 0, 0);
  bitmap.close();
  return context.getImageData(0, 0, width, height);
}

async function straight(bytes, corners) {
  const photo = await whole(bytes);
  const { data, width, height } = straightened(photo, corners.map(([x, y]) => [x * photo.width, y * photo.height]));
  const { canvas, context } = canvasOf(width, height);
  context.putImageData(new ImageData(data, width, height), 0, 0);
  return pressed(canvas);
}

const WORK = {
  shrink: async ({ file, size }) => pressed(await drawn(file, size)),
  straighten: ({ bytes, corners }) => straight(bytes, corners),
};

self.addEventListener('message', async ({ data: request }) => {
  try {
    const bytes = await WORK[request.do](request);
    postMessage({ bytes }, [bytes]);
  } catch (error) {
    postMessage({ error: String(error?.message ?? error) });
  }
});
