// What the keys have typed so far, and which reading it stands for; texts come from readings.json, nothing is computed.
//
// Typing is one string without its unit ('17 5/8', '44.'). `readTyped` says what it stands for; the other
// functions answer the typing after one more key.

const UNIT_TEXT = { in: 'in', mm: 'cm' };
const SIXTEENTHS_IN = { 2: 8, 4: 4, 8: 2, 16: 1 };
const MOST_DIGITS = 4;
const FRACTION = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/;
const BEGUN_FRACTION = /^(?:\d+[ -](?:\d+\/?)?|\d+\/|(?:\d+[ -])?\d+\/1)$/;

/** A text of readings.json without its unit, if it is of this scale; otherwise ''. */
export function typingOf(text, scale) {
  const unit = ` ${UNIT_TEXT[scale]}`;
  return text.endsWith(unit) ? text.slice(0, -unit.length) : '';
}

function fractionText(readings, sixteenths) {
  return sixteenths ? typingOf(readings.in.rows[sixteenths][0], 'in') : '';
}

function sixteenthsOf(numerator, denominator) {
  const each = SIXTEENTHS_IN[denominator];
  return each && Number(numerator) < Number(denominator) && numerator !== '0' ? Number(numerator) * each : null;
}

/** An inch typing split as {whole: digits, part: sixteenths}; null when it is neither whole nor fraction. */
function splitInches(typing) {
  const whole = /^(\d*)[ -]?$/.exec(typing);
  if (whole) return { whole: whole[1], part: 0 };
  const match = FRACTION.exec(typing);
  const part = match && sixteenthsOf(match[2], match[3]);
  return part ? { whole: match[1] ?? '', part } : null;
}

function joinInches(readings, whole, part) {
  return [whole, fractionText(readings, part)].filter(Boolean).join(' ');
}

/** Sixteenths beyond the whole inches of an inch typing, to show which keys are down. */
export function partOf(typing) {
  return splitInches(typing)?.part ?? 0;
}

/** What a typing stands for: {text, state: 'read' | 'beyond' | 'begun' | 'unread'}; text null while it is begun. */
export function readTyped(readings, scale, typing) {
  if (!typing) return { text: '', state: 'read' };
  return scale === 'in' ? readInches(readings, typing) : readCentimetres(readings, typing);
}

function readInches(readings, typing) {
  if (BEGUN_FRACTION.test(typing) && !FRACTION.exec(typing)?.[3].match(/^(2|4|8|16)$/)) return { text: null, state: 'begun' };
  const split = splitInches(typing);
  if (!split) return { text: `${typing} in`, state: 'unread' };
  const row = readings.in.rows[Number(split.whole) * 16 + split.part];
  return row ? { text: row[0], state: 'read' }
    : { text: `${joinInches(readings, split.whole, split.part)} in`, state: 'beyond' };
}

function readCentimetres(readings, typing) {
  const match = /^(\d+)(?:\.(\d?))?$/.exec(typing);
  if (!match) return { text: `${typing} cm`, state: 'unread' };
  const row = readings.mm.rows[Number(match[1]) * 10 + Number(match[2] || 0)];
  const begun = match[2] === '';
  if (row) return { text: row[0], state: begun ? 'begun' : 'read' };
  return { text: `${begun ? match[1] : typing} cm`, state: begun ? 'begun' : 'beyond' };
}

/** After a digit. A finished fraction is not continued: the digit begins a new number. */
export function withDigit(typing, digit) {
  const begun = FRACTION.test(typing) && splitInches(typing) ? '' : typing;
  const next = `${begun}${digit}`.replace(/^0+(?=\d)/, '');
  return /\d+$/.exec(next)[0].length > MOST_DIGITS ? typing : next;
}

/** After a fraction key of so many sixteenths: in place of the fraction that stood there; a second press removes it. */
export function withFraction(readings, typing, sixteenths) {
  const { whole, part } = splitInches(typing) ?? { whole: /^\d*/.exec(typing)[0], part: 0 };
  return joinInches(readings, whole, part - (part % 2) === sixteenths ? part % 2 : sixteenths);
}

/** After the sixteenth key: one sixteenth more, or back to the eighth when it already stands on an odd one. */
export function withSixteenth(readings, typing) {
  const { whole, part } = splitInches(typing) ?? { whole: /^\d*/.exec(typing)[0], part: 0 };
  return joinInches(readings, whole, part % 2 ? part - 1 : part + 1);
}

/** After the point: the whole centimetres, ready for the millimetre. */
export function withPoint(typing) {
  return `${/^\d*/.exec(typing)[0] || '0'}.`;
}

/** After the point-five key: half a centimetre beyond the whole; a second press removes it. */
export function withHalfCentimetre(typing) {
  const whole = /^\d*/.exec(typing)[0] || '0';
  return typing.endsWith('.5') ? whole : `${whole}.5`;
}

/** After one millimetre more or less; stays at the ends of the tape and on what the tape does not hold. */
export function withMillimetre(readings, typing, by) {
  const { text } = readTyped(readings, 'mm', typing || '0');
  const index = readings.mm.rows.findIndex((row) => row[0] === text);
  const row = index < 0 ? null : readings.mm.rows[index + by];
  return row ? typingOf(row[0], 'mm') : typing;
}

/** After the delete key: a finished fraction goes as a whole, everything else sign by sign. */
export function withoutLast(typing) {
  const match = FRACTION.exec(typing);
  return match && splitInches(typing) ? match[1] ?? '' : typing.slice(0, -1).trimEnd();
}
