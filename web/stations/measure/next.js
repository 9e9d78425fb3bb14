// What comes next while measuring: the first measure still missing, then the cover.
import { job, openJob } from '../../store/session.js';
import { go, inJob, moveTo, place } from '../../store/place.js';
import { say } from '../../words/words.js';
import { isField, labelKey, nameOf, placesIn } from '../catalogue.js';
import { measurePaths, missingMeasure } from '../kinds.js';

const at = (station, field) => inJob(openJob.value.id, station, field);

// From one measure to the next Back need not retrace each, so the step of history is the same.
const travel = (there) => (isField(place.value.field ?? '') ? moveTo(there) : go(there));

const step = (word, there, values) => ({ name: say(word, values), go: () => travel(there) });

const toMeasure = (path) => step(`next:${labelKey(job.value, path)}`, at('measure', path), placesIn(job.value, path));

const toCover = (cushion) => step('measure.cover', at('cover', cushion));

// The next step from the list of cushions.
export function nextStep(cushion) {
  if (!cushion) return toCover('');
  const missing = missingMeasure(job.value, cushion);
  if (missing) return toMeasure(missing);
  return nextCushion(cushion) ?? toCover(cushion);
}

function nextCushion(cushion) {
  const other = job.value.cushions.map(({ id }) => `/cushions/${id}`).find((path) => path !== cushion && missingMeasure(job.value, path));
  return other && step('measure.nextCushion', at('measure', measurePaths(job.value, other)[0]), { cushion: nameOf(job.value, other) });
}

// The next step from a measure that has just been taken, or from how many there are.
export function stepAfter(cushion, path) {
  const measures = measurePaths(job.value, cushion);
  const next = measures[measures.indexOf(path) + 1];
  if (path === `${cushion}/quantity`) return nextCushion(cushion) ?? toCover(cushion);
  return next ? toMeasure(next) : step('measure.howMany', at('measure', `${cushion}/quantity`));
}
