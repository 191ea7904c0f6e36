// What the practice engine asks of a slow processor: its own script a frame, and the frames themselves.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { judge, openPage, say, takenOver } from './browser.mjs';

const slowdown = 6;
const seconds = 5;
/** The most that an exercise can ask: six carburettors, and the advice beside it. */
const exercise = '#v=1&generation=all-adjustable&carburettors=6&grade=4&seed=5';

/**
 * Milliseconds of the processor for one frame on the page's main thread: in the page's own frame script, and in all tasks.
 * Unlike frames, they hardly depend on what else the machine does. Traced at full speed and multiplied: the slowdown of the
 * developer tools does not count as time of the processor.
 */
async function frameCost(browser, page) {
  const file = join(mkdtempSync(join(tmpdir(), 'practice-')), 'trace.json');
  await browser.startTracing(page, {
    path: file,
    categories: ['devtools.timeline', 'disabled-by-default-devtools.timeline'],
  });
  await page.waitForTimeout(1000 * seconds);
  await browser.stopTracing();
  const { traceEvents } = JSON.parse(readFileSync(file, 'utf8'));
  rmSync(dirname(file), { recursive: true });
  const frames = traceEvents.filter(({ name }) => name === 'FireAnimationFrame');
  const { pid, tid } = frames[0];
  const tasks = traceEvents.filter(
    (event) => event.name === 'RunTask' && event.ph === 'X' && event.pid === pid && event.tid === tid,
  );
  const perFrame = (events) =>
    (slowdown * events.reduce((sum, { tdur = 0 }) => sum + tdur, 0)) / 1000 / frames.length;
  return { script: perFrame(frames), all: perFrame(tasks) };
}

/** Frames a second. */
const countFrames = (page) =>
  page.evaluate(
    (ms) =>
      new Promise((resolve) => {
        let count = 0;
        const began = performance.now();
        const onFrame = () => {
          count += 1;
          const passed = performance.now() - began;
          if (passed < ms) requestAnimationFrame(onFrame);
          else resolve((1000 * count) / passed);
        };
        requestAnimationFrame(onFrame);
      }),
    1000 * seconds,
  );

export async function practice(bench) {
  const { page, devtools, close } = await openPage(bench.browser);
  await page.goto(bench.ours(`practice-engine/${exercise}`));
  await takenOver(page);
  await page.getByRole('checkbox', { name: /With the bench session/ }).check();
  await page.getByRole('button', { name: 'Go to the engine' }).click();
  await page.getByRole('slider', { name: 'Throttle' }).fill('0.25');
  for (const pace of ['×1', '×4', '×16']) {
    await page.locator('.sides').getByRole('button', { name: 'Engine' }).click();
    await page.getByRole('button', { name: `Time ${pace}`, exact: true }).click();
    const { script, all } = await frameCost(bench.browser, page);
    await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
    const frames = await countFrames(page);
    await devtools.send('Emulation.setCPUThrottlingRate', { rate: 1 });
    say(`time ${pace}: ${frames.toFixed(0)} frames a second; all tasks ${all.toFixed(1)} of 16.7 ms a frame`);
    judge(`own script a frame, time ${pace}, six carburettors, processor slowed 6 times`, script, ' ms', 4);
  }
  await close();
}
