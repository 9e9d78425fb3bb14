// Everything that keeps the job from being answered, at once, each leading to its field.
import { html } from '../../parts/html.js';
import { WayOut } from '../../parts/notice.js';
import { Row } from '../../parts/row.js';
import { job } from '../../store/session.js';
import { say } from '../../words/words.js';
import { fullName } from '../catalogue.js';
import { troubles } from '../problems.js';
import { visit } from '../visit.js';
import { takeWayOut, waysOutOf } from './ways-out.js';

// Panels that are too wide for one cloth share their ways out.
function sharedWays(list) {
  const shared = new Map(list.flatMap(waysOutOf).map((way) => [JSON.stringify(way.change), way]));
  return [...shared.values()];
}

export function Troubles() {
  const list = troubles.value;
  if (list.length === 0) return null;
  return html`<section class="stack" role="alert">
    <h2 class="troubles-title">${say('job.problems', { count: list.length })}</h2>
    <div class="card card-rows">${list.map((trouble) => html`
      <${Row} key=${trouble.at + trouble.code} label=${fullName(job.value, trouble.path) || say('measure.job')} note=${trouble.text}
        action=${say('cut.goThere')} onOpen=${() => visit(trouble.path)} />`)}</div>
    ${sharedWays(list).map((way) => html`<${WayOut} key=${way.text} wayOut=${way} onWayOut=${takeWayOut} />`)}
  </section>`;
}
