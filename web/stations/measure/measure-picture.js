// What stands above the tape: the cushion drawn as far as it is measured, before that the kinds to choose from.
import { html } from '../../parts/html.js';
import { job } from '../../store/session.js';
import { isMeasured, measurePaths } from '../kinds.js';
import { KindChoice } from './kind-choice.js';
import { CushionPicture } from './picture.js';

// The kinds are as high as the drawing whose place they take, so that the keys below do not move.
export function MeasurePicture({ cushion, at, focus }) {
  const isFirst = measurePaths(job.value, cushion)[0] === at;
  if (isFirst && !isMeasured(job.value, cushion)) return html`<${KindChoice} cushion=${cushion} />`;
  return html`<${CushionPicture} cushion=${cushion} focus=${focus} />`;
}
