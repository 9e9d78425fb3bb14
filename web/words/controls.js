// Every control of the app by its role and accessible name, and every field of a job by the row and the entry that set it.
//
// How to find a control: ask for role and name exactly as they stand here (en-GB, the first language). {…} is filled in by
// the screen: {job}, {cushion}, {cloth}, {next}, {field}. Other languages override the same names in their own file beside
// this one, under the key "home.newJob", "field:/name" or "option:/units=in". A 'row' is a line that opens an entry: a
// button named "Change <name>: <value>". Radio buttons are chosen by touching the label around them.
//
// How to set a field of a job document: its pattern ("*" stands for the cushion, cloth, motif or flaw) names the station
// it is on. There, choose the cushion or cloth first where there are several (a button named as it is, or "Cushion 2",
// "Cloth 2"; motifs and flaws stand in groups named "Motif 1", "Flaw 1"), then press the field's row and use its entry:
// (the flaws of a piece in hand: "Place 1 on the piece")
//   measure   the tape's keys: "1", "8", "five eighths", "one sixteenth more", "point", "Delete the last key", and
//             "Unit: inches. Change to centimetres" (the names of keys are those of parts/words.js)
//   signed    as measure, with two radio buttons for the side; the second stands for "-"
//   choice    radio buttons named by `options`
//   times     the same; how many times, "2.5"
//   cloth, motif, currency   radio buttons: the names of the job's cloths, of the cloth's motifs; the currency's code
//   outline   radio buttons for an outline to begin with, "One more: Sides", a toggle for each corner that turns inwards
//             and for each way across that is taped; {ends} of a side or a way across are its corners: "Side AB"
//   side      radio buttons: the sides by their corners, "AB"
//   count     "One more: <name>" and "One less: <name>"
//   text      a text box of the field's name
//   date      the device's calendar, labelled with the field's name, or "Today"
//   money     keys "1", "point"…
//   percent   the same keys; 3 is stored as "0.03"
//   rate      the same keys; 50 is stored as "50 %"
//   number    the same keys
//   flag      radio buttons named by `options`
//   cloths    a toggle for each cloth: "{cloth} is the client's"
//   length    radio buttons named by `options`, or "Another length" and the tape's keys
// "Done" closes an entry, "Leave out" empties the field. A field with `view` is taken on the station itself, without a
// sheet: there "Next: …" goes on and "Back" returns to the list. Second readings are reached by "Read again" beside the
// first. A field with `names` is called otherwise in the kinds of cover named there; of the measures and faces only those
// are on the screen that the cushion's kind and shape have. A field with `after` is on the screen only once that other field makes sense of it; so are `drop`, `motifs` and
// `start` once there is a repeat, `wash` once there is shrinkage, `per` and `currency` once there is a price. `usual` is
// what the core takes while the field is not set (by the job's units where it depends on them).

