// The lines of the price, materials and making; touched, each says how it comes about and leads to what it rests on.
import { html, useRef, useState } from '../../parts/html.js';
import { Fractions } from '../../parts/figure.js';
import { Icon } from '../../parts/icon.js';
import { Row } from '../../parts/row.js';
import { Sheet } from '../../parts/sheet.js';
import { pathOf } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { say } from '../../words/words.js';
import { isField, labelOf } from '../catalogue.js';
import { Fields } from '../field.js';
import { visit } from '../visit.js';
import { Working } from '../cover/finished-size.js';

const amountOf = ({ amount }) => amount ?? say('price.none');

// Leads on once the sheet is gone, since going takes a step of history of its own.
function How({ line, onClose }) {
  const next = useRef(null);
  const path = pathOf(job.value, line.at);
  const change = () => {
    next.current = path;
    onClose();
  };
  const footer = isField(path) && html`<button type="button" class="button-primary" onClick=${change}>
    ${say('price.change', { field: labelOf(job.value, path) })}</button>`;
  return html`<${Sheet} title=${line.text} onClose=${onClose} onClosed=${() => next.current && visit(next.current)} footer=${footer}>
    <div class="stack">
      <p class="price-line">${amountOf(line)}</p>
      ${line.tax && html`<p class="note">${say('price.lineTax', { tax: line.tax })}</p>`}
      ${line.example && html`<p class="note">${say('price.example')}</p>`}
      <${Working} sentences=${[{ text: line.working }]} />
    </div><//>`;
}

function Line({ line }) {
  const [open, setOpen] = useState(false);
  return html`<div class="row row-opens"><button type="button" class="row-line" onClick=${() => setOpen(true)}>
      <span class="row-label"><${Fractions} text=${line.text} /></span>${' '}
      <span class="row-value${line.amount === null ? ' row-empty' : ''}">${amountOf(line)}</span><${Icon} name="forward" size=${20} /></button>
    ${line.example && html`<p class="row-note">${say('price.example')}</p>`}
    ${open && html`<${How} line=${line} onClose=${() => setOpen(false)} />`}</div>`;
}

const Sum = ({ word, amount }) => html`<${Row} label=${say(word)} value=${amount} />`;

const Group = ({ price, group }) => html`<${Fields} title=${say(`price.${group}`)}>
  ${price.lines.filter((line) => line.group === group).map((line) => html`<${Line} key=${line.code} line=${line} />`)}
  <${Sum} word=${`price.${group}Sum`} amount=${price[group]} /><//>`;

export const Lines = ({ price }) => html`<${Group} price=${price} group="materials" /><${Group} price=${price} group="making" />`;

export const Sums = ({ price }) => html`<section class="stack"><${Fields} title=${say('price.sums')}>
    ${['net', 'tax', 'total', 'deposit', 'balance'].map((name) => html`<${Sum} key=${name} word=${`price.${name}`} amount=${price[name]} />`)}<//>
  <${Working} sentences=${price.working} /></section>`;
