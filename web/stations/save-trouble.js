// Says when what was entered is not kept (faults B18–B20); silent while all is well.
import { html } from '../parts/html.js';
import { Notice } from '../parts/notice.js';
import { databaseTrouble } from '../store/database.js';
import { room } from '../store/keeping.js';
import { save, saveError, saveState } from '../store/session.js';
import { keepSettings } from '../store/settings.js';
import { say } from '../words/words.js';

function trouble() {
  if (databaseTrouble.value) return say(`save.${databaseTrouble.value}`);
  if (saveState.value !== 'unsaved') return null;
  const isFull = saveError.value?.name === 'QuotaExceededError';
  return isFull ? say('save.full', { used: room.value?.used ?? '?' }) : say('save.unsaved');
}

function tryAgain() {
  save();
  keepSettings();
}

export function SaveTrouble() {
  const text = trouble();
  return html`<div role="alert" class="save-trouble">
    ${text && html`<${Notice} level="stop" text=${text} />
      <button type="button" class="button" onClick=${tryAgain}>${say('home.again')}</button>`}
  </div>`;
}
