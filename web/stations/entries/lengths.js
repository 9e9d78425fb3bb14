// Entries for lengths: the tape alone, the tape with a side, usual lengths to choose from.
import { html, useState } from '../../parts/html.js';
import { ask } from '../../boot/core.js';
import { Choice } from '../../parts/choice.js';
import { MeasureEntry } from '../../parts/measure-entry.js';
import { job } from '../../store/session.js';
import { readings } from '../../store/readings.js';
import { say } from '../../words/words.js';
import { optionsOf } from '../catalogue.js';
import { clearField, setField } from '../setting.js';

const unitOf = (text) => (/\bin\b|yd|ft|"/.test(text) ? 'in' : 'cm');
const usualUnit = () => (job.value.units === 'in' ? 'in' : 'cm');

// The tape with its keys. Its unit is that of the text it shows; switching it changes no text.
export function TapeEntry({ label, value = '', second, hint, restAt, onInput, onReading }) {
  const [unit, setUnit] = useState(value ? unitOf(value) : usualUnit());
  if (!readings.value) return html`<p class="note">${value || say('job.readingsComing')}</p>`;
  return html`<${MeasureEntry} label=${label} value=${value} secondValue=${second} unit=${unit} readings=${readings.value}
    hint=${hint} restAt=${restAt} ask=${ask} onInput=${onInput} onUnit=${setUnit} onReading=${onReading} />`;
}

const setOrClear = (at, text) => (text ? setField(at, text) : clearField(at));

export const MeasureField = ({ at, label, value }) =>
  html`<${TapeEntry} label=${label} value=${value} onInput=${(text) => setOrClear(at, text)} />`;

// A length that may lie on either side: the side is a choice, and "-" before the text.
export function SignedEntry({ at, label, value = '' }) {
  const [side, setSide] = useState(/^[-−]/.test(value) ? '-' : '');
  const text = value.replace(/^[-−]/, '');
  const change = (nextSide, nextText) => {
    setSide(nextSide);
    setOrClear(at, nextText && nextSide + nextText);
  };
  return html`<${Choice} label=${label} hideLabel layout="row" options=${optionsOf(job.value, at)} value=${side} onInput=${(next) => change(next, text)} />
    <${TapeEntry} label=${label} value=${text} onInput=${(next) => change(side, next)} />`;
}

// One of the usual lengths, or another by the tape.
export function LengthEntry({ at, label, value }) {
  const options = optionsOf(job.value, at);
  const isUsual = options.some((option) => option.value === value);
  const [other, setOther] = useState(value !== undefined && !isUsual);
  const choose = (next) => {
    setOther(next === 'other');
    if (next !== 'other') setField(at, next);
  };
  return html`<${Choice} label=${label} hideLabel layout="grid" value=${other ? 'other' : value} onInput=${choose}
      options=${[...options, { value: 'other', text: say('job.otherLength') }]} />
    ${other && html`<${TapeEntry} label=${label} value=${isUsual ? '' : value} onInput=${(text) => setOrClear(at, text)} />`}`;
}
