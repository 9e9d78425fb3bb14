// The price of the open job, for the lengths that its answer buys: asked for while somebody looks at it.
import { computed, effect, signal } from '../vendor/signals.mjs';
import { ask, coreState } from '../boot/core.js';
import { answer, isCurrent } from './answers.js';
import { job, openJob } from './session.js';
import { settings } from './settings.js';

export const wantsPrice = signal(false);

// {id, about, price, problems}: `about` is the question that was answered, as text.
const latest = signal(null);
const boughtIn = ({ cloths }) => Object.fromEntries(cloths.map(({ cloth, buy }) => [cloth, buy.nm]));

// What there is to ask, as text; null while no length is known that could be charged.
const question = computed(() => (job.value && answer.value && isCurrent.value
  ? JSON.stringify({ do: 'quote', job: job.value, bought: boughtIn(answer.value), words: settings.value.words }) : null));

const isOfThisJob = computed(() => latest.value !== null && latest.value.id === openJob.value?.id);
/** Whether the price is that of the job as it stands. */
export const isPriced = computed(() => isOfThisJob.value && latest.value.about === question.value);
/** The price of the open job, be it of its last state or of one before; null where there is none yet. */
export const price = computed(() => (isOfThisJob.value ? latest.value.price : null));
/** What keeps the job from being priced, in the form of the core's problems. */
export const priceProblems = computed(() => (isPriced.value ? latest.value.problems : []));

async function request(about) {
  const { id } = openJob.value;
  const reply = await ask(JSON.parse(about), { replaces: 'quote' });
  if (reply.superseded || openJob.value?.id !== id) return;
  latest.value = { id, about, price: reply.ok ?? price.value, problems: reply.problems ?? [] };
}

export function startPrices() {
  effect(() => {
    const about = question.value;
    if (wantsPrice.value && about && coreState.value.phase === 'ready' && !isPriced.value) request(about).catch(() => undefined);
  });
}
