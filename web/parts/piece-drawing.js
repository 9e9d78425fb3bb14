// A piece in hand to scale, its crooked ends and the places kept clear, with what is laid on it.
//
// PieceDrawing({piece, bare?})   piece: the `piece` of an answer's cloth; bare: without what is laid on it
import { html, useMemo } from './html.js';
import { PlanDrawing } from './plan-drawing.js';

export function PieceDrawing({ piece, bare = false }) {
  const cloth = useMemo(() => ({ ...piece, laid: piece.usable_length, ...(bare && { layout: [], offcuts: [], motif_points: [] }) }), [piece, bare]);
  const plan = useMemo(() => ({ layout: cloth.layout }), [cloth]);
  return html`<${PlanDrawing} cloth=${cloth} plan=${plan} called="pieceInHand" />`;
}
