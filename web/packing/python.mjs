// Runs one Python file inside Pyodide under node: node python.mjs SCRIPT.py [ARGUMENT…]
//
// The whole host file system is seen by the script under /host. Environment variables it reads:
// MICROPIP, the path of micropip's wheel when the script needs it; STDLIB, another standard library than
// the stock one. The hash seed is fixed, so what the script writes can be reproduced, unless HASHSEED says
// another.
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { loadPyodide } from '../node_modules/pyodide/pyodide.mjs';

const [script, ...parameters] = process.argv.slice(2);
const python = await loadPyodide({
  args: [],
  env: { HOME: '/home/pyodide', PYTHONHASHSEED: process.env.HASHSEED ?? '0' },
  ...(process.env.STDLIB && { stdLibURL: resolve(process.env.STDLIB) }),
  stdout: (line) => process.stdout.write(`${line}\n`),
  stderr: (line) => process.stderr.write(`${line}\n`),
});
python.FS.mkdir('/host');
python.FS.mount(python.FS.filesystems.NODEFS, { root: '/' }, '/host');
if (process.env.MICROPIP) {
  await python.loadPackage(pathToFileURL(resolve(process.env.MICROPIP)).href, { messageCallback: () => {} });
}
const globals = python.toPy({ __name__: '__main__', ARGUMENTS: parameters });
try {
  const code = await python.runPythonAsync(readFileSync(script, 'utf8'), { globals, filename: script });
  process.exit(typeof code === 'number' ? code : 0);
} catch (error) {
  console.error(error.message); // not the error itself: node would show the whole pressed line it came from
  process.exit(1);
}