export const controls = {
  home: {
    newJob: ['button', 'New job'],
    job: ['button', '{job} {covers} · {day} {answer}'],
    padsInHand: ['button', 'Pads in hand'],
    sizeWanted: ['button', 'Size wanted'],
    bringIn: ['button', 'Bring in a job file'],
    settings: ['button', 'Settings'],
    more: ['button', 'More about {job}'],
    share: ['button', 'Save as a file'],
    shareNow: ['button', 'Share the file now'],
    duplicate: ['button', 'Duplicate'],
    remove: ['button', 'Delete'],
    undoDelete: ['button', 'Bring back {job}'],
    bin: ['button', 'Recently deleted'],
    keepBoth: ['button', 'Keep both'],
    replace: ['button', 'Replace the one here'],
    update: ['button', 'Update now'],
    again: ['button', 'Try again'],
  },
  job: {
    back: ['button', 'Back'],
    undo: ['button', 'Undo'],
    redo: ['button', 'Redo'],
    measure: ['link', 'Measure'],
    cover: ['link', 'Cover'],
    cloth: ['link', 'Cloth'],
    cut: ['link', 'Cut'],
    make: ['link', 'Make'],
    price: ['link', 'Price'],
    done: ['button', 'Done'],
    leaveOut: ['button', 'Leave out'],
    otherLength: ['radio', 'Another length'],
    close: ['button', 'Close'],
  },
  measure: {
    cushion: ['button', '{cushion}'],
    add: ['button', 'Add a cushion'],
    duplicate: ['button', 'Duplicate {cushion}'],
    remove: ['button', 'Remove {cushion}'],
    again: ['button', 'Read again'],
    square: ['button', 'Square: same height'],
    next: ['button', 'Next: {next}'],
    kind: ['radio', { 'knife-edge rectangle': 'Knife-edge', 'knife-edge round': 'Round', 'boxed rectangle': 'Boxed',
      'boxed round': 'Boxed round', 'bolster bolster': 'Bolster', 'boxed polygon': 'Shaped seat', 'knife-edge polygon': 'Shaped flat' }],
    outline: ['radio', { bay: 'Bay or trapezoid', ell: 'L', tee: 'T' }],
    turnsInwards: ['button', 'Corner {corner} turns inwards'],
    tapedAcross: ['button', 'Tape from corner to corner: {ends}'],
  },
  cover: {
    cushion: ['button', '{cushion}'],
    how: ['button', 'How so?'],
  },
  cloth: {
    cloth: ['button', '{cloth}'],
    add: ['button', 'Add a cloth'],
    remove: ['button', 'Remove {cloth}'],
    takePhoto: ['button', 'Take a photo'],
    pickPhoto: ['button', 'Pick a picture'],
    mark: ['button', 'Mark the repeat'],
    markAgain: ['button', 'Move the marks'],
    marked: ['button', 'The repeat is marked'],
    motifHere: ['button', 'Set a motif on the picture'],
    motifHandle: ['button', '{motif} on the picture. Arrow keys move it'],
    removePicture: ['button', 'Remove the picture'],
    pictureBack: ['button', 'Bring the last picture back'],
    addMotif: ['button', 'Add a motif'],
    removeMotif: ['button', 'Remove motif {motif}'],
    addFlaw: ['button', 'Add a flaw'],
    removeFlaw: ['button', 'Remove flaw {flaw}'],
    addPlace: ['button', 'Add a flaw or a crease'],
    addCorner: ['button', 'Add a cut-out corner'],
    asAsked: ['button', 'As asked for: {length}'],
    addBought: ['button', 'Add a length that was cut'],
    removeBought: ['button', 'Remove: {flaw}'],
    toPiece: ['button', 'Plan it as the piece in hand'],
    removePlace: ['button', 'Remove: {flaw}'],
  },
  cut: {
    why: ['button', 'How so?'],
    shopping: ['button', 'Shopping list'],
    showPlan: ['button', 'Show the lay plan'],
    stop: ['button', 'Stop'],
    goOn: ['button', 'Go on looking'],
    settle: ['button', 'Settle: {field}'],
    straight: ['radio', 'Straight cuts'],
    interlocked: ['radio', 'Shortest plan'],
    sun: ['button', 'Sunlight'],
    cloth: ['button', '{cloth}'],
    pieceWhy: ['button', 'How so, on this piece?'],
    takeWay: ['button', 'Do it this way'],
    templates: ['button', 'Full-size templates Save as PDF'],
    whichCovers: ['row', 'Which covers'],
    shareNow: ['button', 'Share the file now'],
  },
  compare: {
    open: ['button', 'Compare the ways'],
    take: ['button', 'Take this: {name}'],
    look: ['button', 'Look at the lay plan: {name}'],
  },
  counter: {
    open: ['button', 'At the counter'],
    check: ['button', '{check} {value}'],
    cloth: ['button', '{cloth}'],
    show: ['button', 'Show or send'],
    send: ['button', 'Send'],
  },
  make: {
    cushion: ['button', '{cushion}'],
    step: ['checkbox', '{step}'],
    done: ['button', 'Done: {step}'],
    facts: ['button', 'The sheet'],
    paper: ['button', 'Workroom sheet Save as PDF'],
  },
  price: {
    addItem: ['button', 'Add to the bill'],
    removeItem: ['button', 'Remove {item}'],
    keep: ['button', 'Keep these rates for new jobs'],
    change: ['button', 'Change: {field}'],
    left: ['button', 'What stays with you'],
    isClients: ['button', '{cloth} is the client’s'],
  },
  settings: {
    words: ['radio', { 'en-GB': 'British', 'en-US': 'American' }],
    light: ['radio', { phone: 'As the phone', light: 'Light', dark: 'Dark', sun: 'Sunlight, black on white' }],
    units: ['radio', { in: 'Inches', cm: 'Centimetres' }],
    currency: ['row', 'Currency'],
    paper: ['radio', { a4: 'A4', letter: 'US Letter' }],
    keep: ['button', 'Ask to keep jobs safe'],
  },
};

const origins = { insert: 'Pads in hand', finished: 'Size wanted' };
const steps = { '1/8 yd': '1/8 yd', '1/4 yd': '1/4 yd', '1/2 yd': '1/2 yd', '1 yd': '1 yd',
  '10 cm': '10 cm', '25 cm': '25 cm', '50 cm': '50 cm', '0.1 m': '0.1 m', '0.25 m': '0.25 m', '0.5 m': '0.5 m', '1 m': '1 m' };
const grids = { '1/16 in': '1/16 in', '1/8 in': '1/8 in', '1/4 in': '1/4 in', '1/2 in': '1/2 in',
  '1 mm': '1 mm', '5 mm': '5 mm', '1 cm': '1 cm', 0: 'None: the exact size' };

const cords = { '1/8 in': '1/8 in', '5/32 in': '5/32 in', '3/16 in': '3/16 in', '1/4 in': '1/4 in', '3/8 in': '3/8 in', '1/2 in': '1/2 in',
  '3 mm': '3 mm', '4 mm': '4 mm', '5 mm': '5 mm', '6 mm': '6 mm', '8 mm': '8 mm', '10 mm': '10 mm' };
