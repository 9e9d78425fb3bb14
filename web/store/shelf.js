// The list of jobs: what stands on it, and making, copying, deleting and bringing back a job.
import { computed, signal } from '../vendor/signals.mjs';
import { allRecords, annotate, eraseRecords } from './record.js';
import { hearTabs, tellTabs } from './tabs.js';

// All records of the store; null until they have been read.
export const records = signal(null);

const newestFirst = (one, other) => other.updated - one.updated;
export const jobsOnShelf = computed(() => (records.value ?? []).filter((record) => !record.deleted).sort(newestFirst));
export const jobsInBin = computed(() => (records.value ?? []).filter((record) => record.deleted).sort(newestFirst));

const MONTH = 30 * 24 * 3600 * 1000;

export async function readShelf() {
  records.value = await allRecords();
}

// Deleted jobs can be brought back for thirty days.
export async function emptyBin() {
  const old = jobsInBin.value.filter((record) => Date.now() - record.deleted > MONTH).map((record) => record.id);
  if (old.length === 0) return;
  await eraseRecords(old);
  await readShelf();
}

export function noteRecord(record) {
  records.value = [...(records.value ?? []).filter((other) => other.id !== record.id), record];
}

export async function note(id, notes) {
  const record = await annotate(id, notes);
  if (!record) return;
  noteRecord(record);
  tellTabs({ id, revision: record.revision });
}

export const deleteJob = (id) => note(id, { deleted: Date.now() });
export const bringBack = (id) => note(id, { deleted: undefined });

// Six hexadecimal digits that no other job here has.
export function newJobId() {
  const taken = new Set((records.value ?? []).map((record) => record.id));
  for (;;) {
    const bytes = crypto.getRandomValues(new Uint8Array(3));
    const id = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
    if (!taken.has(id)) return id;
  }
}

// How many covers a job makes.
export const coversOf = (job) => job.cushions.reduce((total, cushion) => total + (cushion.quantity ?? 1), 0);

export const startShelf = () => hearTabs(readShelf);
