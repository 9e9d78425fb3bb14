// How strict the checks of the JavaScript are: eslint's recommended rules, and the names each place knows.
import js from '@eslint/js';

const names = (text) => Object.fromEntries(text.split(' ').map((name) => [name, 'readonly']));
const EVERYWHERE = names(
  'AbortController Blob CompressionStream DecompressionStream Event EventTarget File MessageChannel Response TextDecoder ' +
    'TextEncoder URL URLSearchParams atob clearInterval clearTimeout console crypto fetch indexedDB performance ' +
    'queueMicrotask setInterval setTimeout structuredClone',
);
const PAGE = names(
  'CustomEvent DOMPoint DOMRect FileReader HTMLElement Image IntersectionObserver KeyboardEvent MutationObserver PointerEvent ' +
    'ResizeObserver SVGElement Worker addEventListener cancelAnimationFrame createImageBitmap devicePixelRatio dispatchEvent ' +
    'document getComputedStyle history innerHeight innerWidth isSecureContext localStorage location matchMedia navigator ' +
    'removeEventListener requestAnimationFrame requestIdleCallback screen scrollBy scrollTo sessionStorage visualViewport window BroadcastChannel',
);
const WORKER = names('ImageData OffscreenCanvas caches createImageBitmap postMessage self');

export default [
  { ignores: ['node_modules/', 'screens/'] },
  js.configs.recommended,
  {
    languageOptions: { globals: { ...EVERYWHERE, ...PAGE } },
    rules: {
      'no-unused-vars': ['error', { varsIgnorePattern: '^_', argsIgnorePattern: '^_', ignoreRestSiblings: true }],
      eqeqeq: ['error', 'always', { null: 'ignore' }],
      'no-var': 'error',
      'prefer-const': 'error',
      'no-eval': 'error',
      'no-implied-eval': 'error',
      'no-new-func': 'error',
    },
  },
  { files: ['worker.js', 'sw.js', 'boot/plans.js', 'parts/picture/worker.js'], languageOptions: { globals: { ...EVERYWHERE, ...WORKER } } },
  { files: ['packing/*.mjs'], languageOptions: { globals: { ...EVERYWHERE, process: 'readonly' } } },
];
