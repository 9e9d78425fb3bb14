// The ways in which the job could be made, side by side: what each takes, what it costs more than the least, and why.
import { html, useEffect } from '../../parts/html.js';
import { Fractions } from '../../parts/figure.js';
import { Notice } from '../../parts/notice.js';
import { comparison, isOfNow, startComparing } from '../../store/comparison.js';
import { say } from '../../words/words.js';
import { State } from '../cut/state.js';
import { Troubles } from '../cut/troubles.js';
import { Line } from './line.js';

// Two cloths may have one name; what a way changes is its own.
const keyOf = ({ name, change }) => `${name} ${JSON.stringify(change)}`;

const Group = ({ title, text, lines, canTake }) => html`<section class="stack" aria-label=${title}>
  <h2 class="section-title">${title}</h2>
  ${text && html`<p class="note"><${Fractions} text=${text} /></p>`}
  <ol class="ways">${lines.map((line) => html`<${Line} key=${keyOf(line)} line=${line} canTake=${canTake} />`)}</ol>
</section>`;

function words({ groups, looked, isDone }) {
  if (isDone) return say(groups.length > 0 ? 'compare.done' : 'compare.nothing');
  return say(looked ? 'compare.better' : 'compare.looking');
}

function Found({ found }) {
  if (found.failed) return html`<${Notice} level="stop" text=${say('compare.failed', { reason: found.failed })} />`;
  return html`<p class="note" role="status">${words(found)}</p>
    ${found.groups.map((group) => html`<${Group} key=${`${group.kind} ${group.cloths}`} ...${group} canTake=${found.looked && isOfNow()} />`)}
    ${found.groups.length > 0 && html`<p class="note">${say('compare.priced')}</p>`}`;
}

export function Compare() {
  useEffect(startComparing, []);
  const found = comparison.value;
  return html`<main class="screen-body compare">
    <${Troubles} />
    ${found && isOfNow() ? html`<${Found} found=${found} />` : html`<${State} />`}
  </main>`;
}
