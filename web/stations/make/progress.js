// How far the making of a cover is: the steps of its sheet that are ticked off. They are kept beside the job.
import { tick, ticked } from '../../store/ticks.js';

export const isDone = ({ id }) => ticked.value.includes(id);

export const countDone = ({ steps }) => steps.filter(isDone).length;

/** The first step that is not done yet; undefined once all are. */
export const nextOf = ({ steps }) => steps.find((step) => !isDone(step));

export const markDone = ({ id }, done = true) => tick(id, done);
