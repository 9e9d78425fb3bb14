// Cloth: what stands on the bolt's label and what the tape says of it, for one cloth of the job.
import { html } from '../../parts/html.js';
import { nearAnswer } from '../../store/answers.js';
import { lastOf, valueAt } from '../../store/pointer.js';
import { forgetPicture } from '../../store/pictures.js';
import { job, openJob } from '../../store/session.js';
import { go, inJob, moveTo } from '../../store/place.js';
import { say } from '../../words/words.js';
import { Row } from '../../parts/row.js';
import { Chooser, chosenIn, entryPaths } from '../chooser.js';
import { Field, Fields } from '../field.js';
import { NextBar } from '../next-bar.js';
import { addEntry, freeId } from '../setting.js';
import { newCloth } from '../new-job.js';
import { Entries } from './entries.js';
import { InHand } from './in-hand.js';
import { TestSquare } from './test-square.js';
import { ClothTools } from './cloth-tools.js';
import { Picture } from './picture.js';

const laidOut = (cloth) => nearAnswer.value?.cloths.find((entry) => entry.cloth === lastOf(cloth));

function sections(laid) {
  return {
    'cloth.bolt': [['name'], ['width'], ['selvedge', laid?.selvedge?.text], ['weight'], ['instead_of']],
    'cloth.direction': [['direction'], ['up']],
    'cloth.pattern': [['repeat/across'], ['repeat/along'], ['repeat/drop'], ['start']],
    'cloth.ends': [['squaring', laid?.squaring?.text], ['shrinkage/across'], ['shrinkage/along'], ['wash']],
    'cloth.buying': [['sold_by'], ['price/amount'], ['price/per'], ['price/currency']],
  };
}

// What stands where nothing is entered: of the wash, what the test square says.
function noneOf(cloth, name, laid) {
  if (name.startsWith('repeat/')) return say('cloth.none');
  if (!name.startsWith('shrinkage/')) return undefined;
  const direction = lastOf(name);
  const isTested = valueAt(job.value, `${cloth}/shrinkage/square/${direction}`) !== undefined;
  const lost = laid?.shrinkage?.[direction].text;
  return isTested && lost ? say('cloth.bySquare', { percent: lost }) : say('cloth.none');
}

const section = (cloth, rows, title, laid, usable) => html`<${Fields} key=${title} title=${say(title)}>
  ${rows[title].map(([name, usual]) => html`<${Field} key=${name} at=${`${cloth}/${name}`} usual=${usual}
    none=${noneOf(cloth, name, laid)} />`)}
  ${usable && html`<${Row} label=${say('cloth.usable')} value=${usable} />`}<//>`;

function addCloth() {
  const id = freeId('k', job.value.cloths);
  addEntry('/cloths', newCloth(id));
  forgetPicture(id).catch(() => undefined);
  go(inJob(openJob.value.id, 'cloth', `/cloths/${id}`));
}

export function Cloth({ field }) {
  const cloth = chosenIn('/cloths', field);
  if (!cloth) return html`<main class="screen-body"><${ClothTools} onAdd=${addCloth} /></main>`;
  const laid = laidOut(cloth);
  const rows = sections(laid);
  const hasPattern = ['repeat', 'motifs'].some((name) => valueAt(job.value, `${cloth}/${name}`) !== undefined);
  const next = { name: say('cloth.next'), go: () => go(inJob(openJob.value.id, 'cut')) };
  return html`<main class="screen-body">
      <${Chooser} paths=${entryPaths('/cloths')} chosen=${cloth} onChoose=${(path) => moveTo(inJob(openJob.value.id, 'cloth', path))} />
      <div class="columns">
        <div class="column">
          ${section(cloth, rows, 'cloth.bolt', laid, laid?.usable_width.text)}${section(cloth, rows, 'cloth.direction')}${section(cloth, rows, 'cloth.buying')}
        </div>
        <div class="column">
          ${section(cloth, rows, 'cloth.pattern')}
          ${hasPattern && html`<${Entries} list=${`${cloth}/motifs`} />`}
          <${Picture} cloth=${cloth} />
          ${section(cloth, rows, 'cloth.ends', laid)}
          <${TestSquare} cloth=${cloth} />
          <${Entries} list=${`${cloth}/flaws`} />
          <${InHand} cloth=${cloth} laid=${laid} />
        </div>
      </div>
      <button type="button" class="button" onClick=${() => go(inJob(openJob.value.id, 'compare'))}>${say('compare.open')}</button>
      <${ClothTools} cloth=${cloth} onAdd=${addCloth} />
    </main>
    <${NextBar} step=${next}>
      <button type="button" class="button" onClick=${() => go(inJob(openJob.value.id, 'counter', cloth))}>${say('counter.open')}</button>
    <//>`;
}
