// What comes next while measuring: the first measure still missing, then the cover.
import { valueAt } from '../../store/pointer.js';
import { job, openJob } from '../../store/session.js';
import { go, inJob, moveTo, place } from '../../store/place.js';
import { say } from '../../words/words.js';
import { isField, nameOf } from '../catalogue.js';

const at = (station, field) => inJob(openJob.value.id, station, field);

// From one measure to the next Back need not retrace each, so the step of history is the same.
const travel = (there) => (isField(place.value.field ?? '') ? moveTo(there) : go(there));

const step = (word, there, values) => ({ name: say(word, values), go: () => travel(there) });

const MEASURES = [['measure.width', '/insert/width'], ['measure.height', '/insert/length']];

function missingOf(cushion) {
  return MEASURES.find(([, name]) => valueAt(job.value, cushion + name) === undefined);
}

const toCover = (cushion) => step('measure.cover', at('cover', cushion));

// The next step from the list of cushions.
export function nextStep(cushion) {
  if (!cushion) return toCover('');
  const missing = missingOf(cushion);
  if (missing) return step(missing[0], at('measure', cushion + missing[1]));
  return nextCushion(cushion) ?? toCover(cushion);
}

function nextCushion(cushion) {
  const other = job.value.cushions.map(({ id }) => `/cushions/${id}`).find((path) => path !== cushion && missingOf(path));
  return other && step('measure.nextCushion', at('measure', `${other}/insert/width`), { cushion: nameOf(job.value, other) });
}

// The next step from a measure that has just been taken.
export function stepAfter(cushion, name) {
  if (name === 'width') return step('measure.height', at('measure', `${cushion}/insert/length`));
  if (name === 'length') return step('measure.howMany', at('measure', `${cushion}/quantity`));
  return nextCushion(cushion) ?? toCover(cushion);
}
