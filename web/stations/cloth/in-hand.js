// A piece in hand: its edges, its ends, its own width and what is to be kept clear of, and the piece drawn from them.
import { html } from '../../parts/html.js';
import { PieceDrawing } from '../../parts/piece-drawing.js';
import { valueAt } from '../../store/pointer.js';
import { job } from '../../store/session.js';
import { say } from '../../words/words.js';
import { Folded } from '../field.js';
import { Entries } from './entries.js';

const FIELDS = ['left', 'right', 'width', 'slant/start', 'slant/end', 'motif_along', 'length'];

// `laid` is the answer for the cloth, while it holds.
export function InHand({ cloth, laid }) {
  const at = `${cloth}/piece`;
  return html`<${Folded} title=${say('cloth.piece')} note=${say('cloth.pieceHint')} fields=${FIELDS.map((name) => `${at}/${name}`)}
      isTold=${valueAt(job.value, at) !== undefined}>
    ${laid?.piece && html`<${PieceDrawing} piece=${laid.piece} bare />`}
    <${Entries} list=${`${at}/flaws`} />
  <//>`;
}
