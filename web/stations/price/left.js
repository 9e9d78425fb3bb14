// What stays with the maker: markup and margin by their own names, and what an hour comes to. Not for a client's eyes.
import { html } from '../../parts/html.js';
import { Icon } from '../../parts/icon.js';
import { Row, Rows } from '../../parts/row.js';
import { say } from '../../words/words.js';
import { Working } from '../cover/finished-size.js';

export const Left = ({ profit }) => html`<details class="folded stack">
  <summary class="section-title fold">${say('price.left')}<${Icon} name="down" size=${20} /></summary>
  <${Rows}>${['markup', 'margin', 'an_hour'].map((name) => html`
    <${Row} key=${name} label=${say(`price.${name}`)} value=${profit[name] ?? say('price.none')} muted=${profit[name] === null} />`)}<//>
  <${Working} sentences=${profit.working} /></details>`;
