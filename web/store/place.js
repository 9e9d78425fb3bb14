// Where the maker stands: a screen, a job, a station, a field. Each has an address, so that Back goes back (fault B21).
import { signal } from '../vendor/signals.mjs';
import { readPlace, writePlace } from './settings.js';

// {screen: 'home' | 'settings' | 'job', id?, station?, field?}; `field` is a path into the job, '' for none.
export const place = signal({ screen: 'home' });

export const HOME = { screen: 'home' };
export const inJob = (id, station, field = '') => ({ screen: 'job', id, station, field });

export function addressOf({ screen, id, station, field }) {
  if (screen !== 'job') return screen === 'home' ? '#/' : `#/${screen}`;
  return `#/job/${encodeURIComponent(id)}/${station}${encodeURI(field ?? '')}`;
}

export function placeOf(address) {
  const [screen, id, station, ...field] = address.replace(/^#\/?/, '').split('/');
  if (screen === 'job' && id && station) {
    return inJob(decodeURIComponent(id), station, decodeURI(field.map((part) => `/${part}`).join('')));
  }
  return screen === 'settings' ? { screen } : HOME;
}

function stand(next) {
  place.value = next;
  writePlace(addressOf(next));
}

export function go(next) {
  if (addressOf(next) === addressOf(place.value)) return;
  history.pushState({ deep: true }, '', addressOf(next));
  stand(next);
}

// The same step of history, elsewhere: from field to field Back need not retrace every one.
export function moveTo(next) {
  history.replaceState(history.state, '', addressOf(next));
  stand(next);
}

// The same address, looking closer: a field in a sheet, whose step of history is the sheet's own.
export const lookAt = stand;

// One step back, as the phone's own Back does it; home where there is nothing behind.
export function back() {
  if (history.state?.deep) history.back();
  else moveTo(HOME);
}

// Steps of history that lead to a place, home first: its station, then what is open there.
function trailTo(last) {
  if (last.screen !== 'job') return [last];
  return last.field ? [inJob(last.id, last.station), last] : [last];
}

// After a restart the place of last time, with home and its station behind it, so that Back leads there. An address
// that was asked for counts more, unless the last place lies deeper in it. `opensSheet(place)` tells which places
// are a sheet over their station: those bring their own step of history.
export async function resume(opensSheet) {
  const kept = (await readPlace().catch(() => undefined)) ?? '#/';
  const asked = location.hash.length > 2 ? location.hash : kept;
  const last = placeOf(kept.startsWith(asked) ? kept : asked);
  addEventListener('popstate', () => stand(placeOf(location.hash)));
  if (history.state?.sheet) history.replaceState({ deep: true }, '');
  if (last.screen !== 'home' && !history.state?.deep) {
    history.replaceState(null, '', '#/');
    for (const step of trailTo(last).filter((there) => !opensSheet(there))) {
      history.pushState({ deep: true }, '', addressOf(step));
    }
  }
  stand(last);
}
