import { createHash } from 'node:crypto';
import { readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { listFiles } from './list-files.mjs';
import { headersFile } from './policy.mjs';

const source = new URL('../worker/worker.js', import.meta.url);
const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));

// For hosts, crawlers and links shared elsewhere; without a network nobody asks for them.
const leftOut = new Set(['sw.js', headersFile, 'robots.txt', 'sitemap.xml', 'icons/share.png']);

/** The files that the worker saves. */
export function filesToSave(folder) {
  return listFiles(folder).filter((file) => !leftOut.has(file));
}

/** The address of a file below the base path: a page is asked for by its folder. */
export function addressOf(file) {
  return file.replace(/(^|\/)index\.html$/, '$1');
}

/** `sw.js`: the list of files, a version that changes with any name or content, and the worker itself. */
export function writeWorker(folder, base) {
  const files = filesToSave(folder);
  const worker = readFileSync(source, 'utf8');
  const hash = createHash('sha256').update(worker).update(base);
  let bytes = 0;
  for (const file of files) {
    hash.update(`\n${file}\n`).update(readFileSync(join(folder, file)));
    bytes += statSync(join(folder, file)).size;
  }
  const saved = {
    version: `${version}-${hash.digest('hex').slice(0, 8)}`,
    megabytes: Math.max(0.1, Math.round(bytes / 1e5) / 10),
    base,
    files: files.map(addressOf),
  };
  writeFileSync(join(folder, 'sw.js'), `const saved = ${JSON.stringify(saved)};\n${worker}`);
  return saved;
}
