// The line of cushions or cloths at the head of a station, one of them chosen; absent where there is only one.
import { html } from '../parts/html.js';
import { job } from '../store/session.js';
import { valueAt } from '../store/pointer.js';
import { nameOf } from './catalogue.js';

export const entryPaths = (list) => valueAt(job.value, list).map(({ id }) => `${list}/${id}`);

// The chosen entry of a list: the one `field` lies in, else the first.
export function chosenIn(list, field) {
  const paths = entryPaths(list);
  return paths.find((path) => field === path || field?.startsWith(`${path}/`)) ?? paths[0];
}

export function Chooser({ paths, chosen, onChoose }) {
  if (paths.length < 2) return null;
  return html`<div class="chooser" role="group">${paths.map((path) => html`
    <button key=${path} type="button" class="chooser-one" aria-pressed=${String(path === chosen)}
      onClick=${() => onChoose(path)}>${nameOf(job.value, path)}</button>`)}</div>`;
}
