// Cut: the length to ask for, how it comes about, and the lay plan with its cuts in order.
import { html, useRef } from '../../parts/html.js';
import { answer, isCurrent } from '../../store/answers.js';
import { job, openJob } from '../../store/session.js';
import { go, inJob, moveTo } from '../../store/place.js';
import { entryOf } from '../../store/pointer.js';
import { say } from '../../words/words.js';
import { Chooser, entryPaths } from '../chooser.js';
import { Papers } from '../papers.js';
import { fullName } from '../catalogue.js';
import { troubles } from '../problems.js';
import { visit } from '../visit.js';
import { Ask } from './ask.js';
import { Bought } from './bought.js';
import { useFullPlan } from './full-plan.js';
import { InHand } from './in-hand.js';
import { Looking } from './looking.js';
import { Notices } from './notices.js';
import { OnePlan } from './one-plan.js';
import { Shopping } from './shopping.js';
import { State } from './state.js';
import { Troubles } from './troubles.js';
import { Why } from './why.js';

// The cloths that have a plan, and the one of them that is looked at.
function planned(cloths, field) {
  const paths = cloths.map(({ cloth }) => `/cloths/${cloth}`);
  return { paths, chosen: paths.includes(field) ? field : paths[0] };
}

function Answer({ field }) {
  const { cloths, pieces } = answer.value;
  const { paths, chosen } = planned(cloths, field);
  const cloth = cloths[paths.indexOf(chosen)];
  return html`<div class="columns">
    <div class="column">
      ${cloths.map((entry) => html`<${Ask} key=${entry.cloth} cloth=${entry} several=${job.value.cloths.length > 1} />`)}
      <${State} />
      <button type="button" class="button" onClick=${() => go(inJob(openJob.value.id, 'counter', chosen))}>${say('counter.open')}</button>
      <button type="button" class="button" onClick=${() => go(inJob(openJob.value.id, 'compare'))}>${say('compare.open')}</button>
      ${cloths.map((entry) => html`<${InHand} key=${entry.cloth} cloth=${entry} several=${job.value.cloths.length > 1} />`)}
      <${Notices} />
      <${Shopping} />
      <${Papers} kind="templates" />
    </div>
    <div class="column">
      <${Chooser} paths=${paths} chosen=${chosen} onChoose=${(path) => moveTo(inJob(openJob.value.id, 'cut', path))} />
      ${cloth && html`<${OnePlan} key=${cloth.cloth} cloth=${cloth} pieces=${pieces} />`}
    </div>
  </div>`;
}

// The one thing to do next: settle what stands in the way, or look at the plan.
function Bar({ plan }) {
  const [first] = troubles.value;
  const show = () => plan.current?.querySelector('.one-plan')?.scrollIntoView({ block: 'start' });
  return html`<footer class="action-bar">
    <${Looking} />
    ${isCurrent.value && answer.value && !first && html`<${Why} />`}
    ${first
      ? html`<button type="button" class="button-primary" onClick=${() => visit(first.path)}>
          ${say('cut.settle', { field: fullName(job.value, first.path) })}</button>`
      : html`<button type="button" class="button-primary show-plan" disabled=${!answer.value} onClick=${show}>${say('cut.showPlan')}</button>`}
  </footer>`;
}

export function Cut({ field }) {
  const body = useRef(null);
  useFullPlan();
  return html`<main class="screen-body cut" ref=${body}>
      <${Troubles} />
      ${answer.value ? html`<${Answer} field=${entryOf(field ?? '')} />` : html`<${State} />`}
      ${entryPaths('/cloths').map((path) => html`<${Bought} key=${path} cloth=${path} />`)}
    </main>
    <${Bar} plan=${body} />`;
}
