// The drawn signs: one line weight, 24 × 24, decorative (the words stand beside them or in an aria-label).
//
// Icon({name, size?})   name: a key of ICONS; size in px, default 24
import { html } from './html.js';

const ICONS = {
  back: 'M15 5l-7 7 7 7',
  forward: 'M9 5l7 7-7 7',
  up: 'M12 19V5M6 11l6-6 6 6',
  down: 'M12 5v14M6 13l6 6 6-6',
  close: 'M6 6l12 12M18 6L6 18',
  plus: 'M12 5v14M5 12h14',
  minus: 'M5 12h14',
  check: 'M5 12.5l4.5 4.5L19 7.5',
  pencil: 'M4 20l1-4L16.5 4.5a2.1 2.1 0 013 3L8 19l-4 1zM14.5 6.5l3 3',
  bin: 'M5 7h14M10 7V4.5h4V7M7 7l.8 12.5h8.4L17 7M10.3 10.5v6M13.7 10.5v6',
  undo: 'M4 9h10a5 5 0 010 10H9M8 5L4 9l4 4',
  redo: 'M20 9H10a5 5 0 000 10h5M16 5l4 4-4 4',
  copy: 'M9 9h10v11H9zM15 9V4.5H5V15h4',
  share: 'M12 15V4M8 7.5L12 4l4 3.5M6 11.5v8h12v-8',
  download: 'M12 4v11M8 11.5l4 3.5 4-3.5M5 19.5h14',
  upload: 'M12 15V4M8 7.5L12 4l4 3.5M5 19.5h14',
  search: 'M10.5 17a6.5 6.5 0 100-13 6.5 6.5 0 000 13zM15.5 15.5L20 20',
  more: 'M5 12h.01M12 12h.01M19 12h.01',
  settings: 'M4 7h9M17 7h3M4 17h3M11 17h9M15 9.2a2.2 2.2 0 100-4.4 2.2 2.2 0 000 4.4zM9 19.2a2.2 2.2 0 100-4.4 2.2 2.2 0 000 4.4z',
  question: 'M12 20.5a8.5 8.5 0 100-17 8.5 8.5 0 000 17zM9.6 9.6a2.5 2.5 0 114 2c-1 .7-1.6 1.2-1.6 2.4M12 17h.01',
  info: 'M12 20.5a8.5 8.5 0 100-17 8.5 8.5 0 000 17zM12 11v5.5M12 7.7h.01',
  warn: 'M12 4l9 15.5H3zM12 10v4.5M12 17h.01',
  stop: 'M8.5 3.5h7l5 5v7l-5 5h-7l-5-5v-7zM12 8v5M12 16h.01',
  saved: 'M12 20.5a8.5 8.5 0 100-17 8.5 8.5 0 000 17zM8 12.3l2.8 2.8L16 9.5',
  offline: 'M3 9a13 13 0 0118 0M6 12.5a8.5 8.5 0 0112 0M9 16a4.2 4.2 0 016 0M12 19.3h.01M4 4l16 16',
  sun: 'M12 16a4 4 0 100-8 4 4 0 000 8zM12 2.5v2M12 19.5v2M2.5 12h2M19.5 12h2M5.3 5.3l1.4 1.4M17.3 17.3l1.4 1.4M18.7 5.3l-1.4 1.4M6.7 17.3l-1.4 1.4',
  moon: 'M19.5 14.5A8 8 0 119.5 4.5a6.5 6.5 0 0010 10z',
  camera: 'M4 8h3.5l1.5-2.5h6L16.5 8H20v11H4zM12 16.5a3.3 3.3 0 100-6.6 3.3 3.3 0 000 6.6z',
  note: 'M6 3.5h12v17H6zM9 8h6M9 12h6M9 16h3.5',
  backspace: 'M9 5.5h11.5v13H9L3 12zM11.5 9.5l5 5M16.5 9.5l-5 5',
  tape: 'M3 8h18v8H3zM6.5 8v4M10 8v2.5M13.5 8v4M17 8v2.5',
  cushion: 'M4 5c4 1.6 12 1.6 16 0-1.6 4-1.6 10 0 14-4-1.6-12-1.6-16 0 1.6-4 1.6-10 0-14z',
  cloth: 'M7 4h13v13M7 4a3 3 0 00-3 3v13h13a3 3 0 003-3M7 4a3 3 0 013 3v10M4 20h0',
  scissors: 'M7 9.5a2.8 2.8 0 100-5.6 2.8 2.8 0 000 5.6zM7 20.1a2.8 2.8 0 100-5.6 2.8 2.8 0 000 5.6zM9.3 8.4L20 17.5M9.3 15.6L20 6.5',
  needle: 'M20 4L6 18M20 4c-2.5.3-4 1-5 2M4 20l2-2M17.5 7.6c1.6 3-1 5-3 5s-4.5 1-4.5 3.5 2 4 5 3.4',
  price: 'M4 4h8l8 8-8 8-8-8zM8.2 8.2h.01',
  turn: 'M19 12a7 7 0 11-2-4.9M19.5 3.5v4.2h-4.2',
  fit: 'M4 9V4h5M20 9V4h-5M4 15v5h5M20 15v5h-5',
  repeat: 'M4 4h7v7H4zM13 13h7v7h-7zM15 6.5h3.5M5.5 17.5H9',
  width: 'M3 5v14M21 5v14M6 12h12M8.5 9.5L6 12l2.5 2.5M15.5 9.5L18 12l-2.5 2.5',
  height: 'M5 3h14M5 21h14M12 6v12M9.5 8.5L12 6l2.5 2.5M9.5 15.5L12 18l2.5-2.5',
  direction: 'M5 4v16M19 4v16M12 18V6M9 9l3-3 3 3',
};

export const ICON_NAMES = Object.keys(ICONS);

export function Icon({ name, size = 24 }) {
  return html`<svg class="icon" viewBox="0 0 24 24" width=${size} height=${size} aria-hidden="true" focusable="false">
    <path d=${ICONS[name]} /></svg>`;
}
