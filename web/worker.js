// The Python worker: boots Pyodide, imports the core, and answers questions (JSON), also while it looks for a plan.
//
// It posts {state} while it starts ('loading', 'starting', 'ready', 'whole'), then {id, reply} for each
// {id, request}; {id, error} when that one question failed; {broken} when Python as a whole did. Plans are looked for
// in slices (see boot/plans.js): on the way come {id, progress} and {id, soFar}, and {stop: id} ends it early.
import { loadPyodide } from './vendor/pyodide/pyodide.mjs';
import lockFileContents from './vendor/pyodide/lock.mjs';
import { plansBySlices } from './boot/plans.js';

const here = (path) => new URL(path, import.meta.url).href;

// Imports every module of the core and so proves that all of it arrived, not only what the first answer needs.
const IMPORT_ALL = `
import importlib, pkgutil, plumpline
names = [module.name for module in pkgutil.walk_packages(plumpline.__path__, "plumpline.")]
assert "plumpline.ask" in names, names
for name in names:
    if not name.endswith("__main__"):
        importlib.import_module(name)
`;

async function fetched(path) {
  const response = await fetch(here(path));
  if (!response.ok) throw new Error(`${path} could not be read (${response.status})`);
  return response.arrayBuffer();
}

async function boot() {
  postMessage({ state: 'loading' });
  const indexURL = here('./vendor/pyodide/');
  const modules = fetched('./plumpline.zip');
  modules.catch(() => {}); // reported below, when it is awaited
  const python = await loadPyodide({
    indexURL,
    packageBaseUrl: indexURL,
    stdLibURL: `${indexURL}python_stdlib.zip`,
    lockFileContents: Promise.resolve(lockFileContents),
  });
  postMessage({ state: 'starting' });
  python.unpackArchive(await modules, 'zip', { extractDir: '/lib/python3.14/site-packages' });
  const core = python.pyimport('plumpline.ask');
  postMessage({ state: 'ready' });
  python.runPython(IMPORT_ALL);
  postMessage({ state: 'whole' });
  return { core, isPythons: (error) => error instanceof python.ffi.PythonError };
}

const booted = boot();
booted.catch((error) => postMessage({ broken: String(error?.message ?? error) }));

const answered = (id, text) => postMessage({ id, reply: JSON.parse(text) });

// Does something for one question: what goes wrong with it is told to whoever asked.
const guarding = (isPythons) => (id, work) => {
  try {
    work();
  } catch (error) {
    postMessage({ id, error: String(error?.message ?? error) });
    // Anything but a Python exception (out of memory, say) leaves the interpreter unusable.
    if (!isPythons(error)) postMessage({ broken: String(error?.message ?? error) });
  }
};

async function open() {
  const { core, isPythons } = await booted;
  const guarded = guarding(isPythons);
  // A plan and a comparison are looked for beside each other: neither takes the place of the other.
  const lookers = { plan: plansBySlices(core.begin, guarded), compare: plansBySlices(core.begin, guarded) };
  return { core, guarded, lookers };
}

const opened = open();
opened.catch(() => {}); // told above

self.addEventListener('message', async ({ data: { id, request, stop } }) => {
  const { core, guarded, lookers } = await opened;
  const looker = request?.job && lookers[request.do];
  if (stop) Object.values(lookers).forEach((one) => one.stop(stop));
  else if (looker) looker.begin(id, JSON.stringify(request));
  else guarded(id, () => answered(id, core.ask(JSON.stringify(request))));
});
