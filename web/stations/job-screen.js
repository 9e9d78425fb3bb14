// The frame around a station: the head with Back and Undo, the tabs, the station itself, and the field that is open.
import { html } from '../parts/html.js';
import { Icon } from '../parts/icon.js';
import { job, openJob, redo, undo } from '../store/session.js';
import { addressOf, back, go, inJob, place } from '../store/place.js';
import { entryOf, isReachable } from '../store/pointer.js';
import { set, settings } from '../store/settings.js';
import { say } from '../words/words.js';
import { isField, isView, nameOf } from './catalogue.js';
import { EntrySheet } from './entry-sheet.js';
import { stations } from './list.js';
import { SaveTrouble } from './save-trouble.js';

const Sign = ({ name, word, onPress }) => html`
  <button type="button" class="icon-button" aria-label=${say(word)} onClick=${onPress}><${Icon} name=${name} /></button>`;

// The cushion that is chosen on one station is the one the next begins with.
function keptChoice(station) {
  const entry = entryOf(place.value.field ?? '');
  return entry.startsWith('/cushions/') && ['measure', 'cover', 'make'].includes(station) ? entry : '';
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

// While a measure is taken the cushion's name stands above, the job's beneath.
function titles(field) {
  const name = job.value.name || say('home.unnamed');
  return field && isView(field) && isReachable(job.value, field) ? [nameOf(job.value, entryOf(field)), name] : [name];
}

function SunSwitch() {
  const isSun = settings.value.light === 'sun';
  return html`<button type="button" class="icon-button" aria-label=${say('cut.sun')} aria-pressed=${String(isSun)}
    onClick=${() => set('light', isSun ? 'phone' : 'sun')}><${Icon} name="sun" /></button>`;
}

function Head({ station, field }) {
  const { done, undone } = openJob.value;
  const [title, note] = titles(field);
  return html`<header class="screen-head">
    <${Sign} name="back" word="job.back" onPress=${back} />
    <div class="screen-title"><h1 class="job-name">${title}</h1>${note && html`<p class="screen-note job-name">${note}</p>`}</div>
    ${undone.length > 0 && html`<${Sign} name="redo" word="job.redo" onPress=${redo} />`}
    ${['cut', 'counter', 'compare'].includes(station) && html`<${SunSwitch} />`}
    ${done.length > 0 && html`<${Sign} name="undo" word="job.undo" onPress=${undo} />`}
  </header>`;
}

export function JobScreen() {
  const { station, field } = place.value;
  const { Screen, within } = stations.find(({ id }) => id === station) ?? stations[0];
  const open = field && isField(field) && !isView(field) && isReachable(job.value, field) ? field : null;
  return html`<div class="screen job-screen">
    <${Head} station=${station} field=${field} />
    ${!within && html`<nav class="stations" aria-label=${say('job.stations')}>
      ${stations.filter((one) => !one.within).map(({ id }) => html`<${Tab} key=${id} station=${id} current=${id === station} />`)}
    </nav>`}
    <${SaveTrouble} />
    <${Screen} field=${field} />
    ${open && html`<${EntrySheet} key=${open} at=${open} />`}
  </div>`;
}
