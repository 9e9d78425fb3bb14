// What the core finds wrong or worth a look, by the field it belongs to.
import { computed } from '../vendor/signals.mjs';
import { pathOf } from '../store/pointer.js';
import { job } from '../store/session.js';
import { answer, isCurrent, problems } from '../store/answers.js';

const placed = (entry) => ({ ...entry, path: pathOf(job.value, entry.at) });

// Everything that keeps the job from being answered, each with the path of its field.
export const troubles = computed(() => problems.value.map(placed));

// The notices of an answer that still holds.
export const notices = computed(() => (isCurrent.value && answer.value ? answer.value.notices.map(placed) : []));

// A field that was never filled in is not yet a mistake; the station where the answer stands asks for it.
const isMissing = ({ code }) => code.startsWith('missing-');

const byField = computed(() => {
  const table = new Map();
  const shown = [...troubles.value.filter((entry) => !isMissing(entry)), ...notices.value.filter(({ level }) => level !== 'info')];
  for (const entry of shown) table.set(entry.path, [...(table.get(entry.path) ?? []), entry]);
  return table;
});

export const problemsAt = (path) => byField.value.get(path) ?? [];
