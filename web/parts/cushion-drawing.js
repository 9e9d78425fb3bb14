// The cushion in true proportion, drawn by its kind and shape, with its measures beside it.
//
// CushionDrawing({kind, shape, measures, texts?, labels?, focus?, corners?, edge?, closing?, note?})
//   kind, shape  one of DRAWINGS; a shape that a kind does not have is drawn as that kind's first
//   measures     {width, length, diameter, thickness} in nm, those the kind has; one not taken yet is null or left out:
//                the cushion is then dashed, in a usual proportion
//   texts        the measures in words, for the name of the drawing
//   labels       texts beside the dimension lines
//   focus        the measure drawn in the accent colour, or null
//   corners      {depth, run} nm for tapered corners, {radius} nm for rounded ones, or null; of a straight-sided outline
//                `run` is {nm}, or a {share} of each side
//   edge         {kind, rims?, nm?}: 'piped', 'trimmed' or 'frilled' rims are drawn, the front's alone or 'both', or a
//                'flanged' edge; `nm` is how far a flange or frill stands out; null for a plain one
//   closing      {kind, at?, nm?} as of cushions/closing.js, or null
//   outline      of a straight-sided one: {count, taped: [[corner, corner, nm]], notches: [corner], sure}; focus is then
//                [corner, corner], closing has its {side, edge}, or across the back {up, edge}, how far up as a share,
//                and labels.sides are the texts of the sides
//   printed      what lands on its face of a printed cloth, as of cushions/printed-face.js, or null
//   made         the parts of its front, as of cushions/face-parts.js, or null
//   note         a line of text under the drawing
// CushionSketch({kind, shape, outline?})   the same as a small picture without measures, for a choice of kinds
import { html } from './html.js';
import { Fractions } from './figure.js';
import { boxed } from './cushions/boxed.js';
import { boxedRound } from './cushions/boxed-round.js';
import { bolster } from './cushions/bolster.js';
import { knifeEdge } from './cushions/knife-edge.js';
import { knifeEdgeRound } from './cushions/knife-edge-round.js';
import { outlinedFlat, outlinedSeat } from './cushions/outlined.js';
import { say } from './words.js';

// The catalogue: a new kind is one file in cushions/ and one entry here.
const DRAWINGS = {
  'knife-edge': { rectangle: knifeEdge, round: knifeEdgeRound, polygon: outlinedFlat },
  boxed: { rectangle: boxed, round: boxedRound, polygon: outlinedSeat },
  bolster: { bolster },
};

const VIEW = { width: 340, bare: 160, labelled: 186 };
const SKETCH = '56 6 204 136';

function drawingOf(kind, shape) {
  const shapes = DRAWINGS[kind] ?? DRAWINGS['knife-edge'];
  return shapes[shape] ?? Object.values(shapes)[0];
}

/** The measures that a kind in a shape is drawn from, in the order of the tape. */
export const measuresOf = (kind, shape) => Object.keys(drawingOf(kind, shape).usual);

function nameOf(drawing, measures, texts, outline) {
  const isTaken = Object.keys(drawing.usual).every((name) => measures[name]) && outline?.sure !== false;
  return isTaken ? say(drawing.word, texts) : say('cushionUnmeasured');
}

export function CushionDrawing({ kind = 'knife-edge', shape, measures, labels = {}, texts = labels, outline, note, ...drawn }) {
  const drawing = drawingOf(kind, shape);
  const height = Object.values(labels).some(Boolean) ? VIEW.labelled : VIEW.bare;
  return html`<svg class="drawing cushion-drawing" viewBox="0 0 ${VIEW.width} ${height}" role="img"
      aria-label=${nameOf(drawing, measures, texts, outline)}>
      <${drawing.Draw} measures=${measures} labels=${labels} outline=${outline} ...${drawn} /></svg>
    ${note && html`<p class="drawing-note"><${Fractions} text=${note} /></p>`}`;
}

export const CushionSketch = ({ kind, shape, outline }) => html`<svg class="drawing cushion-sketch" viewBox=${SKETCH} aria-hidden="true"
  focusable="false"><${drawingOf(kind, shape).Draw} measures=${{}} labels=${{}} outline=${outline} /></svg>`;
