// The service worker: keeps one whole, verified copy of a build, and answers from that copy alone.
//
// One cache per build. A build is saved file by file, each checked against its SHA-256, so a broken-off save goes
// on where it stopped and a wrong file is never kept. The older build serves until the person accepts the new.
const BUILD = 'unbuilt'; // both lines are filled in by build.py
const FILES = {};

const FAMILY = `plumpline ${self.registration.scope} `;
const NAME = FAMILY + BUILD;
const TYPES = {
  css: 'text/css', html: 'text/html', js: 'text/javascript', json: 'application/json', mjs: 'text/javascript',
  png: 'image/png', svg: 'image/svg+xml', wasm: 'application/wasm',
};
const address = (path) => new URL(path, self.registration.scope).href;
const paths = Object.keys(FILES);

self.addEventListener('install', (event) => event.waitUntil(save()));
self.addEventListener('activate', (event) => event.waitUntil(takeOver()));
self.addEventListener('message', (event) => {
  if (event.data.do === 'accept') self.skipWaiting();
  if (event.data.do === 'verify') event.waitUntil(verify(event.ports[0]));
});
self.addEventListener('fetch', (event) => {
  const path = pathOf(event.request);
  if (path) event.respondWith(answer(path));
});

async function save() {
  try {
    const cache = await caches.open(NAME);
    const older = (await caches.keys()).filter((name) => name.startsWith(FAMILY) && name !== NAME);
    for (const [done, path] of paths.entries()) {
      await tell({ offline: 'saving', build: BUILD, done, total: paths.length });
      if (!(await holds(cache, path))) await cache.put(address(path), await obtain(path, older));
    }
  } catch (error) {
    await tell({ offline: 'failed', build: BUILD, reason: error.name === 'QuotaExceededError' ? 'full' : 'broken' });
    throw error;
  }
}

async function takeOver() {
  for (const name of await caches.keys()) {
    if (name.startsWith(FAMILY) && name !== NAME) await caches.delete(name);
  }
  await self.clients.claim();
}

/** A verified response: from an older build's cache if the file has not changed, else from the network. */
async function obtain(path, older) {
  for (const name of older) {
    const kept = await caches.open(name);
    if (await holds(kept, path)) return kept.match(address(path));
  }
  const response = await fetch(address(path), { cache: 'no-cache', redirect: 'error' });
  const type = TYPES[path.split('.').pop()] ?? '';
  const isGood = response.ok && response.type === 'basic' && !response.redirected;
  if (!isGood || !response.headers.get('Content-Type')?.startsWith(type)) {
    throw new Error(`${path}: not what this build consists of (${response.status})`);
  }
  if ((await hash(response.clone())) !== FILES[path]) throw new Error(`${path}: another content than this build's`);
  return response;
}

async function holds(cache, path) {
  const response = await cache.match(address(path));
  return response !== undefined && (await hash(response)) === FILES[path];
}

async function hash(response) {
  const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', await response.arrayBuffer()));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** Look at every file, fetch again what is not here whole, and tell the page what is still missing. */
async function verify(port) {
  const cache = await caches.open(NAME);
  const missing = [];
  for (const path of paths) {
    try {
      if (!(await holds(cache, path))) await cache.put(address(path), await obtain(path, []));
    } catch {
      missing.push(path);
    }
  }
  port.postMessage({ build: BUILD, missing, total: paths.length });
}

/** The file of this build that answers a request; none if the request is not for this build. */
function pathOf(request) {
  if (request.method !== 'GET' || !request.url.startsWith(self.registration.scope)) return null;
  if (request.mode === 'navigate') return 'index.html';
  const path = decodeURI(request.url.slice(self.registration.scope.length).split(/[?#]/)[0]);
  return Object.hasOwn(FILES, path) ? path : null;
}

async function answer(path) {
  const cache = await caches.open(NAME);
  return (await cache.match(address(path))) ?? fetch(address(path), { cache: 'no-cache' });
}

async function tell(message) {
  for (const page of await self.clients.matchAll({ includeUncontrolled: true })) page.postMessage(message);
}
