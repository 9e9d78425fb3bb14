// The answer to the open job: the kept one at once where the job is unchanged, else the core's first plan, and while
// somebody looks at it ever shorter ones.
import { batch, computed, effect, signal, untracked } from '../vendor/signals.mjs';
import { ask, coreState, stopAsking } from '../boot/core.js';
import { readAnswer, writeAnswer } from './record.js';
import { job, openJob } from './session.js';
import { settings } from './settings.js';
import { note } from './shelf.js';

// {id, about, effort, answer | null, problems}: `about` is what was answered, the document and its words, `effort` is
// 'quick', 'full', 'kept' from last time, or while a search goes on 'soFar', and 'stopped' once it was ended early.
export const latest = signal(null);
// What the core is at: {id, about, effort}, or null; and how far it is with it: {thousandths, cloths}, or null.
const asking = signal(null);
const heard = signal(null);
// Why the last question failed: {about, message}, or null. It is not asked again by itself.
export const planError = signal(null);

// The full plan is worth its time only while somebody looks at it.
export const wantsFull = signal(false);

// The same job in other words has another answer.
// No plan looks at the price, so that a change of it plans nothing anew.
export const unpriced = ({ quote: _quote, ...document }) => document;
const inWords = (document) => `${settings.value.words} ${JSON.stringify(unpriced(document))}`;
export const about = computed(() => (job.value ? inWords(job.value) : null));

// The answer of the open job, be it of its last state or of one before; and whether it is of the last.
export const answer = computed(() => (latest.value?.id === openJob.value?.id ? latest.value?.answer ?? null : null));
export const problems = computed(() => (isCurrent.value ? latest.value.problems : []));
export const isCurrent = computed(() => latest.value !== null && latest.value.about === about.value);
// What the core says of each cushion: also while nothing is known of the cloth yet.
export const workedCushions = computed(() =>
  (latest.value?.id === openJob.value?.id ? latest.value?.cushions ?? answer.value?.cushions ?? [] : []));

// The answer while it holds or is about to be renewed, for the usual values that stand beside the fields.
export const nearAnswer = computed(() => (problems.value.length === 0 ? answer.value : null));
const OF_TODAY = ['full', 'stopped'];
export const isDone = computed(() => isCurrent.value && [...OF_TODAY, 'kept'].includes(latest.value.effort));

// How far the search for a shorter plan is while its answer is shown, else null; and whether it was ended early.
export const looking = computed(() => (isCurrent.value && latest.value.effort === 'soFar' ? heard.value : null));
export const isStopped = computed(() => isCurrent.value && latest.value.effort === 'stopped');

const SETTLED = 400; // ms without a change before the core is asked

async function recall(id) {
  const kept = await readAnswer(id).catch(() => undefined);
  if (kept && openJob.value?.id === id && !isCurrent.value) {
    latest.value = { ...kept, effort: OF_TODAY.includes(kept.effort) ? 'kept' : 'quick', problems: [] };
  }
}

function take({ id, about: text, effort }, reply) {
  const kept = answer.value;
  latest.value = { id, about: text, effort, answer: reply.ok ?? kept, cushions: reply.ok?.cushions ?? reply.cushions,
    problems: reply.problems ?? [] };
}

// A better answer while the search goes on. One kept from last time gives way only to the whole answer.
function hear(mine, { soFar, progress }) {
  if (asking.value !== mine || mine.about !== about.value || isDone.value) return;
  if (progress) heard.value = progress;
  if (!soFar) return;
  const isFirst = !isCurrent.value || latest.value.effort !== 'soFar';
  take({ ...mine, effort: 'soFar' }, soFar);
  if (isFirst) keep({ ...mine, effort: 'soFar' }, soFar);
}

async function request(effort) {
  const { id, job: document, revision } = openJob.value;
  const mine = { id, about: inWords(document), effort, revision };
  const question = { do: 'plan', job: unpriced(document), effort, tips: true, words: settings.value.words };
  asking.value = mine;
  try {
    const reply = await ask(question, { replaces: 'plan', hear: (told) => hear(mine, told) });
    if (asking.value !== mine) return;
    settle(reply.unfinished ? { ...mine, effort: 'stopped' } : mine, reply);
  } catch (error) {
    if (asking.value !== mine) return;
    batch(() => {
      planError.value = { about: mine.about, message: error.message };
      asking.value = null;
    });
  }
}

function start(effort) {
  heard.value = null;
  request(effort);
}

function settle(mine, reply) {
  batch(() => {
    asking.value = null;
    if (openJob.value?.id === mine.id) take(mine, reply);
  });
  if (reply.ok) keep(mine, reply);
}

// Ends the search with the plan it has come to; goOn takes it up again, where it was unless another was begun since.
export const stopLooking = () => stopAsking('plan');
export const goOn = () => batch(() => {
  latest.value = { ...latest.value, effort: 'soFar' };
  request('full');
});

// What is kept for the next start, and what the list of jobs says of it. Not keeping it costs a second's wait, no more.
async function keep({ id, about: text, effort, revision }, { ok }) {
  const asks = ok.cloths.map(({ ask: { text: length }, name }) => ({ ask: length, cloth: name }));
  await Promise.all([writeAnswer({ id, about: text, effort, answer: ok }), note(id, { last: { revision, asks } })])
    .catch(() => undefined);
}

// What is still to be asked: nothing, 'quick' or 'full'. A kept answer is asked for again, unseen, in case the
// core has learned better since.
function next() {
  if (!job.value || coreState.value.phase !== 'ready' || planError.value?.about === about.value) return null;
  const isUnderWay = asking.value?.about === about.value;
  if (!wantsFull.value) return isUnderWay || isCurrent.value ? null : 'quick';
  if (isUnderWay && asking.value.effort === 'full') return null;
  return isCurrent.value && (OF_TODAY.includes(latest.value.effort) || latest.value.problems.length > 0) ? null : 'full';
}

export function startAnswers() {
  let timer;
  effect(() => {
    const wanted = next();
    clearTimeout(timer);
    if (wanted) timer = setTimeout(start, isCurrent.value ? 0 : SETTLED, wanted);
  });
  effect(() => { if (coreState.value.phase !== 'ready') planError.value = null; });
  effect(() => {
    const id = openJob.value?.id;
    untracked(() => { if (id && latest.value?.id !== id) recall(id); });
  });
}
