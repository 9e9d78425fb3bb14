// A test square of the cloth: how far apart its marks were made, and where they lie after the wash.
import { html } from '../../parts/html.js';
import { say } from '../../words/words.js';
import { Folded } from '../field.js';

const FIELDS = ['before', 'along', 'across', 'before_across'];

export function TestSquare({ cloth }) {
  return html`<${Folded} title=${say('cloth.square')} note=${say('cloth.squareHint')}
    fields=${FIELDS.map((name) => `${cloth}/shrinkage/square/${name}`)} />`;
}
