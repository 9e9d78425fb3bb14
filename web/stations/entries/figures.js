// Entries for what is no length: a count, an amount of money, a share in hundredths, a text.
import { html, useState } from '../../parts/html.js';
import { DateField } from '../../parts/date-field.js';
import { MoneyPad } from '../../parts/money-pad.js';
import { Stepper } from '../../parts/stepper.js';
import { TextField } from '../../parts/text-field.js';
import { ask } from '../../boot/core.js';
import { entryOf, parentOf, patternOf, valueAt } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { settings } from '../../store/settings.js';
import { fields } from '../../words/controls.js';
import { percentOf, shareOf } from '../percent.js';
import { clearField, setField } from '../setting.js';

export const MOST_COVERS = 999;
const MOST_DECIMALS = 3; // the finest coins there are; the core says which a currency has

const setOrClear = (at, value) => (value === '' ? clearField(at) : setField(at, value));

// Of what a job may be without there can be none at all, which empties the field.
export function CountEntry({ at, label, value }) {
  const least = fields[patternOf(at)].least ?? 1;
  return html`<${Stepper} label=${label} value=${value ?? least} min=${least} max=${MOST_COVERS}
    onInput=${(next) => setOrClear(at, next || '')} />`;
}

// Beside the price of a cloth stands its currency; all of a job's price is in one.
const currencyOf = (at) => valueAt(job.value, `${parentOf(at)}/currency`)
  ?? (at.includes('/bought/') ? valueAt(job.value, `${entryOf(at)}/price/currency`) : undefined)
  ?? (at.startsWith('/quote/') ? valueAt(job.value, '/quote/currency') : undefined) ?? settings.value.currency;

export const MoneyEntry = ({ at, label, value }) => html`<${MoneyPad} label=${label} value=${value ?? ''} ask=${ask}
  currency=${currencyOf(at)} decimals=${MOST_DECIMALS}
  onInput=${(next) => setOrClear(at, next)} />`;

// Hundredths are typed as an amount is; the text on the pad is kept apart, so that "3." can become "3.5".
export function PercentEntry({ at, label, value }) {
  const [typed, setTyped] = useState(value ? percentOf(value) : '');
  const take = (next) => {
    setTyped(next);
    setOrClear(at, next && shareOf(next));
  };
  return html`<${MoneyPad} label=${label} value=${typed} currency="%" decimals=${1} onInput=${take} />`;
}

const LINES = { '/notes': 4 };

export const TextEntry = ({ at, label, value }) => html`<${TextField} label=${label} value=${value ?? ''} rows=${LINES[at] ?? 1}
  onInput=${(next) => setOrClear(at, next)} />`;

export const DateEntry = ({ at, label, value }) => html`<${DateField} label=${label} value=${value ?? ''}
  onInput=${(next) => setOrClear(at, next)} />`;
