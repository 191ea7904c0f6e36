// `npm run check:lighthouse`: Lighthouse, as a phone, on one page of each kind of the built site (OUT_DIR, dist).
// Ends with 1 where a score is below 98 of 100 or the layout shifts. Pages by name: `npm run check:lighthouse -- unit-converter/`.
import './check-node.mjs';
import { launch } from 'chrome-launcher';
import lighthouse from 'lighthouse';
import { findBrowser, launchFlags } from './find-browser.mjs';
import { serveFolder } from './serve.mjs';

const categories = ['performance', 'accessibility', 'best-practices', 'seo'];
const least = 98;
const mostShift = 0.01;
/** Of a busy machine the middle one of so many runs is taken. */
const runs = 3;
const kinds = {
  '': 'start',
  'safety/': 'prose',
  'thread-travel-and-engagement/': 'prose with formulae',
  'the-adjusting-cycle/': 'prose with an explorable',
  'unit-converter/': 'calculator',
  'bench-session/': 'bench session',
  'practice-engine/': 'practice engine',
  'checklists/': 'checklists',
  'search/': 'search',
  'pressure-units/': 'tables',
};

const asked = process.argv.slice(2);
const pages = asked.length > 0 ? asked : Object.keys(kinds);
const site = await serveFolder({ folder: process.env.OUT_DIR ?? 'dist' });
const middle = (values) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];

async function measure(page) {
  const chrome = await launch({ chromePath: findBrowser(), chromeFlags: ['--headless', ...launchFlags] });
  try {
    const { lhr } = await lighthouse(site.address + page, {
      port: chrome.port,
      onlyCategories: categories,
      logLevel: 'error',
    });
    return lhr;
  } finally {
    chrome.kill();
  }
}

let faults = 0;
for (const page of pages) {
  const results = [];
  for (let run = 0; run < runs; run += 1) results.push(await measure(page));
  const scores = categories.map((id) =>
    Math.round(100 * middle(results.map((each) => each.categories[id].score ?? 0))),
  );
  const value = (id) => middle(results.map((each) => each.audits[id].numericValue ?? Infinity));
  const shift = value('cumulative-layout-shift');
  const isGood = scores.every((score) => score >= least) && shift <= mostShift;
  if (!isGood) faults += 1;
  const failed = new Set(
    results.flatMap(({ audits }) =>
      Object.values(audits).flatMap(({ id, score, scoreDisplayMode }) =>
        scoreDisplayMode === 'binary' && score === 0 ? [id] : [],
      ),
    ),
  );
  console.log(
    `${isGood ? ' ' : '✗'} ${(page || '/').padEnd(30)} ${(kinds[page] ?? '').padEnd(26)} ${scores.join(' · ')}; ` +
      `largest paint ${value('largest-contentful-paint').toFixed(0)} ms, blocked ${value('total-blocking-time').toFixed(0)} ms, ` +
      `shift ${shift.toFixed(3)} ${[...failed].join(', ')}`,
  );
}
await site.close();
console.log(`Scores: ${categories.join(' · ')}, at least ${least}; shift at most ${mostShift}.`);
console.log(faults === 0 ? 'Every page is good enough.' : `${faults} pages are not good enough.`);
process.exitCode = faults === 0 && pages.length > 0 ? 0 : 1;
