// One measure being read: its name, the reading in large figures, the other system beside it, the tape and the keys.
//
// MeasureEntry({label, value, unit, readings, onInput, onUnit, ...})
//   value        text as in readings.json, or as typed; '' when nothing is read yet
//   unit         'in' | 'cm' | 'mm': the scale of tape and keys. onUnit('in' | 'cm') is asked to change it;
//                the value text never changes with it.
//   onInput(text, reading)   the new text; reading is 1 or 2. While the tape moves at most every half second,
//                always once it rests.
//   secondValue  a text or '': the tape was read twice; both are shown side by side
//   reading      1 | 2: which of the two the tape and keys write (default 2 when secondValue is given)
//   onReading(n) the maker touched the other reading
//   hint         what to do while nothing is read yet (default: slide the tape, or use the keys)
//   restAt       text at which the empty tape lies, e.g. the width while the height is asked for
//   most         text of readings.json above which a message warns (the value is kept)
//   ask          the core's door (request → promise); reads what neither table holds. Optional.
//   problem      a message from the core for this field
//   autoFocus    put the keyboard on the tape when shown
//   onDone       Enter on a hardware keyboard
// Hardware keys: digits, space, '-', '/', '.', ',' and Backspace; arrows, Page and Home/End move the tape.
import { html, useEffect, useLayoutEffect, useRef, useSignal } from './html.js';
import { Figure, Fractions } from './figure.js';
import { DigitKeys, Face, Key } from './key.js';
import { findReading, scaleOf, tapeEnd } from './readings.js';
import { Tape } from './tape.js';
import {
  partOf, readTyped, typingOf, withDigit, withFraction, withHalfCentimetre, withMillimetre, withoutLast, withPoint,
  withSixteenth,
} from './typed-reading.js';
import { say } from './words.js';

