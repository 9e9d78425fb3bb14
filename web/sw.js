// The service worker: keeps whole, verified copies of builds, and answers from the one the person chose.
//
// One cache per build. A build is saved file by file, each checked against its SHA-256, so a broken-off save goes
// on where it stopped and a wrong file is never kept. A browser lets a new worker take over whenever all pages are
// closed; so which build answers is a choice of its own, kept beside the caches and changed only by the person.
const BUILD = 'unbuilt'; // both lines are filled in by build.py
const FILES = {};

const { scope } = self.registration;
const FAMILY = `plumpline ${scope} `;
const TYPES = {
  css: 'text/css', html: 'text/html', js: 'text/javascript', json: 'application/json', mjs: 'text/javascript',
  png: 'image/png', svg: 'image/svg+xml', wasm: 'application/wasm',
};
const address = (path) => new URL(path, scope).href;
const LIST = address('?files'); // each cache's own list of its files and their hashes
const CHOICE = `plumpline-choice ${scope}`;

self.addEventListener('install', (event) => event.waitUntil(save()));
self.addEventListener('activate', (event) => event.waitUntil(settleIn()));
self.addEventListener('message', (event) => event.waitUntil(ORDERS[event.data.do](event.ports[0])));
self.addEventListener('fetch', (event) => {
  const { method, url } = event.request;
  if (method === 'GET' && url.startsWith(scope)) event.respondWith(answer(event.request));
});

const ORDERS = {
  /** To a worker that waits: answer from this build from now on. The page sees its controller change. */
  async takeOver() {
    await choose(BUILD);
    await self.skipWaiting();
  },
  /** To a worker that came into office while all pages were closed, and still answers from the older build. */
  async change() {
    await choose(BUILD);
    await settleIn();
    await tell({ offline: 'changed' });
  },
  verify,
};

async function save() {
  try {
    const cache = await caches.open(FAMILY + BUILD);
    const paths = Object.keys(FILES);
    for (const [done, path] of paths.entries()) {
      await tell({ offline: 'saving', done, total: paths.length });
      if (!(await holds(cache, path, FILES[path]))) await cache.put(address(path), await obtain(path, FILES[path]));
    }
    await cache.put(LIST, new Response(JSON.stringify(FILES)));
  } catch (error) {
    await tell({ offline: 'failed', reason: error.name === 'QuotaExceededError' ? 'full' : 'broken' });
    throw error;
  }
}

/** In office: keep to the choice, or make it if this is the first build; drop what is neither chosen nor newest. */
async function settleIn() {
  const { build } = await inUse();
  await choose(build);
  for (const name of await caches.keys()) {
    if (name.startsWith(FAMILY) && name !== FAMILY + build && name !== FAMILY + BUILD) await caches.delete(name);
  }
  await self.clients.claim();
}

let chosen = null; // what inUse() found, until another choice is made

/** The build that answers: the person's choice if it is still kept, else this worker's own. */
function inUse() {
  chosen ??= (async () => {
    const note = await (await caches.open(CHOICE)).match(scope);
    const choice = note ? await note.text() : BUILD;
    const list = await caches.match(LIST, { cacheName: FAMILY + choice });
    const build = list ? choice : BUILD;
    return { build, cache: await caches.open(FAMILY + build), files: list ? await list.json() : FILES };
  })();
  return chosen;
}

async function choose(build) {
  await (await caches.open(CHOICE)).put(scope, new Response(build));
  chosen = null;
}

/** A verified response: from another build's cache if the file has not changed, else from the network. */
async function obtain(path, wanted) {
  for (const name of (await caches.keys()).filter((name) => name.startsWith(FAMILY))) {
    const cache = await caches.open(name);
    if (await holds(cache, path, wanted)) return cache.match(address(path));
  }
  const response = await fetch(address(path), { cache: 'no-cache', redirect: 'error' });
  const type = TYPES[path.split('.').pop()] ?? '';
  const isGood = response.ok && response.type === 'basic' && !response.redirected;
  if (!isGood || !response.headers.get('Content-Type')?.startsWith(type)) {
    throw new Error(`${path}: not what this build consists of (${response.status})`);
  }
  if ((await hash(response.clone())) !== wanted) throw new Error(`${path}: another content than this build's`);
  return response;
}

async function holds(cache, path, wanted) {
  const response = await cache.match(address(path));
  return response !== undefined && (await hash(response)) === wanted;
}

async function hash(response) {
  const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', await response.arrayBuffer()));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** Look at every file in use, fetch again what is not here whole, and tell the page what is still missing. */
async function verify(port) {
  const { build, cache, files } = await inUse();
  const missing = [];
  for (const [path, wanted] of Object.entries(files)) {
    try {
      if (!(await holds(cache, path, wanted))) await cache.put(address(path), await obtain(path, wanted));
    } catch {
      missing.push(path);
    }
  }
  port.postMessage({ missing, total: Object.keys(files).length, isNewest: build === BUILD });
}

/** The file in use that answers a request; a page is always index.html; what no build holds comes by the network. */
async function answer(request) {
  const { cache, files } = await inUse();
  const path = request.mode === 'navigate' ? 'index.html' : decodeURI(request.url.slice(scope.length).split(/[?#]/)[0]);
  const kept = Object.hasOwn(files, path) && (await cache.match(address(path)));
  return kept || fetch(request);
}

async function tell(message) {
  for (const page of await self.clients.matchAll({ includeUncontrolled: true })) page.postMessage(message);
}
