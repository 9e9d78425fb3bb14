// What is printed: the core writes it as a PDF on the device, for all covers or for one, and the file is handed over.
import { html, useState } from '../parts/html.js';
import { Choice } from '../parts/choice.js';
import { Row, Rows } from '../parts/row.js';
import { Sheet } from '../parts/sheet.js';
import { ask } from '../boot/core.js';
import { paperFile } from '../store/files.js';
import { lastOf } from '../store/pointer.js';
import { job } from '../store/session.js';
import { settings } from '../store/settings.js';
import { say } from '../words/words.js';
import { nameOf } from './catalogue.js';
import { entryPaths } from './chooser.js';
import { HandedOver, useHandingOver } from './handing-over.js';

const ALL = '';
const called = (path) => (path === ALL ? say('paper.all') : nameOf(job.value, path));

// The file of a paper; throws with the reason where it cannot be written.
async function write(kind, path) {
  const cushion = path === ALL ? undefined : lastOf(path);
  const { paper, words } = settings.value;
  const { ok, problems } = await ask({ do: kind, job: job.value, paper, cushion, words });
  if (problems) throw new Error(problems.map(({ text }) => text).join(' '));
  const what = say(`paper.${kind}File`);
  return paperFile(job.value, ok.pdf, path === ALL ? [what] : [called(path), what]);
}

function Paper({ kind, path, onWritten }) {
  const [state, setState] = useState({});
  const press = async () => {
    if (state.writing) return;
    setState({ writing: true });
    try {
      const file = await write(kind, path);
      setState({});
      await onWritten(file);
    } catch (error) {
      setState({ reason: error.message });
    }
  };
  const paper = say(`choice:settings.paper=${settings.value.paper}`);
  return html`<${Row} label=${say(`paper.${kind}Name`)} note=${say(`paper.${kind}Hint`, { paper })} onOpen=${press}
    action=${say(state.writing ? 'paper.writing' : 'paper.asPdf')} problem=${state.reason && say('paper.notWritten', state)} />`;
}

// Which covers are printed; absent where there is only one.
function Which({ chosen, onChoose }) {
  const [open, setOpen] = useState(false);
  const covers = entryPaths('/cushions');
  if (covers.length < 2) return null;
  const options = [ALL, ...covers].map((path) => ({ value: path, text: called(path) }));
  const choose = (path) => {
    onChoose(path);
    setOpen(false);
  };
  return html`<${Row} label=${say('paper.which')} value=${called(chosen)} onOpen=${() => setOpen(true)} />
    ${open && html`<${Sheet} title=${say('paper.which')} onClose=${() => setOpen(false)}>
      <${Choice} label=${say('paper.which')} hideLabel options=${options} value=${chosen} onInput=${choose} /><//>`}`;
}

/** `kind` is the paper, `first` the path of the cover that is chosen to begin with; left out, all are. */
export function Papers({ kind, first = ALL }) {
  const { told, hand, share } = useHandingOver();
  const [chosen, setChosen] = useState(first);
  const path = chosen === ALL || entryPaths('/cushions').includes(chosen) ? chosen : ALL;
  return html`<section class="stack"><h2 class="section-title">${say('paper.title')}</h2>
    <${Rows}><${Which} chosen=${path} onChoose=${setChosen} /><${Paper} key=${path} kind=${kind} path=${path} onWritten=${hand} /><//>
    <${HandedOver} told=${told} />
    ${told?.outcome === 'again' && html`<button type="button" class="button" onClick=${() => share(told.file)}>
      ${say('cut.shareNow')}</button>`}
  </section>`;
}
