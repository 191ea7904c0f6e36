import { chromium, expect, test, type Page } from '@playwright/test';
import { findBrowser, launchFlags } from '../../tools/find-browser.mjs';

const banner = (page: Page) => page.locator('.entry-side [role=alert]').first();
const lines = (page: Page) => page.locator('.log .entries > li');
const saved = (page: Page) => page.locator('.log [role=status]');

async function openBench(page: Page, fragment = ''): Promise<void> {
  await page.goto(`./bench-session/${fragment}`);
  await page.locator('astro-island:not([ssr])').first().waitFor({ state: 'attached' });
}

/** A session of an invented set, from a link. */
async function begin(page: Page): Promise<void> {
  await openBench(page, '#v=1&g=all-adjustable&n=4&o=a&u=mmHg&tol=10');
  await page.getByRole('button', { name: 'Start the session' }).first().click();
  await expect(page.locator('.entry')).toBeVisible();
}

async function enter(page: Page, reading: number): Promise<void> {
  const before = await lines(page).count();
  await page.locator('#reading').fill(String(reading));
  await page.locator('.entry [type=submit]').click();
  await lines(page).nth(before).waitFor();
}

/** A session with one reading, which the page calls saved. */
async function beginSaved(page: Page, reading = 210): Promise<void> {
  await begin(page);
  await enter(page, reading);
  await expect(saved(page)).toHaveText('Saved on this device only.');
}

async function goOn(page: Page): Promise<void> {
  await openBench(page);
  await page.getByRole('button', { name: /^Go on with/u }).click();
}

/** What stands in the database, read past the page. */
const stored = (page: Page): Promise<{ heads: unknown[]; events: unknown[] }> =>
  page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const request = indexedDB.open('evendraw');
        request.onerror = () => reject(new Error('no database'));
        request.onsuccess = () => {
          const reading = request.result.transaction(['heads', 'events']);
          const heads = reading.objectStore('heads').getAll();
          const events = reading.objectStore('events').getAll();
          reading.oncomplete = () => {
            request.result.close();
            resolve({ heads: heads.result, events: events.result });
          };
        };
      }),
  );

/** Every write fails with this name until `mend` is called. */
const breakWrites = (page: Page, name: string): Promise<void> =>
  page.evaluate((fault) => {
    const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('It does not go.', fault);
    };
    Object.assign(window, { mend: () => (IDBObjectStore.prototype.put = put) });
  }, name);
const mend = (page: Page): Promise<void> =>
  page.evaluate(() => (window as unknown as { mend: () => void }).mend());

for (const [name, words] of [
  ['QuotaExceededError', 'Not saved: the space for this site is full.'],
  ['UnknownError', 'Not saved on this device.'],
] as const)
  test(`${name}: said before the next reading, offered as a file, written whole when it goes again`, async ({
    page,
  }) => {
    await beginSaved(page);
    await breakWrites(page, name);
    await enter(page, 232);
    await expect(banner(page)).toContainText(words);
    await expect(banner(page)).toContainText('The session goes on while this page stays open.');
    await expect(saved(page)).toHaveText('Not saved.');
    await enter(page, 220);

    const download = page.waitForEvent('download');
    await banner(page).getByRole('button', { name: 'Save to a file' }).click();
    const text = await (await (await download).createReadStream()).toArray();
    const events = (JSON.parse(Buffer.concat(text).toString()) as { events: { typed?: string }[] }).events;
    expect(events.map(({ typed }) => typed)).toEqual(['210', '232', '220']);

    await banner(page).getByRole('button', { name: 'Try again' }).click();
    await expect(banner(page)).toContainText(words);
    expect((await stored(page)).events).toHaveLength(1);
    await mend(page);
    await banner(page).getByRole('button', { name: 'Try again' }).click();
    await expect(saved(page)).toHaveText('Saved on this device only.');
    await expect(banner(page)).toHaveCount(0);
    expect((await stored(page)).events).toHaveLength(3);
  });

