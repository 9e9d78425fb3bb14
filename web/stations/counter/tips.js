// Where the length to ask for tips: for each value a small diagram of steps, and each tip beside the own step in a sentence.
import { html } from '../../parts/html.js';
import { Fractions } from '../../parts/figure.js';
import { StepDiagram } from '../../parts/step-diagram.js';
import { isCurrent, isDone } from '../../store/answers.js';
import { say } from '../../words/words.js';

const FIELDS = ['width', 'repeat.along', 'size'];

function Tip({ field, steps }) {
  const sentences = steps.map(({ text }) => text).filter(Boolean);
  return html`<section class="tip stack">
    <h3 class="section-title">${say(`counter.of.${field}`)}</h3>
    <${StepDiagram} steps=${steps} none=${say('counter.noPlan')} here=${say('counter.here')} />
    ${sentences.map((text) => html`<p key=${text} class="tip-text"><${Fractions} text=${text} /></p>`)}
    ${!steps.every(({ proven }) => proven) && html`<p class="note">${say('counter.unproven')}</p>`}
  </section>`;
}

function words(isFound) {
  if (isFound) return say('counter.steady');
  return isCurrent.value ? say('counter.looking') : null;
}

// An answer kept from an older core has no tips.
export function Tips({ cloth }) {
  const found = cloth.tipping ?? [];
  const told = FIELDS.map((field) => ({ field, steps: found.filter((entry) => entry.field === field) }))
    .filter(({ steps }) => steps.length > 1);
  if (told.length === 0) return html`<p class="note" role="status">${words(isDone.value || found.length > 0)}</p>`;
  return told.map((tip) => html`<${Tip} key=${tip.field} ...${tip} />`);
}
