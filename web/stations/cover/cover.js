// Cover: how one cushion's cover is made, with the finished size that follows from it.
import { html } from '../../parts/html.js';
import { CushionPicture } from '../measure/reading.js';
import { nearAnswer, workedCushions } from '../../store/answers.js';
import { lastOf, valueAt } from '../../store/pointer.js';
import { job, openJob } from '../../store/session.js';
import { go, inJob, moveTo } from '../../store/place.js';
import { say } from '../../words/words.js';
import { Chooser, chosenIn, entryPaths } from '../chooser.js';
import { Field, Fields, Problems } from '../field.js';
import { NextBar } from '../next-bar.js';
import { visit } from '../visit.js';
import { FinishedSize } from './finished-size.js';

const FITS = ['feather', 'down', 'polyester', 'hollow-fibre', 'microbead', 'foam-crumb', 'firm', 'foam', 'own'].map((fill) => `/fit/${fill}`);

const worked = (cushion) => workedCushions.value.find(({ id }) => id === lastOf(cushion));
const panelOf = (cushion) => nearAnswer.value?.pieces.find((piece) => piece.cushion === lastOf(cushion));

function sections(cushion) {
  const size = worked(cushion);
  const zip = size?.closing.kind === 'zip' ? size.closing : undefined;
  const seam = panelOf(cushion)?.seam.text;
  return [
    ['cover.fit', [['kind'], ['cover/smaller_by', size?.smaller_by.text],
      ['cover/smaller_by/width', size?.smaller_by.width?.text], ['cover/smaller_by/length', size?.smaller_by.length?.text],
      ['cover/smaller_by/diameter', size?.smaller_by.diameter?.text],
      ['cover/seam', seam], ['cover/side_seam', seam], ['cover/seam_finish']]],
    ['cover.corners', [['cover/edge/kind'], ['cover/edge/rims'], ['cover/edge/join'],
      ['cover/edge/pack'], ['cover/edge/hidden_joins'], ['cover/corners/kind'], ['cover/corners/depth'], ['cover/corners/run'], ['cover/corners/radius']]],
    ['cover.closing', [['cover/closure/kind'], ['cover/closure/at'], ['cover/closure/opening', size?.opening?.text],
      ['cover/closure/length', zip?.length.text], ['cover/closure/zip_seam'], ['cover/closure/overlap', size?.closing.overlap?.text],
      ['cover/closure/hem'], ['cover/closure/seam', seam]]],
    ['cover.front', faceRows('front')],
    ['cover.back', faceRows('back')],
    ['cover.sides', [['cover/boxing/kind'], ['cover/boxing/returns'], ['cover/ends'], ...faceRows('sides')]],
  ];
}

const faceRows = (part) => ['cloth', 'pattern', 'motif', 'offset/across', 'offset/along', 'turn', 'group']
  .map((name) => [`cover/${part}/${name}`]);

// What is wrong with a face as a whole stands at the head of its section.
const GROUPS = { 'cover.front': '/cover/front', 'cover.back': '/cover/back', 'cover.sides': '/cover/sides' };

const Section = ({ cushion, title, rows }) => html`<${Fields} title=${say(title)}>
  ${GROUPS[title] && html`<${Problems} at=${cushion + GROUPS[title]} />`}
  ${rows.map(([name, usual]) => html`<${Field} key=${name} at=${`${cushion}/${name}`} usual=${usual} />`)}<//>`;

function toCloth() {
  const id = job.value.cloths[0]?.id;
  const width = `/cloths/${id}/width`;
  const isMissing = id && valueAt(job.value, width) === undefined;
  return { name: say('cover.next'), go: () => (isMissing ? visit(width) : go(inJob(openJob.value.id, 'cloth'))) };
}

export function Cover({ field }) {
  const cushion = chosenIn('/cushions', field);
  if (!cushion) return html`<main class="screen-body"><p class="note">${say('cover.noCushion')}</p></main>`;
  const [fit, corners, closing, front, back, sides] = sections(cushion)
    .map(([title, rows]) => html`<${Section} key=${title} cushion=${cushion} title=${title} rows=${rows} />`);
  return html`<main class="screen-body">
      <${Chooser} paths=${entryPaths('/cushions')} chosen=${cushion} onChoose=${(path) => moveTo(inJob(openJob.value.id, 'cover', path))} />
      <div class="columns">
        <div class="column">
          <section class="card cover-picture"><${CushionPicture} cushion=${cushion} />
            <${FinishedSize} cushion=${cushion} size=${worked(cushion)} /></section>
          ${fit}${corners}${closing}
        </div>
        <div class="column">${front}${back}${sides}
          <${Fields} title=${say('cover.cutting')}><${Field} at="/grid" /><//>
          <${Fields} title=${say('cover.fits')}>${FITS.map((at) => html`<${Field} key=${at} at=${at} none=${say('cover.byRule')} />`)}<//></div>
      </div>
    </main>
    <${NextBar} step=${toCloth()} />`;
}
