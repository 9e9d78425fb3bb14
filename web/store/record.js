// What is kept of a job: {id, job, revision, updated, deleted?, last?} in `jobs`, its undo steps {id, done, undone} in `steps`,
// the photos of its cloths in `pictures` (see pictures.js).
import { transact } from './database.js';
import { make } from './changes.js';

const STORES = ['jobs', 'steps', 'answers', 'pictures'];

export const allRecords = () => transact(['jobs'], 'readonly', (all) => all.objectStore('jobs').getAll());

// One job with its undo steps, as {record, steps}; undefined where there is none.
export function readRecord(id) {
  return transact(['jobs', 'steps'], 'readonly', async (all) => {
    const record = await all.objectStore('jobs').get(id);
    const steps = await all.objectStore('steps').get(id);
    return record && { record, steps: steps ?? { id, done: [], undone: [] } };
  });
}

// Steps of two tabs in one list; of a step known to both, `mine` is the later form.
function joined(theirs, mine) {
  const byKey = new Map([...theirs, ...mine].map((step) => [step.key, step]));
  return [...byKey.values()];
}

// Writes an open job after `changes`. Where another tab has written meanwhile (the revision differs), the changes
// are made once more on what it wrote, so that neither tab loses a field.
export function writeRecord(open, changes) {
  return transact(['jobs', 'steps'], 'readwrite', async (all) => {
    const stored = await all.objectStore('jobs').get(open.id);
    const steps = await all.objectStore('steps').get(open.id);
    const foreign = stored !== undefined && stored.revision !== open.revision;
    const record = {
      ...stored, id: open.id, revision: (stored?.revision ?? open.revision) + 1, updated: Date.now(),
      job: foreign ? make(stored.job, changes).job : open.job,
    };
    const done = foreign ? joined(steps?.done ?? [], open.done) : open.done;
    await all.objectStore('jobs').put(record);
    await all.objectStore('steps').put({ id: open.id, done, undone: foreign ? [] : open.undone });
    return { record, done, foreign };
  });
}

// Changes what is said about a job (deleted, its last answer) without touching the job itself.
export function annotate(id, notes) {
  return transact(['jobs'], 'readwrite', async (all) => {
    const stored = await all.objectStore('jobs').get(id);
    if (!stored) return undefined;
    const record = { ...stored, ...notes };
    await all.objectStore('jobs').put(record);
    return record;
  });
}

// The answer last shown for a job, with the text of the document it belongs to: {id, about, answer}.
export const readAnswer = (id) => transact(['answers'], 'readonly', (all) => all.objectStore('answers').get(id));

export const writeAnswer = (kept) => transact(['answers'], 'readwrite', (all) => all.objectStore('answers').put(kept));

// Takes jobs away for good, with all that is kept of them.
export function eraseRecords(ids) {
  return transact(STORES, 'readwrite', (all) =>
    Promise.all(STORES.flatMap((store) => ids.map((id) => all.objectStore(store).delete(id)))));
}
