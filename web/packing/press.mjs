// Presses files for the web host: node press.mjs FILE TARGET [FILE TARGET …] writes TARGET.gz and TARGET.br.
import { readFile, rename, writeFile } from 'node:fs/promises';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';

const PRESSES = {
  '.gz': (content) => promisify(gzip)(content, { level: 9 }),
  '.br': (content) =>
    promisify(brotliCompress)(content, {
      params: {
        [constants.BROTLI_PARAM_QUALITY]: 11,
        [constants.BROTLI_PARAM_LGWIN]: 24,
        [constants.BROTLI_PARAM_SIZE_HINT]: content.length,
      },
    }),
};

async function press(file, target) {
  const content = await readFile(file);
  for (const [suffix, pressed] of Object.entries(PRESSES)) {
    await writeFile(`${target}${suffix}.part`, await pressed(content));
    await rename(`${target}${suffix}.part`, `${target}${suffix}`); // a broken-off run leaves no half file
  }
}

const words = process.argv.slice(2);
const jobs = [];
for (let i = 0; i < words.length; i += 2) jobs.push([words[i], words[i + 1]]);
await Promise.all([0, 1].map(async () => { for (let job; (job = jobs.shift()); ) await press(...job); }));
