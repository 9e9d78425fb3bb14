// The Python worker: boots Pyodide, imports the core, and answers one question (JSON) at a time.
//
// It posts {state} while it starts ('loading', 'starting', 'ready', 'whole'), then {id, reply} for each
// {id, request}; {id, error} when that one question failed; {broken} when Python as a whole did.
import { loadPyodide } from './vendor/pyodide/pyodide.mjs';
import lockFileContents from './vendor/pyodide/lock.mjs';

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
  const core = fetched('./plumpline.zip');
  core.catch(() => {}); // reported below, when it is awaited
  const python = await loadPyodide({
    indexURL,
    packageBaseUrl: indexURL,
    stdLibURL: `${indexURL}python_stdlib.zip`,
    lockFileContents: Promise.resolve(lockFileContents),
  });
  postMessage({ state: 'starting' });
  python.unpackArchive(await core, 'zip', { extractDir: '/lib/python3.14/site-packages' });
  const ask = python.pyimport('plumpline.ask').ask;
  postMessage({ state: 'ready' });
  python.runPython(IMPORT_ALL);
  postMessage({ state: 'whole' });
  return { ask, isPythons: (error) => error instanceof python.ffi.PythonError };
}

const booted = boot();
booted.catch((error) => postMessage({ broken: String(error?.message ?? error) }));

self.addEventListener('message', async ({ data: { id, request } }) => {
  const { ask, isPythons } = await booted;
  try {
    postMessage({ id, reply: JSON.parse(ask(JSON.stringify(request))) });
  } catch (error) {
    postMessage({ id, error: String(error?.message ?? error) });
    // Anything but a Python exception (out of memory, say) leaves the interpreter unusable.
    if (!isPythons(error)) postMessage({ broken: String(error?.message ?? error) });
  }
});
