import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { expect, test, type BrowserContext, type Page } from '@playwright/test';
import { calculators } from '../../src/content/calculators.ts';
import { addresses, nameOf, open } from './built-pages.ts';
import { watch } from './watch.ts';

/** What of a context goes out: every request, and every cookie that an answer sets. */
const listen = (context: BrowserContext): { readonly requests: string[]; readonly breaches: string[] } => {
  const heard = { requests: [] as string[], breaches: [] as string[] };
  context.on('request', (request) => {
    heard.requests.push(request.url());
    const { search } = new URL(request.url());
    if (request.method() !== 'GET' || request.postData() !== null)
      heard.breaches.push(`sent: ${request.url()}`);
    if (search !== '') heard.breaches.push(`query: ${request.url()}`);
    if (request.resourceType() === 'ping') heard.breaches.push(`beacon: ${request.url()}`);
    if (request.headers()['referer']) heard.breaches.push(`referrer: ${request.url()}`);
  });
  context.on('response', (response) => {
    if (response.headers()['set-cookie'] !== undefined) heard.breaches.push(`cookie: ${response.url()}`);
  });
  return heard;
};

/** Does something on the site and holds that nothing of it breaks the policy, leaves the site or is kept as a cookie. */
const quietly = async (page: Page, act: () => Promise<void>): Promise<number> => {
  const faults = await watch(page);
  const { requests, breaches } = listen(page.context());
  await act();
  const blocked = 'console: Service Worker registration blocked by Playwright';
  expect(faults.filter((fault) => fault !== blocked)).toEqual([]);
  expect(breaches).toEqual([]);
  expect(await page.context().cookies()).toEqual([]);
  expect(await page.evaluate(() => document.cookie)).toBe('');
  return requests.length;
};

test.describe('over all pages', () => {
  const parts = 3;
  for (let part = 0; part < parts; part++) {
    const some = addresses.filter((_, place) => place % parts === part);
    test(`nothing is broken, sent or kept, from ${nameOf(some[0]!)} on: part ${part + 1}`, async ({
      page,
    }) => {
      let seen = 0;
      const requests = await quietly(page, async () => {
        for (const address of some) {
          const answer = await page.goto(address);
          const headers = answer!.headers();
          expect(headers['content-security-policy'], address).toContain("frame-ancestors 'none'");
          expect(headers['permissions-policy'], address).toContain('camera=()');
          expect(headers['referrer-policy'], address).toBe('no-referrer');
          expect(headers['x-content-type-options'], address).toBe('nosniff');
          await page.waitForFunction(() => !document.querySelector('astro-island[ssr]'));
          // To its end, so that what starts when it is seen starts.
          await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
          seen += 1;
        }
      });
      expect(seen).toBeGreaterThan(15);
      expect(requests).toBeGreaterThan(seen);
    });
  }
});