for (const [name, words, script] of [
  [
    'no database in this browser',
    'This browser keeps nothing.',
    () => Object.defineProperty(window, 'indexedDB', { value: undefined }),
  ],
  [
    'a browser that refuses',
    'This browser refuses to keep anything.',
    () => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('Not in this mode.', 'SecurityError');
      };
    },
  ],
  [
    'a database of a newer version of the site',
    'A newer version of this site keeps its sessions here; they are left as they are.',
    () => {
      const open = IDBFactory.prototype.open;
      let first = true;
      IDBFactory.prototype.open = function (name, version) {
        if (first)
          open.call(this, name, 99).onsuccess = (event) => (event.target as IDBOpenDBRequest).result.close();
        first = false;
        return open.call(this, name, version);
      };
    },
  ],
] as const)
  test(`${name}: the session goes on in the page`, async ({ page }) => {
    await page.addInitScript(script);
    await openBench(page);
    await expect(page.getByRole('alert')).toContainText(words);
    await begin(page);
    await expect(banner(page)).toContainText(words);
    await enter(page, 210);
    await expect(saved(page)).toHaveText('Not saved.');
    await page
      .getByRole('button', { name: /Leave the bench/u })
      .first()
      .click();
    await page.getByRole('button', { name: /^Go on with/u }).click();
    await expect(lines(page)).toHaveCount(1);
  });

/** A database that is opened says so when `answer` is called, not before. */
const answerLate = (): void => {
  const { promise: answered, resolve: answer } = Promise.withResolvers<void>();
  const { open } = IDBFactory.prototype;
  IDBFactory.prototype.open = function (...given) {
    const request = open.apply(this, given);
    const listen = request.addEventListener.bind(request);
    request.addEventListener = (type: string, tell: (event: Event) => void) =>
      listen(type, type === 'success' ? (event) => void answered.then(() => tell(event)) : tell);
    return request;
  };
  Object.assign(window, { answer });
};

test('a database that gives no answer: said within seconds; when it answers, all is written and what was there is shown', async ({
  page,
}) => {
  await beginSaved(page, 205);
  await page.addInitScript(answerLate);
  await openBench(page);
  const alert = page.getByRole('alert');
  await expect(alert).toContainText('The storage of this browser gives no answer.');
  await expect(page.getByRole('button', { name: 'Set up a session' })).toBeEnabled();
  await begin(page);
  await expect(banner(page)).toContainText('The storage of this browser gives no answer.');
  await enter(page, 210);
  await expect(saved(page)).toHaveText('Not saved.');
  await page.evaluate(() => (window as unknown as { answer: () => void }).answer());
  await expect(saved(page)).toHaveText('Saved on this device only.');
  await expect(banner(page)).toHaveCount(0);
  expect(await stored(page)).toMatchObject({ heads: { length: 2 }, events: { length: 2 } });
  await page
    .getByRole('button', { name: /Leave the bench/u })
    .first()
    .click();
  await expect(page.getByRole('button', { name: /^Go on with/u })).toHaveCount(2);
});

test('data cleared under an open page: said at once, and written again with the next entry', async ({
  page,
}) => {
  await beginSaved(page);
  await page.evaluate(
    () => new Promise((resolve) => (indexedDB.deleteDatabase('evendraw').onsuccess = resolve)),
  );
  await expect(banner(page)).toContainText('What this site had saved was cleared.');
  await enter(page, 232);
  await expect(saved(page)).toHaveText('Saved on this device only.');
  await expect(banner(page)).toHaveCount(0);
  expect((await stored(page)).events).toHaveLength(2);
});

test('one damaged session leaves the others, and can be saved as it stands', async ({ page }) => {
  await beginSaved(page);
  await page.evaluate(
    () =>
      new Promise((resolve) => {
        const request = indexedDB.open('evendraw');
        request.onsuccess = () => {
          const writing = request.result.transaction('heads', 'readwrite');
          writing.objectStore('heads').put({ id: 's-damaged', name: '<b>Twin</b>', startedAt: 7 });
          writing.oncomplete = resolve;
        };
      }),
  );
  await openBench(page);
  await expect(page.getByRole('heading', { name: 'Damaged sessions' })).toBeVisible();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save s-damaged as it stands' }).click();
  const text = Buffer.concat(await (await (await download).createReadStream()).toArray()).toString();
  expect(JSON.parse(text)).toEqual({
    id: 's-damaged',
    head: { id: 's-damaged', name: '<b>Twin</b>', startedAt: 7 },
    events: [],
  });
  await page.getByRole('button', { name: /^Go on with/u }).click();
  await expect(lines(page)).toHaveCount(1);
  expect((await stored(page)).heads).toHaveLength(2);
});

