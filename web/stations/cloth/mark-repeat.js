// Marking one repeat on the photo of a cloth: its corners moved until the pattern runs on from one repeat to the next.
import { html, useEffect, useRef, useState } from '../../parts/html.js';
import { CornerMarks } from '../../parts/picture/corner-marks.js';
import { straightRepeat } from '../../parts/picture/pictures.js';
import { goRound } from '../../parts/picture/projection.js';
import { Sheet } from '../../parts/sheet.js';
import { pictureOf } from '../../store/pictures.js';
import { lastOf } from '../../store/pointer.js';
import { say } from '../../words/words.js';
import { RepeatPicture } from './repeat-picture.js';

const FIRST = [[0.2, 0.8], [0.8, 0.8], [0.8, 0.2], [0.2, 0.2]];
const RESTED = 120; // ms after which a corner is taken to rest

const addressOf = (bytes) => URL.createObjectURL(new Blob([bytes], { type: 'image/jpeg' }));

// The repeat straightened anew whenever the corners rest: {corners, bytes, href}; the last one stands meanwhile, and
// where it could not be done there is no `href`.
function useStraight(photo, corners) {
  const [straight, setStraight] = useState(null);
  const asked = useRef(null);
  const straighten = async () => {
    asked.current = corners;
    const bytes = await straightRepeat(photo, corners).catch(() => null);
    if (asked.current === corners) setStraight({ corners, bytes, href: bytes && addressOf(bytes) });
  };
  useEffect(() => {
    if (!goRound(corners)) return undefined;
    const timer = setTimeout(straighten, RESTED);
    return () => clearTimeout(timer);
  }, [corners]);
  useEffect(() => () => { if (straight?.href) URL.revokeObjectURL(straight.href); }, [straight]);
  useEffect(() => () => { asked.current = null; }, []);
  return straight;
}

function wordFor(isRound, straight) {
  if (!isRound) return 'cloth.markWrong';
  return straight && !straight.bytes ? 'cloth.markFailed' : 'cloth.markCheck';
}

export function MarkRepeat({ cloth, onKeep, onClose }) {
  const { now, photoUrl } = pictureOf(lastOf(cloth));
  const [corners, setCorners] = useState(now.corners ?? FIRST);
  const straight = useStraight(now.photo, corners);
  const isRound = goRound(corners);
  const isReady = isRound && straight?.corners === corners && straight.bytes;
  const keep = () => {
    onKeep({ corners, repeat: straight.bytes });
    onClose();
  };
  return html`<${Sheet} title=${say('cloth.markTitle')} onClose=${onClose} wide
      footer=${html`<button type="button" class="button-primary" disabled=${!isReady} onClick=${keep}>${say('cloth.marked')}</button>`}>
    <p class="note">${say('cloth.markHint')}</p>
    <${CornerMarks} src=${photoUrl} size=${now} corners=${corners} isWrong=${!isRound} onMove=${setCorners} />
    <div class="marking-preview"><div class="marking-repeat">${straight?.href && html`<${RepeatPicture} cloth=${cloth} href=${straight.href} />`}</div>
      <p class="note" role="status">${say(wordFor(isRound, straight))}</p></div>
  <//>`;
}
