// Counts the frames of the practice engine in a real browser whose processor is slowed down four times.
// Builds nothing: serves dist (OUT_DIR names another folder). Time passes at every pace that the page offers.
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

/** Frames in so many seconds, the longest of them, and the time that scripts took of it, in milliseconds. */
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
            longest: gaps.at(-1),
          });
        };
        requestAnimationFrame(onFrame);
      }),
    1000 * wait,
  );

/** Seconds that scripts, and all work of the page together, have taken so far. */
async function workSeconds() {
  const { metrics } = await devtools.send('Performance.getMetrics');
  const of = (name) => metrics.find((metric) => metric.name === name).value;
  return { scripts: of('ScriptDuration'), all: of('TaskDuration') };
}

async function measure(name) {
  const before = await workSeconds();
  const frames = await countFrames(seconds);
  const after = await workSeconds();
  const share = (part) => `${((100 * (after[part] - before[part])) / seconds).toFixed(0)} %`;
  console.log(
    `${name.padEnd(28)} ${frames.perSecond.toFixed(1).padStart(5)} frames/s   median ${frames.median.toFixed(1)} ms   99 % within ${frames.percentile99.toFixed(1)} ms   longest ${frames.longest.toFixed(1)} ms   scripts ${share('scripts')}, all ${share('all')} of the time`,
  );
}

await devtools.send('Performance.enable');
await page.goto(`${address}practice-engine/${exercise}`);
await page.locator('astro-island:not([ssr])').first().waitFor({ state: 'attached' });
await page.getByRole('checkbox', { name: /With the bench session/ }).check();
await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
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
