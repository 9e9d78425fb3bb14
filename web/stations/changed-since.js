// What is said on a line that was ticked off and reads otherwise since: nothing ticked is silently taken for another.
import { readBefore } from '../store/ticks.js';
import { say } from '../words/words.js';

export function changedSince(line, reads) {
  const then = readBefore(line, reads);
  return then && say('job.changedSince', { then });
}
