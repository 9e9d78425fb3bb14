// Gives the screens their words in the language that is set: say('home.newJob'), say('home.covers', {count: 6}).
import { controls, fields } from './controls.js';
import { partWords } from '../parts/words.js';
import { computed, effect } from '../vendor/signals.mjs';
import { settings } from '../store/settings.js';
import british from './en-GB.js';
import american from './en-US.js';

// A language is one table; what a table leaves out is said in the first language.
export const languages = { 'en-GB': british, 'en-US': american };

// The names of all controls and fields as one more table of the first language: "home.newJob", "field:/name",
// "option:/units=in", "choice:settings.light=sun".
function namesOfControls() {
  const table = {};
  for (const [screen, names] of Object.entries(controls)) {
    for (const [key, [, name]] of Object.entries(names)) {
      if (typeof name === 'string') table[`${screen}.${key}`] = name;
      else for (const [value, text] of Object.entries(name)) table[`choice:${screen}.${key}=${value}`] = text;
    }
  }
  for (const [path, { name, names, options }] of Object.entries(fields)) {
    table[`field:${path}`] = name;
    for (const [kind, text] of Object.entries(names ?? {})) table[`field:${path}=${kind}`] = text;
    for (const [value, text] of Object.entries(options ?? {})) table[`option:${path}=${value}`] = text;
  }
  return table;
}

const first = { ...british.words, ...namesOfControls() };
// A language says a key by its own words, or by its own text for what the key is in the first language.
const words = computed(() => {
  const { words: own, texts = {} } = languages[settings.value.words];
  return Object.fromEntries(Object.entries(first).map(([key, text]) => [key, own[key] ?? texts[text] ?? text]));
});
const firstParts = partWords.value;

// A word of a table is a text with {places}, or a function of the values where number matters ("1 cover", "2 covers").
export function say(key, values = {}) {
  const word = words.value[key];
  if (word === undefined) throw new Error(`no word for “${key}”`);
  if (typeof word === 'function') return word(values);
  return word.replace(/\{(\w+)\}/g, (place, name) => values[name] ?? place);
}

export const has = (key) => Object.hasOwn(words.value, key);

// The parts of the screen keep their own words; a language may replace them under `parts`.
export const startWords = () =>
  effect(() => { partWords.value = { ...firstParts, ...languages[settings.value.words].parts }; });
