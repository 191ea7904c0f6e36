// `npm run bench:browser`: measures the built site (OUT_DIR, dist) in a real browser that is slowed down, beside a page written
// by hand that converts one unit. Parts by name: `npm run bench:browser -- keys search`. Ends with 1 if a bar is missed.
import './check-node.mjs';
import { cpus } from 'node:os';
import { advice } from './bench/advice.mjs';
import { countOver, loadInWords, openBench } from './bench/browser.mjs';
import { heap } from './bench/heap.mjs';
import { keys } from './bench/keys.mjs';
import { paint, ready } from './bench/paint.mjs';
import { practice } from './bench/practice.mjs';
import { search } from './bench/search.mjs';

const parts = { paint, ready, keys, advice, practice, heap, search };

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !(name in parts));
if (unknown.length > 0) {
  console.error(`There is no part ${unknown.join(', ')}. Parts: ${Object.keys(parts).join(', ')}.`);
  process.exit(2);
}
const bench = await openBench();
console.log(`Chromium ${bench.browser.version()}, Node ${process.versions.node}, ${cpus().length} cores.`);
for (const [name, measure] of Object.entries(parts)) {
  if (asked.length > 0 && !asked.includes(name)) continue;
  console.log(`\n${name}`);
  await measure(bench);
}
await bench.close();
console.log(
  `\n${loadInWords()}. ${countOver() === 0 ? 'Every bar is kept.' : `${countOver()} bars are missed.`}`,
);
process.exitCode = countOver() === 0 ? 0 : 1;
