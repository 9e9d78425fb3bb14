// The page's side of the Python worker: starts it, watches over its start, and queues questions for it.
import { signal } from '../vendor/signals.mjs';
import { brokenStarts, forgetFailures, noteFailure, noteStart } from './starts.js';

const STARTING = { phase: 'starting', whole: false, code: '', detail: '' };

/** {phase: 'starting' | 'ready' | 'failed', whole, code, detail}: `whole` once every module was imported, `code`
 *  why it failed ('slow' | 'broken' | 'twice'), `detail` what was heard of it, not meant for the maker. */
export const coreState = signal(STARTING);

const PATIENCE = 90_000; // ms without any sign of life; a slow phone on a slow line needs most of it

let worker = null;
let timer = 0;
let asked = null; // the question the worker is at
let queue = [];
let number = 0;

/** Ask the core; resolves with its reply, or with {superseded: true} if a newer question with the same
 *  `replaces` arrived before this one was sent. Rejects if Python failed. */
export function ask(request, { replaces = '' } = {}) {
  if (coreState.value.phase === 'failed') return Promise.reject(failure());
  return new Promise((resolve, reject) => {
    for (const older of queue.filter((entry) => replaces && entry.replaces === replaces)) {
      older.resolve({ superseded: true });
    }
    queue = queue.filter((entry) => !replaces || entry.replaces !== replaces);
    queue.push({ id: ++number, request, replaces, resolve, reject });
    sendNext();
  });
}

/** Start Python, unless its start broke off twice in a row: then say so at once and wait for retryCore(). */
export async function startCore() {
  const broken = await brokenStarts();
  if (broken >= 2) fail('twice', 'not started again');
  else await begin(broken);
}

/** Try again after a failure, because the person asked. */
export const retryCore = () => begin(0);

async function begin(broken) {
  stop();
  coreState.value = STARTING;
  await noteStart(broken);
  watchOver();
  worker = new Worker(new URL('../worker.js', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }) => hear(data));
  worker.addEventListener('error', (event) => {
    event.preventDefault();
    fail('broken', event.message || 'the worker could not be loaded');
  });
}

function hear({ state, id, reply, error, broken }) {
  if (broken) fail('broken', broken);
  else if (id) settle(id, reply, error);
  else if (state === 'ready') {
    clearTimeout(timer);
    forgetFailures();
    coreState.value = { ...STARTING, phase: 'ready' };
    sendNext();
  } else if (state === 'whole') coreState.value = { ...coreState.value, whole: true };
  else watchOver();
}

function settle(id, reply, error) {
  if (asked?.id !== id) return;
  const { resolve, reject } = asked;
  asked = null;
  if (error) reject(new Error(error));
  else resolve(reply);
  sendNext();
}

/** Short questions (a reading, a price) go before a plan, which names what it replaces and can wait. */
function sendNext() {
  if (asked || !queue.length || coreState.value.phase !== 'ready') return;
  asked = queue.find((entry) => !entry.replaces) ?? queue[0];
  queue.splice(queue.indexOf(asked), 1);
  worker.postMessage({ id: asked.id, request: asked.request });
}

function watchOver() {
  clearTimeout(timer);
  timer = setTimeout(() => fail('slow', 'no sign of life'), PATIENCE);
}

function stop() {
  clearTimeout(timer);
  worker?.terminate();
  worker = null;
}

const failure = () => new Error(`Python is not running: ${coreState.value.code}, ${coreState.value.detail}`);

function fail(code, detail) {
  stop();
  if (code !== 'twice') noteFailure();
  coreState.value = { phase: 'failed', whole: false, code, detail };
  const waiting = asked ? [asked, ...queue] : queue;
  asked = null;
  queue = [];
  for (const { reject } of waiting) reject(failure());
}
