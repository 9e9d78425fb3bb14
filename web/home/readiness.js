// Two states in a line each: ready for no signal, and the arithmetic; and the offer of an update, only here.
import { html } from '../parts/html.js';
import { Icon } from '../parts/icon.js';
import { Notice } from '../parts/notice.js';
import { coreState, retryCore } from '../boot/core.js';
import { acceptUpdate, offlineState } from '../boot/offline.js';
import { say } from '../words/words.js';

const SIGNS = { none: 'offline', saving: 'download', verified: 'saved', failed: 'warn' };

function Offline() {
  const { phase, code, done, total } = offlineState.value;
  return html`<p class="readiness-line" role="status"><${Icon} name=${SIGNS[phase]} size=${20} />
    ${say(`offline.${code || phase}`, { done, total })}</p>`;
}

function Update() {
  const { update } = offlineState.value;
  if (update === 'failed') return html`<p class="note">${say('offline.updateFailed')}</p>`;
  if (update !== 'waiting') return null;
  return html`<${Notice} level="info" text=${say('offline.update')}>
    <button type="button" class="button" onClick=${acceptUpdate}>${say('home.update')}</button><//>`;
}

function Core() {
  const { phase, code } = coreState.value;
  if (phase === 'ready') return null;
  if (phase === 'starting') return html`<p class="readiness-line" role="status"><${Icon} name="more" size=${20} />${say('core.starting')}</p>`;
  return html`<${Notice} level="warn" text=${say(`core.${code}`)}>
    <button type="button" class="button" onClick=${retryCore}>${say('home.again')}</button><//>`;
}

export const Readiness = () => html`<div class="readiness"><${Update} /><${Offline} /><${Core} /></div>`;
