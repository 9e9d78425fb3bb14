// What the core finds wrong or worth a look, by the field it belongs to.
import { computed } from '../vendor/signals.mjs';
import { pathOf } from '../store/pointer.js';
import { job } from '../store/session.js';
import { answer, isCurrent, problems } from '../store/answers.js';
import { priceProblems } from '../store/prices.js';

const placed = (entry) => ({ ...entry, path: pathOf(job.value, entry.at) });

const allNotices = computed(() => (isCurrent.value && answer.value ? answer.value.notices.map(placed) : []));
const stops = ({ level }) => level === 'stop';

// Everything that keeps the job, or a part of it, from being answered, each with the path of its field.
export const troubles = computed(() => [...problems.value.map(placed), ...allNotices.value.filter(stops)]);

// What else an answer that still holds has to say.
export const notices = computed(() => allNotices.value.filter((notice) => !stops(notice)));

// A field that was never filled in is not yet a mistake; the station where the answer stands asks for it.
const isMissing = ({ code }) => code.startsWith('missing-');

const byField = computed(() => {
  const table = new Map();
  const wrong = [...troubles.value, ...priceProblems.value.map(placed)].filter((entry) => !isMissing(entry));
  const shown = [...wrong, ...notices.value.filter(({ level }) => level !== 'info')];
  for (const entry of shown) table.set(entry.path, [...(table.get(entry.path) ?? []), entry]);
  return table;
});

export const problemsAt = (path) => byField.value.get(path) ?? [];
