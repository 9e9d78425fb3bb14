// How far the answer is: waiting for the arithmetic, a first plan, an answer from before the last change, or none.
import { html } from '../../parts/html.js';
import { Notice } from '../../parts/notice.js';
import { coreState, retryCore } from '../../boot/core.js';
import { answer, isCurrent, planError } from '../../store/answers.js';
import { say } from '../../words/words.js';
import { troubles } from '../problems.js';

function words() {
  if (isCurrent.value || troubles.value.length > 0) return null;
  const waiting = coreState.value.phase === 'starting' ? say('cut.waiting') : say('cut.working');
  return answer.value ? `${say('cut.old')} ${waiting}` : waiting;
}

const TryAgain = () => html`<button type="button" class="button" onClick=${retryCore}>${say('home.again')}</button>`;

export function State() {
  const { phase, code } = coreState.value;
  if (phase === 'failed') {
    return html`<${Notice} level="warn" text=${say(`core.${code}`)} /><${TryAgain} />
      ${answer.value && !isCurrent.value && html`<p class="note">${say('cut.old')}</p>`}`;
  }
  if (planError.value) return html`<${Notice} level="stop" text=${say('cut.failed', { reason: planError.value.message })} />`;
  return html`<p class="note cut-state" role="status">${words()}</p>`;
}
