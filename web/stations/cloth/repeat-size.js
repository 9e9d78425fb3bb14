// How large the repeat of a cloth is drawn: as it was taped; a direction that does not repeat is as long as the other.
import { placeOf } from '../../parts/readings.js';
import { valueAt } from '../../store/pointer.js';
import { readings } from '../../store/readings.js';
import { job } from '../../store/session.js';

const drawn = (text) => (readings.value && text ? placeOf(readings.value, text) : null) || undefined;

/** {across, along, drop} in nm, of a square repeat where nothing is taped. */
export function repeatSize(cloth) {
  const { across, along, drop } = valueAt(job.value, `${cloth}/repeat`) ?? {};
  const size = { across: drawn(across) ?? drawn(along) ?? 1, along: drawn(along) ?? drawn(across) ?? 1 };
  return { ...size, drop: drawn(drop) ?? 0 };
}
