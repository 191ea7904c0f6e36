// The next move of the advice, at a sixth of the processor's speed: the package in an empty page, without the screen.
import { build } from 'vite';
import { judge, median, openPage, quantile, say } from './browser.mjs';

const bars = { 4: 16, 8: 50 };

async function bundle() {
  const built = await build({
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      lib: { entry: 'study/advice-in-browser.ts', name: 'advice', formats: ['iife'] },
    },
  });
  return [built].flat()[0].output[0].code;
}

export async function advice(bench) {
  const { page, devtools, close } = await openPage(bench.browser);
  await page.goto(bench.handWritten);
  await page.addScriptTag({ content: await bundle() });
  await page.evaluate(() => window.advice.timeAdvice(4)); // so that the browser has compiled it
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: 6 });
  for (const [carburettors, bar] of Object.entries(bars)) {
    const times = await page.evaluate((count) => window.advice.timeAdvice(count), Number(carburettors));
    say(
      `${times.length} steps of three sessions: half within ${median(times).toFixed(1)} ms, slowest ${Math.max(...times).toFixed(1)} ms`,
    );
    judge(
      `next move, ${carburettors} carburettors, 95 of 100 steps, processor slowed 6 times`,
      quantile(times, 0.95),
      ' ms',
      bar,
    );
  }
  await close();
}
