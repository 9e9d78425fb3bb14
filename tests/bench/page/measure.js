// Measures in the browser: window.start(request) and window.ask(request) give a reply and how long it took.
let worker;
let waiting;

/** Start the worker and put the first question at once; ms from the worker's creation to its answer. */
window.start = (request) => {
  const since = performance.now();
  worker = new Worker(new URL('worker.js', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }) => {
    if (data.broken ?? data.error) throw new Error(data.broken ?? data.error);
    if ('reply' in data) waiting(data.reply); // not what comes before it while a plan is looked for
  });
  return put(request, since);
};

window.ask = (request) => put(request, performance.now());

async function put(request, since) {
  const reply = await new Promise((resolve) => {
    waiting = resolve;
    worker.postMessage({ id: 1, request });
  });
  return { ms: performance.now() - since, reply };
}

/** Keep the page and its files as the product does; resolves when the service worker has taken over. */
window.keep = async () => {
  await navigator.serviceWorker.register('sw.js', { updateViaCache: 'none' });
  await navigator.serviceWorker.ready;
};
document.documentElement.dataset.ready = 'yes';
