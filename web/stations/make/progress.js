// How far the making of a cover is: the steps of its sheet that are ticked off. They are kept beside the job.
import { tick, ticked } from '../../store/ticks.js';
import { changedSince } from '../changed-since.js';

export const isDone = ({ id }) => ticked.value.includes(id);

export const countDone = ({ steps }) => steps.filter(isDone).length;

/** The first step that is not done yet; undefined once all are. */
export const nextOf = ({ steps }) => steps.find((step) => !isDone(step));

const readsAs = ({ figure, text }) => [figure, text].filter(Boolean).join('. ');

export const markDone = (step, done = true) => tick(step.id, done, readsAs(step));

/** What is said of a step that was done when it read otherwise. */
export const problemOf = (step) => changedSince(step.id, readsAs(step));
