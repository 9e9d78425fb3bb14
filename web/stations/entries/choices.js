// Entries that choose: one of the field's options, one of the job's cloths, one of a cloth's motifs, a currency.
import { html } from '../../parts/html.js';
import { Choice } from '../../parts/choice.js';
import { entryOf, valueAt } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { say } from '../../words/words.js';
import { clothOfFace, clothPath, nameOf, optionsOf } from '../catalogue.js';
import { setField } from '../setting.js';
import { currencyOptions } from '../currencies.js';

const Chosen = ({ at, label, value, options, layout }) => html`<${Choice} label=${label} options=${options} value=${value} hideLabel
  layout=${layout} onInput=${(next) => setField(at, next)} />`;

export function ChoiceEntry(field) {
  const options = optionsOf(job.value, field.at);
  return html`<${Chosen} ...${field} options=${options} layout=${options.some(({ picture }) => picture) ? 'pictures' : undefined} />`;
}

const entriesOf = (list, path) => (valueAt(job.value, list) ?? []).map(({ id }) => ({ value: id, text: nameOf(job.value, path(id)) }));

// No cloth takes its own place.
const isOther = (at) => ({ value }) => clothPath(value) !== entryOf(at) || !at.endsWith('/instead_of');
export const ClothEntry = (field) => html`<${Chosen} ...${field}
  options=${entriesOf('/cloths', clothPath).filter(isOther(field.at))} />`;

export function MotifEntry(field) {
  const list = `${clothOfFace(job.value, field.at)}/motifs`;
  const options = entriesOf(list, (id) => `${list}/${id}`);
  if (options.length === 0) return html`<p class="note">${say('cover.noMotifs')}</p>`;
  return html`<${Chosen} ...${field} options=${options} />`;
}

export const CurrencyEntry = (field) => html`<${Chosen} ...${field} options=${currencyOptions(field.value)} />`;
