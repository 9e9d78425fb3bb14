// Make: the workroom's sheet of one cover at a time, its steps ticked off with a finger in the order of the bench.
import { html, useEffect, useRef } from '../../parts/html.js';
import { answer, wantsFull } from '../../store/answers.js';
import { inJob, moveTo } from '../../store/place.js';
import { openJob } from '../../store/session.js';
import { say } from '../../words/words.js';
import { Chooser } from '../chooser.js';
import { Papers } from '../papers.js';
import { State } from '../cut/state.js';
import { Troubles } from '../cut/troubles.js';
import { Cautions } from './cautions.js';
import { Facts } from './facts.js';
import { Identity } from './identity.js';
import { markDone, nextOf } from './progress.js';
import { Steps } from './steps.js';

// An answer kept from an older core has no sheets: the whole one is asked for then.
function useSheets() {
  const sheets = answer.value?.workroom;
  useEffect(() => {
    wantsFull.value = Boolean(answer.value) && !sheets;
    return () => { wantsFull.value = false; };
  }, [Boolean(sheets), Boolean(answer.value)]);
  return sheets ?? [];
}

const pathOf = ({ cushion }) => `/cushions/${cushion}`;

function Bar({ sheet, body }) {
  const step = nextOf(sheet);
  const look = (what) => requestAnimationFrame(() => body.current?.querySelector(what)?.scrollIntoView({ block: 'center' }));
  const press = () => {
    markDone(step);
    look('.tick-now');
  };
  return html`<footer class="action-bar">
    <button type="button" class="button show-facts" onClick=${() => body.current.querySelector('.facts').scrollIntoView()}>${say('make.facts')}</button>
    ${step
      ? html`<button type="button" class="button-primary" onClick=${press}>${say('make.done', { step: step.title })}</button>`
      : html`<p class="make-done" role="status">${say('make.allDone')}</p>`}
  </footer>`;
}

function OneSheet({ sheet }) {
  return html`<div class="columns">
    <div class="column"><${Identity} sheet=${sheet} /><${Steps} steps=${sheet.steps} next=${nextOf(sheet)} /></div>
    <div class="column"><${Facts} sheet=${sheet} /><${Cautions} list=${sheet.cautions} />
      <${Papers} kind="sheet" first=${pathOf(sheet)} /></div>
  </div>`;
}

export function Make({ field }) {
  const body = useRef(null);
  const sheets = useSheets();
  const sheet = sheets.find((one) => pathOf(one) === field) ?? sheets[0];
  return html`<main class="screen-body make" ref=${body}>
      <${Troubles} />
      <${Chooser} paths=${sheets.map(pathOf)} chosen=${sheet && pathOf(sheet)}
        onChoose=${(path) => moveTo(inJob(openJob.value.id, 'make', path))} />
      <${State} />
      ${sheet && html`<${OneSheet} key=${sheet.cushion} sheet=${sheet} />`}
    </main>
    ${sheet && html`<${Bar} sheet=${sheet} body=${body} />`}`;
}
