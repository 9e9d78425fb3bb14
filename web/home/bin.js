// Jobs deleted of late: the last one can be brought back on the spot, all of them for thirty days.
import { html, useState } from '../parts/html.js';
import { Icon } from '../parts/icon.js';
import { Sheet } from '../parts/sheet.js';
import { bringBack, jobsInBin } from '../store/shelf.js';
import { say } from '../words/words.js';
import { jobName } from './job-card.js';

const Back = ({ record, onPress }) => html`<button type="button" class="button tool" onClick=${onPress}>
  <${Icon} name="undo" />${say('home.undoDelete', { job: jobName(record) })}</button>`;

export function Bin() {
  const [open, setOpen] = useState(false);
  const deleted = [...jobsInBin.value].sort((one, other) => other.deleted - one.deleted);
  if (deleted.length === 0 && !open) return null;
  return html`
    ${deleted.length > 0 && html`<${Back} record=${deleted[0]} onPress=${() => bringBack(deleted[0].id)} />`}
    ${deleted.length > 1 && html`<button type="button" class="button-plain" onClick=${() => setOpen(true)}>${say('home.bin')}</button>`}
    ${open && html`<${Sheet} title=${say('home.bin')} onClose=${() => setOpen(false)}><div class="stack">
      <p class="note">${deleted.length > 0 ? say('home.binHint') : say('home.binEmpty')}</p>
      ${deleted.map((record) => html`<${Back} key=${record.id} record=${record} onPress=${() => bringBack(record.id)} />`)}
    </div><//>`}`;
}