test.describe('in use', () => {
  test.use({ serviceWorkers: 'block' });

  for (const { path } of calculators)
    test(`a calculator: every field of ${path} changed, good and bad, and its answer copied`, async ({
      page,
      context,
    }) => {
      await context.grantPermissions(['clipboard-write', 'clipboard-read']);
      await quietly(page, async () => {
        await open(page, `.${path}`);
        const fields = page
          .locator('main astro-island input:is([type="text"], :not([type]))')
          .filter({ visible: true });
        const count = await fields.count();
        expect(count).toBeGreaterThan(0);
        for (let place = 0; place < Math.min(count, 6); place++) {
          const field = fields.nth(place);
          const before = await field.inputValue();
          await field.fill('<img src=https://elsewhere.example/x onerror=alert(1)>');
          await field.fill(before === '' ? '7' : before);
        }
        await page.getByRole('button', { name: /^Copy/ }).first().click();
      });
    });

  test('the bench session: set up, read, turned, saved to a file and read again', async ({ page }) => {
    await quietly(page, async () => {
      await open(page, 'bench-session/');
      await page.getByRole('button', { name: 'Set up a session' }).click();
      await page.getByLabel('Ganged, an adjuster on every carburettor').check();
      await page
        .getByRole('group', { name: 'Which way opens a screw?' })
        .getByLabel('Clockwise', { exact: true })
        .check();
      await page.getByRole('button', { name: 'Start the session' }).first().click();
      for (const reading of ['210', '24,5 cmHg', '9 inHg', '<b>200</b>']) {
        await page.locator('#reading').fill(reading);
        await page.locator('.entry [type=submit]').click();
      }
      await expect(page.locator('.log .entries > li')).toHaveCount(3);
      const download = page.waitForEvent('download');
      await page.getByRole('button', { name: 'Save to a file' }).first().click();
      const buffer = readFileSync(await (await download).path());
      await page.reload();
      await page
        .getByLabel('Read a session from a file')
        .setInputFiles({ name: 'session.json', mimeType: 'application/json', buffer });
      await expect(page.getByText('Read from the file.')).toBeAttached();
    });
  });

  test('the search, without WebAssembly, as everywhere', async ({ page }) => {
    await quietly(page, async () => {
      await open(page, 'search/');
      await page.getByLabel('A few words or a question').fill('lock nut');
      await expect(page.locator('.found > li').first()).toBeVisible();
    });
    const compiles = () =>
      page.evaluate(() =>
        WebAssembly.compile(Uint8Array.from([0, 97, 115, 109, 1, 0, 0, 0])).then(
          () => true,
          () => false,
        ),
      );
    expect(await compiles()).toBe(false);
  });

  test('the practice engine: a lesson begun, throttle and tap moved', async ({ page }) => {
    await quietly(page, async () => {
      await open(page, 'practice-engine/');
      await page.locator('[data-lesson="fluttering-needle"]').getByRole('button').click();
      await page.getByRole('slider', { name: 'Throttle' }).fill('0.2');
      await expect(page.locator('.practice .bar b')).not.toHaveText('0:00');
    });
  });

  test('the checklists: a tick, a club’s words and the link', async ({ page }) => {
    await quietly(page, async () => {
      await open(page, 'checklists/');
      await page.locator('main label:has([type=checkbox])').first().click();
      await open(page, 'for-clubs/');
      await page
        .locator('main astro-island :is(input[type="text"], input:not([type]), textarea)')
        .first()
        .fill('<b>Our club</b>');
    });
  });
});

test('the worker’s address passes the gate of script addresses; another, markup and code do not', async ({
  page,
}) => {
  await quietly(page, async () => {
    await open(page, '');
    await expect(page.locator('#offline')).toHaveText(/^Saved for use without a network/, {
      timeout: 30_000,
    });
  });
  const tried = await page.evaluate(async () => {
    const refused = (act: () => unknown): boolean => {
      try {
        act();
        return false;
      } catch (error) {
        return error instanceof TypeError || error instanceof EvalError;
      }
    };
    const script = document.createElement('script');
    return {
      ours: !refused(() => (script.src = new URL('/sw.js', location.href).pathname)),
      anotherOfOurs: refused(() => (script.src = '/robots.txt')),
      elsewhere: refused(() => (script.src = 'https://elsewhere.example/sw.js')),
      text: refused(() => (script.text = 'alert(1)')),
      markup: refused(() => (document.createElement('p').innerHTML = '<b>x</b>')),
      // Later, since the browser lets a test's own call make code.
      code: await new Promise((done) => setTimeout(() => done(refused(() => (0, eval)('1'))))),
      policy: refused(() =>
        (
          globalThis as unknown as { trustedTypes: { createPolicy(name: string, rules: object): unknown } }
        ).trustedTypes.createPolicy('other', {}),
      ),
    };
  });
  expect(tried).toEqual({
    ours: true,
    anotherOfOurs: true,
    elsewhere: true,
    text: true,
    markup: true,
    code: true,
    policy: true,
  });
});

test('the device gives what the site uses, and nothing else that the header names', async ({ page }) => {
  const answer = await page.goto('');
  const named = [...answer!.headers()['permissions-policy']!.matchAll(/([a-z-]+)=/g)].map(
    ([, name]) => name!,
  );
  const allowed = await page.evaluate(() =>
    (
      document as unknown as { featurePolicy: { allowedFeatures(): string[] } }
    ).featurePolicy.allowedFeatures(),
  );
  expect(named.length).toBeGreaterThan(20);
  expect(named.filter((name) => allowed.includes(name))).toEqual(['clipboard-write', 'screen-wake-lock']);
});

test('another site cannot put a page into a frame', async ({ page, baseURL }) => {
  const other = createServer((_, response) =>
    response
      .writeHead(200, { 'content-type': 'text/html' })
      .end(`<iframe src="${baseURL!}bench-session/"></iframe>`),
  );
  await new Promise<void>((listening) => other.listen(0, '127.0.0.1', listening));
  const refused = page.waitForEvent('console', (message) => message.text().includes('frame-ancestors'));
  await page.goto(`http://127.0.0.1:${(other.address() as AddressInfo).port}/`);
  await refused;
  expect(await page.frames()[1]!.content()).not.toContain('Evendraw');
  other.close();
});
