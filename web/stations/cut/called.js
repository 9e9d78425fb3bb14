// What a cushion or cloth of the answer is called: the maker's own name, else its number; its id once it has gone.
import { valueAt } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { nameOf } from '../catalogue.js';

export function calledIn(list, id) {
  const path = `${list}/${id}`;
  return valueAt(job.value, path) ? nameOf(job.value, path) : id;
}
