// The worker's side of a plan, or a comparison: Python looks for it in slices, and between two of them hears what else
// is asked.
//
// While it looks it posts {id, progress}, how far it is, and, as it gets better, {id, soFar}, the reply as it stands;
// {id, reply} ends it. One plan is looked for at a time: a newer one takes its place. A stopped one waits, so that
// the same request asked again goes on from there.

const BREATH = 24; // ms of work before other messages are let in
const TOLD_EVERY = 120; // ms between two reports

/** `begin(text)` starts a session of the core; `guarded(id, work)` does work for a question and tells what fails. */
export function plansBySlices(begin, guarded) {
  let plan = null; // {id, text, session, told}: `told` is when it was last reported on, null before its first answer

  const post = (key, text) => postMessage({ id: plan.id, [key]: JSON.parse(text) });

  function drop() {
    plan?.session.destroy();
    plan = null;
  }

  function tell() {
    const now = performance.now();
    if (plan.told !== null && now - plan.told < TOLD_EVERY) return;
    const progress = JSON.parse(plan.session.progress());
    if (plan.told === null && !progress.news) return;
    plan.told = now;
    if (progress.news) post('soFar', plan.session.reply());
    postMessage({ id: plan.id, progress });
  }

  function work() {
    const until = performance.now() + BREATH;
    let more = true;
    while (more && performance.now() < until) more = plan.session.step();
    if (more) tell();
    else {
      post('reply', plan.session.reply());
      drop();
    }
  }

  function goOn(mine) {
    if (mine !== plan || mine.stopped) return;
    guarded(mine.id, () => {
      try {
        work();
      } catch (error) {
        plan = null;
        throw error;
      }
    });
    setTimeout(goOn, 0, mine);
  }

  return {
    begin(id, text) {
      guarded(id, () => {
        const isSame = plan?.text === text;
        if (!isSame) drop();
        plan = isSame ? { ...plan, id, stopped: false } : { id, text, session: begin(text), told: null };
        setTimeout(goOn, 0, plan);
      });
    },
    stop(id) {
      if (plan?.id !== id || plan.stopped) return;
      plan.stopped = true;
      guarded(id, () => post('reply', plan.session.reply()));
    },
  };
}
