// The first result of a search with nothing in the cache, and later ones: from the last key to the list on the screen.
import { judge, median, openPage, say, takenOver } from './browser.mjs';

const queries = [
  'lock nut',
  'carbon monoxide',
  'thread',
  'flutter of the needle',
  'altitude',
  'which way opens',
];
const coldRuns = 3;

function watchResults() {
  window.search = (query) =>
    new Promise((resolve) => {
      const field = document.getElementById('query');
      const before = document.querySelector('.found a')?.href;
      const began = performance.now();
      const observer = new MutationObserver(() => {
        const first = document.querySelector('.found a')?.href;
        if (!first || first === before) return;
        observer.disconnect();
        requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - began)));
      });
      observer.observe(document.body, {
        subtree: true,
        childList: true,
        attributes: true,
        characterData: true,
      });
      field.value = query;
      field.dispatchEvent(new InputEvent('input', { bubbles: true }));
    });
}

export async function search(bench) {
  const [first, later, fetched] = [[], [], []];
  for (let run = 0; run < coldRuns; run += 1) {
    const { page, devtools, close } = await openPage(bench.browser, {
      slowdown: 4,
      network: 'fast 3G',
      scripts: [watchResults],
    });
    await page.goto(bench.ours('search/'), { waitUntil: 'commit' });
    await takenOver(page);
    let bytes = 0;
    devtools.on('Network.loadingFinished', ({ encodedDataLength }) => (bytes += encodedDataLength));
    first.push(await page.evaluate(() => window.search('depression')));
    fetched.push(bytes / 1000);
    for (const query of queries) later.push(await page.evaluate((words) => window.search(words), query));
    await close();
  }
  say(
    `${median(fetched).toFixed(0)} kB fetched for the first; later ones half within ${median(later).toFixed(0)} ms, ` +
      `slowest ${Math.max(...later).toFixed(0)} ms`,
  );
  judge(
    'first result, typed as soon as the page answers, fast 3G, processor slowed 4 times',
    median(first),
    ' ms',
    2000,
  );
  judge('later results, median of six queries', median(later), ' ms', 200);
}
