// Looks readings up in readings.json: by place on the tape, and by the text of a reading. No length is computed.
//
// A scale is one of the two tables: 'in' (row i is i sixteenths) or 'mm' (row i is i millimetres).
// A row is [own text, text in the other system, spoken text].

const indexes = new WeakMap();

/** The scale a unit is read on: inches on 'in', centimetres and millimetres on 'mm'. */
export function scaleOf(unit) {
  return unit === 'in' ? 'in' : 'mm';
}

function indexOfTexts(table) {
  if (!indexes.has(table)) {
    indexes.set(table, new Map(table.rows.map(([text], index) => [text, index])));
  }
  return indexes.get(table);
}

/** Where a text stands: {scale, index, row}, or null when neither table has exactly this text. */
export function findReading(readings, text) {
  if (!text) return null;
  for (const scale of ['in', 'mm']) {
    const index = indexOfTexts(readings[scale]).get(text);
    if (index !== undefined) return { scale, index, row: readings[scale].rows[index] };
  }
  return null;
}

/** The place in nanometres at which a text stands on the tape, or null; for drawing only. */
export function placeOf(readings, text) {
  const found = findReading(readings, text);
  return found ? found.index * readings[found.scale].step_nm : null;
}

/** The index of the mark nearest to a place, kept on the tape. */
export function nearestMark(readings, scale, place) {
  const { step_nm: step, rows } = readings[scale];
  return Math.min(Math.max(Math.round(place / step), 0), rows.length - 1);
}

/** The text at the end of the tape in the given scale. */
export function tapeEnd(readings, scale) {
  const rows = readings[scale].rows;
  return rows[rows.length - 1][0];
}
