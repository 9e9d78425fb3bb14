// One way: its name, the length in large figures with its cost, a picture of its plan, why, and the tap that takes it.
import { html, useState } from '../../parts/html.js';
import { Figure, Fractions } from '../../parts/figure.js';
import { PlanDrawing } from '../../parts/plan-drawing.js';
import { PlanThumbnail } from '../../parts/plan-thumbnail.js';
import { Sheet } from '../../parts/sheet.js';
import { say } from '../../words/words.js';
import { calledIn } from '../cut/called.js';
import { takeWayOut } from '../cut/ways-out.js';

// What is bought, cloth by cloth; which cloth it is stands beside it only where there are several.
const Bought = ({ cloths }) => cloths.map(({ cloth, ask }) => html`<p key=${cloth} class="way-figure">
  <${Figure} text=${ask.text} size="m" />${cloths.length > 1 && html` <span class="way-cloth">${calledIn('/cloths', cloth)}</span>`}</p>`);

function Costs({ cost, more }) {
  const said = [cost && say('cut.cost', cost), more ?? say('compare.least')].filter(Boolean);
  return html`<p class="way-cost">${cost && html`<strong>${said.shift()}</strong>`} <span><${Fractions} text=${said[0]} /></span></p>`;
}

function Picture({ name, cloths }) {
  const [open, setOpen] = useState(false);
  return html`<button type="button" class="way-picture" aria-label=${say('compare.look', { name })} onClick=${() => setOpen(true)}>
      ${cloths.map((cloth) => html`<${PlanThumbnail} key=${cloth.cloth} cloth=${cloth} />`)}</button>
    ${open && html`<${Sheet} title=${name} onClose=${() => setOpen(false)}>
      <div class="stack">${cloths.map((cloth) => html`<${PlanDrawing} key=${cloth.cloth} cloth=${cloth} />`)}</div><//>`}`;
}

function Choose({ line, canTake }) {
  if (line.current) return html`<p class="way-now">${say('compare.now')}</p>`;
  if (!canTake) return null;
  return html`<button type="button" class="button way-take" aria-label=${say('compare.take', { name: line.name })}
    onClick=${() => takeWayOut(line)}>${say('compare.takeThis')}</button>`;
}

const Waiting = ({ line }) => html`<li class="card way way-waiting"><h3 class="way-name">${line.name}</h3></li>`;

const Cannot = ({ line }) => html`<li class="card way"><h3 class="way-name">${line.name}</h3>
  <p class="way-cannot">${say('compare.cannot')}</p><p class="note"><${Fractions} text=${line.text} /></p></li>`;

const Found = ({ line, canTake }) => html`<li class="card way way-found${line.current ? ' way-current' : ''}">
  <h3 class="way-name"><${Fractions} text=${line.name} /></h3>
  <div class="way-takes"><${Bought} cloths=${line.cloths} /><${Costs} ...${line} /></div>
  <${Picture} name=${line.name} cloths=${line.cloths} />
  <div class="way-why">${[line.text, line.note].filter(Boolean).map((text) => html`<p key=${text} class="note"><${Fractions} text=${text} /></p>`)}</div>
  <${Choose} line=${line} canTake=${canTake} />
</li>`;

const KINDS = { waiting: Waiting, cannot: Cannot, found: Found };

export const Line = ({ line, canTake }) => html`<${KINDS[line.state]} line=${line} canTake=${canTake} />`;
