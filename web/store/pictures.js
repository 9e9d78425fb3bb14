// The photos of a job's cloths, with the repeat marked on them and straightened: kept beside the job, on this device alone.
//
// One record for each job in `pictures`: {id, cloths: {k1: {now, before}}}. A picture is {photo, width, height, corners?,
// repeat?}: the bytes of the photo and of the straightened repeat as JPEG, the corners in shares of the photo. `before` is
// what was there before the last change, so that it can be undone; null for no picture. Erased together with the job.
import { effect, signal, untracked } from '../vendor/signals.mjs';
import { transact } from './database.js';
import { openJob } from './session.js';
import { hearTabs, tellTabs } from './tabs.js';

const STORE = ['pictures'];

// What is shown of the open job: {id, cloths: {k1: {now, before, photoUrl?, repeatUrl?}}}.
const shown = signal({ id: null, cloths: {} });

const urlOf = (bytes) => (bytes ? URL.createObjectURL(new Blob([bytes], { type: 'image/jpeg' })) : undefined);

/** The picture of a cloth of the open job, by the cloth's id: {now, before, photoUrl, repeatUrl}; undefined for none. */
export const pictureOf = (cloth) => shown.value.cloths[cloth];

const addressed = (kept) => ({ ...kept, photoUrl: urlOf(kept.now?.photo), repeatUrl: urlOf(kept.now?.repeat) });

function show(id, cloths = {}) {
  for (const { photoUrl, repeatUrl } of Object.values(shown.value.cloths)) {
    for (const url of [photoUrl, repeatUrl]) if (url) URL.revokeObjectURL(url);
  }
  shown.value = { id, cloths: Object.fromEntries(Object.entries(cloths).map(([cloth, kept]) => [cloth, addressed(kept)])) };
}

const read = (id) => transact(STORE, 'readonly', (all) => all.objectStore('pictures').get(id));

async function load(id) {
  const found = id && (await read(id).catch(() => undefined));
  if (openJob.value?.id === id) show(id, found?.cloths);
}

// Changes what is kept of one cloth in one transaction, and shows it once it is kept; rejects where it cannot be.
async function change(cloth, by) {
  const { id } = openJob.value;
  const cloths = await transact(STORE, 'readwrite', async (all) => {
    const kept = (await all.objectStore('pictures').get(id))?.cloths ?? {};
    const next = { ...kept, [cloth]: by(kept[cloth] ?? { now: null, before: null }) };
    await all.objectStore('pictures').put({ id, cloths: next });
    return next;
  });
  if (openJob.value?.id === id) show(id, cloths);
  tellTabs({ pictures: id });
}

/** Keeps a picture of a cloth in the place of the one before; null takes it away. */
export const keepPicture = (cloth, picture) => change(cloth, ({ now }) => ({ now: picture, before: now }));

/** Undoes the last change of a cloth's picture. */
export const bringPictureBack = (cloth) => change(cloth, ({ now, before }) => ({ now: before, before: now }));

/** A new cloth has no picture, also where one that was taken out of the job had its id. */
export const forgetPicture = (cloth) => change(cloth, () => ({ now: null, before: null }));

/** The pictures of one job for another. */
export const copyPictures = (from, to) => transact(STORE, 'readwrite', async (all) => {
  const found = await all.objectStore('pictures').get(from);
  if (found) await all.objectStore('pictures').put({ ...found, id: to });
});

export function startPictures() {
  effect(() => {
    const id = openJob.value?.id ?? null;
    untracked(() => { if (shown.value.id !== id) { show(id); load(id); } });
  });
  hearTabs(({ pictures }) => { if (pictures && pictures === openJob.value?.id) load(pictures); });
}
