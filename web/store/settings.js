// The maker's settings, kept in the database and set on the page: words, light, usual units, currency and paper.
import { effect, signal } from '../vendor/signals.mjs';
import { transact } from './database.js';

// Where offices use US Letter; A4 everywhere else.
const LETTER = ['US', 'CA', 'MX'];
const paper = LETTER.includes(new Intl.Locale(navigator.language).maximize().region) ? 'letter' : 'a4';

const FIRST = { words: 'en-GB', light: 'phone', units: 'in', currency: 'USD', paper, kept: null };

export const settings = signal(FIRST);

const AGAIN = 3000; // ms until what could not be kept is tried again

const read = (name) => transact(['settings'], 'readonly', (all) => all.objectStore('settings').get(name));

// What is not kept yet, by its name: only the last value counts.
const waiting = new Map();

async function keepOne(name, value) {
  await transact(['settings'], 'readwrite', (all) => all.objectStore('settings').put(value, name));
  if (waiting.get(name) === value) waiting.delete(name);
}

// Keeps what waits. What cannot be kept still holds until the app is closed, and is tried again.
export async function keepSettings() {
  try {
    await Promise.all([...waiting].map(([name, value]) => keepOne(name, value)));
  } catch {
    setTimeout(keepSettings, AGAIN);
  }
}

function write(name, value) {
  waiting.set(name, value);
  return keepSettings();
}

export async function readSettings() {
  settings.value = { ...FIRST, ...(await read('settings')) };
}

export function set(name, value) {
  settings.value = { ...settings.value, [name]: value };
  return write('settings', settings.value);
}

// Where the maker stood last: see place.js.
export const readPlace = () => read('place');
export const writePlace = (place) => write('place', place);

// Light is one attribute of the page, absent where the phone decides; the style sheets do the rest.
export function startLight() {
  effect(() => {
    const { light } = settings.value;
    if (light === 'phone') delete document.documentElement.dataset.light;
    else document.documentElement.dataset.light = light;
  });
  effect(() => { document.documentElement.lang = settings.value.words; });
}
