// Counts the starts of Python that broke off, so that one that takes the whole page down is not repeated for
// ever (fault B28).
//
// Such a start leaves no message. So it is counted before it begins, and the count is cleared when it ends
// well. A page that is left or put aside while Python starts did not break: it takes its count back.
const KEY = 'plumpline-broken-starts';
let isStarting = false;
let isTakenBack = false;

export function brokenStarts() {
  try {
    return Number(localStorage.getItem(KEY)) || 0;
  } catch {
    return 0; // storage is switched off: nothing can be remembered
  }
}

export function noteStart() {
  isStarting = true;
  isTakenBack = false;
  write(brokenStarts() + 1);
}

/** The start failed with a message: it stays counted. */
export function noteFailure() {
  isStarting = false;
}

/** The start went well, or the person wants a fresh try: nothing is held against the next one. */
export function forgetFailures() {
  isStarting = false;
  write(0);
}

function write(count) {
  try {
    localStorage.setItem(KEY, String(Math.max(0, count)));
  } catch {
    // storage is switched off or full: the next start is simply tried
  }
}

function putAside() {
  if (isStarting && !isTakenBack) write(brokenStarts() - 1);
  isTakenBack = true;
}

function takenUp() {
  if (isStarting && isTakenBack) write(brokenStarts() + 1);
  isTakenBack = false;
}

addEventListener('pagehide', putAside);
addEventListener('pageshow', takenUp);
document.addEventListener('visibilitychange', () => (document.hidden ? putAside() : takenUp()));
