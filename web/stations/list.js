// The stations in the order they are walked. A new station is one folder and one row here.
import { Measure, takesItself } from './measure/measure.js';
import { Cover } from './cover/cover.js';
import { Cloth } from './cloth/cloth.js';
import { Cut } from './cut/cut.js';

export const stations = [
  // `holds` tells which of its fields a station takes itself, without a sheet.
  { id: 'measure', Screen: Measure, holds: takesItself },
  { id: 'cover', Screen: Cover },
  { id: 'cloth', Screen: Cloth },
  { id: 'cut', Screen: Cut },
];
