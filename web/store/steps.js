// The steps of Undo: {key, when, changes, undo}. The key tells a step apart from those of another tab.
const MOST = 200;
const ONE_VISIT = 1500; // ms within which further values of one field belong to the same step

let count = 0;

const newStep = (changes, undo) =>
  ({ key: `${Date.now().toString(36)}-${(count++).toString(36)}`, when: Date.now(), changes, undo });

// Further values of one field within a moment are one step: a drag along the tape is undone at once.
function follows(last, changes) {
  const [change] = changes;
  const [before] = last?.changes ?? [];
  return changes.length === 1 && last.changes.length === 1 && change.do === 'put' && before.do === 'put'
    && change.at === before.at && Date.now() - last.when < ONE_VISIT;
}

// The steps after some more changes and what undoes them.
export function withStep(done, changes, undo) {
  const last = done.at(-1);
  if (last && follows(last, changes)) return [...done.slice(0, -1), { ...last, changes, when: Date.now() }];
  return [...done, newStep(changes, undo)].slice(-MOST);
}
