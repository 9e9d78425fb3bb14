// Whether the browser promises to keep what is stored (fault B16): asked once, at the first save; shown in the settings.
import { effect, signal } from '../vendor/signals.mjs';
import { openJob } from './session.js';
import { set, settings } from './settings.js';

// {used, quota} in whole MB, or null where the browser does not say.
export const room = signal(null);

const MEGABYTE = 1_000_000;

export async function measureRoom() {
  const estimate = await navigator.storage?.estimate?.().catch(() => undefined);
  if (!estimate) return;
  room.value = { used: Math.ceil(estimate.usage / MEGABYTE), quota: Math.floor(estimate.quota / MEGABYTE) };
}

// true or false as the browser answers; null where it cannot be asked.
export async function askToKeep() {
  const kept = await navigator.storage?.persist?.().catch(() => null);
  await set('kept', kept ?? null);
}

export function startKeeping() {
  let asked = false;
  effect(() => {
    if (asked || !openJob.value?.revision || settings.value.kept === true) return;
    asked = true;
    askToKeep();
  });
}
