// The ways out of a notice or a problem, and taking one: what it changes in the job, as one step that can be undone.
import { put } from '../../store/changes.js';
import { pathOf } from '../../store/pointer.js';
import { edit, job } from '../../store/session.js';

/** All ways out, what buys least first. */
export const waysOutOf = ({ way_out: first, ways_out: all }) => all ?? (first ? [first] : []);

export function takeWayOut({ change }) {
  edit(change.map(({ at, value }) => put(pathOf(job.value, at), value)));
}
