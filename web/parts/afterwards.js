// Draws a large screen in turns, so that no single one holds up the page.
import { useEffect, useState } from './html.js';

/** `value`, null at first and then always one turn late: what hangs on it is drawn in a task of its own. */
export function useAfterwards(value) {
  const [late, setLate] = useState(null);
  useEffect(() => {
    const timer = setTimeout(setLate, 0, value);
    return () => clearTimeout(timer);
  }, [value]);
  return late;
}
