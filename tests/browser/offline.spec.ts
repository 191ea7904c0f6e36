import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import type { ServerResponse } from 'node:http';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { writeWorker } from '../../tools/build/write-worker.mjs';
import { serveFolder } from '../../tools/serve.mjs';
import { withCopy, withFaults, wrongWorkers } from '../copied-site.ts';
import { addresses, folder } from './built-pages.ts';

const club = process.env.CLUB_DIR ?? 'dist-club';
const savedWords = /^Saved for use without a network: version \d+\.\d+\.\d+-[0-9a-f]{8}, \d+(\.\d)? MB\.$/;
const offlineLine = (page: Page) => page.locator('#offline');

for (const { name, from, base } of [
  { name: 'at the root', from: folder, base: '/' },
  { name: 'under a base path', from: club, base: '/club/' },
])
  test(`after one visit every page opens with the server stopped, ${name}`, async ({ page }) => {
    const { address, close } = await serveFolder({ folder: from, base });
    await page.goto(address);
    await expect(offlineLine(page)).toHaveText(savedWords, { timeout: 30_000 });
    await close();

    for (const other of addresses) {
      await page.goto(address + other);
      await expect(page.getByRole('heading', { level: 1 }).first()).toBeVisible();
    }
    await page.goto(`${address}search/#q=depression`);
    await expect(page.locator('.found a').first()).toHaveAttribute('href', new RegExp(`^${base}(?!.*//)`));

    await page.goto(`${address}search/index.html?from=a-letter`);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Search');
    await page.goto(`${address}search?from=a-letter`);
    await expect(page).toHaveURL(`${address}search/?from=a-letter`);
    const missing = await page.goto(`${address}no-such-page/`);
    expect(missing?.status()).toBe(404);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('There is no page at this address');
  });

test('without the worker nothing opens once the server has stopped', async ({ browser }) => {
  const { address, close } = await serveFolder({ folder });
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.goto(address);
  await close();
  await expect(page.goto(`${address}search/`)).rejects.toThrow(/ERR_CONNECTION_REFUSED/);
  await context.close();
});

test('a new version waits, is offered, and is loaded when the reader asks and no other window is open', async ({
  page,
  context,
}) => {
  await withCopy(folder, async ({ copy, address }) => {
    // The first version has a part that the second lacks, as happens to every file named by its content.
    writeFileSync(join(copy, '_astro', 'part.old.js'), 'export default "old";');
    writeWorker(copy, '/');
    const loadOldPart = (where: Page) =>
      where.evaluate(async (part) => {
        const loaded = (await import(part)) as { default: string };
        return loaded.default;
      }, '/_astro/part.old.js');

    await page.goto(`${address}search/`);
    await expect(offlineLine(page)).toHaveText(savedWords);
    const firstVersion = await offlineLine(page).innerText();

    rmSync(join(copy, '_astro', 'part.old.js'));
    const file = join(copy, '404.html');
    writeFileSync(
      file,
      readFileSync(file, 'utf8').replace('There is no page at this address</h1>', 'Nothing is here</h1>'),
    );
    writeWorker(copy, '/');

    const other = await context.newPage();
    await other.goto(`${address}404.html`);
    await expect(offlineLine(other)).toHaveText('A new version is ready.');
    await expect(other.getByRole('heading', { level: 1 })).toHaveText('There is no page at this address');
    await expect(offlineLine(page)).toHaveText('A new version is ready.'); // the first window is told too
    await page.getByLabel('A few words or a question').fill('half a word');

    // Not while the first window is open: it is not touched, and still gets the parts of its own version.
    await other.getByRole('button', { name: 'Load it' }).click();
    await expect(offlineLine(other)).toHaveText(
      'A new version is ready. Close the other windows of this site, then load it here.',
    );
    expect(await loadOldPart(page)).toBe('old');
    await expect(page.getByLabel('A few words or a question')).toHaveValue('half a word');
    const countVersions = () => other.evaluate(async () => (await caches.keys()).length);
    expect(await countVersions()).toBe(2);

    await page.close();
    await other.getByRole('button', { name: 'Load it' }).click();
    await expect(other.getByRole('heading', { level: 1 })).toHaveText('Nothing is here', { timeout: 30_000 });
    await expect(offlineLine(other)).toHaveText(savedWords);
    await expect(offlineLine(other)).not.toHaveText(firstVersion);
    await expect(other.getByRole('button', { name: 'Load it' })).toBeHidden();
    expect(await countVersions()).toBe(1);
  });
});

test('a site that cannot be saved whole says so, and works with the network', async ({ page }) => {
  await withCopy(folder, async ({ copy, address }) => {
    rmSync(join(copy, 'icons', 'icon-512.png'));
    await page.goto(`${address}search/`);
    await expect(offlineLine(page)).toHaveText(/^Not saved for use without a network: the connection broke/);
    await page.getByLabel('A few words or a question').fill('depression');
    await expect(page.locator('.found > li').first()).toBeVisible();
    expect(await page.evaluate(async () => (await caches.keys()).length)).toBe(0);
  });
});

