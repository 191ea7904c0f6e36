// Largest contentful paint on slow 3G, and how soon a calculator answers on fast 3G, beside the hand-written page.
import { judge, median, openPage, say } from './browser.mjs';

const runs = 9;

function watchPaint() {
  new PerformanceObserver((list) => {
    window.largestPaint = list.getEntries().at(-1).startTime;
  }).observe({ type: 'largest-contentful-paint', buffered: true });
}

/** Types as soon as the page has been read, and waits for the answer: 10 inHg are 33.86 kPa. */
function watchReady() {
  const answered = () => document.body.textContent.includes('33.86');
  document.addEventListener('readystatechange', () => {
    if (document.readyState !== 'interactive') return;
    const field = document.querySelector('#typed');
    field.focus();
    field.value = field.value.replace('9', '10');
    field.dispatchEvent(new Event('input', { bubbles: true }));
    const look = () => {
      if (answered()) window.readyAt ??= performance.now();
    };
    look();
    new MutationObserver(look).observe(document, { subtree: true, childList: true, characterData: true });
  });
}

async function once(bench, address, network, script, name) {
  const { page, close } = await openPage(bench.browser, { slowdown: 4, network, scripts: [script] });
  await page.goto(address, { waitUntil: 'load' });
  await page.waitForFunction((key) => window[key] !== undefined, name);
  await page.waitForTimeout(500);
  const value = await page.evaluate((key) => window[key], name);
  await close();
  return value;
}

/** Medians of runs in turn. */
async function sideBySide(bench, network, script, name) {
  const [ours, hand] = [[], []];
  for (let run = 0; run < runs; run += 1) {
    hand.push(await once(bench, bench.handWritten, network, script, name));
    ours.push(await once(bench, bench.ours('unit-converter/'), network, script, name));
  }
  say(`unit converter ${median(ours).toFixed(0)} ms, hand-written page ${median(hand).toFixed(0)} ms`);
  return median(ours) / median(hand);
}

export async function paint(bench) {
  judge(
    'largest paint, slow 3G, processor slowed 4 times',
    await sideBySide(bench, 'slow 3G', watchPaint, 'largestPaint'),
    ' times the hand-written page',
    2,
  );
}

export async function ready(bench) {
  judge(
    'ready, fast 3G, processor slowed 4 times',
    await sideBySide(bench, 'fast 3G', watchReady, 'readyAt'),
    ' times the hand-written page',
    2.2,
  );
}