const thicknesses = { '1/64 in': '1/64 in', '1/32 in': '1/32 in', '1/16 in': '1/16 in', '0.5 mm': '0.5 mm', '1 mm': '1 mm', '1.5 mm': '1.5 mm' };

// `byKind` is what the part is called in some kinds of cover, `patterns` what it can do with the pattern besides.
const face = (part, side, byKind = {}, patterns = {}) => {
  const called = (what) => ({ name: `${side} ${what}`,
    names: Object.fromEntries(Object.entries(byKind).map(([kind, called]) => [kind, `${called} ${what}`])) });
  return {
    [`/cushions/*/cover/${part}/cloth`]: { ...called('cloth'), kind: 'cloth' },
    [`/cushions/*/cover/${part}/pattern`]: { ...called('pattern'), kind: 'choice', usual: 'free',
      options: { free: 'Free', alike: 'All alike', centred: 'Centred', 'stripe-centred': 'Stripe centred', ...patterns } },
    [`/cushions/*/cover/${part}/motif`]: { ...called('motif'), kind: 'motif', after: 'pattern' },
    [`/cushions/*/cover/${part}/offset/across`]: { ...called('off centre, across'), kind: 'signed', after: 'pattern',
      options: { '': 'To the right', '-': 'To the left' } },
    [`/cushions/*/cover/${part}/offset/along`]: { ...called('off centre, along'), kind: 'signed', after: 'pattern',
      options: { '': 'Above', '-': 'Below' } },
    [`/cushions/*/cover/${part}/turn`]: { ...called('turning'), kind: 'choice', usual: 'quarter',
      options: { none: 'No turning', half: 'Half turns at most', quarter: 'As the cloth allows' } },
    [`/cushions/*/cover/${part}/group`]: { ...called('alike with'), kind: 'text', after: 'pattern' },
  };
};

const JOINED = { none: 'Cut whole', 'both-ends': 'An equal piece at each end', 'one-side': 'One piece at a side' };

// How a face is joined where the cloth is too narrow for it.
const joins = (part, side, byKind = {}) => {
  const named = (what) => ({ name: `${side} ${what}`,
    names: Object.fromEntries(Object.entries(byKind).map(([kind, called]) => [kind, `${called} ${what}`])) });
  return {
    [`/cushions/*/cover/${part}/joined`]: { ...named('joined'), kind: 'choice', usual: 'none', options: JOINED },
    [`/cushions/*/cover/${part}/join_pattern`]: { ...named('pattern at the joins'), kind: 'choice', after: 'joined',
      options: { matched: 'Matched', free: 'Not matched' } },
  };
};

// The parts a face is made of; of a bolster's body, only a band.
const madeOf = (part, side, byKind = {}) => {
  const at = `/cushions/*/cover/${part}/made`;
  const named = (what) => ({ name: `${side} ${what}`, after: `${at}/kind`,
    names: Object.fromEntries(Object.entries(byKind).map(([kind, called]) => [kind, `${called} ${what}`])) });
  return {
    [`${at}/kind`]: { ...named('made of'), after: undefined, kind: 'choice', usual: 'plain',
      options: { plain: 'One piece', border: 'A border round a centre', band: 'A band', inset: 'Flat trim set in' } },
    [`${at}/cloth`]: { ...named('strip cloth'), kind: 'cloth' },
    [`${at}/width`]: { ...named('strip width'), kind: 'measure', usual: { in: '2 in', cm: '5 cm', mm: '5 cm' } },
    [`${at}/corners`]: { ...named('strip corners'), kind: 'choice', usual: 'mitred', options: { mitred: 'Mitred', butted: 'Butted' } },
    [`${at}/lies`]: { ...named('strip runs'), kind: 'choice', usual: 'across',
      options: { across: 'From side to side', upright: 'From bottom to top' } },
    [`${at}/from_edge`]: { ...named('strip from the edge'), kind: 'measure' },
  };
};

const layers = (called) => Object.fromEntries(Object.entries(called).flatMap(([layer, name]) => {
  const at = `/cushions/*/cover/layers/${layer}`;
  return [
    [`${at}/cloth`, { name, kind: 'cloth' }],
    [`${at}/joined`, { name: `${name} joined`, kind: 'choice', usual: 'none', after: 'cloth', options: JOINED }],
  ];
}));

const byLength = { ft: 'One foot', yd: 'One yard', m: 'One metre' };

// The minutes of a piece of work, and the length they are for where it goes by the length.
const minutes = (isByLength) => ([name, called]) => [
  [`/quote/operations/${name}/minutes`, { name: `${called}, minutes`, kind: 'number', unit: 'min' }],
  ...(isByLength ? [[`/quote/operations/${name}/per`, { name: `${called}, for each`, kind: 'choice',
    after: `/quote/operations/${name}/minutes`, options: byLength }]] : []),
];

