// The page's side of the service worker: has the app saved for use without signal, and offers updates.
import { effect, signal } from '../vendor/signals.mjs';
import { coreState } from './core.js';

/** {phase: 'none' | 'saving' | 'verified' | 'failed', done, total, update: 'none' | 'waiting' | 'failed',
 *  code}. 'verified' is said only after every file was found whole in the cache and every module of the
 *  core was imported (faults B26, B30). `code`: '' | 'unsafe' | 'full' | 'broken' | 'core'. A failed update leaves the phase alone: the build that runs is as whole as before. */
export const offlineState = signal({ phase: 'none', done: 0, total: 0, update: 'none', code: '' });

const note = (changes) => (offlineState.value = { ...offlineState.peek(), ...changes });
const fail = (code) => note({ phase: 'failed', code });

const isKept = signal(false); // every file of this build is in the cache, whole
let registration = null;
let reason = 'broken'; // why the last save failed

/** Save the app for use without signal. Call it once; it never holds up or breaks the page. */
export async function startOffline() {
  const { serviceWorker } = navigator;
  if (!serviceWorker) return note({ code: 'unsafe' });
  const wasControlled = Boolean(serviceWorker.controller);
  serviceWorker.addEventListener('message', ({ data }) => hear(data));
  serviceWorker.addEventListener('controllerchange', () => wasControlled && location.reload());
  effect(sayWhetherVerified);
  serviceWorker.ready.then(({ active }) => check(active));
  if (!wasControlled) await coreSettled(); // or the two would download the same files at once
  addEventListener('online', connect);
  document.addEventListener('visibilitychange', () => document.hidden || connect());
  return connect();
}

/** Let the newer build take over; the page reloads once it has. */
export function acceptUpdate() {
  if (registration?.waiting) registration.waiting.postMessage({ do: 'takeOver' });
  else registration?.active?.postMessage({ do: 'change' });
}

function coreSettled() {
  return new Promise((resolve) => coreState.subscribe(({ phase }) => phase !== 'starting' && resolve()));
}

/** Register, or look for a newer build; without signal, what is kept goes on serving. */
async function connect() {
  try {
    const address = new URL('../sw.js', import.meta.url);
    const found = await navigator.serviceWorker.register(address, { updateViaCache: 'none' });
    if (found !== registration) {
      registration = found;
      registration.addEventListener('updatefound', () => watch(registration.installing));
      watch(registration.installing);
    }
    if (registration.waiting) note({ update: 'waiting' });
    await registration.update();
  } catch {
    if (!registration?.active && !navigator.serviceWorker.controller) fail(reason);
  }
}

function watch(worker) {
  if (!worker) return;
  reason = 'broken';
  const isUpdate = Boolean(registration.active);
  worker.addEventListener('statechange', () => {
    if (worker.state === 'installed' && isUpdate) note({ update: 'waiting' });
    if (worker.state !== 'redundant' || worker === registration.active) return;
    if (isUpdate) note({ update: registration.waiting ? 'waiting' : 'failed' });
    else fail(reason);
  });
}

function hear({ offline, done, total, reason: why }) {
  if (offline === 'changed') location.reload();
  if (offline === 'failed') reason = why;
  if (offline === 'saving' && !isKept.peek() && !registration?.active) note({ phase: 'saving', done, total });
}

/** Have the worker look at every file it holds, and fetch again what is missing. */
function check(worker) {
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = ({ data: { missing, total, isNewest } }) => {
    note({ done: total - missing.length, total, ...(!isNewest && { update: 'waiting' }) });
    if (missing.length) fail('broken');
    else isKept.value = true;
  };
  worker.postMessage({ do: 'verify' }, [port2]);
}

function sayWhetherVerified() {
  const { phase, whole } = coreState.value;
  if (!isKept.value) return;
  if (whole) {
    note({ phase: 'verified', code: '' });
    navigator.storage?.persist?.();
  } else if (phase === 'failed') fail('core');
}
