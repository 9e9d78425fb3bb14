// What the job costs: the total, the largest thing on the screen, with its tax and its deposit beside it.
import { html } from '../../parts/html.js';
import { Figure } from '../../parts/figure.js';
import { isPriced } from '../../store/prices.js';
import { valueAt } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { say } from '../../words/words.js';

export function Total({ price }) {
  const { total, tax, deposit, currency, complete } = price;
  return html`<section class="ask" aria-label=${say('price.total')}>
    <h2 class="ask-for">${say(complete ? 'price.total' : 'price.soFar')}</h2>
    <p class="ask-figure" role="status"><${Figure} text=${`${total} ${currency}`} size="l" muted=${!isPriced.value} /></p>
    ${valueAt(job.value, '/quote/tax/rate') && html`<p class="ask-beside">${say(price.tax_included ? 'price.taxWithin' : 'price.taxOnTop', { tax })}</p>`}
    <p class="ask-beside">${say('price.depositOf', { deposit })}</p>
  </section>`;
}
