// The counter: one screen for one hand. What to ask for, where that tips, and the three things to check on the spot.
import { html } from '../../parts/html.js';
import { Figure, Fractions } from '../../parts/figure.js';
import { useAwake } from '../../parts/awake.js';
import { answer, isCurrent } from '../../store/answers.js';
import { openJob } from '../../store/session.js';
import { inJob, moveTo } from '../../store/place.js';
import { lastOf } from '../../store/pointer.js';
import { say } from '../../words/words.js';
import { Chooser, chosenIn, entryPaths } from '../chooser.js';
import { Bought } from '../cut/bought.js';
import { calledIn } from '../cut/called.js';
import { useFullPlan } from '../cut/full-plan.js';
import { State } from '../cut/state.js';
import { Troubles } from '../cut/troubles.js';
import { Checks } from './checks.js';
import { ToShow } from './to-show.js';
import { Tips } from './tips.js';

// Both systems and the price, each large enough to be read at arm's length.
function Asked({ cloth }) {
  const { ask, cost } = cloth;
  return html`<section class="counter-ask" aria-label=${calledIn('/cloths', cloth.cloth)}>
    <h2 class="ask-for">${say('cut.ask')} <span class="ask-cloth">${calledIn('/cloths', cloth.cloth)}</span></h2>
    <p class="ask-figure" role="status"><${Figure} text=${ask.text} size="xl" muted=${!isCurrent.value} /></p>
    <p class="counter-beside"><span><${Fractions} text=${ask.other} /></span>
      ${cost && html`<span>${say('cut.cost', cost)}</span>`}</p>
  </section>`;
}

const answered = (path) => answer.value?.cloths.find(({ cloth }) => cloth === lastOf(path));

export function Counter({ field }) {
  useFullPlan();
  useAwake();
  const path = chosenIn('/cloths', field);
  const cloth = path && answered(path);
  return html`<main class="screen-body counter">
      <${Chooser} paths=${entryPaths('/cloths')} chosen=${path} onChoose=${(to) => moveTo(inJob(openJob.value.id, 'counter', to))} />
      ${cloth && html`<${Asked} cloth=${cloth} />`}
      <${Troubles} />
      <${State} />
      ${cloth && html`<${Tips} cloth=${cloth} /><${ToShow} cloth=${cloth} />`}
      ${path && html`<${Bought} cloth=${path} />`}
    </main>
    ${path && html`<${Checks} cloth=${path} />`}`;
}
