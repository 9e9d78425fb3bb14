// Cloth: what stands on the bolt's label and what the tape says of it, for one cloth of the job.
import { html } from '../../parts/html.js';
import { answer, isCurrent } from '../../store/answers.js';
import { lastOf } from '../../store/pointer.js';
import { job, openJob } from '../../store/session.js';
import { go, inJob, moveTo } from '../../store/place.js';
import { say } from '../../words/words.js';
import { Chooser, chosenIn } from '../chooser.js';
import { Field, Fields } from '../field.js';
import { NextBar } from '../next-bar.js';
import { addEntry, freeId } from '../setting.js';
import { newCloth } from '../new-job.js';
import { Entries } from './entries.js';
import { ClothTools } from './cloth-tools.js';

const laidOut = (cloth) =>
  (isCurrent.value && answer.value ? answer.value.cloths.find((entry) => entry.cloth === lastOf(cloth)) : undefined);

function sections(cloth) {
  const laid = laidOut(cloth);
  return {
    'cloth.width': [['name', null], ['width', null], ['selvedge', laid?.selvedge?.text]],
    'cloth.direction': [['direction'], ['up']],
    'cloth.pattern': [['repeat/across', say('cloth.noRepeat')], ['repeat/along', say('cloth.noRepeat')], ['repeat/drop', say('cloth.noDrop')],
      ['start']],
    'cloth.ends': [['squaring', laid?.squaring?.text], ['shrinkage/across', say('cloth.noShrinkage')],
      ['shrinkage/along', say('cloth.noShrinkage')], ['wash', null]],
    'cloth.buying': [['sold_by'], ['price/amount', null], ['price/per', null], ['price/currency', null]],
  };
}

const section = (cloth, rows, title) => html`<${Fields} key=${title} title=${say(title)}>
  ${rows[title].map(([name, usual]) => html`<${Field} key=${name} at=${`${cloth}/${name}`} usual=${usual} />`)}<//>`;

function addCloth() {
  const id = freeId('k', job.value.cloths);
  addEntry('/cloths', newCloth(id));
  go(inJob(openJob.value.id, 'cloth', `/cloths/${id}`));
}

export function Cloth({ field }) {
  const cloth = chosenIn('/cloths', field);
  const rows = sections(cloth);
  const next = { name: say('cloth.next'), go: () => go(inJob(openJob.value.id, 'cut')) };
  return html`<main class="screen-body">
      <${Chooser} list="/cloths" chosen=${cloth} onChoose=${(path) => moveTo(inJob(openJob.value.id, 'cloth', path))} />
      <div class="columns">
        <div class="column">
          ${section(cloth, rows, 'cloth.width')}${section(cloth, rows, 'cloth.direction')}${section(cloth, rows, 'cloth.buying')}
        </div>
        <div class="column">
          ${section(cloth, rows, 'cloth.pattern')}
          <${Entries} list=${`${cloth}/motifs`} />
          ${section(cloth, rows, 'cloth.ends')}
          <${Entries} list=${`${cloth}/flaws`} />
        </div>
      </div>
      <${ClothTools} cloth=${cloth} onAdd=${addCloth} />
    </main>
    <${NextBar} step=${next} />`;
}
