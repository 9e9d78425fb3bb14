// What can be done with a job from the list: save it as a file, duplicate it, delete it.
import { html, useState } from '../parts/html.js';
import { Icon } from '../parts/icon.js';
import { Notice } from '../parts/notice.js';
import { Sheet } from '../parts/sheet.js';
import { deleteJob, newJobId } from '../store/shelf.js';
import { closeJob, openNew } from '../store/session.js';
import { handOver, jobFile, shareFile } from '../store/files.js';
import { say } from '../words/words.js';

async function duplicate({ job }, name) {
  await openNew({ ...job, id: newJobId(), name: say('home.copyOf', { name }) });
  await closeJob();
}

async function remove({ id }) {
  await closeJob();
  await deleteJob(id);
}

// What is said after handing over; nothing where the phone has said it, or the maker thought better of it.
const OUTCOMES = { saved: 'file.saved', again: 'file.shareAgain' };

const Tool = ({ icon, word, onPress }) => html`<button type="button" class="button tool" onClick=${onPress}>
  <${Icon} name=${icon} />${say(word)}</button>`;

export function JobTools({ record, name, onClose }) {
  const [told, setTold] = useState(null);
  const file = jobFile(record.job);
  const hand = async (way) => {
    try {
      const outcome = await way(file);
      setTold({ outcome, word: OUTCOMES[outcome] });
    } catch (error) {
      setTold({ outcome: 'failed', word: 'file.failed', reason: error.message });
    }
  };
  const then = (work) => async () => {
    onClose();
    await work(record, name);
  };
  return html`<${Sheet} title=${name} onClose=${onClose}><div class="stack">
    ${told?.word && html`<div role="status"><${Notice} level=${told.outcome === 'failed' ? 'stop' : 'info'}
      text=${say(told.word, { file: file.name, reason: told.reason })} /></div>`}
    ${told?.outcome === 'again'
      ? html`<${Tool} icon="share" word="home.shareNow" onPress=${() => hand(shareFile)} />`
      : html`<${Tool} icon="share" word="home.share" onPress=${() => hand(handOver)} />`}
    <${Tool} icon="copy" word="home.duplicate" onPress=${then(duplicate)} />
    <${Tool} icon="bin" word="home.remove" onPress=${then(remove)} />
  </div><//>`;
}
