// The bar under the thumb: the one thing to do next, and at most two lesser ones beside it.
import { html } from '../parts/html.js';
import { say } from '../words/words.js';

// `step` is {name, go}: where it leads, in a word, and going there.
export function NextBar({ step, children }) {
  return html`<footer class="action-bar">${children}
    <button type="button" class="button-primary" onClick=${step.go}>${say('measure.next', { next: step.name })}</button></footer>`;
}
