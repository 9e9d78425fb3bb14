// The ways out of a notice or a problem, and taking one: what it changes in the job, as one step that can be undone.
import { insert, put } from '../../store/changes.js';
import { parentOf, pathOf, valueAt } from '../../store/pointer.js';
import { edit, job } from '../../store/session.js';

/** All ways out, what buys least first. */
export const waysOutOf = ({ way_out: first, ways_out: all }) => all ?? (first ? [first] : []);

// An entry that a list does not have yet is added to it.
function changeOf({ at, value }) {
  const path = pathOf(job.value, at);
  const holder = valueAt(job.value, parentOf(path));
  const isNew = Array.isArray(holder) && valueAt(job.value, path) === undefined;
  return isNew ? insert(parentOf(path), holder.length, value) : put(path, value);
}

export function takeWayOut({ change }) {
  edit(change.map(changeOf));
}
