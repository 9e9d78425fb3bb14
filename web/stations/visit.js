// Going to a field: to what a station takes itself by a step of history, to a sheet by the sheet's own.
import { openJob } from '../store/session.js';
import { go, inJob, lookAt, place } from '../store/place.js';
import { entryOf } from '../store/pointer.js';
import { isField, isView, stationOf } from './catalogue.js';

const at = (station, field) => inJob(openJob.value.id, station, field);

// Shows a cushion, a cloth or a view of the station that is open.
export const show = (path) => go(at(place.value.station, path));

// Opens a field of the station that is open.
export const open = (path) => (isView(path) ? show(path) : lookAt(at(place.value.station, path)));

const stationFor = (path) => stationOf(path) ?? (path.startsWith('/cloths') ? 'cloth' : 'measure');

// Goes to a field wherever it is; to its cushion or cloth where the path names no field.
export function visit(path) {
  const station = stationFor(path);
  go(at(station, isView(path) ? path : entryOf(path)));
  if (isField(path) && !isView(path)) lookAt(at(station, path));
}
