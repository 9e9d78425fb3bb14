// Brings in a job from a file: checked whole first; refused with the reason, or kept in one step, and never over another
// job unasked. The picker takes any file, since phones grey out what a filter does not know (fault B25).
import { html, useRef, useState } from '../parts/html.js';
import { Icon } from '../parts/icon.js';
import { Notice } from '../parts/notice.js';
import { Sheet } from '../parts/sheet.js';
import { put } from '../store/changes.js';
import { FileRefused, readJobFile } from '../store/files.js';
import { closeJob, edit, openById, openNew } from '../store/session.js';
import { bringBack, newJobId, records } from '../store/shelf.js';
import { say } from '../words/words.js';

const nameOf = (job) => job.name || say('home.unnamed');

async function keepNew(job) {
  await openNew(job);
  await closeJob();
}

// Replacing is a step like any other of the job that was here: its Undo brings the old one back.
async function replace(job) {
  await bringBack(job.id);
  await openById(job.id);
  edit([put('', job)]);
  await closeJob();
}

function Twice({ job, onChoose, onClose }) {
  const choose = (work) => () => {
    onClose();
    onChoose(work);
  };
  return html`<${Sheet} title=${say('file.twice')} onClose=${onClose}><div class="stack">
    <p>${say('file.twiceHint', { job: nameOf(job) })}</p>
    <button type="button" class="button" onClick=${choose(() => keepNew({ ...job, id: newJobId() }))}>${say('home.keepBoth')}</button>
    <button type="button" class="button" onClick=${choose(() => replace(job))}>${say('home.replace')}</button>
  </div><//>`;
}

// A refusal with the reason in lines, or what was brought in.
function Told({ told }) {
  if (!told) return null;
  return html`<${Notice} level=${told.level} text=${told.text}>
    ${told.reasons?.map((reason) => html`<p key=${reason} class="note">${reason}</p>`)}<//>`;
}

export function BringIn() {
  const picker = useRef(null);
  const [told, setTold] = useState(null);
  const [twice, setTwice] = useState(null);

  const keep = async (job, checked, work) => {
    await work();
    setTold({ level: 'info', text: say('file.done', { job: nameOf(job) }), reasons: checked ? [] : [say('file.unchecked')] });
  };
  const take = async (file) => {
    setTold({ level: 'info', text: say('file.checking', { file: file.name }) });
    try {
      const { job, checked } = await readJobFile(file);
      if (!records.value.some(({ id }) => id === job.id)) return await keep(job, checked, () => keepNew(job));
      setTold(null);
      return setTwice({ job, checked });
    } catch (error) {
      if (!(error instanceof FileRefused)) throw error;
      return setTold({ level: 'stop', text: say('file.refused', { file: file.name }), reasons: error.message.split('\n') });
    }
  };
  const onPick = (event) => {
    const [file] = event.target.files;
    event.target.value = '';
    if (file) take(file);
  };
  return html`<div class="stack">
    <input ref=${picker} type="file" hidden aria-label=${say('home.bringIn')} onChange=${onPick} />
    <button type="button" class="button tool" onClick=${() => picker.current.click()}><${Icon} name="upload" />${say('home.bringIn')}</button>
    <div role="status"><${Told} told=${told} /></div>
    ${twice && html`<${Twice} job=${twice.job} onClose=${() => setTwice(null)}
      onChoose=${(work) => keep(twice.job, twice.checked, work)} />`}
  </div>`;
}
