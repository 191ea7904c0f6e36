// Holds the built pages to their budgets, as they are sent: brotli 11 for text. `npm run check:size`, on OUT_DIR (dist).
import './check-node.mjs';
import { readFileSync } from 'node:fs';
import { brotliCompressSync, constants } from 'node:zlib';
import { join } from 'node:path';
import { budgets } from './build/budgets.mjs';
import { listFiles } from './build/list-files.mjs';
import { weighPage } from './build/weigh-page.mjs';

const folder = process.env.OUT_DIR ?? 'dist';
const kB = (bytes) => (bytes / 1000).toFixed(1);

/** What a page with formulae may fetch besides. */
const fontBudget = 35_000;
/** The whole copy for use offline: as sent and as stored. */
const offlineBudget = { sent: 1_600_000, stored: 15_000_000 };

function kindOf({ path, formulae, isCalculator }) {
  if (path === 'bench-session/') return 'bench session';
  if (path === 'practice-engine/') return 'practice engine';
  if (isCalculator) return 'calculator';
  return formulae > 0 ? 'formulae' : 'prose';
}

/** The path that the site was built for, as its first page has it. */
const base =
  /<link rel="manifest" href="([^"]*\/)manifest\.webmanifest"/.exec(
    readFileSync(join(folder, 'index.html'), 'utf8'),
  )?.[1] ?? '/';
const pages = listFiles(folder)
  .filter((file) => file.endsWith('.html'))
  .map((file) => weighPage(folder, file, base));
let faults = 0;
for (const page of pages) {
  const kind = kindOf(page);
  const over = Object.entries({ fonts: fontBudget, ...budgets[kind] }).filter(
    ([what, most]) => page[what] > most,
  );
  faults += over.length;
  const words = over.map(([what, most]) => `${what} over ${what === 'nodes' ? most : `${kB(most)} kB`}`);
  console.log(
    `${over.length === 0 ? ' ' : '✗'} ${page.path.padEnd(36)} ${kind.padEnd(16)} ` +
      `${kB(page.all).padStart(6)} kB in all, ${kB(page.scripts).padStart(5)} of scripts (${kB(page.inUse)} in use), ` +
      `${kB(page.first).padStart(5)} first, ${String(page.nodes).padStart(5)} nodes ${words.join(', ')}`,
  );
}

const worker = readFileSync(join(folder, 'sw.js'), 'utf8');
const listed = listFiles(folder).filter((file) =>
  worker.includes(`"${file.replace(/(^|\/)index\.html$/, '$1')}"`),
);
const sizes = listed.map((file) => readFileSync(join(folder, file)));
const sent = sizes.reduce((sum, bytes, index) => {
  const isPacked = /\.(png|ico|woff2)$/.test(listed[index]);
  const options = { params: { [constants.BROTLI_PARAM_QUALITY]: 11 } };
  return sum + (isPacked ? bytes.length : brotliCompressSync(bytes, options).length);
}, 0);
const stored = sizes.reduce((sum, bytes) => sum + bytes.length, 0);
if (sent > offlineBudget.sent) faults += 1;
if (stored > offlineBudget.stored) faults += 1;
console.log(`Offline copy: ${listed.length} files, ${kB(sent)} kB as sent, ${kB(stored)} kB as stored.`);
console.log(faults === 0 ? 'Every budget is kept.' : `${faults} budgets are not kept.`);
process.exitCode = faults === 0 && pages.length > 0 && listed.length > 0 ? 0 : 1;
