// What to be careful of with this cover: when it applies, and what to do, in full.
import { html } from '../../parts/html.js';
import { Icon } from '../../parts/icon.js';
import { say } from '../../words/words.js';

export const Cautions = ({ list }) => html`<section class="card stack"><h2 class="section-title">${say('settings.cautions')}</h2>
  ${list.map(({ code, when, text }) => html`<p key=${code} class="caution"><${Icon} name="warn" size=${20} />
    <span><strong>${when}.</strong> ${text}</span></p>`)}</section>`;
