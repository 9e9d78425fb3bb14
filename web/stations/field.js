// One line of a station: a field's name and value, opening its entry, with what is wrong with it beneath.
import { html } from '../parts/html.js';
import { Fractions } from '../parts/figure.js';
import { Icon } from '../parts/icon.js';
import { Row, Rows } from '../parts/row.js';
import { parentOf } from '../store/pointer.js';
import { job } from '../store/session.js';
import { say } from '../words/words.js';
import { kindOf, labelOf, shownValue, usualValue } from './catalogue.js';
import { problemsAt } from './problems.js';
import { isShown } from './shown.js';
import { open } from './visit.js';

// What is wrong with an outline as a whole stands at the line that opens it.
const placesOf = (at) => (kindOf(at) === 'outline' ? [at, `${parentOf(at)}/sides`, `${parentOf(at)}/diagonals`] : [at]);

export const problemText = (at) => placesOf(at).flatMap(problemsAt).map(({ text }) => text).join(' ') || undefined;

export function Problems({ at }) {
  return problemsAt(at).map(({ code, text }) => html`<p key=${code} class="field-problem">
    <${Icon} name="warn" size=${20} /><span><${Fractions} text=${text} /></span></p>`);
}

// What stands on a line whose field is not set: `usual` is what holds then, where it follows from the rest of the job and
// the core has said it; `none` is the word where nothing does.
export function Field({ at, none, usual = usualValue(job.value, at) }) {
  if (!isShown(job.value, at)) return null;
  const value = shownValue(job.value, at);
  return html`<${Row} label=${labelOf(job.value, at)} value=${value ?? none ?? (usual && say('job.usualIs', { value: usual }))}
    muted=${value === undefined} problem=${problemText(at)} onOpen=${() => open(at)} />`;
}

export function Fields({ title, children }) {
  return html`<section class="stack"><h2 class="section-title">${title}</h2><${Rows}>${children}<//></section>`;
}

export const isWrong = (at) => problemText(at) !== undefined;
const isSaid = (at) => shownValue(job.value, at) !== undefined || isWrong(at);

// Fields that few jobs need: folded away until one of them is set or found wrong, or the heading is touched; those that
// a rate card always sets open only when one is wrong (`opens`). What else belongs to them comes beneath as `children`,
// `isTold` where that is set by itself; a `note` says what they are for.
export function Folded({ title, fields, none, note, isTold, opens = isSaid, children }) {
  const shown = fields.filter((at) => isShown(job.value, at));
  if (shown.length === 0) return null;
  const told = isTold || shown.some(opens);
  return html`<details class="folded stack" open=${told}><summary class="section-title fold">${title}<${Icon} name="down" size=${20} /></summary>
    ${note && html`<p class="note">${note}</p>`}
    <${Rows}>${shown.map((at) => html`<${Field} key=${at} at=${at} none=${none} />`)}<//>${children}</details>`;
}
