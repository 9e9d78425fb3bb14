// What to check on the spot, under the thumb: each a single tap that opens the tape or the choice.
import { html } from '../../parts/html.js';
import { Fractions } from '../../parts/figure.js';
import { Icon } from '../../parts/icon.js';
import { job } from '../../store/session.js';
import { say } from '../../words/words.js';
import { shownValue, usualValue } from '../catalogue.js';
import { problemText } from '../field.js';
import { open } from '../visit.js';

const CHECKS = [
  { name: 'width', field: 'width', icon: 'width', unset: 'counter.unset' },
  { name: 'repeat', field: 'repeat/along', icon: 'repeat', unset: 'counter.noRepeat' },
  { name: 'direction', field: 'direction', icon: 'direction' },
];

function Check({ name, at, icon, unset }) {
  const value = shownValue(job.value, at) ?? (unset ? say(unset) : usualValue(job.value, at));
  return html`<button type="button" class="check${problemText(at) ? ' check-wrong' : ''}" onClick=${() => open(at)}>
    <span class="check-name"><${Icon} name=${icon} size=${20} />${say(`counter.${name}`)}</span>${' '}
    <span class="check-value"><${Fractions} text=${value} /></span></button>`;
}

export const Checks = ({ cloth }) => html`<footer class="action-bar checks" role="group" aria-label=${say('counter.checks')}>
  ${CHECKS.map(({ field, ...check }) => html`<${Check} key=${check.name} at=${`${cloth}/${field}`} ...${check} />`)}</footer>`;