for (const [answer, words] of [
  [true, 'The browser has promised not to clear it by itself.'],
  [false, 'The browser may clear it when the device runs short of space'],
  [null, 'The browser does not say whether it may clear it'],
] as const)
  test(`lasting storage is asked for at the first record: ${answer}`, async ({ page }) => {
    await page.addInitScript((given) => {
      let times = 0;
      StorageManager.prototype.persisted = async () => false;
      StorageManager.prototype.persist = async () => {
        Object.assign(window, { asked: ++times });
        if (given === null) throw new TypeError('not here');
        return given;
      };
    }, answer);
    await openBench(page);
    expect(await page.evaluate(() => 'asked' in window)).toBe(false);
    await begin(page);
    await enter(page, 210);
    await expect(page.locator('.log')).toContainText(words);
    expect(await page.evaluate(() => (window as unknown as { asked: number }).asked)).toBe(1);
  });

test('two windows: one writes, the other shows it and takes over when the first is closed', async ({
  page,
}) => {
  await beginSaved(page);
  const other = await page.context().newPage();
  await goOn(other);
  const notice = other.getByRole('alert').filter({ hasText: 'This session is open in another window.' });
  await expect(notice).toBeVisible();
  await expect(other.locator('#reading')).toBeDisabled();
  await expect(other.locator('.entry [type=submit]')).toBeDisabled();
  await expect(other.locator('button.timer')).toBeDisabled();

  await enter(page, 232);
  await expect(lines(other)).toHaveCount(2);
  await page.close();
  await expect(notice).toHaveCount(0);
  await enter(other, 220);
  await expect(saved(other)).toHaveText('Saved on this device only.');
  expect((await stored(other)).events).toHaveLength(3);
});

test('two windows: the second leaves again, and the first has never stopped', async ({ page }) => {
  await begin(page);
  const other = await page.context().newPage();
  await goOn(other);
  await other.getByRole('alert').getByRole('button', { name: 'All sessions' }).click();
  await expect(other.getByRole('button', { name: 'Set up a session' })).toBeVisible();
  await enter(page, 210);
  await expect(saved(page)).toHaveText('Saved on this device only.');
});

test('a browser that cannot tell a second window to wait says so', async ({ page }) => {
  await page.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'locks'));
  await beginSaved(page);
  await expect(page.locator('.log')).toContainText('Keep this session in one window');
});

