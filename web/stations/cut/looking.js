// The search for a shorter plan, above the bar under the thumb: how far it is, what it has found, and stopping it.
//
// A search that is over at once is not shown at all. One that was shown says how it ended and leaves its place empty
// for a moment, so that a finger on its way to "Stop" meets nothing else.
import { html, useEffect, useState } from '../../parts/html.js';
import { Fractions } from '../../parts/figure.js';
import { goOn, isDone, isStopped, looking, stopLooking } from '../../store/answers.js';
import { say } from '../../words/words.js';

const SHOWN_AFTER = 600; // ms
const SHOWN_FOR = 4000; // ms after its end

/** `value`, but becoming true and ceasing to be so only after a while. */
function useLater(value) {
  const [late, setLate] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setLate(value), value ? SHOWN_AFTER : SHOWN_FOR);
    return () => clearTimeout(timer);
  }, [value]);
  return late;
}

const asks = (cloths) => cloths.map(({ ask }) => ask).join(', ');

function words() {
  if (looking.value) return say('cut.looking', { length: asks(looking.value.cloths) });
  return say(isStopped.value ? 'cut.stopped' : 'cut.looked');
}

function Press() {
  if (looking.value) return html`<button type="button" class="button" onClick=${stopLooking}>${say('cut.stop')}</button>`;
  return isStopped.value && html`<button type="button" class="button" onClick=${goOn}>${say('cut.goOn')}</button>`;
}

export function Looking() {
  const isLooking = looking.value !== null;
  const isShown = useLater(isLooking);
  if (!(isStopped.value || (isShown && (isLooking || isDone.value)))) return null;
  const done = isLooking ? looking.value.thousandths / 1000 : 1;
  return html`<div class="looking" role="group" aria-label=${say('cut.search')}>
    <span class="looking-line" role="progressbar" aria-label=${say('cut.search')} aria-valuemin="0" aria-valuemax="100"
      aria-valuenow=${Math.round(done * 100)}><span style=${{ transform: `scaleX(${done})` }}></span></span>
    <p class="looking-words"><${Fractions} text=${words()} /></p>
    <${Press} />
  </div>`;
}
