// Is the piece in hand enough? Yes with what is left, or no with by how much; what it makes; and what would do.
import { useAfterwards } from '../../parts/afterwards.js';
import { html, useState } from '../../parts/html.js';
import { Figure, Fractions } from '../../parts/figure.js';
import { WayOut } from '../../parts/notice.js';
import { PieceDrawing } from '../../parts/piece-drawing.js';
import { Sheet } from '../../parts/sheet.js';
import { isCurrent } from '../../store/answers.js';
import { say } from '../../words/words.js';
import { Working } from '../cover/finished-size.js';
import { calledIn } from './called.js';
import { takeWayOut } from './ways-out.js';

// By how much: the figure the maker came for, or the core's sentence where it is none.
function ByHowMuch({ piece }) {
  const by = piece.enough ? piece.spare : piece.short_by;
  if (!by || by.nm <= 0) return html`<p class="in-hand-by"><${Fractions} text=${piece.text} /></p>`;
  return html`<p class="in-hand-by"><${Figure} text=${by.text} /> ${say(piece.enough ? 'inHand.left' : 'inHand.short')}</p>`;
}

const Verdict = ({ piece }) => html`
  <p class="in-hand-answer" role="status">${say(piece.enough ? 'inHand.yes' : 'inHand.no')}</p>
  <${ByHowMuch} piece=${piece} />
  <p><${Fractions} text=${piece.makes_text} /></p>`;

function Why({ piece }) {
  const [open, setOpen] = useState(false);
  return html`<button type="button" class="button" onClick=${() => setOpen(true)}>${say('cut.pieceWhy')}</button>
    ${open && html`<${Sheet} title=${say('cut.whyTitle')} onClose=${() => setOpen(false)}>
      <${Working} sentences=${piece.working} /><//>`}`;
}

// One other way, looked at: what it makes of the piece, how that is laid, and the tap that takes it.
function OneWay({ way, onClose }) {
  const take = () => {
    takeWayOut(way);
    onClose();
  };
  const footer = html`<button type="button" class="button-primary" onClick=${take}>${say('cut.takeWay')}</button>`;
  return html`<${Sheet} title=${way.text} onClose=${onClose} footer=${footer}>
    <div class="stack"><${Verdict} piece=${way.piece} /><${PieceDrawing} piece=${way.piece} /></div><//>`;
}

function Ways({ ways }) {
  const [shown, setShown] = useState(null);
  if (ways.length === 0) return null;
  return html`<h3 class="section-title">${say('inHand.ways')}</h3>
    ${ways.map((way) => html`<${WayOut} key=${way.text} wayOut=${way} onWayOut=${setShown} />`)}
    ${shown && html`<${OneWay} way=${shown} onClose=${() => setShown(null)} />`}`;
}

// `cloth` is one of the answer's cloths; its name stands in the heading where there are `several`.
export function InHand({ cloth, several }) {
  const piece = useAfterwards(cloth.piece);
  if (!piece || !cloth.piece || !isCurrent.value) return null;
  const title = several ? `${say('inHand.title')} · ${calledIn('/cloths', cloth.cloth)}` : say('inHand.title');
  return html`<section class="in-hand stack" aria-label=${title}>
    <h2 class="section-title">${title}</h2>
    <${Verdict} piece=${piece} />
    <${PieceDrawing} piece=${piece} />
    <${Why} piece=${piece} />
    <${Ways} ways=${piece.ways_out} />
  </section>`;
}
