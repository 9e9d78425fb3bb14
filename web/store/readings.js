// The table of tape readings the build took from the core: both texts and the spoken words, ready before Python is.
import { signal } from '../vendor/signals.mjs';

// null until it is here.
export const readings = signal(null);

export async function fetchReadings() {
  const reply = await fetch(new URL('../readings.json', import.meta.url));
  if (!reply.ok) throw new Error(`readings.json: ${reply.status}`);
  readings.value = await reply.json();
}
