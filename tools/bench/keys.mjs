// From a key to the painted answer, at a sixth of the processor's speed, beside the hand-written page.
import { judge, median, openPage, quantile, say, takenOver } from './browser.mjs';

const text = '9.25 1.5 12.75 3.125 29.92 0.5 17.25 8.75'.replaceAll(' ', '');
const runs = 6;

/** Notes of every key when its answer was painted, what that was, and what it was when the next key came. */
function watchKeys() {
  const keys = [];
  const answer = () => {
    const rows = [...(document.querySelector('.answers tbody')?.rows ?? [])].slice(0, 5);
    return [document.querySelector('.understood, #answer'), ...rows]
      .map((each) => each.textContent)
      .join(' ');
  };
  window.keysSoFar = () => {
    if (keys.length > 0) keys.at(-1).inTheEnd = answer();
    return keys;
  };
  addEventListener(
    'input',
    ({ timeStamp }) => {
      window.keysSoFar();
      const key = {};
      keys.push(key);
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => Object.assign(key, { ms: performance.now() - timeStamp, painted: answer() });
        port2.postMessage('');
      });
    },
    { capture: true },
  );
}

/** The hand-written page with all the words around our calculator: what a key costs grows with what is on a page. */
async function withOurWords(bench) {
  const [hand, ours] = await Promise.all(
    [bench.handWritten, bench.ours('unit-converter/')].map(async (address) => (await fetch(address)).text()),
  );
  const [, words] = /<main[^>]*>(.*)<\/main>/su.exec(ours);
  const unstyled = words
    .replaceAll(/<(astro-island|script|style).*?<\/\1>/gsu, '')
    .replaceAll(/ (?:class|style|data-[a-z-]+)(?:="[^"]*")?/gu, '');
  return hand.replace('</body>', `${unstyled}</body>`);
}

async function pressKeys(bench, address, { isOurs = false, html } = {}) {
  const { page, close } = await openPage(bench.browser, { slowdown: 6, scripts: [watchKeys] });
  if (html) await page.route(address, (route) => route.fulfill({ contentType: 'text/html', body: html }));
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
  const keys = await page.evaluate(() => window.keysSoFar());
  if (keys.length < text.length) throw new Error(`${text.length} keys, but ${keys.length} answers`);
  for (const { painted, inTheEnd } of keys)
    if (painted !== inTheEnd) throw new Error(`painted “${painted}” after a key, but then “${inTheEnd}”`);
  await close();
  return keys.map(({ ms }) => ms);
}

export async function keys(bench) {
  const html = await withOurWords(bench);
  const [ours, worded, bare] = [[], [], []];
  for (let run = 0; run < runs; run += 1) {
    bare.push(...(await pressKeys(bench, bench.handWritten)));
    worded.push(...(await pressKeys(bench, bench.handWritten, { html })));
    ours.push(...(await pressKeys(bench, bench.ours('unit-converter/'), { isOurs: true })));
  }
  const end = (times) => quantile(times, 0.95);
  const inWords = (times) =>
    `half within ${median(times).toFixed(0)} ms, 95 of 100 within ${end(times).toFixed(0)} ms`;
  say(`unit converter, sentence and five figures: ${inWords(ours)}; ${ours.length} keys`);
  say(`hand-written page with the same words around its one figure: ${inWords(worded)}`);
  say(
    `hand-written page with no words: ${inWords(bare)}; the converter takes ${(end(ours) / end(bare)).toFixed(2)} times`,
  );
  judge('key to paint, 95 of 100, processor slowed 6 times', end(ours), ' ms', 50);
  judge('the same, beside the page with the same words', end(ours) / end(worded), ' times', 1.5);
}
