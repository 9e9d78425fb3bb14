// What is ticked off in the open job, by the ids of its lines, and how each line read then. It is kept beside the job and
// not in it: a tick changes no figure, so nothing is planned anew and there is nothing to undo.
import { computed } from '../vendor/signals.mjs';
import { openJob } from './session.js';
import { note, noteRecord, records } from './shelf.js';

const record = computed(() => records.value?.find(({ id }) => id === openJob.value?.id));

export const ticked = computed(() => record.value?.ticked ?? []);
const readThen = computed(() => record.value?.readThen ?? {});

/** How a line read when it was ticked off, if that is not how it reads now: the job has changed since. */
export function readBefore(line, reads) {
  const then = readThen.value[line];
  return ticked.value.includes(line) && then !== reads ? then : undefined;
}

// The list is seen changed at once, and kept. `reads` is how the line reads now.
export function tick(line, isTicked, reads) {
  const { [line]: _, ...others } = readThen.value;
  const without = ticked.value.filter((id) => id !== line);
  const now = isTicked
    ? { ticked: [...without, line], readThen: { ...others, [line]: reads } }
    : { ticked: without, readThen: others };
  noteRecord({ ...record.value, ...now });
  return note(openJob.value.id, now);
}
