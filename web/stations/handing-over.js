// Handing a file over, and saying how that went: for the list of jobs, and for the papers of a job.
import { html, useState } from '../parts/html.js';
import { Notice } from '../parts/notice.js';
import { handOver, shareFile } from '../store/files.js';
import { say } from '../words/words.js';

// What is said after handing over; nothing where the phone has said it, or the maker thought better of it.
const OUTCOMES = { saved: 'file.saved', again: 'file.shareAgain' };

/** `told` is how it went: {outcome, word, file, reason}; `hand(file)` hands over, `share(file)` after one more tap. */
export function useHandingOver() {
  const [told, setTold] = useState(null);
  const by = (way) => async (file) => {
    try {
      const outcome = await way(file);
      setTold({ outcome, word: OUTCOMES[outcome], file });
    } catch (error) {
      setTold({ outcome: 'failed', word: 'file.failed', file, reason: error.message });
    }
  };
  return { told, hand: by(handOver), share: by(shareFile) };
}

export const HandedOver = ({ told }) => told?.word && html`<div role="status">
  <${Notice} level=${told.outcome === 'failed' ? 'stop' : 'info'}
    text=${say(told.word, { file: told.file.name, reason: told.reason })} /></div>`;
