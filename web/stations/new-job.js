// The documents a new job, a new cushion and a new cloth begin as: only what every job has, nothing the maker did not say.
import { newJobId } from '../store/shelf.js';
import { settings } from '../store/settings.js';
import { say } from '../words/words.js';

export const newCushion = (id, cloth, sizeFrom) => ({
  id, quantity: 1, kind: 'knife-edge',
  ...(sizeFrom === 'finished' ? { size_from: 'finished' } : {}),
  insert: { shape: 'rectangle' },
  cover: { front: { cloth }, back: { cloth } },
});

export const newCloth = (id) => ({ id });

function today() {
  const { words } = settings.value;
  return new Intl.DateTimeFormat(words, { day: 'numeric', month: 'short' }).format(new Date());
}

export const newJob = (sizeFrom) => ({
  format: 'plumpline-job', version: 1, id: newJobId(), name: say('home.newName', { date: today() }),
  units: settings.value.units,
  cushions: [newCushion('c1', 'k1', sizeFrom)],
  cloths: [newCloth('k1')],
  // The maker's own rate card, as it was kept: a copy, so that what is priced stays as it was.
  ...(settings.value.card ? { quote: settings.value.card } : {}),
});
