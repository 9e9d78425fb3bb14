// One line of a station: a field's name and value, opening its entry, with what is wrong with it beneath.
import { html } from '../parts/html.js';
import { Fractions } from '../parts/figure.js';
import { Icon } from '../parts/icon.js';
import { Row, Rows } from '../parts/row.js';
import { job, openJob } from '../store/session.js';
import { go, inJob, lookAt, place } from '../store/place.js';
import { say } from '../words/words.js';
import { isShown, labelOf, shownValue } from './catalogue.js';
import { problemsAt } from './problems.js';

// Opens a field's sheet over the station, or what a station shows of a cushion by itself.
export const openSheet = (path) => lookAt(inJob(openJob.value.id, place.value.station, path));
export const openView = (path) => go(inJob(openJob.value.id, place.value.station, path));

export const problemText = (at) => problemsAt(at).map(({ text }) => text).join(' ') || undefined;

export function Problems({ at }) {
  return problemsAt(at).map(({ code, text }) => html`<p key=${code} class="field-problem">
    <${Icon} name="warn" size=${20} /><span><${Fractions} text=${text} /></span></p>`);
}

// `usual` is what holds while the field is not set, in the core's words, where it has said so.
// `usual: null` marks a field for which there is no usual, only what the maker says.
export function Field({ at, usual, onOpen = openSheet }) {
  if (!isShown(job.value, at)) return null;
  const without = usual ? say('job.usualIs', { value: usual }) : say('job.usual');
  const value = shownValue(job.value, at) ?? (usual === null ? '' : without);
  return html`<${Row} label=${labelOf(at)} value=${value} problem=${problemText(at)} onOpen=${() => onOpen(at)} />`;
}

export function Fields({ title, children }) {
  return html`<section class="stack"><h2 class="section-title">${title}</h2><${Rows}>${children}<//></section>`;
}
