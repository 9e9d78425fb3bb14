// Going to a field: to what a station takes itself by a step of history, to a sheet by the sheet's own.
import { openJob } from '../store/session.js';
import { go, inJob, lookAt, moveTo, place } from '../store/place.js';
import { entryOf } from '../store/pointer.js';
import { isField, isView, stationOf } from './catalogue.js';

const at = (station, field) => inJob(openJob.value.id, station, field);

// Shows a cushion, a cloth or a view of the station that is open. Back from a view leads to its own cushion.
export function show(path) {
  const { station, field } = place.value;
  if (isView(path) && !isView(field ?? '')) moveTo(at(station, entryOf(path)));
  go(at(station, path));
}

// Opens a field of the station that is open.
export const open = (path) => (isView(path) ? show(path) : lookAt(at(place.value.station, path)));

const PLACES = [[/^\/cloths/, 'cloth'], [/^\/quote/, 'price'], [/^\/cushions\/[^/]+\/cover/, 'cover'], [/^/, 'measure']];
const stationFor = (path) => stationOf(path) ?? PLACES.find(([pattern]) => pattern.test(path))[1];

// Goes to a field wherever it is; to its cushion or cloth where the path names no field.
export function visit(path) {
  const station = stationFor(path);
  go(at(station, entryOf(path)));
  if (isField(path)) open(path);
}
