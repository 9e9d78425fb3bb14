// Price: what the job costs, line by line, what stays with the maker, and the rate card that it rests on.
import { html, useEffect } from '../../parts/html.js';
import { Notice } from '../../parts/notice.js';
import { pathOf } from '../../store/pointer.js';
import { price, priceProblems, wantsPrice } from '../../store/prices.js';
import { job } from '../../store/session.js';
import { say } from '../../words/words.js';
import { fullName } from '../catalogue.js';
import { visit } from '../visit.js';
import { State } from '../cut/state.js';
import { Troubles } from '../cut/troubles.js';
import { Left } from './left.js';
import { Lines, Sums } from './lines.js';
import { RateCard, ThisJob } from './card.js';
import { Total } from './total.js';

function usePrice() {
  useEffect(() => {
    wantsPrice.value = true;
    return () => { wantsPrice.value = false; };
  }, []);
}

const isOpen = ({ code, level }) => code === 'no-price' || level === 'stop';

// What there is to settle before the price is whole, gravest first.
const unsettled = () => [...priceProblems.value, ...(price.value?.notices ?? []).filter(isOpen)];

// The notices, of all that has no price yet only the first that is to be settled; the lines below show each.
function Notices({ list }) {
  const [first, ...others] = list.filter(({ code }) => code === 'no-price');
  return list.filter((notice) => !others.includes(notice)).map((notice) => {
    const { code, at, level, text } = notice;
    const more = notice === first && others.length > 0 && say('price.othersUnpriced', { count: others.length });
    return html`<${Notice} key=${code + at} level=${level} text=${text}>${more && html`<p class="notice-text">${more}</p>`}<//>`;
  });
}

function Bar() {
  const [first] = unsettled();
  if (!first) return null;
  const path = pathOf(job.value, first.at);
  return html`<footer class="action-bar"><button type="button" class="button-primary" onClick=${() => visit(path)}>
    ${say('cut.settle', { field: fullName(job.value, path) })}</button></footer>`;
}

const Problems = () => priceProblems.value.map(({ code, at, text }) => html`<${Notice} key=${code + at} level="stop" text=${text} />`);

export function Price() {
  usePrice();
  const told = price.value;
  return html`<main class="screen-body price">
      <${Troubles} /><${Problems} />
      <div class="columns">
        <div class="column">
          ${told && html`<${Total} price=${told} />`}
          <${State} />
          ${told && html`<${Notices} list=${told.notices} /><${Lines} price=${told} /><${Sums} price=${told} /><${Left} profit=${told.profit} />`}
        </div>
        <div class="column"><${ThisJob} /><${RateCard} /></div>
      </div>
    </main>
    <${Bar} />`;
}
