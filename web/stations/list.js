// The stations in the order they are walked. A new station is one folder and one row here. One `within` another has no
// tab of its own: it is reached from there.
import { Measure } from './measure/measure.js';
import { Cover } from './cover/cover.js';
import { Cloth } from './cloth/cloth.js';
import { Cut } from './cut/cut.js';
import { Counter } from './counter/counter.js';
import { Compare } from './compare/compare.js';
import { Make } from './make/make.js';
import { Price } from './price/price.js';

export const stations = [
  { id: 'measure', Screen: Measure },
  { id: 'cover', Screen: Cover },
  { id: 'cloth', Screen: Cloth },
  { id: 'cut', Screen: Cut },
  { id: 'counter', Screen: Counter, within: 'cut' },
  { id: 'compare', Screen: Compare, within: 'cut' },
  { id: 'make', Screen: Make },
  { id: 'price', Screen: Price },
];
