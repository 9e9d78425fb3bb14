// The sheet in which one field is set: the entry that fits its kind, what is wrong with it, Done and Leave out.
import { html } from '../parts/html.js';
import { Sheet } from '../parts/sheet.js';
import { entryOf, valueAt } from '../store/pointer.js';
import { job, openJob } from '../store/session.js';
import { inJob, lookAt, place } from '../store/place.js';
import { say } from '../words/words.js';
import { hintOf, kindOf, labelOf } from './catalogue.js';
import { ENTRIES } from './entries/list.js';
import { Problems } from './field.js';
import { clearField } from './setting.js';

// What a job cannot be without is changed, never left out.
const NEEDED = /^\/units$|\/(quantity|kind|shape|notches)$|\/(front|back)\/cloth$|\/price\/(per|currency)$|\/(rates|operations)\/\w+\/per$|\/items\/\d+\/amount$/;
const isNeeded = (at) => NEEDED.test(at) && !/\/(edge|closure|corners|made)\/kind$/.test(at);

// What the entry starts from: nothing where the field is set side by side by fields of their own.
function plainValue(at) {
  const value = valueAt(job.value, at);
  return typeof value === 'object' ? undefined : value;
}

function Bar({ at, close }) {
  const leaveOut = () => {
    clearField(at);
    close();
  };
  return html`
    ${!isNeeded(at) && valueAt(job.value, at) !== undefined && html`
      <button type="button" class="button" onClick=${leaveOut}>${say('job.leaveOut')}</button>`}
    <button type="button" class="button-primary" onClick=${close}>${say('job.done')}</button>`;
}

// The sheet stands on the lower edge of the screen, so what is wrong is told above the keys: they must not move away
// under the thumb while the answer to the last key comes in.
export function EntrySheet({ at }) {
  const close = () => lookAt(inJob(openJob.value.id, place.value.station, entryOf(at)));
  const Entry = ENTRIES[kindOf(at)];
  const hint = hintOf(job.value, at);
  return html`<${Sheet} title=${labelOf(job.value, at)} onClose=${close} footer=${html`<${Bar} at=${at} close=${close} />`}>
    <div class="entry stack">
      ${hint && html`<p class="note">${hint}</p>`}
      <${Problems} at=${at} />
      <${Entry} at=${at} label=${labelOf(job.value, at)} value=${plainValue(at)} />
    </div>
  <//>`;
}
