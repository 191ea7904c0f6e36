// From a key to the painted answer, at a sixth of the processor's speed, beside the hand-written page.
import { judge, median, openPage, quantile, say, takenOver } from './browser.mjs';

const text = '9.25 1.5 12.75 3.125 29.92 0.5 17.25 8.75'.replaceAll(' ', '');

function watchKeys() {
  window.keyTimes = [];
  addEventListener(
    'input',
    ({ timeStamp }) =>
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => window.keyTimes.push(performance.now() - timeStamp);
        port2.postMessage('');
      }),
    { capture: true },
  );
}

async function pressKeys(bench, address, isOurs) {
  const { page, close } = await openPage(bench.browser, { slowdown: 6, scripts: [watchKeys] });
  await page.goto(address, { waitUntil: 'load' });
  if (isOurs) await takenOver(page);
  const field = isOurs ? page.locator('main input[type=text]').first() : page.locator('#typed');
  // A calculator starts when its field is touched, which `ready` measures; the first key comes a second later.
  await field.focus();
  await page.waitForTimeout(1000);
  for (const [place, key] of [...text].entries()) {
    // Four keys make a number; the next one takes its place.
    if (place % 4 === 0) await field.selectText();
    await page.keyboard.press(key);
    await page.waitForTimeout(120);
  }
  const times = await page.evaluate(() => window.keyTimes);
  if (times.length < text.length) throw new Error(`${text.length} keys, but ${times.length} answers`);
  await close();
  return times;
}

export async function keys(bench) {
  const [ours, hand] = [[], []];
  for (let run = 0; run < 3; run += 1) {
    hand.push(...(await pressKeys(bench, bench.handWritten, false)));
    ours.push(...(await pressKeys(bench, bench.ours('unit-converter/'), true)));
  }
  const ends = [ours, hand].map((times) => quantile(times, 0.95));
  say(
    `unit converter: half within ${median(ours).toFixed(0)} ms, 95 of 100 within ${ends[0].toFixed(0)} ms; ` +
      `hand-written page ${median(hand).toFixed(0)} and ${ends[1].toFixed(0)} ms; ${ours.length} keys`,
  );
  judge('key to paint, 95 of 100, processor slowed 6 times', ends[0], ' ms', 50);
  judge('the same', ends[0] / ends[1], ' times the hand-written page', 1.5);
}
