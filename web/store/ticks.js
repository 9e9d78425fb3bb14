// What is ticked off in the open job, by the ids of its lines. It is kept beside the job and not in it: a tick changes no
// figure, so nothing is planned anew and there is nothing to undo.
import { computed } from '../vendor/signals.mjs';
import { openJob } from './session.js';
import { note, noteRecord, records } from './shelf.js';

const record = computed(() => records.value?.find(({ id }) => id === openJob.value?.id));

export const ticked = computed(() => record.value?.ticked ?? []);

// The list is seen changed at once, and kept.
export function tick(line, isTicked) {
  const without = ticked.value.filter((id) => id !== line);
  const now = isTicked ? [...without, line] : without;
  noteRecord({ ...record.value, ticked: now });
  return note(openJob.value.id, { ticked: now });
}