test.describe('engine time', () => {
  /** Shifts the wall clock, and the one that only counts, by so many minutes. */
  const shift = (page: Page, wall: number, steady = 0): Promise<void> =>
    page.evaluate(
      ([wallMinutes, steadyMinutes]) => {
        const date = Date.now.bind(Date);
        const now = performance.now.bind(performance);
        Date.now = () => date() + wallMinutes * 60_000;
        performance.now = () => now() + steadyMinutes * 60_000;
      },
      [wall, steady] as const,
    );
  const seconds = async (page: Page): Promise<number> => {
    const [, minutes, rest] = /(\d+):(\d\d)/u.exec(await page.locator('button.timer').innerText()) ?? [];
    return 60 * Number(minutes) + Number(rest);
  };

  test('a clock that is set back neither stops nor turns it', async ({ page }) => {
    await begin(page);
    await enter(page, 210);
    await shift(page, 3); // three minutes of running
    await expect.poll(() => seconds(page)).toBeGreaterThanOrEqual(180);
    await shift(page, -60);
    await page.waitForTimeout(2500);
    const now = await seconds(page);
    expect(now).toBeGreaterThanOrEqual(180);
    expect(now).toBeLessThan(240);
    await expect(page.getByText('Did the engine run')).toHaveCount(0);
  });

  test('another time zone changes nothing', async ({ page }) => {
    await begin(page);
    await enter(page, 210);
    const cdp = await page.context().newCDPSession(page);
    await cdp.send('Emulation.setTimezoneOverride', { timezoneId: 'Pacific/Kiritimati' });
    await page.waitForTimeout(1500);
    expect(await seconds(page)).toBeLessThan(60);
    await enter(page, 232);
    const minutes = (await stored(page)).events.map((event) => (event as { minute: number }).minute);
    expect(Math.max(...minutes)).toBeLessThan(1);
  });

  for (const [answer, least, most] of [
    ['It ran', 40 * 60, 42 * 60],
    ['It stood still', 0, 60],
  ] as const)
    test(`forty minutes asleep: asked whether the engine ran; ${answer}`, async ({ page }) => {
      await begin(page);
      await enter(page, 210);
      await shift(page, 40);
      await expect(banner(page)).toContainText(/Did the engine run for the last 40:\d\d\?/u);
      await page.screenshot({ path: 'test-results/asleep.png', fullPage: true });
      await page.getByRole('button', { name: answer }).click();
      await expect(page.getByText('Did the engine run')).toHaveCount(0);
      const now = await seconds(page);
      expect(now).toBeGreaterThanOrEqual(least);
      expect(now).toBeLessThan(most);
      await enter(page, 232);
      await expect(page.getByText('Did the engine run')).toHaveCount(0);
    });

  test('a window that only shows the session does not ask', async ({ page }) => {
    await beginSaved(page);
    const other = await page.context().newPage();
    await goOn(other);
    await expect(other.getByText('This session is open in another window.')).toBeVisible();
    await shift(other, 40);
    await other.waitForTimeout(2500);
    await expect(other.getByText('Did the engine run')).toHaveCount(0);
    await shift(page, 40);
    await expect(banner(page)).toContainText('Did the engine run');
  });

  test('a session that is opened forty minutes later asks as well', async ({ page }) => {
    await page.clock.setFixedTime(new Date('2026-11-14T09:00:00Z'));
    await beginSaved(page);
    await page.clock.setFixedTime(new Date('2026-11-14T09:40:00Z'));
    await goOn(page);
    await expect(banner(page)).toContainText('Did the engine run for the last 40:00?');
    await page.getByRole('button', { name: 'It stood still' }).click();
    await expect.poll(() => seconds(page)).toBe(0);
  });
});

test('the screen is kept on, asked for again on return, and a refusal is quiet', async ({ page }) => {
  await page.addInitScript(() => {
    const asked: string[] = [];
    Object.assign(window, { asked });
    Object.defineProperty(navigator, 'wakeLock', {
      value: {
        request: async (kind: string) => {
          asked.push(kind);
          if (asked.length > 1) throw new DOMException('Battery low.', 'NotAllowedError');
          return { release: async () => {} };
        },
      },
    });
  });
  const asked = () => page.evaluate(() => (window as unknown as { asked: string[] }).asked);
  const faults: string[] = [];
  page.on('pageerror', (fault) => faults.push(fault.message));
  await openBench(page);
  expect(await asked()).toEqual([]);
  await begin(page);
  await expect.poll(asked).toEqual(['screen']);
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await expect.poll(asked).toEqual(['screen', 'screen']);
  await enter(page, 210);
  expect(faults).toEqual([]);
});

test('left and reached by the back key: entries, what was typed and the storage are as they were', async ({
  baseURL,
}) => {
  // The test runner switches the browser's back/forward cache off.
  const browser = await chromium.launch({
    executablePath: findBrowser(),
    args: launchFlags,
    ignoreDefaultArgs: ['--disable-back-forward-cache'],
  });
  const page = await browser.newPage({ baseURL: baseURL ?? '' });
  await beginSaved(page);
  await page.locator('#reading').fill('23');
  await page.evaluate(() => Object.assign(window, { stayed: true }));
  await page.goto('./glossary/');
  await page.evaluate(() => history.back());
  await page.waitForURL(/bench-session/u, { waitUntil: 'commit', timeout: 5000 });
  expect(await page.evaluate(() => 'stayed' in window), 'the page came back alive').toBe(true);
  await expect(page.locator('#reading')).toHaveValue('23');
  await enter(page, 232);
  await expect(saved(page)).toHaveText('Saved on this device only.');
  expect((await stored(page)).events).toHaveLength(2);
  await browser.close();
});
