// What the core thinks worth knowing, gravest first; a way out is one tap, and can be undone.
import { html } from '../../parts/html.js';
import { Notice } from '../../parts/notice.js';
import { notices } from '../problems.js';
import { takeWayOut, waysOutOf } from './ways-out.js';

const GRAVITY = { stop: 0, warn: 1, info: 2 };


const gravestFirst = (one, other) => GRAVITY[one.level] - GRAVITY[other.level];

// What is true of several covers in the same words is said once.
function saidOnce(list) {
  const said = new Set();
  return list.filter(({ text }) => !said.has(text) && said.add(text));
}

export const Notices = () => saidOnce([...notices.value].sort(gravestFirst)).map((notice) => html`
  <${Notice} key=${notice.code + notice.at} level=${notice.level} text=${notice.text} waysOut=${waysOutOf(notice)}
    onWayOut=${takeWayOut} />`);
