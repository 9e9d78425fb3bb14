// Keeps the screen awake while a part is shown, where the phone can: without a word where it cannot.
import { useEffect } from './html.js';

export function useAwake() {
  useEffect(() => {
    let lock = null;
    let isOver = false;
    const wake = async () => {
      if (isOver || document.visibilityState !== 'visible') return;
      // Refused where the battery is low, and not there in older browsers: the screen then dims as ever.
      lock = await navigator.wakeLock?.request('screen').catch(() => null);
      if (isOver) lock?.release();
    };
    wake();
    // A page that was out of sight has lost its lock.
    document.addEventListener('visibilitychange', wake);
    return () => {
      isOver = true;
      document.removeEventListener('visibilitychange', wake);
      lock?.release();
    };
  }, []);
}
