// The job that is open: every change to it goes through here, is kept at once, and can be undone.
import { computed, signal } from '../vendor/signals.mjs';
import { make } from './changes.js';
import { readRecord, writeRecord } from './record.js';
import { noteRecord } from './shelf.js';
import { withStep } from './steps.js';
import { hearTabs, tellTabs } from './tabs.js';

// {id, job, revision, done, undone}, or null while no job is open. `done` holds steps {key, when, changes, undo}.
export const openJob = signal(null);
export const job = computed(() => openJob.value?.job ?? null);

// 'saved', 'saving', or 'unsaved' with the reason in `saveError`.
export const saveState = signal('saved');
export const saveError = signal(null);

const BETWEEN_WRITES = 100; // ms: a sliding tape is not one write for each frame
const AGAIN = 3000; // ms until a failed write is tried again

let queued = []; // changes the database does not have yet
let pumping = null;
let wake = () => {};

function take(changes, next) {
  openJob.value = { ...openJob.value, ...next };
  queued.push(...changes);
  save();
}

export function edit(changes) {
  const { job: before, done } = openJob.value;
  const made = make(before, changes);
  if (made.undo.length === 0 || JSON.stringify(made.job) === JSON.stringify(before)) return;
  take(changes, { job: made.job, done: withStep(done, changes, made.undo), undone: [] });
}

// Moves the last step of `from` over to `to`, making its opposite.
function turnBack(from, to) {
  const step = openJob.value?.[from].at(-1);
  if (!step) return;
  const made = make(openJob.value.job, step.undo);
  take(step.undo, {
    job: made.job,
    [from]: openJob.value[from].slice(0, -1),
    [to]: [...openJob.value[to], { ...step, when: 0, changes: step.undo, undo: made.undo }],
  });
}

export const undo = () => turnBack('done', 'undone');
export const redo = () => turnBack('undone', 'done');

// Keeps what is not kept yet; settles when the database has it all, or has refused.
export function save() {
  pumping ??= pump().finally(() => { pumping = null; });
  return pumping;
}

const pause = (ms) => new Promise((resolve) => { wake = resolve; setTimeout(resolve, ms); });

async function pump() {
  while (queued.length > 0) {
    const batch = queued;
    queued = [];
    saveState.value = 'saving';
    try {
      adopt(await writeRecord(openJob.value, batch));
    } catch (error) {
      queued = [...batch, ...queued];
      saveError.value = error;
      saveState.value = 'unsaved';
      setTimeout(save, AGAIN);
      return;
    }
    if (queued.length === 0) saveState.value = 'saved';
    await pause(BETWEEN_WRITES);
  }
}

function adopt({ record, done, foreign }) {
  const now = openJob.value;
  saveError.value = null;
  openJob.value = {
    ...now, revision: record.revision,
    ...(foreign ? { job: make(record.job, queued).job, done, undone: [] } : {}),
  };
  noteRecord(record);
  tellTabs({ id: record.id, revision: record.revision });
}

// Opens a job from the store; false where it is not there, or where the open one could not be kept first.
export async function openById(id) {
  if (openJob.value?.id === id) return true;
  await save();
  if (queued.length > 0) return false;
  const found = await readRecord(id);
  if (!found || found.record.deleted) return false;
  openJob.value = { id, job: found.record.job, revision: found.record.revision,
    done: found.steps.done, undone: found.steps.undone };
  return true;
}

// Opens a document the store does not have yet, and keeps it.
export async function openNew(document) {
  await save();
  if (queued.length > 0) return false;
  openJob.value = { id: document.id, job: document, revision: 0, done: [], undone: [] };
  queued.push({ do: 'put', at: '', value: document });
  await save();
  return true;
}

// Closes the open job, unless something of it could not be kept: then it stays, and goes on trying.
export async function closeJob() {
  await save();
  if (queued.length === 0) openJob.value = null;
}

// Another tab wrote the open job: take over what it wrote, with what is still queued here on top.
async function follow({ id, revision }) {
  if (id !== openJob.value?.id) return;
  await pumping;
  if (id !== openJob.value?.id || revision <= openJob.value.revision) return;
  const { record, steps } = await readRecord(id);
  openJob.value = { id, job: make(record.job, queued).job, revision: record.revision,
    done: steps.done, undone: steps.undone };
}

// The page is about to be hidden or to end (fault B22): do not wait for the next write's turn.
function flush() {
  wake();
  save();
}

export function startSession() {
  hearTabs(follow);
  addEventListener('pagehide', flush);
  document.addEventListener('visibilitychange', flush);
}
