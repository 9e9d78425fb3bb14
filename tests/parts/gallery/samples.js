// Invented samples for the gallery: answers in the contract's shape, small enough to read.
const L = (inches, text) => ({ nm: inches * 25400000, text });

function grid(columns, rows, size, name) {
  const layout = [];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const place = row * columns + column;
      const part = place % 2 ? 'back' : 'front';
      const copy = Math.floor(place / 2) + 1;
      layout.push({
        piece: `c1.${part}`, copy, part, label: `${copy} ${part}`, up: 'away', turn: 0,
        x: column * size * 25400000, y: row * size * 25400000, width: size * 25400000, length: size * 25400000,
      });
    }
  }
  return { layout, name };
}

function acrossCuts(rows, size, width) {
  return Array.from({ length: rows }, (_, row) => ({
    number: row + 1, kind: 'across', text: `Across at ${(row + 1) * size} in`, x: 0, y: (row + 1) * size * 25400000, length: width * 25400000,
  }));
}

function alongCuts(columns, rows, size, first) {
  const cuts = [];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 1; column < columns; column += 1) {
      cuts.push({ number: first + cuts.length, kind: 'along', text: '', x: column * size * 25400000, y: row * size * 25400000, length: size * 25400000 });
    }
  }
  return cuts;
}

const three = grid(3, 4, 18);
export const plainCloth = {
  cloth: 'k1', name: 'plain linen', cloth_width: L(55, '55 in'), usable_width: L(54, '54 in'), selvedge: L(0.5, '1/2 in'), squaring: L(2, '2 in'),
  laid: L(72, '72 in'), layout: three.layout, offcuts: [], motif_points: [],
};
export const plainCuts = { layout: three.layout, laid: plainCloth.laid, cuts: [...acrossCuts(4, 18, 54), ...alongCuts(3, 4, 18, 5)] };

const two = grid(2, 6, 18);
export const narrowCloth = {
  cloth: 'k1', name: 'plain linen', cloth_width: L(54, '54 in'), usable_width: L(53, '53 in'), selvedge: L(0.5, '1/2 in'), squaring: L(2, '2 in'),
  laid: L(108, '108 in'), layout: two.layout,
  offcuts: [{ x: 36 * 25400000, y: 0, width: L(17, '17 in'), length: L(108, '108 in'), size: '17 × 108 in' }],
  motif_points: [],
};

const pitch = 24.4925;
export const printedCloth = {
  cloth: 'k1', name: 'printed linen', cloth_width: L(54, '54 in'), usable_width: L(53, '53 in'), selvedge: L(0.5, '1/2 in'), squaring: L(2, '2 in'),
  laid: L(5 * pitch + 18, '≈ 140 7/16 in'),
  layout: two.layout.map((entry, place) => ({
    ...entry, up: place % 2 ? 'left' : 'toward', x: (4 + (place % 2) * 27) * 25400000 - 25400000 * 0, y: Math.floor(place / 2) * pitch * 25400000,
  })),
  offcuts: [],
  motif_points: Array.from({ length: 12 }, (_, place) => [(13 + (place % 2) * 27) * 25400000, (9 + Math.floor(place / 2) * pitch) * 25400000]),
};

/** A disc as the core gives it: a polygon of many sides, from the lower left corner of the square around it. */
function disc(inches) {
  const r = inches * 12700000;
  return Array.from({ length: 48 }, (_, at) => [Math.round(r + r * Math.cos((at * Math.PI) / 24)), Math.round(r + r * Math.sin((at * Math.PI) / 24))]);
}

const discs = grid(3, 2, 17);
export const roundCloth = {
  cloth: 'k1', name: 'plain linen', cloth_width: L(54, '54 in'), usable_width: L(53, '53 in'), selvedge: L(0.5, '1/2 in'), squaring: L(2, '2 in'),
  laid: L(38, '38 in'),
  layout: [...discs.layout.map((entry) => ({ ...entry, outline: disc(17) })),
    { piece: 'c1.boxing', copy: 1, part: 'boxing', label: '1 boxing', up: 'right', turn: 270, x: 0, y: 34 * 25400000, width: 51 * 25400000, length: 4 * 25400000 }],
  offcuts: [], motif_points: [],
};

export const wayOut = {
  text: 'Cut the panels 17 5/8 in wide (side seams 5/16 in).', ask: '2 1/8 yd', saves: '1 yd',
  buy: L(76.5, '76 1/2 in'), change: [{ at: '/cushions/0/cover/side_seam', value: '5/16 in' }],
};
