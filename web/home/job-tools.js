// What can be done with a job from the list: save it as a file, duplicate it, delete it.
import { html } from '../parts/html.js';
import { Icon } from '../parts/icon.js';
import { Sheet } from '../parts/sheet.js';
import { deleteJob, newJobId } from '../store/shelf.js';
import { copyPictures } from '../store/pictures.js';
import { closeJob, openNew } from '../store/session.js';
import { jobFile } from '../store/files.js';
import { HandedOver, useHandingOver } from '../stations/handing-over.js';
import { say } from '../words/words.js';

// The copy is another order: what was cut for the first is not cut for it.
const uncut = ({ bought: _bought, approved: _approved, ...cloth }) => cloth;

async function duplicate({ job }, name) {
  const id = newJobId();
  await openNew({ ...job, cloths: job.cloths.map(uncut), id, name: say('home.copyOf', { name }) });
  await copyPictures(job.id, id);
  await closeJob();
}

async function remove({ id }) {
  await closeJob();
  await deleteJob(id);
}

const Tool = ({ icon, word, onPress }) => html`<button type="button" class="button tool" onClick=${onPress}>
  <${Icon} name=${icon} />${say(word)}</button>`;

export function JobTools({ record, name, onClose }) {
  const { told, hand, share } = useHandingOver();
  const file = jobFile(record.job);
  const then = (work) => async () => {
    onClose();
    await work(record, name);
  };
  return html`<${Sheet} title=${name} onClose=${onClose}><div class="stack">
    <${HandedOver} told=${told} />
    ${told?.outcome === 'again'
      ? html`<${Tool} icon="share" word="home.shareNow" onPress=${() => share(file)} />`
      : html`<${Tool} icon="share" word="home.share" onPress=${() => hand(file)} />`}
    <${Tool} icon="copy" word="home.duplicate" onPress=${then(duplicate)} />
    <${Tool} icon="bin" word="home.remove" onPress=${then(remove)} />
  </div><//>`;
}
