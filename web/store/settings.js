// The maker's settings, kept in the database and set on the page: words, light, usual units and currency.
import { effect, signal } from '../vendor/signals.mjs';
import { transact } from './database.js';

const FIRST = { words: 'en-GB', light: 'phone', units: 'in', currency: 'USD', kept: null };

export const settings = signal(FIRST);

const read = (name) => transact(['settings'], 'readonly', (all) => all.objectStore('settings').get(name));
const write = (name, value) => transact(['settings'], 'readwrite', (all) => all.objectStore('settings').put(value, name));

export async function readSettings() {
  settings.value = { ...FIRST, ...(await read('settings')) };
}

// A setting that cannot be kept still holds until the app is closed; the store says elsewhere that it is in trouble.
export function set(name, value) {
  settings.value = { ...settings.value, [name]: value };
  return write('settings', settings.value).catch(() => undefined);
}

// Where the maker stood last: see place.js.
export const readPlace = () => read('place');
export const writePlace = (place) => write('place', place).catch(() => undefined);

// Light is one attribute of the page, absent where the phone decides; the style sheets do the rest.
export function startLight() {
  effect(() => {
    const { light } = settings.value;
    if (light === 'phone') delete document.documentElement.dataset.light;
    else document.documentElement.dataset.light = light;
  });
  effect(() => { document.documentElement.lang = settings.value.words; });
}
