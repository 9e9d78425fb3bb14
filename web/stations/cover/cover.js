// Cover: how one cushion's cover is made, with the finished size that follows from it.
import { html } from '../../parts/html.js';
import { CushionPicture } from '../measure/picture.js';
import { nearAnswer, workedCushions } from '../../store/answers.js';
import { lastOf, valueAt } from '../../store/pointer.js';
import { job, openJob } from '../../store/session.js';
import { go, inJob, moveTo } from '../../store/place.js';
import { has, say } from '../../words/words.js';
import { clothOfFace, nameOf } from '../catalogue.js';
import { Chooser, chosenIn, entryPaths } from '../chooser.js';
import { Field, Fields, Folded, Problems } from '../field.js';
import { NextBar } from '../next-bar.js';
import { sideName } from '../outlines.js';
import { printedFront } from '../printed.js';
import { isShown } from '../shown.js';
import { visit } from '../visit.js';
import { FinishedSize } from './finished-size.js';

const FITS = ['feather', 'down', 'polyester', 'hollow-fibre', 'microbead', 'foam-crumb', 'firm', 'foam', 'own'].map((fill) => `/fit/${fill}`);

const LAYERS = ['lining', 'interlining', 'protector', 'wrap'].flatMap((layer) => [`layers/${layer}/cloth`, `layers/${layer}/joined`]);

const worked = (cushion) => workedCushions.value.find(({ id }) => id === lastOf(cushion));
const panelOf = (cushion) => nearAnswer.value?.pieces.find((piece) => piece.cushion === lastOf(cushion));

// What the core takes where nothing is said of the closing, beside each of its fields.
function closingRows(cushion, size, seam) {
  const { at, side, length, allowance, overlap } = size?.closing ?? {};
  const usual = { kind: undefined, at: at && say(`option:/cushions/*/cover/closure/at=${at}`), side: typeof side === 'number' ? sideName(job.value, cushion, side) : undefined, opening: length?.text, length: length?.text,
    zip_seam: allowance?.text, overlap: overlap?.text, hem: allowance?.text, seam: allowance?.text ?? seam };
  return Object.entries(usual).map(([name, value]) => [`cover/closure/${name}`, value]);
}

// The same for its edge: the cord, how its strips lie, what its ends take where they meet.
function edgeRows(cushion, size) {
  const { rims, join, strip, shortest, cord, flange, depth, fullness } = size?.edge ?? {};
  const usual = { kind: undefined, flange: flange?.text, depth: depth?.text, gather: undefined, fullness, frill: undefined,
    hem: undefined, rims: rims && say(`option:/cushions/*/cover/edge/rims=${rims}`), cloth: nameOf(job.value, clothOfFace(job.value, `${cushion}/cover/edge/cloth`)),
    cord: cord?.text, cords: undefined, strip: strip && say(`option:/cushions/*/cover/edge/strip=${strip}`), joined: undefined,
    join: join?.text, shortest: shortest?.text, thickness: undefined, pack: undefined, hidden_joins: undefined };
  return Object.entries(usual).map(([name, value]) => [`cover/edge/${name}`, value]);
}

// The same for its corners.
function cornerRows({ corners } = {}) {
  const usual = { kind: undefined, depth: corners?.depth?.text, run: undefined, radius: corners?.radius?.text };
  return Object.entries(usual).map(([name, value]) => [`cover/corners/${name}`, value]);
}

function sections(cushion) {
  const size = worked(cushion);
  const seam = panelOf(cushion)?.seam.text;
  return [
    ['cover.fit', [['cover/smaller_by', size?.smaller_by.text],
      ...['width', 'length', 'diameter'].map((name) => [`cover/smaller_by/${name}`, size?.smaller_by[name]?.text]),
      ['cover/seam', seam], ['cover/side_seam', seam], ['cover/seam_finish']]],
    ['cover.edge', edgeRows(cushion, size)],
    ['cover.corners', cornerRows(size)],
    ['cover.closing', closingRows(cushion, size, seam)],
    ['cover.front', [...faceRows('front'), ...joinRows('front')]],
    ['cover.back', [...faceRows('back'), ...joinRows('back')]],
    ['cover.sides', [['cover/boxing/kind'], ['cover/boxing/run'], ['cover/boxing/returns', size?.closing.returns?.text], ['cover/ends'], ...faceRows('sides', nameOf(job.value, clothOfFace(job.value, `${cushion}/cover/sides/cloth`)))]],
  ];
}

// `cloth` is the cloth a part is cut from that names none.
const faceRows = (part, cloth) => [[`cover/${part}/cloth`, cloth],
  ...['pattern', 'motif', 'offset/across', 'offset/along', 'turn', 'group'].map((name) => [`cover/${part}/${name}`])];
const joinRows = (part) => ['joined', 'join_pattern', ...['kind', 'cloth', 'width', 'corners', 'lies', 'from_edge'].map((name) => `made/${name}`)].map((name) => [`cover/${part}/${name}`]);

// What is wrong with a face as a whole stands at the head of its section.
const GROUPS = { 'cover.front': '/cover/front', 'cover.back': '/cover/back', 'cover.sides': '/cover/sides' };

// A section none of whose fields this cover has is left out.
function Section({ cushion, title, rows }) {
  const shown = rows.filter(([name]) => isShown(job.value, `${cushion}/${name}`));
  if (shown.length === 0) return null;
  return html`<${Fields} title=${say(titleOf(cushion, title))}>
    ${GROUPS[title] && html`<${Problems} at=${cushion + GROUPS[title]} />`}
    ${shown.map(([name, usual]) => html`<${Field} key=${name} at=${`${cushion}/${name}`} usual=${usual} />`)}<//>`;
}

// The sides of a boxed cover are its boxing, those of a bolster its ends, and the front of a bolster its body.
function titleOf(cushion, title) {
  const named = `${title}=${valueAt(job.value, `${cushion}/kind`)}`;
  return has(named) ? named : title;
}

function toCloth() {
  const id = job.value.cloths[0]?.id;
  const width = `/cloths/${id}/width`;
  const isMissing = id && valueAt(job.value, width) === undefined;
  return { name: say('cover.next'), go: () => (isMissing ? visit(width) : go(inJob(openJob.value.id, 'cloth'))) };
}

export function Cover({ field }) {
  const cushion = chosenIn('/cushions', field);
  if (!cushion) return html`<main class="screen-body"><p class="note">${say('cover.noCushion')}</p></main>`;
  const [fit, edge, corners, closing, front, back, sides] = sections(cushion)
    .map(([title, rows]) => html`<${Section} key=${title} cushion=${cushion} title=${title} rows=${rows} />`);
  return html`<main class="screen-body">
      <${Chooser} paths=${entryPaths('/cushions')} chosen=${cushion} onChoose=${(path) => moveTo(inJob(openJob.value.id, 'cover', path))} />
      <div class="columns">
        <div class="column">
          <section class="card cover-picture"><${CushionPicture} cushion=${cushion} printed=${printedFront(lastOf(cushion))} />
            <${FinishedSize} cushion=${cushion} size=${worked(cushion)} /></section>
          ${fit}${edge}${corners}${closing}
        </div>
        <div class="column">${front}${back}${sides}
          <${Folded} title=${say('cover.layers')} fields=${LAYERS.map((name) => `${cushion}/cover/${name}`)} />
          <${Folded} title=${say('cover.cutting')} fields=${['/grid']} />
          <${Folded} title=${say('cover.fits')} fields=${FITS} none=${say('cover.byRule')} /></div>
      </div>
    </main>
    <${NextBar} step=${toCloth()} />`;
}
