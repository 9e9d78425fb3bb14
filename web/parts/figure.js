// Typography of measures: large whole number, true fraction, small unit. It reads a text; it never computes.
//
// Figure({text, size: 'm'|'l'|'xl', spoken?, placeholder?, muted?})   one measure, e.g. "17 5/8 in", "≈ 44.77 cm"
//   The accessible name is `spoken`, or else the plain text; the plain text is also the element's textContent.
// Fractions({text})   a sentence in which every "5/8" or "2 1/8" is set as a true fraction
import { html } from './html.js';
import { partWords } from './words.js';

const MEASURE = /^(≈ ?)?([\d.,]*)(?:(^| )(\d+\/\d+))?( .*)?$/;
const FRACTION = /((?:\d+ )?\d+\/\d+)/;

/** A text cut into {about, whole, fraction, unit}, each possibly ''; null when it is not a measure. */
export function measureParts(text) {
  const match = MEASURE.exec(text.replace(/^(≈ ?)?(\d+\/\d+)/, '$1 $2'));
  if (!match || !(match[2] || match[4])) return null;
  return { about: match[1] ? '≈ ' : '', whole: match[2], fraction: match[4] ?? '', unit: (match[5] ?? '').trim() };
}

/** About how many ems a measure is wide, so that a long one can be set smaller. */
function breadth({ about, whole, fraction, unit }) {
  return 0.5 * about.length + 0.66 * whole.length + (fraction ? 0.45 + 0.17 * fraction.length : 0) + 0.15 + 0.3 * unit.length;
}

export function Figure({ text, size = 'm', spoken, placeholder, muted }) {
  const classes = `figure figure-${size}${muted ? ' figure-muted' : ''}`;
  if (!text) {
    return html`<span class="${classes} figure-empty" role="img" aria-label=${partWords.value.noReading}>${placeholder ?? '–'}</span>`;
  }
  const parts = measureParts(text);
  const shown = parts
    ? html`${parts.about && html`<span class="figure-about">${parts.about}</span>`}
        ${parts.whole && html`<span class="figure-whole">${parts.whole}</span>`}
        ${parts.whole && parts.fraction && ' '}
        ${parts.fraction && html`<span class="fraction">${parts.fraction}</span>`}
        ${parts.unit && html` <span class="figure-unit">${parts.unit}</span>`}`
    : text;
  const style = { '--ems': parts ? breadth(parts).toFixed(2) : (0.6 * text.length).toFixed(2) };
  return html`<span class=${classes} style=${style} role="img" aria-label=${spoken ?? text}>${shown}</span>`;
}

export function Fractions({ text }) {
  return String(text).split(FRACTION).map((piece, place) => (place % 2 ? html`<${Mixed} text=${piece} />` : piece || null));
}

/** A fraction with the whole number before it, on one line. */
function Mixed({ text }) {
  const [fraction, whole] = text.split(' ').reverse();
  return html`<span class="mixed">${whole && `${whole} `}<span class="fraction">${fraction}</span></span>`;
}
