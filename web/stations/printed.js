// The picture of a cloth on drawings of the answer: how its repeat lies on the cloth, and which panel a face was cut as.
import { pictureOf } from '../store/pictures.js';
import { answer } from '../store/answers.js';

const NM = 1e6; // in a unit of the drawings, a mm

// What is seen whole on a drawn cushion. A bolster shows the middle of its body, a part in π of what goes round.
const FACES = ['front', 'back', 'body'];

/** The repeat of a plan with the cloth's picture on it, for Tiles; null where there is no picture, or no repeat. */
export function repeatIn({ repeat }, cloth) {
  const href = pictureOf(cloth)?.repeatUrl;
  const [across, along] = [repeat?.across || repeat?.along, repeat?.along || repeat?.across];
  if (!href || !across) return null;
  return { href, across: across / NM, along: along / NM, drop: repeat.drop / NM, x: repeat.x / NM, y: -repeat.y / NM };
}

function middleOf({ y, length, ...face }) {
  const seen = length / Math.PI;
  return { ...face, y: y + (length - seen) / 2, length: seen };
}

/** The plan of a cloth that is shown first: by straight cuts where that buys no more. */
export const firstPlan = (cloth) => (cloth.straight?.buy.nm === cloth.buy.nm ? cloth.straight : cloth);

/** Every face of a plan that can be drawn with the picture on it: {cushion, label, printed} for CushionDrawing. */
export function printedFaces(plan, cloth) {
  const repeat = repeatIn(plan, cloth);
  if (!repeat) return [];
  const seen = new Map(answer.value.pieces.filter(({ part, face }) => face && FACES.includes(part)).map((piece) => [piece.id, piece]));
  return plan.layout.filter(({ piece }) => seen.has(piece)).map((entry) => {
    const { face } = seen.get(entry.piece);
    const panel = { ...entry, face: entry.part === 'body' ? middleOf(face) : face };
    return { cushion: entry.cushion, part: entry.part, label: entry.label, printed: { repeat, panel } };
  });
}

/** What lands on the first front of a cushion; undefined where nothing is known of it. */
export const printedFront = (cushion) => (answer.value?.cloths ?? [])
  .flatMap((cloth) => printedFaces(firstPlan(cloth), cloth.cloth))
  .find((face) => face.cushion === cushion && face.part !== 'back')?.printed;
