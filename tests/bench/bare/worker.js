// The bare runtime, as npm ships it: starts Pyodide and answers 1 + 1.
import { loadPyodide } from './pyodide/pyodide.mjs';

const started = loadPyodide({ indexURL: new URL('./pyodide/', import.meta.url).href });

self.addEventListener('message', async ({ data: { id } }) => {
  const python = await started;
  postMessage({ id, reply: python.runPython('1 + 1') });
});
