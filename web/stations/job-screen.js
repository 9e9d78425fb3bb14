// The frame around a station: the head with Back and Undo, the tabs, the station itself, and the field that is open.
import { html } from '../parts/html.js';
import { Icon } from '../parts/icon.js';
import { job, openJob, redo, undo } from '../store/session.js';
import { addressOf, back, go, inJob, place } from '../store/place.js';
import { entryOf } from '../store/pointer.js';
import { say } from '../words/words.js';
import { isField } from './catalogue.js';
import { EntrySheet } from './entry-sheet.js';
import { stations } from './list.js';
import { SaveTrouble } from './save-trouble.js';

const Sign = ({ name, word, onPress }) => html`
  <button type="button" class="icon-button" aria-label=${say(word)} onClick=${onPress}><${Icon} name=${name} /></button>`;

// The cushion that is chosen on one station is the one the next begins with.
function keptChoice(station) {
  const entry = entryOf(place.value.field ?? '');
  return entry.startsWith('/cushions/') && ['measure', 'cover'].includes(station) ? entry : '';
}

// A link by which a person may also open the station in a new tab; a plain press stays in this one.
function Tab({ station, current }) {
  const there = inJob(openJob.value.id, station, keptChoice(station));
  const press = (event) => {
    if (event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    go(there);
  };
  return html`<a href=${addressOf(there)} aria-current=${current ? 'page' : undefined} onClick=${press}>
    ${say(`job.${station}`)}</a>`;
}

function Head() {
  const { done, undone } = openJob.value;
  return html`<header class="screen-head">
    <${Sign} name="back" word="job.back" onPress=${back} />
    <div class="screen-title"><h1 class="job-name">${job.value.name || say('home.unnamed')}</h1></div>
    ${undone.length > 0 && html`<${Sign} name="redo" word="job.redo" onPress=${redo} />`}
    ${done.length > 0 && html`<${Sign} name="undo" word="job.undo" onPress=${undo} />`}
  </header>`;
}

export function JobScreen() {
  const { station, field } = place.value;
  const { Screen, holds } = stations.find(({ id }) => id === station) ?? stations[0];
  const open = field && isField(field) ? field : null;
  return html`<div class="screen job-screen">
    <${Head} />
    <nav class="stations" aria-label=${say('job.stations')}>
      ${stations.map(({ id }) => html`<${Tab} key=${id} station=${id} current=${id === station} />`)}
    </nav>
    <${SaveTrouble} />
    <${Screen} field=${field} />
    ${open && !holds?.(open) && html`<${EntrySheet} key=${open} at=${open} />`}
  </div>`;
}
