// The one way to the browser's database: opens it, opens it again when the system has dropped it, and says why it cannot.
import { openDB } from '../vendor/idb.mjs';
import { signal } from '../vendor/signals.mjs';

const NAME = 'plumpline';
const VERSION = 2;

// null, or why nothing can be read or kept: 'blocked' by another tab, 'replaced' by a newer one, 'refused' by the browser.
export const databaseTrouble = signal(null);

let opening = null;

function upgrade(database) {
  for (const store of ['jobs', 'steps', 'answers', 'pictures']) {
    if (!database.objectStoreNames.contains(store)) database.createObjectStore(store, { keyPath: 'id' });
  }
  if (!database.objectStoreNames.contains('settings')) database.createObjectStore('settings');
}

// An open tab gives way to a newer version of the database, so that the newer one never waits (fault B19).
function giveWay(event) {
  event.target.close();
  opening = null;
  databaseTrouble.value = 'replaced';
}

async function open() {
  const connection = await openDB(NAME, VERSION, {
    upgrade,
    blocked: () => { databaseTrouble.value = 'blocked'; },
    blocking: (_old, _new, event) => giveWay(event),
    terminated: () => { opening = null; },
  });
  databaseTrouble.value = null;
  return connection;
}

function database() {
  opening ??= open().catch((error) => {
    opening = null;
    databaseTrouble.value ??= 'refused';
    throw error;
  });
  return opening;
}

// A full disk is a full disk however often it is asked.
const isFinal = (error) => error?.name === 'QuotaExceededError' || databaseTrouble.value === 'replaced';

// Does `work(transaction)` in one transaction over `stores` and waits until it is complete. WebKit drops
// connections behind the page's back (fault B18): one that fails is opened again, once.
export async function transact(stores, mode, work) {
  try {
    return await attempt(stores, mode, work);
  } catch (error) {
    if (isFinal(error)) throw error;
    await forget();
    return attempt(stores, mode, work);
  }
}

async function attempt(stores, mode, work) {
  const transaction = (await database()).transaction(stores, mode);
  // An aborted transaction reports no error of its own (fault B20), so both are waited for.
  const [result] = await Promise.all([whole(work, transaction), transaction.done]);
  return result;
}

// All of it or nothing: work that stumbles half-way takes back what it has written.
async function whole(work, transaction) {
  try {
    return await work(transaction);
  } catch (error) {
    try {
      transaction.abort();
    } catch {
      // It has ended already, by the same error.
    }
    throw error;
  }
}

async function forget() {
  const old = opening;
  opening = null;
  try {
    (await old)?.close();
  } catch {
    // It never opened: nothing to close.
  }
}
