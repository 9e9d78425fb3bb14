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

const VERDICTS = { true: 'bought.enough', false: 'bought.short', null: 'bought.open' };

function Verdict({ bought }) {
  return html`<div role="status" class="stack">
    <p class="in-hand-answer">${say(VERDICTS[bought.enough])}</p>
    <p><${Fractions} text=${bought.text} /></p>
    ${bought.paid_text && html`<p><${Fractions} text=${bought.paid_text} /></p>`}</div>`;
}

// `cloth` is its path in the job.
export function Bought({ cloth }) {
  const told = isCurrent.value && answer.value?.cloths.find((entry) => entry.cloth === lastOf(cloth))?.bought;
  const title = say('cloth.boughts', { cloth: nameOf(job.value, cloth) });
  const isTold = ['bought', 'approved'].some((name) => valueAt(job.value, `${cloth}/${name}`) !== undefined);
  return html`<section aria-label=${title}><details class="folded stack" open=${isTold}>
    <summary class="section-title fold">${title}<${Icon} name="down" size=${20} /></summary>
    <p class="note">${say('cloth.boughtsHint')}</p>
    ${told && html`<${Verdict} bought=${told} />`}
    <${Entries} list=${`${cloth}/bought`} isHeaded=${false} />
    <${Rows}><${Field} at=${`${cloth}/approved`} none=${say('bought.notYet')} /><//>
  </details></section>`;
}
