// Counts the frames of the practice engine in a real browser whose processor is slowed down four times.
// Builds nothing: serves dist (OUT_DIR names another folder). Time passes at every pace that the page offers.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { chromium } from 'playwright';
import { findBrowser, launchFlags } from './find-browser.mjs';
import { serveFolder } from './serve.mjs';

const folder = process.env.OUT_DIR ?? 'dist';
const slowdown = Number(process.env.SLOWDOWN ?? 4);
const seconds = Number(process.env.MEASURE_SECONDS ?? 10);
/** The most that an exercise can ask: six carburettors, and the advice beside it. */
const exercise = '#v=1&generation=all-adjustable&carburettors=6&grade=4&seed=5';

const { address, close } = await serveFolder({ folder });
const browser = await chromium.launch({ executablePath: findBrowser(), args: launchFlags });
const context = await browser.newContext({
  viewport: { width: 390, height: 844 },
  deviceScaleFactor: 2,
  serviceWorkers: 'block',
});
const page = await context.newPage();
const devtools = await context.newCDPSession(page);

/** Frames a second over so many seconds, and how long they were, in milliseconds. */
const countFrames = (wait) =>
  page.evaluate(
    (ms) =>
      new Promise((resolve) => {
        const times = [];
        const began = performance.now();
        const onFrame = (now) => {
          times.push(now);
          if (now - began < ms) return requestAnimationFrame(onFrame);
          const gaps = times.slice(1).map((time, index) => time - times[index]);
          gaps.sort((a, b) => a - b);
          resolve({
            perSecond: (1000 * gaps.length) / (times.at(-1) - times[0]),
            median: gaps[Math.floor(gaps.length / 2)],
            percentile99: gaps[Math.floor(gaps.length * 0.99)],
          });
        };
        requestAnimationFrame(onFrame);
      }),
    1000 * wait,
  );

/**
 * Milliseconds of the processor that one frame took on the page's main thread, all tasks counted: unlike the frames, it
 * hardly depends on what else the machine does. The slowdown by devtools does not count in it, so it is put on top.
 */
async function frameCost() {
  const file = join(mkdtempSync(join(tmpdir(), 'practice-')), 'trace.json');
  await browser.startTracing(page, {
    path: file,
    categories: ['devtools.timeline', 'disabled-by-default-devtools.timeline'],
  });
  await page.waitForTimeout(1000 * seconds);
  await browser.stopTracing();
  const { traceEvents } = JSON.parse(readFileSync(file, 'utf8'));
  rmSync(dirname(file), { recursive: true });
  const frames = traceEvents.filter((event) => event.name === 'FireAnimationFrame');
  const { pid, tid } = frames[0];
  const tasks = traceEvents.filter(
    (event) => event.name === 'RunTask' && event.ph === 'X' && event.pid === pid && event.tid === tid,
  );
  return tasks.reduce((sum, { tdur = 0 }) => sum + tdur, 0) / 1000 / frames.length;
}

const number = (value) => value.toFixed(1).padStart(5);

async function measure(name) {
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  const frames = await countFrames(seconds);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  const cost = isEngine(name) ? slowdown * (await frameCost()) : null;
  console.log(
    `${name.padEnd(24)} ${number(frames.perSecond)} frames/s   median ${number(frames.median)} ms   99 % within ${number(frames.percentile99)} ms` +
      (cost === null ? '' : `   work ${number(cost)} of ${number(1000 / 60)} ms a frame`),
  );
}
const isEngine = (name) => name.startsWith('time');

await page.goto(`${address}practice-engine/${exercise}`);
await page.locator('astro-island:not([ssr])').first().waitFor({ state: 'attached' });
await page.getByRole('checkbox', { name: /With the bench session/ }).check();
console.log(`Practice engine, six carburettors, processor slowed ${slowdown} times, ${seconds} s each:`);
await page.goto(`${address}about/`);
await measure('a page that stands still');
await page.goto(`${address}practice-engine/${exercise}`);
await page.locator('astro-island:not([ssr])').first().waitFor({ state: 'attached' });
await page.getByRole('button', { name: 'Go to the engine' }).click();
await page.getByRole('slider', { name: 'Throttle' }).fill('0.25');
for (const pace of ['×1', '×4', '×16']) {
  await page.locator('.sides').getByRole('button', { name: 'Engine' }).click();
  await page.getByRole('button', { name: `Time ${pace}`, exact: true }).click();
  await measure(`time ${pace}`);
}
await browser.close();
await close();
