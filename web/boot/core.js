// The page's side of the Python worker: starts it, watches over its start, and brings it questions.
import { signal } from '../vendor/signals.mjs';
import { brokenStarts, forgetFailures, noteFailure, noteStart } from './starts.js';

const STARTING = { phase: 'starting', whole: false, code: '', detail: '' };

/** {phase: 'starting' | 'ready' | 'failed', whole, code, detail}: `whole` once every module was imported, `code`
 *  why it failed ('slow' | 'broken' | 'twice'), `detail` what was heard of it, not meant for the maker. */
export const coreState = signal(STARTING);

const PATIENCE = 90_000; // ms without any sign of life; a slow phone on a slow line needs most of it

let worker = null;
let timer = 0;
let number = 0;
const asked = new Map(); // the questions without a reply, by number

/** Ask the core; resolves with its reply, or with {superseded: true} once a newer question has the same `replaces`.
 *  While a plan is looked for, `hear` is told {progress} and {soFar}, the reply as it stands. Rejects if Python failed. */
export function ask(request, { replaces = '', hear = () => {} } = {}) {
  if (coreState.value.phase === 'failed') return Promise.reject(failure());
  return new Promise((resolve, reject) => {
    for (const [id, older] of asked) {
      if (replaces && older.replaces === replaces) settle(id, { superseded: true });
    }
    asked.set(++number, { request, replaces, hear, resolve, reject });
    if (coreState.value.phase === 'ready') send(number);
  });
}

/** Content oneself with the reply as it stands: it ends the question with that `replaces`. */
export function stopAsking(replaces) {
  for (const [id, entry] of asked) {
    if (entry.replaces === replaces) worker.postMessage({ stop: id });
  }
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

function hear({ state, id, broken, ...told }) {
  if (broken) fail('broken', broken);
  else if (id) hearOf(id, told);
  else if (state === 'ready') {
    clearTimeout(timer);
    forgetFailures();
    coreState.value = { ...STARTING, phase: 'ready' };
    for (const waiting of asked.keys()) send(waiting);
  } else if (state === 'whole') coreState.value = { ...coreState.value, whole: true };
  else watchOver();
}

function hearOf(id, { reply, error, ...onTheWay }) {
  if (error) settle(id, Promise.reject(new Error(error)));
  else if (reply) settle(id, reply);
  else asked.get(id)?.hear(onTheWay);
}

function settle(id, reply) {
  asked.get(id)?.resolve(reply);
  asked.delete(id);
}

const send = (id) => worker.postMessage({ id, request: asked.get(id).request });

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
  for (const { reject } of asked.values()) reject(failure());
  asked.clear();
}