const paidFor = (isByLength) => ([name, called]) => [
  [`/quote/prices/${name}/amount`, { name: `Price of ${called}`, kind: 'money' }],
  ...(isByLength ? [[`/quote/prices/${name}/per`, { name: `Price of ${called} is for`, kind: 'choice', usual: 'each',
    after: `/quote/prices/${name}/amount`, options: { each: 'Each one', ...byLength } }]] : []),
];

const extra = ([name, called]) => [
  [`/quote/extras/${name}/on`, { name: called, kind: 'flag', options: { true: 'Charged in this job', false: 'Not charged' } }],
  [`/quote/extras/${name}/amount`, { name: `${called}, each cover`, kind: 'money' }],
  [`/quote/extras/${name}/rate`, { name: `${called}, part of the work`, kind: 'rate' }],
];

const all = (make, called) => Object.fromEntries(Object.entries(called).flatMap(make));

const on = (station, fields) =>
  Object.fromEntries(Object.entries(fields).map(([path, field]) => [path, { station, ...field }]));

export const fields = {
  ...on('measure', {
    '/name': { name: 'Job name', kind: 'text' },
    '/client': { name: 'Client', kind: 'text' },
    '/notes': { name: 'Notes', kind: 'text' },
    '/units': { name: 'Answers in', kind: 'choice', options: { in: 'Inches', cm: 'Centimetres', mm: 'Millimetres' } },
    '/cushions/*/name': { name: 'Cushion name', kind: 'text' },
    '/cushions/*/quantity': { name: 'How many', kind: 'count', view: true },
    '/cushions/*/size_from': { name: 'Starting from', kind: 'choice', usual: 'insert', options: origins },
    '/cushions/*/insert/measured': { name: 'Tape laid on', kind: 'choice', usual: 'insert',
      options: { insert: 'The pad itself', label: 'Its label only', foam: 'Foam', 'old-cover': 'The old cover, seam to seam',
        opening: 'An opening to fill' } },
    '/cushions/*/kind': { name: 'Kind', kind: 'choice', options: { 'knife-edge': 'Knife-edge', boxed: 'Boxed', bolster: 'Bolster' } },
    '/cushions/*/insert/shape': { name: 'Shape', kind: 'choice',
      options: { rectangle: 'Rectangle or square', round: 'Round', bolster: 'Bolster', polygon: 'Other straight sides' } },
    '/cushions/*/insert/notches': { name: 'Outline', kind: 'outline' },
    '/cushions/*/insert/sides/*': { name: 'Side {ends}', kind: 'measure', view: true },
    '/cushions/*/insert/diagonals/*/*': { name: 'Diagonal {ends}', kind: 'measure', view: true },
    '/cushions/*/mirrored': { name: 'Of these mirrored', kind: 'count', least: 0 },
    '/cushions/*/insert/width': { name: 'Width', kind: 'measure', view: true },
    '/cushions/*/insert/length': { name: 'Height', names: { boxed: 'Height or depth', bolster: 'Length' }, kind: 'measure', view: true },
    '/cushions/*/insert/diameter': { name: 'Diameter', kind: 'measure', view: true },
    '/cushions/*/insert/thickness': { name: 'Thickness', kind: 'measure', view: true },
    '/cushions/*/insert/again/width': { name: 'Width, 2nd reading', kind: 'measure', view: true,
      after: '/cushions/*/insert/width' },
    '/cushions/*/insert/again/length': { name: 'Height, 2nd reading', names: { boxed: 'Height or depth, 2nd reading',
      bolster: 'Length, 2nd reading' }, kind: 'measure', view: true, after: '/cushions/*/insert/length' },
    '/cushions/*/insert/again/diameter': { name: 'Diameter, 2nd reading', kind: 'measure', view: true,
      after: '/cushions/*/insert/diameter' },
    '/cushions/*/insert/again/thickness': { name: 'Thickness, 2nd reading', kind: 'measure', view: true,
      after: '/cushions/*/insert/thickness' },
    '/cushions/*/insert/clearance': { name: 'Clearance', kind: 'measure', after: '/cushions/*/insert/measured' },
    '/cushions/*/insert/label/width': { name: 'Width on the label', kind: 'measure', after: '/cushions/*/insert/width' },
    '/cushions/*/insert/label/length': { name: 'Height on the label', names: { boxed: 'Height or depth on the label',
      bolster: 'Length on the label' }, kind: 'measure', after: '/cushions/*/insert/length' },
    '/cushions/*/insert/label/diameter': { name: 'Diameter on the label', kind: 'measure', after: '/cushions/*/insert/diameter' },
    '/cushions/*/insert/label/thickness': { name: 'Thickness on the label', kind: 'measure', after: '/cushions/*/insert/thickness' },
    '/cushions/*/insert/fill': { name: 'Filling', kind: 'choice',
      options: { polyester: 'Polyester', feather: 'Feather', down: 'Down', 'hollow-fibre': 'Hollow fibre',
        microbead: 'Microbead', 'foam-crumb': 'Foam crumb', firm: 'Firm pad', foam: 'Foam filling',
        own: 'My own filling' } },
  }),
  ...on('cover', {
    '/cushions/*/cover/smaller_by': { name: 'Smaller than the pad by', kind: 'measure' },
    '/cushions/*/cover/smaller_by/width': { name: 'Smaller in width alone', kind: 'measure' },
    '/cushions/*/cover/smaller_by/length': { name: 'Smaller in height alone', names: { boxed: 'Smaller in height or depth alone',
      bolster: 'Smaller in length alone' }, kind: 'measure' },
    '/cushions/*/cover/smaller_by/diameter': { name: 'Smaller in diameter', kind: 'measure' },
    '/cushions/*/cover/seam': { name: 'Seam allowance', kind: 'measure' },
    '/cushions/*/cover/side_seam': { name: 'Seam at the two sides', kind: 'measure' },
    '/cushions/*/cover/seam_finish': { name: 'Cut edges', kind: 'choice', usual: 'plain',
      options: { plain: 'Left as they are', overlocked: 'Overlocked', trimmed: 'Trimmed once sewn',
        'overlocked-together': 'Trimmed and overlocked together' } },
    '/cushions/*/cover/edge/kind': { name: 'Edge', kind: 'choice', usual: 'plain',
      options: { plain: 'Plain', piped: 'Piped', flanged: 'Flange', frilled: 'Frill', trimmed: 'Bought trim' } },
    '/cushions/*/cover/edge/flange': { name: 'Flange reaches', kind: 'measure', after: '/cushions/*/cover/edge/kind' },
    '/cushions/*/cover/edge/depth': { name: 'Frill stands out', kind: 'measure', after: '/cushions/*/cover/edge/kind' },
    '/cushions/*/cover/edge/gather': { name: 'Frill drawn up', kind: 'choice', usual: 'gathered', after: '/cushions/*/cover/edge/kind',
      options: { gathered: 'Gathered', pleated: 'Pleated' } },
    '/cushions/*/cover/edge/fullness': { name: 'Fullness', kind: 'times', after: '/cushions/*/cover/edge/kind',
      options: { '1.5': '1 1/2 times the edge', '2.0': 'Twice the edge', '2.5': '2 1/2 times the edge', '3.0': '3 times the edge' } },
    '/cushions/*/cover/edge/frill': { name: 'Frill made', kind: 'choice', usual: 'doubled', after: '/cushions/*/cover/edge/kind',
      options: { doubled: 'Doubled', hemmed: 'Single, with a hem' } },
    '/cushions/*/cover/edge/hem': { name: 'Frill hem takes', kind: 'measure', after: '/cushions/*/cover/edge/frill',
      usual: { in: '1/2 in', cm: '1.5 cm', mm: '1.5 cm' } },
    '/cushions/*/cover/edge/cord': { name: 'Piping cord', kind: 'length', after: '/cushions/*/cover/edge/kind', options: cords },
    '/cushions/*/cover/edge/cords': { name: 'Cords side by side', kind: 'choice', usual: 'single', after: '/cushions/*/cover/edge/kind',
      options: { single: 'One', double: 'Two: double piping' } },
    '/cushions/*/cover/edge/cloth': { name: 'Cloth of its strips', kind: 'cloth', after: '/cushions/*/cover/edge/kind' },
    '/cushions/*/cover/edge/strip': { name: 'Strips lie', kind: 'choice', after: '/cushions/*/cover/edge/kind',
      options: { straight: 'Straight', bias: 'On the bias' } },
    '/cushions/*/cover/edge/joined': { name: 'Strips joined', kind: 'choice', usual: 'mitred', after: '/cushions/*/cover/edge/kind',
      options: { mitred: 'Mitred', straight: 'Straight across' } },
    '/cushions/*/cover/edge/rims': { name: 'On which rims', kind: 'choice', after: '/cushions/*/cover/edge/kind',
      options: { front: 'The front rim', both: 'Both rims' } },
    '/cushions/*/cover/edge/join': { name: 'Where its ends meet', kind: 'measure', after: '/cushions/*/cover/edge/kind' },
    '/cushions/*/cover/edge/shortest': { name: 'Shortest strip', kind: 'measure', after: '/cushions/*/cover/edge/kind' },
    '/cushions/*/cover/edge/thickness': { name: 'Cloth round the cord', kind: 'length', after: '/cushions/*/cover/edge/kind',
      options: thicknesses },
    '/cushions/*/cover/edge/pack': { name: 'One pack holds', kind: 'measure', after: '/cushions/*/cover/edge/kind' },
    '/cushions/*/cover/edge/hidden_joins': { name: 'Hidden joins in a ring', kind: 'choice', usual: 'none',
      after: '/cushions/*/cover/edge/kind', options: { none: 'None', one: 'One' } },
    '/cushions/*/cover/corners/kind': { name: 'Corners', kind: 'choice', usual: 'square',
      options: { square: 'Square', tapered: 'Tapered', rounded: 'Rounded' } },
    '/cushions/*/cover/corners/depth': { name: 'Taper depth', kind: 'measure', after: '/cushions/*/cover/corners/kind' },
    '/cushions/*/cover/corners/run': { name: 'Taper starts at', kind: 'length', usual: '1/4', after: '/cushions/*/cover/corners/kind',
      options: { '1/3': 'A third of the side', '1/4': 'A quarter of the side', '1/5': 'A fifth of the side' } },
    '/cushions/*/cover/corners/radius': { name: 'Corners rounded by', kind: 'measure', usual: { in: '2 in', cm: '5 cm', mm: '5 cm' },
      after: '/cushions/*/cover/corners/kind' },
    '/cushions/*/cover/closure/kind': { name: 'Closing', kind: 'choice', usual: 'hand-sewn',
      options: { 'hand-sewn': 'Sewn by hand', zip: 'Zip', envelope: 'Envelope back', buttons: 'Buttoned back', ties: 'Ties',
        open: 'Left open' } },
    '/cushions/*/cover/closure/at': { name: 'Closed at', kind: 'choice',
      options: { bottom: 'The bottom edge', back: 'Across the back', boxing: 'In the boxing' } },
    '/cushions/*/cover/closure/side': { name: 'Closed at side', kind: 'side' },
    '/cushions/*/cover/closure/opening': { name: 'Opening', kind: 'measure', after: '/cushions/*/cover/closure/kind' },
    '/cushions/*/cover/closure/length': { name: 'Zip length', kind: 'measure', after: '/cushions/*/cover/closure/kind' },
    '/cushions/*/cover/closure/zip_seam': { name: 'Seam at the zip', kind: 'measure', after: '/cushions/*/cover/closure/kind',
      usual: { in: '3/4 in', cm: '2 cm', mm: '2 cm' } },
    '/cushions/*/cover/closure/overlap': { name: 'Overlap', kind: 'measure', after: '/cushions/*/cover/closure/kind' },
    '/cushions/*/cover/closure/hem': { name: 'Each hem takes', kind: 'measure', after: '/cushions/*/cover/closure/kind',
      usual: { in: '1 in', cm: '2.5 cm', mm: '2.5 cm' } },
    '/cushions/*/cover/closure/seam': { name: 'Seam at the closing edge', kind: 'measure' },
    '/cushions/*/cover/boxing/kind': { name: 'Boxing', kind: 'choice', usual: 'band',
      options: { band: 'One band', 'front-and-sides': 'A piece for each side' } },
    '/cushions/*/cover/boxing/returns': { name: 'Zip band returns', kind: 'measure', usual: { in: '4 in', cm: '10 cm', mm: '10 cm' } },
    '/cushions/*/cover/boxing/run': { name: 'Boxing lies', kind: 'choice', usual: 'across',
      options: { across: 'Across the cloth', along: 'Along the roll, in one length' } },
    '/cushions/*/cover/ends': { name: 'Bolster ends', kind: 'choice', usual: 'flat',
      options: { flat: 'Flat', gathered: 'Gathered' } },
    ...face('front', 'Front', { bolster: 'Body' }, { flow: 'Flows on in a row' }),
    ...joins('front', 'Front', { bolster: 'Body' }),
    ...madeOf('front', 'Front', { bolster: 'Body' }),
    ...face('back', 'Back'),
    ...joins('back', 'Back'),
    ...madeOf('back', 'Back'),
    ...face('sides', 'Sides', { boxed: 'Boxing', bolster: 'Ends' }, { 'match-front': 'Goes on from the front' }),
    ...layers({ lining: 'Lining', interlining: 'Interlining', protector: 'Zipped protector', wrap: 'Slip-cloth' }),
    '/fit/feather': { name: 'Smaller for feather', kind: 'measure' },
    '/fit/down': { name: 'Smaller for down', kind: 'measure' },
    '/fit/polyester': { name: 'Smaller for polyester', kind: 'measure' },
    '/fit/hollow-fibre': { name: 'Smaller for hollow fibre', kind: 'measure' },
    '/fit/microbead': { name: 'Smaller for microbead', kind: 'measure' },
    '/fit/foam-crumb': { name: 'Smaller for foam crumb', kind: 'measure' },
    '/fit/firm': { name: 'Smaller for firm pads', kind: 'measure' },
    '/fit/foam': { name: 'Smaller for foam', kind: 'measure' },
    '/fit/own': { name: 'Smaller for my own filling', kind: 'measure' },
    '/grid': { name: 'Cut sizes rounded up to', kind: 'length',
      usual: { in: '1/8 in', cm: '1 mm', mm: '1 mm' }, options: grids },
  }),
  ...on('cloth', {
    '/cloths/*/name': { name: 'Cloth name', kind: 'text' },
    '/cloths/*/width': { name: 'Cloth width', kind: 'measure' },
    '/cloths/*/selvedge': { name: 'Selvedge, each side', kind: 'measure' },
    '/cloths/*/direction': { name: 'Direction', kind: 'choice', usual: 'one-way',
      options: { 'one-way': 'One way', 'two-way': 'Two ways', any: 'Any way' } },
    '/cloths/*/up': { name: 'Top of the pattern points', kind: 'choice', usual: 'away',
      options: { away: 'Away from the cut end', toward: 'Toward the cut end', left: 'To the left', right: 'To the right' } },
    '/cloths/*/instead_of': { name: 'In place of', kind: 'cloth' },
    '/cloths/*/weight': { name: 'Weight of the cloth', kind: 'choice', usual: 'medium',
      options: { sheer: 'Sheer', light: 'Light', medium: 'Medium', heavy: 'Heavy', 'very-heavy': 'Very heavy' } },
    '/cloths/*/repeat/across': { name: 'Repeat across', kind: 'measure' },
    '/cloths/*/repeat/along': { name: 'Repeat along', kind: 'measure' },
    '/cloths/*/repeat/drop': { name: 'Drop', kind: 'measure', after: '/cloths/*/repeat/along' },
    '/cloths/*/motifs/*/name': { name: 'Motif name', kind: 'text' },
    '/cloths/*/motifs/*/across': { name: 'From the left edge', kind: 'measure' },
    '/cloths/*/motifs/*/along': { name: 'From the cut end', kind: 'measure' },
    '/cloths/*/start': { name: 'Pattern at the cut end', kind: 'choice', usual: 'unknown',
      options: { unknown: 'Not known', choose: 'Chosen when it is cut', measured: 'Measured' } },
    '/cloths/*/squaring': { name: 'For squaring both ends', kind: 'measure' },
    '/cloths/*/shrinkage/across': { name: 'Shrinks across', kind: 'percent' },
    '/cloths/*/shrinkage/along': { name: 'Shrinks along', kind: 'percent' },
    '/cloths/*/shrinkage/square/before': { name: 'Marked before the wash', kind: 'measure' },
    '/cloths/*/shrinkage/square/along': { name: 'Along, after the wash', kind: 'measure' },
    '/cloths/*/shrinkage/square/across': { name: 'Across, after the wash', kind: 'measure' },
    '/cloths/*/shrinkage/square/before_across': { name: 'Marked across, if otherwise', kind: 'measure' },
    '/cloths/*/wash': { name: 'Washed', kind: 'choice',
      options: { 'before-cutting': 'Before cutting', 'after-making': 'After making' } },
    '/cloths/*/flaws/*/across': { name: 'Flaw from the left edge', kind: 'measure' },
    '/cloths/*/flaws/*/along': { name: 'Flaw from the cut end', kind: 'measure' },
    '/cloths/*/flaws/*/width': { name: 'Flaw width', kind: 'measure' },
    '/cloths/*/flaws/*/length': { name: 'Flaw length', kind: 'measure' },
    '/cloths/*/piece/left': { name: 'Left edge of the piece', kind: 'measure' },
    '/cloths/*/piece/right': { name: 'Right edge of the piece', kind: 'measure' },
    '/cloths/*/piece/length': { name: 'Length, if not by its edges', kind: 'measure' },
    '/cloths/*/piece/width': { name: 'Width of the piece', kind: 'measure' },
    '/cloths/*/piece/slant/start': { name: 'Cut end out of square', kind: 'signed',
      options: { '': 'Short at the right', '-': 'Short at the left' } },
    '/cloths/*/piece/slant/end': { name: 'Other end out of square', kind: 'signed',
      options: { '': 'Longer at the right', '-': 'Longer at the left' } },
    '/cloths/*/piece/motif_along': { name: 'First motif from the cut end', kind: 'measure' },
    '/cloths/*/piece/flaws/*/corner': { name: 'Cut out of', kind: 'choice',
      options: { 'start-left': 'The left corner at the cut end', 'start-right': 'The right corner at the cut end',
        'end-left': 'The left corner at the other end', 'end-right': 'The right corner at the other end' } },
    '/cloths/*/piece/flaws/*/cut': { name: 'Cut out', kind: 'choice', usual: 'square', after: '/cloths/*/piece/flaws/*/corner',
      options: { square: 'Square', slanting: 'On the slant' } },
    '/cloths/*/piece/flaws/*/across': { name: 'Begins from the left edge', kind: 'measure' },
    '/cloths/*/piece/flaws/*/along': { name: 'Begins from the cut end', kind: 'measure' },
    '/cloths/*/piece/flaws/*/width': { name: 'How wide', kind: 'measure' },
    '/cloths/*/piece/flaws/*/length': { name: 'How long', kind: 'length', options: { all: 'Down the whole piece' } },
    '/cloths/*/sold_by': { name: 'Sold by', kind: 'length',
      usual: { in: '1/8 yd', cm: '10 cm', mm: '10 cm' }, options: steps },
    '/cloths/*/price/amount': { name: 'Price', kind: 'money' },
    '/cloths/*/price/per': { name: 'Price is for', kind: 'choice', options: { yd: 'One yard', m: 'One metre' } },
    '/cloths/*/price/currency': { name: 'Currency', kind: 'currency' },
  }),
  ...on('cut', {
    '/cloths/*/bought/*/length': { name: 'Length cut', kind: 'measure' },
    '/cloths/*/bought/*/left': { name: 'Left edge as cut', kind: 'measure' },
    '/cloths/*/bought/*/right': { name: 'Right edge as cut', kind: 'measure' },
    '/cloths/*/bought/*/width': { name: 'Width as cut', kind: 'measure' },
    '/cloths/*/bought/*/paid': { name: 'Paid', kind: 'money' },
    '/cloths/*/bought/*/on': { name: 'Cut on', kind: 'date' },
    '/cloths/*/bought/*/batch': { name: 'Batch', kind: 'text' },
    '/cloths/*/bought/*/roll': { name: 'Roll', kind: 'text' },
    '/cloths/*/bought/*/cut_by': { name: 'Cut by', kind: 'text' },
    '/cloths/*/approved': { name: 'Client approved the cutting', kind: 'date' },
  }),
  ...on('price', {
    '/quote/currency': { name: 'Currency of the price', kind: 'currency' },
    '/quote/rates/hour': { name: 'An hour of work', kind: 'money' },
    '/quote/rates/overhead': { name: 'Workroom costs in an hour', kind: 'money' },
    '/quote/rates/handling/amount': { name: 'Handling the client’s cloth', kind: 'money' },
    '/quote/rates/handling/per': { name: 'Handling is for', kind: 'choice', after: '/quote/rates/handling/amount',
      options: { yd: 'One yard', m: 'One metre' } },
    '/quote/rates/travel/amount': { name: 'The way', kind: 'money' },
    '/quote/rates/travel/per': { name: 'The way is for', kind: 'choice', after: '/quote/rates/travel/amount',
      options: { mi: 'One mile', km: 'One kilometre' } },
    ...all(minutes(false), { consult: 'Consult and measure', order: 'Order and check a cloth' }),
    ...all(minutes(true), { press_cloth: 'Press the cloth' }),
    ...all(minutes(false), { square: 'Square the ends', place: 'Place the pattern', cut: 'Cut out' }),
    ...all(minutes(true), { overlock: 'Overlock', make_piping: 'Make the piping', attach_piping: 'Attach piping or trim',
      frill: 'Gather and attach a frill' }),
    ...all(minutes(false), { zip: 'Put in a zip', close: 'Make another closure' }),
    ...all(minutes(true), { make_up: 'Make up' }),
    ...all(minutes(false), { corners: 'Trim and turn a corner', fill: 'Fill', press: 'Press what is made', label: 'Sew in a label',
      pack: 'Pack', deliver: 'Deliver', fit: 'Fit at the client’s' }),
    ...all(paidFor(false), { thread: 'thread', needle: 'needles' }),
    ...all(paidFor(true), { zip: 'zips', trim: 'trim', cord: 'piping cord' }),
    ...all(paidFor(false), { buttons: 'buttons' }),
    ...all(paidFor(true), { ties: 'tape for ties' }),
    ...all(paidFor(false), { label: 'labels', pad: 'pads', filling: 'filling for a pad' }),
    '/quote/markup/cloth': { name: 'Mark-up on cloth', kind: 'rate' },
    '/quote/markup/materials': { name: 'Mark-up on other materials', kind: 'rate' },
    '/quote/markup/work': { name: 'Mark-up on work', kind: 'rate' },
    '/quote/client_cloths': { name: 'The client’s own cloth', kind: 'cloths' },
    ...all(extra, { piping: 'Extra for piping', matching: 'Extra for matching', velvet: 'Extra for velvet',
      contrast: 'Extra for contrast', rush: 'Rush' }),
    '/quote/items/*/text': { name: 'What it is', kind: 'text' },
    '/quote/items/*/amount': { name: 'What one costs', kind: 'money' },
    '/quote/items/*/count': { name: 'How many of it', kind: 'count' },
    '/quote/items/*/kind': { name: 'It is', kind: 'choice', usual: 'bought', options: { bought: 'Bought for the job', work: 'Work' } },
    '/quote/travel/distance': { name: 'There and back', kind: 'number' },
    '/quote/travel/trips': { name: 'How many trips', kind: 'count', after: '/quote/travel/distance' },
    '/quote/minimum': { name: 'Minimum charge', kind: 'money' },
    '/quote/discount/rate': { name: 'Discount, part of all', kind: 'rate' },
    '/quote/discount/amount': { name: 'Discount, amount', kind: 'money' },
    '/quote/tax/rate': { name: 'Tax', kind: 'rate' },
    '/quote/tax/included': { name: 'Prices entered here', kind: 'flag', after: '/quote/tax/rate',
      options: { false: 'Are without the tax', true: 'Have the tax in them' } },
    '/quote/tax/rounding': { name: 'Tax is rounded', kind: 'choice', usual: 'document', after: '/quote/tax/rate',
      options: { document: 'Once for all lines', line: 'Line by line' } },
    '/quote/deposit/materials': { name: 'Deposit, of the materials', kind: 'rate', usual: '100 %' },
    '/quote/deposit/making': { name: 'Deposit, of all else', kind: 'rate', usual: '50 %' },
  }),
};
