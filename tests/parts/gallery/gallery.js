// The gallery's pages: ?page=measure, ?page=second, …; without a page, links to all of them. ?light= forces the light.
import { html, render, useState } from '../parts/html.js';
import { Choice } from '../parts/choice.js';
import { CushionDrawing, CushionSketch } from '../parts/cushion-drawing.js';
import { Figure, Fractions } from '../parts/figure.js';
import { Icon, ICON_NAMES } from '../parts/icon.js';
import { MeasureEntry } from '../parts/measure-entry.js';
import { MoneyPad } from '../parts/money-pad.js';
import { Notice } from '../parts/notice.js';
import { NumberPad } from '../parts/number-pad.js';
import { PlanDrawing } from '../parts/plan-drawing.js';
import { Row, Rows } from '../parts/row.js';
import { Tick } from '../parts/tick.js';
import { Sheet } from '../parts/sheet.js';
import { Stepper } from '../parts/stepper.js';
import { TextField } from '../parts/text-field.js';
import { narrowCloth, plainCloth, plainCuts, printedCloth, roundCloth, wayOut } from './samples.js';

const query = new URLSearchParams(location.search);
if (query.has('light')) document.documentElement.dataset.light = query.get('light');

// What the pages told their owner, for the tests to read.
const told = { inputs: [], wayOuts: 0 };
globalThis.gallery = told;
const readings = await (await fetch('../readings.json')).json();

/** Stands for the core: knows one length and refuses the rest. */
async function ask(request) {
  if (request.do === 'read' && request.text === '130 in') {
    return { ok: { nm: 3302000000, understood: '130 in', notices: [], texts: { in: '130 in', cm: '330.2 cm' }, spoken: 'one hundred and thirty inches' } };
  }
  if (request.do === 'read-money' && request.text === '1.234,56') return { ok: { amount: '1234.56', notices: [] } };
  return { problems: [{ at: '', code: 'unread', text: `${request.text} can be read in two ways.` }] };
}

function Screen({ title, note, children, bar }) {
  return html`<main class="screen">
    <header class="screen-head"><a class="icon-button" href="?" aria-label="Back"><${Icon} name="back" /></a>
      <div class="screen-title"><h1>${title}</h1><p class="screen-note">${note}</p></div></header>
    <nav class="stations" aria-label="Stations">${['Measure', 'Cover', 'Cloth', 'Cut'].map((name) => html`<a href="?page=${query.get('page')}" aria-current=${name === 'Measure' ? 'page' : undefined}>${name}</a>`)}</nav>
    <div class="screen-body">${children}</div>
    ${bar && html`<div class="action-bar">${bar}</div>`}
  </main>`;
}

const bar = html`<button class="button">Read again</button><button class="button-primary">Next: height</button>`;

function Measure({ start, startUnit = 'in', second, problem, restAt }) {
  const [values, setValues] = useState([start, second]);
  const [unit, setUnit] = useState(startUnit);
  const [reading, setReading] = useState(2);
  const onInput = (text, number) => {
    told.inputs.push(text);
    setValues((old) => (number === 2 ? [old[0], text] : [text, old[1]]));
  };
  return html`<${Screen} title="Long sofa, 6 cushions" note="Harbour room (invented)" bar=${bar}>
    <div class="columns">
      <div class="column"><${CushionDrawing} measures=${{ width: 457200000, length: 406400000 }} focus="width" labels=${{ length: 'next' }} /></div>
      <div class="column"><${MeasureEntry} label="Width, pressed flat" value=${values[0]} secondValue=${values[1]} reading=${reading} onReading=${setReading}
        unit=${unit} readings=${readings} onInput=${onInput} onUnit=${setUnit} ask=${ask} problem=${problem} restAt=${restAt} most="60 in"
        autoFocus=${query.has('focus')} /></div>
    </div>
    <output class="visually-hidden" data-stored>${values[0]}</output>
  <//>`;
}

function Answer() {
  const rows = (text) => told.inputs.push(text);
  const [bought, setBought] = useState(false);
  return html`<${Screen} title="At the counter" note="Plain linen · Harbour room (invented)" bar=${html`<button class="button">How so?</button><button class="button-primary">It was cut: record it</button>`}>
    <div class="columns"><div class="column">
      <div><p class="field-label">Ask for</p><${Figure} text="2 1/8 yd" size="xl" /><p class="lead">or 1.95 m · 68.00 USD</p><p class="note">No shorter plan exists.</p></div>
      <${Notice} level="warn" text="Uses all 54 in between the selvedges. Measure there before it is cut." waysOut=${[wayOut]} onWayOut=${() => { told.wayOuts += 1; }} />
      <${Notice} level="info" text="One more panel of 17 5/8 in would fit." />
      <${Notice} level="stop" text="The front is 60 in wide; this cloth has 54 in." waysOut=${[{ text: 'Turn it, join it or choose a wider cloth.' }]} />
    </div><div class="column">
      <${Rows}>
        <${Row} label="Usable width" value="54 in" onOpen=${() => rows('width')} />
        <${Row} label="Repeat" value="" onOpen=${() => rows('repeat')} />
        <${Row} label="Direction" value="one way" icon="direction" onOpen=${() => rows('direction')} problem="Not said; taken as one way" />
        <${Row} label="Laid" value="72 in" note="12 panels of 17 5/8 × 18 in" />
      <//>
      <${Rows}>
        <${Tick} label="2 1/8 yd of plain linen" isTicked=${bought} onTick=${setBought} />
        <${Tick} label="1 spool of thread" note="11 3/8 yd of seam × 2.67" isTicked onTick=${() => {}} />
      <//>
      <${Rows}>
        <${Row} label="Short end on the table?" action="Will it do?" onOpen=${() => rows('end')} />
        <${Row} label="Other bolts" action="Compare 2" onOpen=${() => rows('bolts')} />
      <//>
    </div></div>
  <//>`;
}

