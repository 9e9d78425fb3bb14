// Entries that only a price has: a part of it in hundredths, a number, yes or no, several of the job's cloths.
import { html, useState } from '../../parts/html.js';
import { Choice } from '../../parts/choice.js';
import { MoneyPad } from '../../parts/money-pad.js';
import { patternOf, valueAt } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { fields } from '../../words/controls.js';
import { say } from '../../words/words.js';
import { clothPath, nameOf, optionsOf } from '../catalogue.js';
import { clearField, setField } from '../setting.js';
import { Toggles } from './outline.js';

const setOrClear = (at, value) => (value === '' ? clearField(at) : setField(at, value));

// Kept as it is typed, with its sign: "12.5 %".
export function RateEntry({ at, label, value }) {
  const [typed, setTyped] = useState(value ? value.replace(/ ?%$/, '') : '');
  const take = (next) => {
    setTyped(next);
    setOrClear(at, next && `${next} %`);
  };
  return html`<${MoneyPad} label=${label} value=${typed} currency="%" decimals=${3} onInput=${take} />`;
}

export const NumberEntry = ({ at, label, value }) => html`<${MoneyPad} label=${label} value=${value ?? ''} decimals=${2}
  currency=${fields[patternOf(at)].unit ?? valueAt(job.value, '/quote/rates/travel/per') ?? ''} onInput=${(next) => setOrClear(at, next)} />`;

export const FlagEntry = ({ at, label, value }) => html`<${Choice} label=${label} hideLabel options=${optionsOf(job.value, at)}
  value=${value === undefined ? undefined : String(value)} onInput=${(next) => setField(at, next === 'true')} />`;

// Each cloth a toggle; none of them empties the field.
export function ClothsEntry({ at, label, value = [] }) {
  const chosen = valueAt(job.value, at) ?? value;
  const toggle = (id) => {
    const next = chosen.includes(id) ? chosen.filter((one) => one !== id) : [...chosen, id];
    return next.length > 0 ? setField(at, next) : clearField(at);
  };
  const options = job.value.cloths.map(({ id }) => ({ value: id, text: nameOf(job.value, clothPath(id)), on: chosen.includes(id),
    name: say('price.isClients', { cloth: nameOf(job.value, clothPath(id)) }) }));
  return html`<${Toggles} label=${label} options=${options} onToggle=${toggle} />`;
}
