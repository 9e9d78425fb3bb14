// One key of a pad, and the block of digits that every pad shares.
//
// Key({name, onPress, pressed?, tone?, wide?, children})   name: accessible name; tone: 'plain' | 'soft'
// Face({text, kind?})   what is drawn on a key whose name says it in words (“five eighths” on 5/8); the text is
//                       drawn by the style, so the key has one name, not two. kind: a class of keys.css
// DigitKeys({label, onDigit(digit), onBackspace, last})    1–9, ⌫, 0 and `last`, the key in the lower right corner
import { html } from './html.js';
import { Icon } from './icon.js';
import { say } from './words.js';

const DIGITS = ['1', '2', '3', '4', '5', '6', '7', '8', '9'];

export function Key({ name, onPress, pressed, tone = 'plain', wide, children }) {
  return html`<button type="button" class="key key-${tone}${wide ? ' key-wide' : ''}" aria-label=${name}
    aria-pressed=${pressed === undefined ? undefined : String(pressed)} onClick=${onPress}>${children}</button>`;
}

export function Face({ text, kind = 'face-plain' }) {
  return html`<span class="face ${kind}" data-face=${text}></span>`;
}

export function DigitKeys({ label, onDigit, onBackspace, last }) {
  return html`<div class="keys-digits" role="group" aria-label=${say('keysFor', { label })}>
    ${DIGITS.map((digit) => html`<${Key} key=${digit} name=${digit} onPress=${() => onDigit(digit)}>${digit}<//>`)}
    <${Key} name=${say('backspace')} onPress=${onBackspace}><${Icon} name="backspace" size=${28} /><//>
    <${Key} name="0" onPress=${() => onDigit('0')}>0<//>
    ${last}
  </div>`;
}