function Form() {
  const [fill, setFill] = useState('polyester');
  const [name, setName] = useState('');
  const [count, setCount] = useState(6);
  const [start, setStart] = useState('pads');
  const [unit, setUnit] = useState('in');
  return html`<${Screen} title="A new job" note="Nothing is sent anywhere" bar=${html`<button class="button-primary">Next</button>`}>
    <${Choice} label="What do you have?" value=${start} onInput=${setStart} options=${[
      { value: 'pads', text: 'Pads in hand', hint: 'Measure the old inserts', icon: 'cushion' },
      { value: 'size', text: 'A size wanted', hint: 'The finished cover, e.g. 17 5/8 in', icon: 'tape' }]} />
    <${Choice} label="Filling" layout="grid" value=${fill} onInput=${setFill} options=${['feather', 'down', 'polyester', 'firm', 'foam'].map((value) => ({ value, text: value }))} />
    <${Choice} label="Units" layout="row" value=${unit} onInput=${setUnit} options=${[{ value: 'in', text: 'in' }, { value: 'cm', text: 'cm' }, { value: 'mm', text: 'mm' }]} problem="Choose one." />
    <${Stepper} label="How many" value=${count} onInput=${setCount} />
    <${TextField} label="Client" value=${name} onInput=${setName} hint="Only on this phone" optional />
    <${TextField} label="Notes" value="" rows=${3} onInput=${() => {}} problem="Too long by 12 letters." />
    <div class="stack"><button class="button">Another cushion</button><button class="button-warn">Remove</button><button class="button-plain">Undo</button><button class="button-primary" disabled>Next</button></div>
  <//>`;
}

function Pads() {
  const [money, setMoney] = useState('32.00');
  const [count, setCount] = useState(120);
  const onMoney = (text) => {
    told.inputs.push(text);
    setMoney(text);
  };
  return html`<${Screen} title="Pads" note="Money and numbers"><div class="columns">
    <${MoneyPad} label="Price" value=${money} currency="USD" per="per yd" onInput=${onMoney} ask=${ask} />
    <${NumberPad} label="Panels" value=${count} max=${200} onInput=${setCount} unit="panels" />
  </div><//>`;
}

function Plans() {
  const plans = { plain: [plainCloth, plainCuts], narrow: [narrowCloth], printed: [printedCloth], round: [roundCloth] };
  const [cloth, plan] = plans[query.get('plan') ?? 'plain'];
  return html`<${Screen} title="Lay plan" note=${cloth.name} bar=${html`<button class="button">Offcuts</button><button class="button-primary">Start cutting</button>`}>
    <div class="columns"><${PlanDrawing} cloth=${cloth} plan=${plan} cut=${2} />
    <${Rows}><${Row} label="Cut 1" value="square the end, across at 18 in" /><${Row} label="Cut 2, 3, 4" value="across at 36, 54, 72 in" /><//></div>
  <//>`;
}

function Sheets() {
  const [open, setOpen] = useState(query.has('open'));
  const [value, setValue] = useState('17 5/8 in');
  return html`<${Screen} title="A sheet" note="From the bottom">
    <${Rows}><${Row} label="Usable width" value=${value} onOpen=${() => setOpen(true)} /><//>
    <label>Behind <input class="field-input" /></label>
    ${open && html`<${Sheet} title="Usable width" onClose=${() => setOpen(false)} footer=${html`<button class="button-primary" onClick=${() => setOpen(false)}>Done</button>`}>
      <${MeasureEntry} label="Between the selvedges" value=${value} unit="in" readings=${readings} onInput=${setValue} onUnit=${() => {}} />
    <//>`}
  <//>`;
}

const inches = (measures) => Object.fromEntries(Object.entries(measures).map(([name, inch]) => [name, inch && inch * 25400000]));
const inWords = (measures) => Object.fromEntries(Object.entries(measures).map(([name, inch]) => [name, `${inch} in`]));

