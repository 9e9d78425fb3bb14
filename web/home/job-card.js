// One job on the list: its name, its covers, its last answer and when; and the sheet of what can be done with it.
import { html, useState } from '../parts/html.js';
import { Fractions } from '../parts/figure.js';
import { Icon } from '../parts/icon.js';
import { coversOf } from '../store/shelf.js';
import { settings } from '../store/settings.js';
import { go, inJob } from '../store/place.js';
import { say } from '../words/words.js';
import { JobTools } from './job-tools.js';

export const jobName = ({ job }) => job.name || say('home.unnamed');

// What was last asked for; it no longer holds once the job has changed since.
function lastAnswer({ last, revision }) {
  if (!last || last.revision !== revision) return say('home.notAsked');
  return last.asks.map(({ ask, cloth }) => say('home.ask', { ask, cloth })).join(', ');
}

const when = (time) => new Intl.DateTimeFormat(settings.value.words, { day: 'numeric', month: 'short' }).format(time);

export function JobCard({ record }) {
  const [open, setOpen] = useState(false);
  const name = jobName(record);
  return html`<li class="card job-card">
    <button type="button" class="job-open" onClick=${() => go(inJob(record.id, 'measure'))}>
      <span class="job-name">${name}</span>
      <span class="note">${say('home.covers', { count: coversOf(record.job) })} · ${when(record.updated)}</span>
      <span class="job-answer"><${Fractions} text=${lastAnswer(record)} /></span>
    </button>
    <button type="button" class="icon-button icon-button-plain" aria-label=${say('home.more', { job: name })}
      onClick=${() => setOpen(true)}><${Icon} name="more" /></button>
    ${open && html`<${JobTools} record=${record} name=${name} onClose=${() => setOpen(false)} />`}
  </li>`;
}
