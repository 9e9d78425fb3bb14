// Home: the list of jobs, a new one in one tap, and whether all is ready for no signal.
import { html, useRef, useState } from '../parts/html.js';
import { Icon } from '../parts/icon.js';
import { Sheet } from '../parts/sheet.js';
import { jobsOnShelf, records } from '../store/shelf.js';
import { openNew } from '../store/session.js';
import { go, inJob } from '../store/place.js';
import { newJob } from '../stations/new-job.js';
import { SaveTrouble } from '../stations/save-trouble.js';
import { say } from '../words/words.js';
import { Bin } from './bin.js';
import { BringIn } from './bring-in.js';
import { JobCard } from './job-card.js';
import { Readiness } from './readiness.js';

async function begin(sizeFrom) {
  const job = newJob(sizeFrom);
  await openNew(job);
  go(inJob(job.id, 'measure'));
  go(inJob(job.id, 'measure', '/cushions/c1/insert/width'));
}

// The first question: from the pads, or from the size that is wanted?
function FirstQuestion({ onClose }) {
  const answer = useRef(null);
  const one = (value, word, hint) => html`<button type="button" class="button first-choice" aria-label=${say(word)}
    aria-describedby="first-${value}" onClick=${() => { answer.current = value; onClose(); }}><span>${say(word)}</span>
    <span class="note" id="first-${value}">${say(hint)}</span></button>`;
  return html`<${Sheet} title=${say('home.firstQuestion')} onClose=${onClose} onClosed=${() => answer.current && begin(answer.current)}>
    <div class="stack">${one('insert', 'home.padsInHand', 'home.padsHint')}${one('finished', 'home.sizeWanted', 'home.sizeHint')}</div>
  <//>`;
}

const Empty = () => html`<div class="empty"><${Icon} name="tape" size=${56} /><p class="lead">${say('home.empty')}</p>
  ${matchMedia('(display-mode: standalone)').matches && html`<p class="note">${say('home.installedEmpty')}</p>`}</div>`;

function Jobs() {
  if (records.value === null) return html`<p class="note">${say('home.reading')}</p>`;
  if (jobsOnShelf.value.length === 0) return html`<${Empty} />`;
  return html`<ul class="jobs">${jobsOnShelf.value.map((record) => html`<${JobCard} key=${record.id} record=${record} />`)}</ul>`;
}

export function Home() {
  const [asking, setAsking] = useState(false);
  return html`<div class="screen home">
    <header class="screen-head">
      <div class="screen-title"><h1>${say('app.name')}</h1><p class="screen-note">${say('app.lead')}</p></div>
      <button type="button" class="icon-button" aria-label=${say('home.settings')} onClick=${() => go({ screen: 'settings' })}>
        <${Icon} name="settings" /></button>
    </header>
    <${SaveTrouble} />
    <main class="screen-body">
      <${Readiness} />
      <${Jobs} />
      <div class="home-tools"><${BringIn} /><${Bin} /></div>
    </main>
    <footer class="action-bar">
      <button type="button" class="button-primary" onClick=${() => setAsking(true)}><${Icon} name="plus" />${say('home.newJob')}</button>
    </footer>
    ${asking && html`<${FirstQuestion} onClose=${() => setAsking(false)} />`}
  </div>`;
}
