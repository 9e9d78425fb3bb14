// How each kind of cover can be closed, and where; as the core makes them, which a test confirms.

const byHand = { 'hand-sewn': ['bottom'] };
const inTwo = { envelope: ['back'], buttons: ['back'] };
const flat = { ...byHand, zip: ['bottom', 'back'], ...inTwo, ties: ['bottom'], open: ['bottom'] };
const boxed = { ...byHand, zip: ['boxing', 'back', 'bottom'], ...inTwo };

export const CLOSURES = {
  'knife-edge rectangle': flat,
  'knife-edge round': { ...byHand, zip: ['bottom', 'back'], ...inTwo },
  'boxed rectangle': boxed,
  'boxed round': boxed,
  'boxed polygon': boxed,
  'knife-edge polygon': flat,
  'bolster bolster': { ...byHand, zip: ['bottom'] },
};
