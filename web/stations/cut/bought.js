// What was cut of a cloth and paid: each length, what the core makes of them, and whether the client approved.
import { html } from '../../parts/html.js';
import { Fractions } from '../../parts/figure.js';
import { Icon } from '../../parts/icon.js';
import { Rows } from '../../parts/row.js';
import { answer, isCurrent } from '../../store/answers.js';
import { lastOf, valueAt } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { say } from '../../words/words.js';
import { nameOf } from '../catalogue.js';
import { Entries } from '../cloth/entries.js';
import { Field } from '../field.js';
import { addEntry } from '../setting.js';

const VERDICTS = { true: 'bought.enough', false: 'bought.short', null: 'bought.open' };

function Verdict({ bought }) {
  return html`<div role="status" class="stack">
    <p class="in-hand-answer">${say(VERDICTS[bought.enough])}</p>
    <p><${Fractions} text=${bought.text} /></p>
    ${bought.paid_text && html`<p><${Fractions} text=${bought.paid_text} /></p>`}</div>`;
}

// One tap where the shop cut what it was asked for, in the words of the shop.
function AsAsked({ cloth, ask }) {
  const length = ask.text;
  return html`<button type="button" class="button" onClick=${() => addEntry(`${cloth}/bought`, { length })}>
    <${Icon} name="check" />${say('cloth.asAsked', { length })}</button>`;
}

// `cloth` is its path in the job.
export function Bought({ cloth }) {
  const answered = isCurrent.value && answer.value?.cloths.find((entry) => entry.cloth === lastOf(cloth));
  const told = answered && answered.bought;
  const title = say('cloth.boughts', { cloth: nameOf(job.value, cloth) });
  const isTold = ['bought', 'approved'].some((name) => valueAt(job.value, `${cloth}/${name}`) !== undefined);
  return html`<section aria-label=${title}><details class="folded stack" open=${isTold}>
    <summary class="section-title fold">${title}<${Icon} name="down" size=${20} /></summary>
    <p class="note">${say('cloth.boughtsHint')}</p>
    ${told && html`<${Verdict} bought=${told} />`}
    ${answered && !valueAt(job.value, `${cloth}/bought`) && html`<${AsAsked} cloth=${cloth} ask=${answered.ask} />`}
    <${Entries} list=${`${cloth}/bought`} isHeaded=${false} />
    <${Rows}><${Field} at=${`${cloth}/approved`} none=${say('bought.notYet')} /><//>
  </details></section>`;
}
