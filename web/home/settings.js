// Settings: words, light, units and currency for new jobs, paper; where jobs are kept; cautions; what the app is made of.
import { html, useEffect, useState } from '../parts/html.js';
import { Choice } from '../parts/choice.js';
import { Icon } from '../parts/icon.js';
import { Row, Rows } from '../parts/row.js';
import { Sheet } from '../parts/sheet.js';
import { askToKeep, measureRoom, room } from '../store/keeping.js';
import { set, settings } from '../store/settings.js';
import { back } from '../store/place.js';
import { currencyOptions } from '../stations/currencies.js';
import { SaveTrouble } from '../stations/save-trouble.js';
import { controls } from '../words/controls.js';
import { say } from '../words/words.js';

function Options({ name, title }) {
  const [, values] = controls.settings[name];
  const options = Object.keys(values).map((value) => ({ value, text: say(`choice:settings.${name}=${value}`) }));
  return html`<div class="card"><${Choice} label=${say(title)} options=${options} value=${settings.value[name]} layout="row"
    onInput=${(value) => set(name, value)} /></div>`;
}

function Currency() {
  const [open, setOpen] = useState(false);
  const { currency } = settings.value;
  return html`<${Rows}><${Row} label=${say('settings.currency')} value=${currency} onOpen=${() => setOpen(true)} /><//>
    ${open && html`<${Sheet} title=${say('settings.currency')} onClose=${() => setOpen(false)}>
      <${Choice} label=${say('settings.currency')} hideLabel options=${currencyOptions(currency)} value=${currency}
        onInput=${(value) => set('currency', value)} /><//>`}`;
}

const KEPT = { true: 'settings.kept', false: 'settings.notKept', null: 'settings.unknownKept' };

function Storage() {
  useEffect(() => { measureRoom(); }, []);
  const { kept } = settings.value;
  return html`<section class="card stack"><h2 class="section-title">${say('settings.storage')}</h2>
    <p>${say(KEPT[kept])}</p>
    ${room.value && html`<p class="note">${say('settings.used', room.value)}</p>`}
    ${kept !== true && html`<button type="button" class="button" onClick=${askToKeep}>${say('settings.keep')}</button>`}
  </section>`;
}

const Cautions = () => html`<section class="card stack"><h2 class="section-title">${say('settings.cautions')}</h2>
  ${['blades', 'needles', 'infants', 'fire'].map((name) => html`<p key=${name} class="caution"><${Icon} name="warn" size=${20} />
    <span>${say(`settings.${name}`)}</span></p>`)}</section>`;

const About = () => html`<section class="card stack"><h2 class="section-title">${say('settings.about')}</h2>
  <p>${say('settings.aboutText')}</p><h3 class="section-title">${say('settings.licences')}</h3>
  <p class="note">${say('settings.licencesText')}</p></section>`;

export const Settings = () => html`<div class="screen settings">
  <header class="screen-head">
    <button type="button" class="icon-button" aria-label=${say('job.back')} onClick=${back}><${Icon} name="back" /></button>
    <div class="screen-title"><h1>${say('settings.title')}</h1></div>
  </header>
  <${SaveTrouble} />
  <main class="screen-body"><div class="columns">
    <div class="column"><${Options} name="words" title="settings.words" /><${Options} name="light" title="settings.light" />
      <${Options} name="units" title="settings.units" /><${Currency} />
      <${Options} name="paper" title="settings.paper" /></div>
    <div class="column"><${Storage} /><${Cautions} /><${About} /></div>
  </div></main>
</div>`;