test('an address that is not safe says what is missing', async ({ page }) => {
  await page.addInitScript(() => Object.defineProperty(window, 'isSecureContext', { value: false }));
  await page.goto('search/');
  await expect(offlineLine(page)).toHaveText(
    'Not saved for use without a network: that needs an https address.',
  );
});

test('a first visit that is cut off half way leaves nothing half, and the next one saves all', async ({
  page,
}) => {
  await withCopy(folder, async ({ address: site }) => {
    let left = 100;
    const cut = (path: string, answer: ServerResponse): boolean => {
      if (left > 0 || path.startsWith('/search')) {
        left -= 1;
        return false;
      }
      answer.destroy();
      return true;
    };
    await withFaults(site, cut, async (address) => {
      await page.goto(`${address}search/`);
      await expect(offlineLine(page)).toHaveText(
        /^Not saved for use without a network: the connection broke/,
      );
      expect(left).toBeLessThanOrEqual(0);
      expect(await page.evaluate(async () => (await caches.keys()).length)).toBe(0);
      left = Infinity;
      await page.reload();
      await expect(offlineLine(page)).toHaveText(savedWords, { timeout: 30_000 });
      left = 0;
      await page.goto(`${address}glossary/`);
      await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    });
  });
});

for (const { what, status, type, body } of wrongWorkers)
  test(`a new version whose worker ${what} leaves the old one as it was`, async ({ page }) => {
    await withCopy(folder, async ({ address: site }) => {
      let isWrong = false;
      let isDown = false;
      let asked = 0;
      const wrong = (path: string, answer: ServerResponse): boolean => {
        if (isDown) answer.destroy();
        else if (isWrong && path === '/sw.js') {
          asked += 1;
          answer.writeHead(status, { 'content-type': type }).end(body);
        } else return false;
        return true;
      };
      await withFaults(site, wrong, async (address) => {
        await page.goto(`${address}search/`);
        await expect(offlineLine(page)).toHaveText(savedWords, { timeout: 30_000 });
        const version = await offlineLine(page).innerText();
        isWrong = true;
        await page.reload();
        await page.evaluate(async () => (await navigator.serviceWorker.ready).update().catch(() => {}));
        expect(asked).toBeGreaterThan(0);
        await expect(offlineLine(page)).toHaveText(version);
        isDown = true;
        await page.goto(`${address}glossary/`);
        await expect(page.getByRole('heading', { level: 1 })).toHaveText('Glossary');
      });
    });
  });

test('a new version while a session is open: the session goes on, and is there after it was loaded', async ({
  page,
}) => {
  await withCopy(folder, async ({ copy, address }) => {
    const lines = page.locator('.log .entries > li');
    const enter = async (reading: string): Promise<void> => {
      const before = await lines.count();
      await page.locator('#reading').fill(reading);
      await page.locator('.entry [type=submit]').click();
      await lines.nth(before).waitFor();
      await expect(page.locator('.log [role=status]')).toHaveText('Saved on this device only.');
    };
    await page.goto(`${address}bench-session/#v=1&g=all-adjustable&n=4&o=a&u=mmHg`);
    await expect(offlineLine(page)).toHaveText(savedWords, { timeout: 30_000 });
    await page.getByRole('button', { name: 'Start the session' }).first().click();
    await enter('210');

    const file = join(copy, 'bench-session', 'index.html');
    writeFileSync(file, readFileSync(file, 'utf8').replace('</title>', ' (anew)</title>'));
    writeWorker(copy, '/');
    await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
    await expect(offlineLine(page)).toHaveText('A new version is ready.', { timeout: 30_000 });
    await enter('232');
    await expect(page).not.toHaveTitle(/anew/u);

    // The bench has no foot: nothing else is offered to somebody at a running engine.
    await expect(page.getByRole('button', { name: 'Load it' })).toBeHidden();
    await page.getByRole('button', { name: 'Leave the bench' }).click();
    await page.getByRole('button', { name: 'Load it' }).click();
    await expect(page).toHaveTitle(/anew/u, { timeout: 30_000 });
    await page.getByRole('button', { name: /^Go on with/u }).click();
    await expect(lines).toHaveCount(2);
  });
});

test('the copy for use without a network is not begun before the page has loaded', async ({ page }) => {
  await page.addInitScript(() => {
    const register = ServiceWorkerContainer.prototype.register;
    ServiceWorkerContainer.prototype.register = function (...given) {
      const [{ loadEventStart } = { loadEventStart: 0 }] = performance.getEntriesByType(
        'navigation',
      ) as PerformanceNavigationTiming[];
      Object.assign(window, { begun: { state: document.readyState, loadEventStart } });
      return register.apply(this, given);
    };
  });
  for (const address of ['./', './unit-converter/', './bench-session/']) {
    await page.goto(address);
    await expect(offlineLine(page)).not.toBeEmpty();
    const begun = await page.evaluate(
      () => (window as unknown as { begun: { state: string; loadEventStart: number } }).begun,
    );
    expect(begun.state).toBe('complete');
    expect(begun.loadEventStart).toBeGreaterThan(0);
  }
});
