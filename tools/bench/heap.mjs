// What a session leaves in memory: the heap after forced collection, before and after ten minutes' worth of entries.
import { judge, openPage, say, takenOver } from './browser.mjs';

const session = '#v=1&g=all-adjustable&n=4&o=a&r=212,248,251,187&t=9/9,9/9,9/9,9/9&tol=1';
const warmUp = 5;
/** Ten minutes of somebody who makes one in 24 s; the session ends itself not long after. */
const entries = 25;

async function heapMegabytes(devtools) {
  for (let turn = 0; turn < 3; turn += 1) await devtools.send('HeapProfiler.collectGarbage');
  const { usedSize } = await devtools.send('Runtime.getHeapUsage');
  return usedSize / 1e6;
}

async function enter(page, count, from) {
  const lines = page.locator('.log .entries > li');
  for (let k = from; k < from + count; k += 1) {
    const wrongWay = page.getByRole('button', { name: 'It is right as recorded' });
    if (await wrongWay.isVisible()) await wrongWay.click();
    const before = await lines.count();
    // What the page expects, with the flutter of a poor gauge; too much for a millimetre of tolerance to be reached soon.
    const expected = /expect\s*(\d+)/u.exec(await page.locator('main').innerText())?.[1] ?? '221';
    await page.locator('#reading').fill(String(Number(expected) + ((k * 7) % 11) - 5));
    await page.locator('.entry [type=submit]').click();
    await lines.nth(before).waitFor();
  }
}

export async function heap(bench) {
  const { page, devtools, close } = await openPage(bench.browser);
  await page.goto(bench.ours(`bench-session/${session}`));
  await takenOver(page);
  await page.getByRole('button', { name: 'Start the session' }).first().click();
  await enter(page, warmUp, 0);
  const before = await heapMegabytes(devtools);
  await enter(page, entries, warmUp);
  const after = await heapMegabytes(devtools);
  say(`${before.toFixed(2)} MB after ${warmUp} entries, ${after.toFixed(2)} MB after ${entries} more`);
  judge(`growth of the heap over ${entries} entries`, after - before, ' MB', 1);
  await close();
}