function Drawings() {
  return html`<${Screen} title="Drawings" note="In true proportion">
    <${CushionDrawing} measures=${{}} focus="width" labels=${{ width: 'first', length: 'next' }} />
    <${CushionDrawing} measures=${inches({ width: 18, length: 12 })} focus="length" labels=${{ width: '18 in', length: '12 1/8 in' }} />
    <${CushionDrawing} measures=${inches({ width: 18, length: 18 })} labels=${{ width: '17 in', length: '17 in' }} corners=${{ depth: 12700000, run: 114300000 }}
      closing=${{ kind: 'hand-sewn', nm: 203200000 }} note="opening 8 in" />
    <${CushionDrawing} measures=${inches({ width: 60, length: 15 })} labels=${{ width: '60 in', length: '15 in' }} />
    <p><${Fractions} text="12 panels of 17 5/8 × 18 in; 2 in to square the ends: 74 in, 2 1/8 yd. ½ ¼ ⅝ ≈ 44.77 cm − 5′ 3″ € £ ¥ Łucja Ñandú" /></p>
    <p><${Figure} text="≈ 44.77 cm" size="m" /> <${Figure} text="11/16 in" size="m" /> <${Figure} text="" size="m" /></p>
    <ul class="gallery-links" aria-label="Signs">${ICON_NAMES.map((name) => html`<li title=${name}><${Icon} name=${name} /></li>`)}</ul>
  <//>`;
}

const KINDS = [
  ['knife-edge', 'rectangle', { width: 20, length: 16 }],
  ['knife-edge', 'round', { diameter: 16 }],
  ['boxed', 'rectangle', { width: 24, length: 22, thickness: 4 }],
  ['boxed', 'rectangle', { width: 60, length: 18, thickness: 3 }],
  ['boxed', 'rectangle', { width: 18, length: 18, thickness: 18 }],
  ['boxed', 'round', { diameter: 16, thickness: 3 }],
  ['bolster', 'bolster', { diameter: 8, length: 20 }],
];

// A bay 40 in along the front and 24 in deep, 20 in along the back.
const BAY = { count: 4, sure: true, notches: [], taped: [[0, 1, 40], [1, 2, 26], [2, 3, 20], [3, 0, 26], [0, 2, Math.hypot(30, 24)]]
  .map(([one, other, inch]) => [one, other, inch * 25400000]) };

/** Every kind measured, with one measure being taken, and not measured; `?edge=piped&closing=zip` dresses them. */
function Kinds() {
  const closing = query.has('closing') ? { kind: query.get('closing'), at: query.get('at'), nm: 254000000 } : null;
  const dress = { edge: { kind: query.get('edge'), rims: 'both' }, closing };
  return html`<${Screen} title="Kinds" note="In true proportion">
    ${KINDS.map(([kind, shape, measures], at) => html`<${CushionDrawing} key=${at} kind=${kind} shape=${shape} measures=${inches(measures)}
      labels=${inWords(measures)} focus=${Object.keys(measures)[at % 2]} ...${dress} />`)}
    ${KINDS.slice(1, 3).map(([kind, shape]) => html`<${CushionDrawing} key=${kind} kind=${kind} shape=${shape} measures=${{}} ...${dress} />`)}
    <${CushionDrawing} kind="boxed" shape="rectangle" measures=${inches({ width: 30, length: 20 })} labels=${{ width: '30 in', length: '20 in' }} focus="thickness" />
    <${CushionDrawing} kind="knife-edge" shape="polygon" measures=${{}} texts=${{ sides: 4 }} outline=${BAY} edge=${dress.edge} />
    <${Choice} label="Kind" layout="pictures" value="boxed" onInput=${() => {}} options=${[['knife-edge', 'rectangle'], ['knife-edge', 'round'], ['boxed', 'rectangle'],
      ['boxed', 'round'], ['bolster', 'bolster']].map(([kind, shape]) => ({ value: shape === 'round' ? `${kind} round` : kind, text: shape === 'round' ? `${kind}, round` : kind,
        picture: html`<${CushionSketch} kind=${kind} shape=${shape} />` }))} />
  <//>`;
}

const PAGES = {
  measure: () => html`<${Measure} start="17 5/8 in" />`,
  empty: () => html`<${Measure} start="" />`,
  centimetres: () => html`<${Measure} start="44.8 cm" startUnit="cm" />`,
  second: () => html`<${Measure} start="17 5/8 in" second="17 11/16 in" />`,
  problem: () => html`<${Measure} start="130 in" problem="The front is 130 in wide; this cloth has 54 in." />`,
  long: () => html`<${Measure} start="130 in" />`,
  answer: () => html`<${Answer} />`,
  form: () => html`<${Form} />`,
  pads: () => html`<${Pads} />`,
  plan: () => html`<${Plans} />`,
  sheet: () => html`<${Sheets} />`,
  kinds: () => html`<${Kinds} />`,
  drawings: () => html`<${Drawings} />`,
};

function Links() {
  return html`<main class="screen"><div class="screen-body"><h1>Parts</h1><ul class="stack">${Object.keys(PAGES).map((page) => html`<li><a class="button" href="?page=${page}">${page}</a></li>`)}</ul></div></main>`;
}

render(html`<${PAGES[query.get('page')] ?? Links} />`, document.body);
document.documentElement.dataset.ready = 'yes';
