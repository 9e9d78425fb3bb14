// Something the core wants seen: its level as a drawn sign and in words, the text, and the ways out, each in one tap.
//
// Notice({level: 'info'|'warn'|'stop', text, waysOut?, onWayOut?, children?})
//   waysOut   ways out of the answer: [{text, ask?, cost?, saves?}]; each a button when onWayOut is given
import { html } from './html.js';
import { Fractions } from './figure.js';
import { Icon } from './icon.js';
import { say } from './words.js';

const LEVEL_WORDS = { info: 'levelInfo', warn: 'levelWarn', stop: 'levelStop' };

export function WayOut({ wayOut, onWayOut }) {
  const gains = [wayOut.ask && say('costs', { ask: wayOut.ask }), wayOut.cost && `${wayOut.cost.amount} ${wayOut.cost.currency}`,
    wayOut.saves && say('saves', { saves: wayOut.saves })];
  const words = html`<span class="way-out-words"><span class="way-out-text"><${Fractions} text=${wayOut.text} /></span>
    ${gains.some(Boolean) && html` <span class="way-out-gain"><${Fractions} text=${gains.filter(Boolean).join(' · ')} /></span>`}</span>`;
  if (!onWayOut) return html`<p class="way-out">${words}</p>`;
  return html`<button type="button" class="way-out way-out-opens" onClick=${() => onWayOut(wayOut)}>${words}
    <${Icon} name="forward" size=${22} /></button>`;
}

export function Notice({ level, text, waysOut = [], onWayOut, children }) {
  return html`<section class="notice notice-${level}">
    <${Icon} name=${level} />
    <div class="notice-words">
      <p class="notice-level">${say(LEVEL_WORDS[level])}</p>
      <p class="notice-text"><${Fractions} text=${text} /></p>
      ${children}
      ${waysOut.map((wayOut) => html`<${WayOut} key=${wayOut.text} wayOut=${wayOut} onWayOut=${onWayOut} />`)}
    </div>
  </section>`;
}
