// One cloth's lay plan, drawn; its cuts in order, its panels and what is left over. Straight cuts come first where they
// buy no more, and a plan that saves a step is offered beside them.
import { html, useState } from '../../parts/html.js';
import { Choice } from '../../parts/choice.js';
import { Fractions } from '../../parts/figure.js';
import { PlanDrawing } from '../../parts/plan-drawing.js';
import { Row } from '../../parts/row.js';
import { say } from '../../words/words.js';
import { calledIn } from './called.js';
import { Fields } from '../field.js';

const STRAIGHT = 'straight';
const INTERLOCKED = 'interlocked';

const buysNoMore = (cloth) => cloth.straight?.buy.nm === cloth.buy.nm;

function PlanChoice({ cloth, shown, onShow }) {
  const options = [
    { value: STRAIGHT, text: say('cut.straight'), hint: say('cut.takes', { length: cloth.straight.laid.text }) },
    { value: INTERLOCKED, text: say('cut.interlocked'), hint: say('cut.takes', { length: cloth.laid.text }) },
  ];
  return html`<${Choice} label=${say('cut.choosePlan')} hideLabel layout="grid" options=${options} value=${shown} onInput=${onShow} />`;
}

const Step = ({ title, text }) => html`<li class="row step"><p class="step-title">${title}</p>
  <p class="step-text"><${Fractions} text=${text} /></p></li>`;

const Cuts = ({ straight }) => html`<section class="stack"><h3 class="section-title">${say('cut.order')}</h3>
  <ol class="card card-rows rows steps">${straight.steps.map((step) => html`<${Step} key=${step.title} ...${step} />`)}</ol></section>`;

const panelName = ({ count, label, cushion }) =>
  say('cut.panel', { count, label, cushion: calledIn('/cushions', cushion) });

const Panels = ({ pieces }) => html`<${Fields} title=${say('cut.panels')}>
  ${pieces.map((piece) => html`<${Row} key=${piece.id} label=${panelName(piece)} value=${piece.size} />`)}<//>`;

/** The pieces left over, those of one size together: [size, how many]. */
function bySize(offcuts) {
  const alike = new Map();
  for (const offcut of offcuts) {
    alike.set(offcut.size, (alike.get(offcut.size) ?? 0) + 1);
  }
  return [...alike];
}

const Offcuts = ({ offcuts }) => html`<${Fields} title=${say('cut.offcuts')}>
  ${offcuts.length === 0 && html`<p class="note">${say('cut.noOffcuts')}</p>`}
  ${bySize(offcuts).map(([size, count]) => html`<${Row} key=${size} label=${say('cut.offcut', { count })} value=${size} />`)}<//>`;

export function OnePlan({ cloth, pieces }) {
  const [shown, setShown] = useState(null);
  const which = shown ?? (buysNoMore(cloth) ? STRAIGHT : INTERLOCKED);
  const isStraight = which === STRAIGHT && cloth.straight;
  const drawn = isStraight ? { ...cloth, ...cloth.straight } : cloth;
  const differs = cloth.straight && cloth.straight.laid.nm !== cloth.laid.nm;
  return html`<section class="one-plan stack">
    <h2 class="section-title">${say('cut.plan')} · ${calledIn('/cloths', cloth.cloth)}</h2>
    ${differs && html`<${PlanChoice} cloth=${cloth} shown=${which} onShow=${setShown} />`}
    <${PlanDrawing} cloth=${drawn} plan=${isStraight ? cloth.straight : undefined} />
    ${isStraight && html`<${Cuts} straight=${cloth.straight} />`}
    <${Panels} pieces=${pieces.filter((piece) => piece.cloth === cloth.cloth)} />
    <${Offcuts} offcuts=${drawn.offcuts} />
  </section>`;
}
