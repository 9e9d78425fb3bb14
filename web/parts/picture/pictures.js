// The page's side of handling pictures: a photo of any size made small, the repeat on it straightened.
//
// Each piece of work has a worker of its own, which goes when it is done and takes all the memory of a large photo along.

/** The longest side of a photo that is kept, in px. */
const LONGEST = 1600;

export class PictureUnreadable extends Error {}

function inWorker(request) {
  const worker = new Worker(new URL('./worker.js', import.meta.url), { type: 'module' });
  const done = new Promise((resolve, reject) => {
    worker.addEventListener('message', ({ data: { bytes, error } }) => (bytes ? resolve(bytes) : reject(new PictureUnreadable(error))));
    worker.addEventListener('error', (event) => {
      event.preventDefault();
      reject(new PictureUnreadable(event.message));
    });
    worker.postMessage(request);
  });
  return done.finally(() => worker.terminate());
}

/** The width and height of a picture the right way up, read without drawing it. */
function measured(file) {
  const image = new Image();
  const address = URL.createObjectURL(file);
  const known = new Promise((resolve, reject) => {
    image.addEventListener('load', () => resolve({ width: image.naturalWidth, height: image.naturalHeight }));
    image.addEventListener('error', () => reject(new PictureUnreadable(file.name)));
  });
  image.src = address;
  return known.finally(() => URL.revokeObjectURL(address));
}

/** A photo as it is kept: {bytes, width, height}, of at most 1600 px and 300 kB. */
export async function shrunk(file) {
  const { width, height } = await measured(file);
  const scale = Math.min(1, LONGEST / Math.max(width, height));
  const size = { width: Math.max(Math.round(width * scale), 1), height: Math.max(Math.round(height * scale), 1) };
  return { bytes: await inWorker({ do: 'shrink', file, size }), ...size };
}

/** The repeat whose corners are marked on a photo, straightened: the bytes of its picture. */
export const straightRepeat = (bytes, corners) => inWorker({ do: 'straighten', bytes, corners });
