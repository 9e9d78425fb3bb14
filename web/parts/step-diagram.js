// What is bought as a value grows, in steps side by side: what to ask for stands on each, where it tips between them.
//
// StepDiagram({steps, none, here})
//   steps   entries of an answer's tipping, from the least value on: {ask, buy, at, own, text}
//   none    words for a step without a plan; here: words for the one the job stands on
// A step is as high as the length it stands for; how wide it is says nothing.
import { html } from './html.js';
import { Fractions } from './figure.js';

const LEAST = 24; // % of the height, so that every step can be seen

function heights(steps) {
  const most = Math.max(...steps.map(({ buy }) => buy?.nm ?? 0));
  return steps.map(({ buy }) => (buy ? Math.max(LEAST, (100 * buy.nm) / most) : 100));
}

// The tip between two steps is told by the one of them that is not the own.
const edgesOf = (steps) => steps.slice(1).map((step, index) => step.at ?? steps[index].at);

function Step({ step, height, none, here }) {
  const kind = `step-column${step.own ? ' step-own' : ''}${step.buy ? '' : ' step-none'}`;
  return html`<div class=${kind} style=${{ '--rise': `${height}%` }}><span class="step-bar">
    <span class="step-ask">${step.buy ? html`<${Fractions} text=${step.ask} />` : none}</span>
    ${step.own && html`<span class="step-here">${here}</span>`}</span></div>`;
}

export function StepDiagram({ steps, none, here }) {
  const rises = heights(steps);
  const words = steps.map(({ text }) => text).filter(Boolean).join(' ');
  return html`<div class="steps-drawn" role="img" aria-label=${words}>
    <div class="step-columns">${steps.map((step, index) => html`<${Step} key=${index} step=${step} height=${rises[index]} none=${none} here=${here} />`)}</div>
    <div class="step-edges">${edgesOf(steps).map((edge, index) => html`<span key=${index} style=${{ left: `${(100 * (index + 1)) / steps.length}%` }}>
      <${Fractions} text=${edge} /></span>`)}</div>
  </div>`;
}
