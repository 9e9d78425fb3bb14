// The length to ask for, the largest thing on the screen: in the shop's own step, in the other system, and its cost.
import { html } from '../../parts/html.js';
import { Figure, Fractions } from '../../parts/figure.js';
import { isCurrent } from '../../store/answers.js';
import { say } from '../../words/words.js';
import { calledIn } from './called.js';

function Beside({ ask, cost }) {
  const other = say('cut.or', { other: ask.other });
  const text = cost ? `${other} · ${say('cut.cost', cost)}` : other;
  return html`<p class="ask-beside"><${Fractions} text=${text} /></p>`;
}

// `cloth` is one of the answer's cloths; its name stands above the figure where there are `several`.
export function Ask({ cloth, several }) {
  return html`<section class="ask" aria-label=${calledIn('/cloths', cloth.cloth)}>
    <h2 class="ask-for">${say('cut.ask')}${several && html` <span class="ask-cloth">${calledIn('/cloths', cloth.cloth)}</span>`}</h2>
    <p class="ask-figure" role="status"><${Figure} text=${cloth.ask.text} size="xl" muted=${!isCurrent.value} /></p>
    <${Beside} ask=${cloth.ask} cost=${cloth.cost} />
    ${cloth.proof?.text && isCurrent.value && html`<p class="ask-proof"><${Fractions} text=${cloth.proof.text} /></p>`}
  </section>`;
}