const EIGHTHS = [2, 4, 6, 8, 10, 12, 14];
const EIGHTH_TEXTS = ['1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];
const SAVE_EVERY_MS = 500;
const SAY_AFTER_MS = 700;
const UNIT_NAMES = { in: 'inches', cm: 'centimetres' };

/** The reading of a text both systems know: from the tables at once, else from the core when it has answered. */
function useKnown(readings, text, unit, ask) {
  const answer = useSignal({ text: null });
  const found = findReading(readings, text);
  useEffect(() => {
    if (!text || found || !ask) return undefined;
    let wanted = true;
    ask({ do: 'read', text, unit }).then((reply) => {
      if (wanted) answer.value = { text, ...(reply.ok ?? {}), problems: reply.problems };
    }, () => {});
    return () => { wanted = false; };
  }, [text, unit]);
  if (found) return { other: found.row[1], spoken: found.row[2], place: null };
  const reply = answer.value;
  if (!text || reply.text !== text) return { other: '', spoken: text, place: null };
  if (reply.problems) return { other: '', spoken: text, place: null, problem: reply.problems[0]?.text };
  const other = scaleOf(unit) === 'in' ? reply.texts.cm : reply.texts.in;
  return { other, spoken: reply.spoken ?? text, place: reply.nm, notice: reply.notices?.[0]?.text };
}

/** Pass texts on at most every half second while they stream, and at once when they are settled. */
function useCalmInput(onInput) {
  const state = useRef({ timer: 0, last: 0 });
  state.current.onInput = onInput;
  useEffect(() => () => clearTimeout(state.current.timer), []);
  return (text, settled) => {
    const calm = state.current;
    clearTimeout(calm.timer);
    const send = () => {
      calm.last = performance.now();
      calm.onInput(text);
    };
    const wait = SAVE_EVERY_MS - (performance.now() - calm.last);
    if (settled || wait <= 0) send();
    else calm.timer = setTimeout(send, wait);
  };
}

/** A sentence for ears, said once things have been still for a moment. */
function useSpokenLater() {
  const said = useSignal('');
  const timer = useRef(0);
  useEffect(() => () => clearTimeout(timer.current), []);
  const speak = (text) => {
    clearTimeout(timer.current);
    timer.current = setTimeout(() => { said.value = text; }, SAY_AFTER_MS);
  };
  return [said, speak];
}

function messageFor(typed, readings, scale, most) {
  const end = tapeEnd(readings, scale);
  if (typed.state === 'beyond') return say('tapeEnds', { end, text: typed.text });
  const found = findReading(readings, typed.text);
  const limit = most ? findReading(readings, most) : null;
  if (found && limit && found.scale === limit.scale && found.index > limit.index) {
    return say('aboveMost', { most, text: typed.text });
  }
  return '';
}

function FractionKeys({ part, onFraction, onSixteenth }) {
  return html`${EIGHTHS.map((sixteenths, place) => html`<${Key} key=${sixteenths} tone="soft"
      name=${say(`eighth${place + 1}`)} pressed=${part - (part % 2) === sixteenths}
      onPress=${() => onFraction(sixteenths)}><${Face} text=${EIGHTH_TEXTS[place]} kind="face-fraction" /><//>`)}
    <${Key} tone="soft" name=${say('sixteenth')} pressed=${part % 2 === 1} onPress=${onSixteenth}>
      <${Face} text="+" kind="face-sign" /><${Face} text="1/16" kind="face-fraction" /><//>`;
}

function DecimalKeys({ half, onPoint, onHalf, onMillimetre }) {
  const unit = html`<${Face} text=${say('millimetreUnit')} kind="face-unit" />`;
  return html`<${Key} tone="soft" wide name=${say('point')} onPress=${onPoint}><${Face} text="." /><//>
    <${Key} tone="soft" wide name=${say('halfCentimetre')} pressed=${half} onPress=${onHalf}><${Face} text=".5" /><//>
    <${Key} tone="soft" wide name=${say('millimetreMore')} onPress=${() => onMillimetre(1)}><${Face} text="+1" />${unit}<//>
    <${Key} tone="soft" wide name=${say('millimetreLess')} onPress=${() => onMillimetre(-1)}><${Face} text="−1" />${unit}<//>`;
}

function UnitKey({ unit, onUnit }) {
  const now = scaleOf(unit) === 'in' ? 'in' : 'cm';
  const other = now === 'in' ? 'cm' : 'in';
  const name = say('unitKey', { unit: say(UNIT_NAMES[now]), other: say(UNIT_NAMES[other]) });
  return html`<${Key} name=${name} onPress=${() => onUnit(other)}>
    <${Face} text=${now} kind="face-now" /><${Face} text=${other} kind="face-other" /><//>`;
}

function OneReading({ label, shown, known, hint }) {
  return html`<div class="reading">
    <div class="reading-top"><span class="reading-label">${label}</span>
      <span class="reading-other"><${Fractions} text=${known.other || ''} /></span></div>
    <${Figure} text=${shown} size="l" spoken=${shown === known.text ? known.spoken : shown} />
    ${!shown && html`<span class="reading-hint">${hint}</span>`}
  </div>`;
}

function TwoReadings({ label, texts, others, current, onReading }) {
  return html`<div class="reading">
    <div class="reading-top"><span class="reading-label">${label}</span></div>
    <div class="reading-pair">${[1, 2].map((number) => html`<button key=${number} type="button" class="reading-one"
        aria-pressed=${String(number === current)} onClick=${() => onReading?.(number)}>
      <span class="reading-which">${say(number === 1 ? 'firstReading' : 'secondReading')}</span>
      <${Figure} text=${texts[number - 1]} size="m" />
      <span class="reading-other"><${Fractions} text=${others[number - 1]} /></span>
    </button>`)}</div>
  </div>`;
}

const HARDWARE = { in: /^[\d/.,\- ]$/, mm: /^[\d.,]$/ };

export function MeasureEntry(props) {
  const { label, value, secondValue, unit, readings, onUnit, onReading, restAt, most, ask, problem, onDone } = props;
  const { hint = say('slideOrType') } = props;
  const scale = scaleOf(unit);
  const twice = typeof secondValue === 'string';
  const reading = twice ? props.reading ?? 2 : 1;
  const given = reading === 2 ? secondValue : value;

  const live = useSignal(null);
  const typing = useSignal(null);
  const message = useSignal('');
  const root = useRef(null);
  const [said, speakLater] = useSpokenLater();
  const send = useCalmInput((text) => props.onInput(text, reading));

  const text = live.value ?? given;
  const known = { text, ...useKnown(readings, text, unit, ask) };
  const pending = typing.value !== null && readTyped(readings, scale, typing.value).state === 'begun';
  const shown = pending ? `${typing.value} ${scale === 'in' ? 'in' : 'cm'}` : text;

  useEffect(() => {
    if (props.autoFocus) root.current.querySelector('.tape').focus({ preventScroll: true });
  }, []);
  // Before the page is seen: a key pressed at first sight must not be taken back.
  useLayoutEffect(() => { live.value = null; }, [given]);
  useLayoutEffect(() => {
    typing.value = null;
    message.value = '';
  }, [scale, reading]);

  const speak = (next) => {
    const row = findReading(readings, next)?.row;
    speakLater(row ? `${row[2]}, ${row[1]}` : next);
  };
  const onTape = (next, { settled, by }) => {
    typing.value = null;
    message.value = settled ? messageFor({ state: 'read', text: next }, readings, scale, most) : '';
    live.value = next;
    send(next, settled);
    if (settled && by === 'finger') speak(next);
  };
  const take = (next, refusal = '') => {
    const typed = readTyped(readings, scale, next);
    typing.value = next;
    message.value = refusal || (typed.text === null ? '' : messageFor(typed, readings, scale, most));
    if (typed.text === null || typed.text === text) return;
    live.value = typed.text;
    send(typed.text, true);
    speak(typed.text);
  };
  // Fractions and the delete key amend what stands; a digit begins anew unless keys were typed just before.
  const standing = () => typing.value ?? typingOf(text, scale);
  const onDigit = (digit) => {
    const before = typing.value ?? '';
    if (scale === 'mm' && /\.\d$/.test(before)) return take(before, say('millimetresAreFinest'));
    const next = withDigit(before, digit);
    return take(next, next === before && before !== '0' ? say('noMoreDigits') : '');
  };
  const onSign = (sign) => {
    if (scale === 'mm') return take(withPoint(standing()));
    const before = sign === '/' || sign === '.' || sign === ',' ? typing.value ?? '' : standing();
    if (!before) return undefined;
    return take(`${before}${sign === ',' ? '.' : sign}`);
  };
  const onKeyDown = (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey || event.defaultPrevented) return;
    const onButton = event.target.closest('button') && (event.key === ' ' || event.key === 'Enter');
    if (onButton || (event.key !== 'Backspace' && event.key !== 'Enter' && !HARDWARE[scale].test(event.key))) return;
    event.preventDefault();
    if (event.key === 'Enter') onDone?.();
    else if (event.key === 'Backspace') take(withoutLast(standing()));
    else if (/\d/.test(event.key)) onDigit(event.key);
    else onSign(event.key);
  };

  const told = problem || known.problem || message.value || known.notice || '';
  const both = { texts: [value, secondValue], others: [value, secondValue].map((one) => findReading(readings, one)?.row[1] ?? '') };
  if (twice) {
    both.texts[reading - 1] = shown;
    both.others[reading - 1] = known.other;
  }
  return html`<div class="measure" ref=${root} role="group" aria-label=${label} onKeyDown=${onKeyDown}>
    ${twice
      ? html`<${TwoReadings} label=${label} ...${both} current=${reading} onReading=${onReading} />`
      : html`<${OneReading} label=${label} shown=${shown} known=${known} hint=${hint} />`}
    <p class="measure-told${problem || known.problem ? ' measure-problem' : ''}" role="status">
      <${Fractions} text=${pending ? '' : told} /></p>
    <p class="visually-hidden" aria-live="polite">${said.value || null}</p>
    <div class="measure-tape"><${Tape} label=${label} value=${text} unit=${unit} readings=${readings} onChange=${onTape}
      restAt=${restAt} place=${known.place} /></div>
    <div class="keys">
      <${DigitKeys} label=${label} onDigit=${onDigit} onBackspace=${() => take(withoutLast(standing()))}
        last=${html`<${UnitKey} unit=${unit} onUnit=${onUnit} />`} />
      <div class="keys-parts" role="group" aria-label=${say('keysFor', { label })}>${scale === 'in'
        ? html`<${FractionKeys} part=${partOf(standing())}
            onFraction=${(sixteenths) => take(withFraction(readings, standing(), sixteenths))}
            onSixteenth=${() => take(withSixteenth(readings, standing()))} />`
        : html`<${DecimalKeys} half=${standing().endsWith('.5')} onPoint=${() => take(withPoint(standing()))}
            onHalf=${() => take(withHalfCentimetre(standing()))}
            onMillimetre=${(by) => take(withMillimetre(readings, standing(), by))} />`}</div>
    </div>
  </div>`;
}
