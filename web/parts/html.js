// The one place where htm is bound to preact; every part imports its markup, hooks and signals from here.
import { Fragment, h, render } from '../vendor/preact.mjs';
import htm from '../vendor/htm.mjs';

export * from '../vendor/preact-hooks.mjs';
export { batch, computed, effect, signal, useComputed, useSignal, useSignalEffect } from '../vendor/signals.mjs';
export { Fragment, h, render };
export const html = htm.bind(h);
