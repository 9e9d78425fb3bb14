// The entry of a straight-sided outline: an outline to begin with, its sides, which corners turn inwards, what is taped.
import { html } from '../../parts/html.js';
import { Choice } from '../../parts/choice.js';
import { CushionSketch } from '../../parts/cushion-drawing.js';
import { Stepper } from '../../parts/stepper.js';
import { entryOf, valueAt } from '../../store/pointer.js';
import { edit, job } from '../../store/session.js';
import { say } from '../../words/words.js';
import { CushionPicture } from '../measure/picture.js';
import { MOST_SIDES, OUTLINES, begunAs, isTaped, named, outlineAt, sideName, tapedAcross, turnedAt, waysAcross, withSides } from '../outlines.js';
import { setField } from '../setting.js';

export function Toggles({ label, hint, options, onToggle }) {
  return html`<div class="field" role="group" aria-label=${label}>
    <span class="field-label">${label}</span>${hint && html`<p class="field-hint">${hint}</p>`}
    <div class="toggles">${options.map(({ name, text, on, value }) => html`<button key=${text} type="button" class="toggle"
      aria-label=${name} aria-pressed=${String(on)} onClick=${() => onToggle(value)}>${text}</button>`)}</div></div>`;
}

const isSame = (some, others) => some.length === others.length && some.every((one) => others.includes(one));

const beginnings = (kind) => Object.entries(OUTLINES).map(([name, { count, notches }]) => ({ value: name, text: say(`choice:measure.outline=${name}`),
  picture: html`<${CushionSketch} kind=${kind} shape="polygon" outline=${{ count, taped: [], notches }} />` }));

export function OutlineEntry({ at }) {
  const cushion = entryOf(at);
  const { sides, diagonals, notches } = outlineAt(job.value, cushion);
  const count = sides.length;
  const chosen = Object.keys(OUTLINES).find((name) => OUTLINES[name].count === count && isSame(OUTLINES[name].notches, notches));
  const corners = Array.from({ length: count }, (_, corner) => ({ value: corner, text: named([corner]), on: notches.includes(corner),
    name: say('measure.turnsInwards', { corner: named([corner]) }) }));
  const across = waysAcross(count).map((pair) => ({ value: pair, text: named(pair), on: isTaped(diagonals, pair),
    name: say('measure.tapedAcross', { ends: named(pair) }) }));
  return html`<${CushionPicture} cushion=${cushion} />
    <${Choice} label=${say('measure.beginWith')} layout="pictures" options=${beginnings(valueAt(job.value, `${cushion}/kind`))} value=${chosen}
      onInput=${(name) => edit(begunAs(cushion, OUTLINES[name]))} />
    <${Stepper} label=${say('measure.sides')} value=${count} min=${3} max=${MOST_SIDES}
      onInput=${(next) => edit(withSides(job.value, cushion, next))} />
    <${Toggles} label=${say('measure.notches')} options=${corners} onToggle=${(corner) => edit(turnedAt(job.value, cushion, corner))} />
    ${across.length > 0 && html`<${Toggles} label=${say('measure.across')} hint=${say('measure.acrossHint')} options=${across}
      onToggle=${(pair) => edit(tapedAcross(job.value, cushion, pair))} />`}`;
}

// One of the sides by its two corners.
export function SideEntry({ at, label, value }) {
  const cushion = entryOf(at);
  const options = outlineAt(job.value, cushion).sides.map((_, side) => ({ value: side, text: sideName(job.value, cushion, side) }));
  return html`<${Choice} label=${label} hideLabel layout="row" options=${options} value=${value} onInput=${(side) => setField(at, side)} />`;
}
