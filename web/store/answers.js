// The answer to the open job: the kept one at once where the job is unchanged, else the core's, quick first, then full.
import { computed, effect, signal, untracked } from '../vendor/signals.mjs';
import { ask, coreState } from '../boot/core.js';
import { readAnswer, writeAnswer } from './record.js';
import { job, openJob } from './session.js';
import { note } from './shelf.js';

// {id, about, effort, answer | null, problems}: `about` is the text of the document that was answered.
export const latest = signal(null);
export const planning = signal(false);
export const planError = signal(null);

// The full plan is worth its time only while somebody looks at it.
export const wantsFull = signal(false);

const about = computed(() => (job.value ? JSON.stringify(job.value) : null));

// The answer of the open job, be it of its last state or of one before; and whether it is of the last.
export const answer = computed(() => (latest.value?.id === openJob.value?.id ? latest.value?.answer ?? null : null));
export const problems = computed(() => (isCurrent.value ? latest.value.problems : []));
export const isCurrent = computed(() => latest.value !== null && latest.value.about === about.value);
// What the core says of each cushion: also while nothing is known of the cloth yet.
export const workedCushions = computed(() =>
  (latest.value?.id === openJob.value?.id ? latest.value?.cushions ?? answer.value?.cushions ?? [] : []));

// The answer while it holds or is about to be renewed, for the usual values that stand beside the fields.
export const nearAnswer = computed(() => (problems.value.length === 0 ? answer.value : null));
export const isFull = computed(() => isCurrent.value && latest.value.effort !== 'quick');

const SETTLED = 400; // ms without a change before the core is asked

async function recall(id) {
  const kept = await readAnswer(id).catch(() => undefined);
  if (kept && openJob.value?.id === id && !isCurrent.value) {
    latest.value = { ...kept, effort: kept.effort === 'full' ? 'kept' : 'quick', problems: [] };
  }
}

async function request(effort) {
  const { id, job: document, revision } = openJob.value;
  const text = JSON.stringify(document);
  const reply = await ask({ do: 'plan', job: document, effort }, { replaces: 'plan' });
  if (reply.superseded || openJob.value?.id !== id) return;
  const kept = answer.value;
  latest.value = { id, about: text, effort, answer: reply.ok ?? kept, cushions: reply.ok?.cushions ?? reply.cushions,
    problems: reply.problems ?? [] };
  if (reply.ok) await keep({ id, about: text, effort, answer: reply.ok }, revision);
}

// What is kept for the next start, and what the list of jobs says of it. Not keeping it costs a second's wait, no more.
async function keep(kept, revision) {
  const asks = kept.answer.cloths.map(({ ask: { text: length }, name }) => ({ ask: length, cloth: name }));
  await Promise.all([writeAnswer(kept), note(kept.id, { last: { revision, asks } })]).catch(() => undefined);
}

async function plan() {
  if (planning.value) return;
  planning.value = true;
  try {
    for (let effort = next(); effort; effort = next()) await request(effort);
    planError.value = null;
  } catch (error) {
    planError.value = error.message;
  } finally {
    planning.value = false;
  }
}

// What is still to be asked: nothing, 'quick' or 'full'. A kept answer is asked for again, unseen, in case the
// core has learned better since.
function next() {
  if (!job.value || coreState.value.phase !== 'ready') return null;
  if (!isCurrent.value) return 'quick';
  return wantsFull.value && latest.value.effort !== 'full' && latest.value.problems.length === 0 ? 'full' : null;
}

export function startAnswers() {
  let timer;
  effect(() => {
    const wanted = next();
    const trouble = coreState.value.phase === 'failed';
    clearTimeout(timer);
    if (wanted && !trouble && !planning.value) timer = setTimeout(plan, wanted === 'full' ? 0 : SETTLED);
  });
  effect(() => {
    const id = openJob.value?.id;
    untracked(() => { if (id && latest.value?.id !== id) recall(id); });
  });
}
