// While an answer is looked at to buy or cut by, the full plan is wanted.
import { useEffect } from '../../parts/html.js';
import { wantsFull } from '../../store/answers.js';

export function useFullPlan() {
  useEffect(() => {
    wantsFull.value = true;
    return () => { wantsFull.value = false; };
  }, []);
}
