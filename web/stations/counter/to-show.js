// What to say at the counter, read out large or sent as text: in the core's own words.
import { html, useState } from '../../parts/html.js';
import { Fractions } from '../../parts/figure.js';
import { Sheet } from '../../parts/sheet.js';
import { shareText } from '../../store/files.js';
import { say } from '../../words/words.js';
import { calledIn } from '../cut/called.js';

const SAID = { copied: 'counter.copied', failed: 'counter.notCopied' };

function Send({ text }) {
  const [told, setTold] = useState(null);
  const send = async () => setTold(await shareText(text));
  return html`<p class="note" role="status">${told && SAID[told.outcome] && say(SAID[told.outcome], told)}</p>
    <button type="button" class="button-primary" onClick=${send}>${say('counter.send')}</button>`;
}

export function ToShow({ cloth }) {
  const [open, setOpen] = useState(false);
  const lines = (cloth.counter ?? []).map(({ text }) => text);
  if (lines.length === 0) return null;
  return html`<button type="button" class="button" onClick=${() => setOpen(true)}>${say('counter.show')}</button>
    ${open && html`<${Sheet} title=${`${say('counter.sheet')} · ${calledIn('/cloths', cloth.cloth)}`} onClose=${() => setOpen(false)}
        footer=${html`<${Send} text=${lines.join('\n')} />`}>
      <ol class="to-show">${lines.map((line) => html`<li key=${line}><${Fractions} text=${line} /></li>`)}</ol><//>`}`;
}
