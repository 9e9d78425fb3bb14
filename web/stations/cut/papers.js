// What is printed: the core writes it as a PDF on the device, and the file is handed over.
import { html, useState } from '../../parts/html.js';
import { Row, Rows } from '../../parts/row.js';
import { ask } from '../../boot/core.js';
import { paperFile } from '../../store/files.js';
import { job } from '../../store/session.js';
import { settings } from '../../store/settings.js';
import { say } from '../../words/words.js';
import { HandedOver, useHandingOver } from '../handing-over.js';

// The file of a paper; throws with the reason where it cannot be written.
async function write(kind) {
  const { ok, problems } = await ask({ do: kind, job: job.value, paper: settings.value.paper });
  if (problems) throw new Error(problems.map(({ text }) => text).join(' '));
  return paperFile(job.value, ok.pdf, say(`cut.${kind}File`));
}

function Paper({ kind, onWritten }) {
  const [state, setState] = useState({});
  const press = async () => {
    if (state.writing) return;
    setState({ writing: true });
    try {
      const file = await write(kind);
      setState({});
      await onWritten(file);
    } catch (error) {
      setState({ reason: error.message });
    }
  };
  const paper = say(`choice:settings.paper=${settings.value.paper}`);
  return html`<${Row} label=${say(`cut.${kind}Name`)} note=${say(`cut.${kind}Hint`, { paper })} onOpen=${press}
    action=${say(state.writing ? 'cut.writing' : 'cut.asPdf')} problem=${state.reason && say('cut.notWritten', state)} />`;
}

export function Papers() {
  const { told, hand, share } = useHandingOver();
  return html`<section class="stack"><h2 class="section-title">${say('cut.papers')}</h2>
    <${Rows}><${Paper} kind="templates" onWritten=${hand} /><//>
    <${HandedOver} told=${told} />
    ${told?.outcome === 'again' && html`<button type="button" class="button" onClick=${() => share(told.file)}>
      ${say('cut.shareNow')}</button>`}
  </section>`;
}
