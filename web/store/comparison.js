// The ways in which the open job could be made, side by side, as the core finds them one after the other. They are looked
// for only while somebody looks at them.
import { batch, effect, signal } from '../vendor/signals.mjs';
import { ask, coreState, stopAsking } from '../boot/core.js';
import { about, unpriced } from './answers.js';
import { job } from './session.js';
import { settings } from './settings.js';

// {about, groups, looked, isDone, problems, failed}: what is known of the job as `about` has it, or null.
const latest = signal(null);
export const comparison = latest;
export const isOfNow = () => latest.value?.about === about.value;

function take(mine, { ok, problems = [] }, isDone) {
  latest.value = { about: mine, groups: ok?.groups ?? [], looked: ok?.looked ?? false, problems, isDone, failed: null };
}

async function look(mine) {
  const hear = ({ soFar }) => { if (soFar && mine === about.value) take(mine, soFar, false); };
  const question = { do: 'compare', job: unpriced(job.value), words: settings.value.words };
  try {
    const reply = await ask(question, { replaces: 'compare', hear });
    if (!reply.superseded && mine === about.value) take(mine, reply, !reply.unfinished);
  } catch (error) {
    if (mine === about.value) latest.value = { about: mine, groups: [], looked: false, problems: [], isDone: true, failed: error.message };
  }
}

const SETTLED = 150; // ms without a change before the core is asked

/** Begins to look, and to look again after every change; gives what ends it. */
export function startComparing() {
  let timer;
  const dispose = effect(() => {
    const mine = about.value;
    clearTimeout(timer);
    if (!mine || coreState.value.phase !== 'ready') return;
    timer = setTimeout(look, SETTLED, mine);
  });
  return () => batch(() => {
    clearTimeout(timer);
    dispose();
    stopAsking('compare');
  });
}
