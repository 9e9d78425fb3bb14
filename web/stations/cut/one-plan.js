// One cloth's lay plan, drawn; its cuts in order, its panels and what is left over. Straight cuts come first where they
// buy no more, and a plan that saves a step is offered beside them.
import { useAfterwards } from '../../parts/afterwards.js';
import { html, useMemo, useState } from '../../parts/html.js';
import { Choice } from '../../parts/choice.js';
import { Fractions } from '../../parts/figure.js';
import { PlanDrawing } from '../../parts/plan-drawing.js';
import { Row } from '../../parts/row.js';
import { say } from '../../words/words.js';
import { calledIn } from './called.js';
import { Fields } from '../field.js';
import { firstPlan, repeatIn } from '../printed.js';
import { OnCushions } from './on-cushions.js';

const STRAIGHT = 'straight';
const INTERLOCKED = 'interlocked';

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

/** Which of its plans is shown: the one that was chosen, else the straight one where it buys no more. */
const whichOf = (cloth, chosen) =>
  ((chosen ?? (firstPlan(cloth) === cloth ? INTERLOCKED : STRAIGHT)) === STRAIGHT ? cloth.straight : undefined);

function Drawn({ cloth, chosen, onChoose }) {
  const straight = whichOf(cloth, chosen);
  const drawn = useMemo(() => (straight ? { ...cloth, ...straight } : cloth), [cloth, straight]);
  const differs = cloth.straight && cloth.straight.laid.nm !== cloth.laid.nm;
  return html`${differs && html`<${PlanChoice} cloth=${cloth} shown=${straight ? STRAIGHT : INTERLOCKED} onShow=${onChoose} />`}
    <${PlanDrawing} cloth=${drawn} plan=${straight} repeat=${repeatIn(drawn, cloth.cloth)} />`;
}

function Listed({ cloth, chosen, pieces }) {
  const straight = whichOf(cloth, chosen);
  return html`<${OnCushions} plan=${straight ?? cloth} cloth=${cloth.cloth} />
    ${straight && html`<${Cuts} straight=${straight} />`}
    <${Panels} pieces=${pieces.filter((piece) => piece.cloth === cloth.cloth)} />
    <${Offcuts} offcuts=${(straight ?? cloth).offcuts} />`;
}

export function OnePlan({ cloth: newest, pieces }) {
  const [chosen, setChosen] = useState(null);
  const cloth = useAfterwards(newest);
  const listed = useAfterwards(cloth);
  return html`<section class="one-plan stack">
    <h2 class="section-title">${say('cut.plan')} · ${calledIn('/cloths', newest.cloth)}</h2>
    ${cloth && html`<${Drawn} cloth=${cloth} chosen=${chosen} onChoose=${setChosen} />`}
    ${listed && html`<${Listed} cloth=${listed} chosen=${chosen} pieces=${pieces} />`}
  </section>`;
}
