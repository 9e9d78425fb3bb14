// All that a price rests on, group by group: what is charged in this job, and the maker's own rate card.
import { html, useState } from '../../parts/html.js';
import { Icon } from '../../parts/icon.js';
import { Rows } from '../../parts/row.js';
import { valueAt } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { set, settings } from '../../store/settings.js';
import { fields } from '../../words/controls.js';
import { say } from '../../words/words.js';
import { Field, Folded, isWrong } from '../field.js';
import { addEntry, removeEntry } from '../setting.js';
import { open } from '../visit.js';

const ITEMS = '/quote/items';
const PARTS_OF_ITEM = ['text', 'amount', 'count', 'kind'];

// The fields of the price as the table has them, by the group they belong to.
const within = (...starts) => Object.keys(fields).filter((path) => !path.includes('*') && starts.some((start) => path.startsWith(`/quote/${start}`)));

const GROUPS = {
  'price.thisJob': within('client_cloths', 'extras', 'travel', 'discount'),
  'price.rates': within('currency', 'rates', 'minimum', 'markup'),
  'price.minutes': within('operations'),
  'price.paid': within('prices'),
  'price.taxAndDeposit': within('tax', 'deposit'),
};

function Item({ path, number }) {
  return html`<div role="group" aria-label=${say('price.item', { number })} class="stack"><${Rows}>
    <h3 class="entry-name">${say('price.item', { number })}</h3>
    ${PARTS_OF_ITEM.map((name) => html`<${Field} key=${name} at=${`${path}/${name}`} />`)}
    <button type="button" class="button-plain" onClick=${() => removeEntry(path)}>
      <${Icon} name="bin" size=${20} />${say('price.removeItem', { item: say('price.item', { number }) })}</button><//></div>`;
}

function Items() {
  const items = valueAt(job.value, ITEMS) ?? [];
  const add = () => {
    addEntry(ITEMS, { amount: '0' });
    open(`${ITEMS}/${items.length}/amount`);
  };
  return html`<section class="stack"><h2 class="section-title">${say('price.items')}</h2>
    ${items.map((_, at) => html`<${Item} key=${at} path=${`${ITEMS}/${at}`} number=${at + 1} />`)}
    <button type="button" class="button" onClick=${add}><${Icon} name="plus" />${say('price.addItem')}</button></section>`;
}

// What of a price is the maker's and not the job's: kept on the device, and what new jobs begin with.
const OF_THE_MAKER = ['currency', 'rates', 'operations', 'prices', 'markup', 'minimum', 'tax', 'deposit'];

function Keep() {
  const [kept, setKept] = useState(false);
  const { quote = {} } = job.value;
  const keep = () => {
    set('card', Object.fromEntries(OF_THE_MAKER.filter((name) => quote[name] !== undefined).map((name) => [name, quote[name]])));
    setKept(true);
  };
  return html`<div class="stack"><button type="button" class="button" onClick=${keep}>${say('price.keep')}</button>
    <p class="note" role="status">${say(kept ? 'price.kept' : settings.value.card ? 'price.keptBefore' : 'price.keepHint')}</p></div>`;
}

export const ThisJob = () => html`<${Folded} title=${say('price.thisJob')} fields=${GROUPS['price.thisJob']} opens=${isWrong} /><${Items} />`;

export const RateCard = () => html`${Object.keys(GROUPS).slice(1).map((title) => html`
  <${Folded} key=${title} title=${say(title)} fields=${GROUPS[title]} opens=${isWrong} />`)}<${Keep} />`;
