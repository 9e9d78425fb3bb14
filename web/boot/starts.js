// Counts the starts of Python that broke off, so that one that takes the whole page down is not repeated for
// ever (fault B28).
//
// Such a start leaves no message. So a start is noted before it begins, and again when it has ended; a note of a
// start without an end means that it broke off, unless the page was left or put aside meanwhile. The notes are in
// IndexedDB, which keeps what it confirmed even if the browser is killed the next moment; only "put aside" goes to
// localStorage, because a page that is being left can no longer wait for anything.
import { openDB } from '../vendor/idb.mjs';

const ASIDE = 'plumpline-start-put-aside';
const lastAside = remembered(); // read before this page writes its own
let start = { id: '', broken: 0, state: 'good' }; // state: 'starting' | 'broken' | 'good'

/** How many starts in a row broke off before this one. */
export async function brokenStarts() {
  const last = (await notes((store) => store.get('starts', 'last'))) ?? start;
  const brokeOff = last.state === 'starting' && lastAside !== last.id;
  return last.broken + (brokeOff ? 1 : 0);
}

export async function noteStart(broken) {
  await write({ id: crypto.getRandomValues(new Uint32Array(2)).join('-'), broken, state: 'starting' });
}

/** The start failed with a message: it counts. */
export const noteFailure = () => write({ ...start, broken: start.broken + 1, state: 'broken' });

/** The start went well, or the person wants a fresh try: nothing is held against the next one. */
export const forgetFailures = () => write({ ...start, broken: 0, state: 'good' });

async function write(changed) {
  start = changed;
  await notes((store) => store.put('starts', start, 'last'));
}

async function notes(use) {
  try {
    const store = await openDB('plumpline-starts', 1, { upgrade: (base) => base.createObjectStore('starts') });
    try {
      return await use(store);
    } finally {
      store.close();
    }
  } catch {
    return undefined; // storage is switched off or full: nothing is remembered, the next start is simply tried
  }
}

function remembered() {
  try {
    return localStorage.getItem(ASIDE);
  } catch {
    return null;
  }
}

function remember(isAside) {
  try {
    if (isAside && start.state === 'starting') localStorage.setItem(ASIDE, start.id);
    else localStorage.removeItem(ASIDE);
  } catch {
    // as above
  }
}

addEventListener('pagehide', () => remember(true));
addEventListener('pageshow', () => remember(false));
document.addEventListener('visibilitychange', () => remember(document.hidden));
