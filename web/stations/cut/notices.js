// What the core thinks worth knowing, gravest first; a way out is one tap, and can be undone.
import { html } from '../../parts/html.js';
import { Notice } from '../../parts/notice.js';
import { put } from '../../store/changes.js';
import { pathOf } from '../../store/pointer.js';
import { edit, job } from '../../store/session.js';
import { notices } from '../problems.js';

const GRAVITY = { stop: 0, warn: 1, info: 2 };

function takeWayOut({ change }) {
  edit(change.map(({ at, value }) => put(pathOf(job.value, at), value)));
}

const gravestFirst = (one, other) => GRAVITY[one.level] - GRAVITY[other.level];

// What is true of several covers in the same words is said once.
function saidOnce(list) {
  const said = new Set();
  return list.filter(({ text }) => !said.has(text) && said.add(text));
}

export const Notices = () => saidOnce([...notices.value].sort(gravestFirst)).map((notice) => html`
  <${Notice} key=${notice.code + notice.at} level=${notice.level} text=${notice.text} wayOut=${notice.way_out}
    onWayOut=${notice.way_out?.change && takeWayOut} />`);
