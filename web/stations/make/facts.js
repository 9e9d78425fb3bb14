// The sheet itself: how the cover is made, what is cut for it, and what is chalked on the pieces.
import { html } from '../../parts/html.js';
import { Fractions } from '../../parts/figure.js';
import { Row, Rows } from '../../parts/row.js';
import { say } from '../../words/words.js';

const Lines = ({ lines }) => html`<section class="stack"><h2 class="section-title">${say('make.sheet')}</h2>
  <${Rows}>${lines.map(({ name, text }) => html`<div key=${name + text} class="row fact"><p class="fact-name">${name}</p>
    <p class="fact-text"><${Fractions} text=${text} /></p></div>`)}<//></section>`;

const Pieces = ({ pieces }) => html`<section class="stack"><h2 class="section-title">${say('make.pieces')}</h2>
  <${Rows}>${pieces.map(({ piece, count, label, size, cloth }) => html`
    <${Row} key=${piece} label=${say('make.piece', { count, label })} value=${size} note=${cloth} />`)}<//></section>`;

const Marks = ({ marks }) => html`<section class="stack"><h2 class="section-title">${say('make.marks')}</h2>
  <${Rows}>${marks.map(({ on, text }) => html`<div key=${on + text} class="row mark"><p class="fact-text"><${Fractions} text=${text} /></p>
    <p class="note">${on}</p></div>`)}<//></section>`;

export const Facts = ({ sheet }) => html`<div class="facts stack">
    <${Lines} lines=${sheet.facts} />
    <${Pieces} pieces=${sheet.pieces} />
    <${Marks} marks=${sheet.marks} />
  </div>`;
