import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { serveFolder } from '../../tools/serve.mjs';
import { folder } from '../browser/built-pages.ts';
import {
  banner,
  begin,
  enter,
  enterAndKeep,
  entries,
  goOn,
  nextStep,
  openBench,
  savedLine,
  savedOnDevice,
} from './at-the-bench.ts';
import type { EngineBrowser, EngineWindow } from './browser.ts';
import { browserOfGroup, engines, withBrowser, withProfile } from './engines.ts';
import { wordsOf } from './on-the-page.ts';

const readings = [210, 232, 220, 205];
const goesOn = 'The session goes on while this page stays open.';

const withSite = async (use: (address: string) => Promise<void>): Promise<void> => {
  const { address, close } = await serveFolder({ folder });
  try {
    await use(address);
  } finally {
    await close();
  }
};

/** The text of the one file that was saved, once the browser has written it whole; takes the file away. */
const savedFile = async (downloads: string): Promise<string> => {
  const read = (): string | null => {
    const [file] = readdirSync(downloads).filter((name) => name.endsWith('.json'));
    const text = file ? readFileSync(join(downloads, file), 'utf8') : '';
    return text.trim().endsWith('}') ? text : null;
  };
  await expect.poll(read).not.toBeNull();
  const text = read() ?? '';
  for (const file of readdirSync(downloads)) rmSync(join(downloads, file));
  return text;
};

/** What stands in the database, read past the page. */
const stored = (window: EngineWindow) =>
  window.evaluate(
    () =>
      new Promise<{ version: number; heads: number; events: number }>((resolve, reject) => {
        const request = indexedDB.open('evendraw');
        request.onerror = () => reject(new Error('no database'));
        request.onsuccess = () => {
          const { result } = request;
          const reading = result.transaction(['heads', 'events']);
          const heads = reading.objectStore('heads').count();
          const events = reading.objectStore('events').count();
          reading.oncomplete = () => {
            result.close();
            resolve({ version: result.version, heads: heads.result, events: events.result });
          };
        };
      }),
  );

describe.each(engines)('$name keeps a session', (engine) => {
  const browser = browserOfGroup(engine);

  it('through a new load of the page and a restart of the browser, with the same next step', async () => {
    await withSite((address) =>
      withProfile(async (profile) => {
        const first = await engine.start({ profile });
        const window = await first.newWindow();
        await begin(window, address);
        for (const reading of readings) await enterAndKeep(window, reading);
        const step = await nextStep(window);
        expect(step).toMatch(/^(Open|Close) the screw of carburettor \d by/u);
        const lines = await entries(window);
        expect(lines).toHaveLength(readings.length);

        await window.reload();
        await window.click('button', 'Go on with');
        await expect.poll(() => nextStep(window)).toBe(step);
        expect(await entries(window)).toEqual(lines);
        await first.close();

        const second = await engine.start({ profile });
        const later = await second.newWindow();
        await goOn(later, address);
        expect(await nextStep(later)).toBe(step);
        expect(await entries(later)).toEqual(lines);
        expect(await stored(later)).toEqual({ version: 1, heads: 1, events: readings.length });
        await second.close();
      }),
    );
  });

  it('in a file that gives another browser the same next step', async () => {
    await withSite(async (address) => {
      const window = await browser().newWindow();
      await begin(window, address);
      for (const reading of readings) await enter(window, reading);
      const step = await nextStep(window);
      const lines = await entries(window);
      await window.click('button', 'Save to a file');
      const text = await savedFile(browser().downloads);

      await withProfile(async (profile) => {
        const file = join(profile, 'session.json');
        writeFileSync(file, text);
        const other = await engine.start({ profile });
        const elsewhere = await other.newWindow();
        await openBench(elsewhere, address);
        expect(await wordsOf(elsewhere, '.records')).toBe('');
        await elsewhere.choose('input[type=file]', file);
        await elsewhere.click('button', 'Go on with');
        await expect.poll(() => nextStep(elsewhere)).toBe(step);
        expect(await entries(elsewhere)).toEqual(lines);
        await other.close();
      });
    });
  });

  it('when the data are cleared under the open page: said at once, written anew with the next entry', async () => {
    await withSite(async (address) => {
      const window = await browser().newWindow();
      await begin(window, address);
      await enterAndKeep(window, 210);
      await window.evaluate(
        () =>
          new Promise<void>((resolve) => {
            indexedDB.deleteDatabase('evendraw').onsuccess = () => resolve();
          }),
      );
      await expect.poll(() => banner(window)).toContain('What this site had saved was cleared.');
      await enterAndKeep(window, 232);
      expect(await banner(window)).toBe('');
      expect(await stored(window)).toEqual({ version: 1, heads: 1, events: 2 });
    });
  });

  it('in one of two windows: the other shows it, says so, and takes over when the first is closed', async () => {
    await withSite(async (address) => {
      const window = await browser().newWindow();
      await begin(window, address);
      await enterAndKeep(window, 210);
      const other = await browser().newWindow();
      await goOn(other, address);
      const notice = () => wordsOf(other, '.errors[role=alert]');
      await expect.poll(notice).toContain('This session is open in another window.');
      const isLocked = () => other.evaluate(() => document.querySelector('#reading:disabled') !== null);
      expect(await isLocked()).toBe(true);

      await enterAndKeep(window, 232);
      await expect.poll(async () => (await entries(other)).length).toBe(2);
      await window.close();
      await expect.poll(notice).toBe('');
      expect(await isLocked()).toBe(false);
      await enterAndKeep(other, 220);
      expect(await stored(other)).toEqual({ version: 1, heads: 1, events: 3 });
    });
  });
});

describe.each(engines)('$name cannot keep a session', (engine) => {
  const browser = browserOfGroup(engine);

  it.each([
    ['QuotaExceededError', 'Not saved: the space for this site is full.'],
    ['UnknownError', 'Not saved on this device.'],
  ])(
    '%s: said before the next reading, offered as a file, written whole when it goes again',
    async (name, words) => {
      await withSite(async (address) => {
        const window = await browser().newWindow();
        await begin(window, address);
        await enterAndKeep(window, 210);
        await window.evaluate((fault: string) => {
          const put = IDBObjectStore.prototype.put;
          IDBObjectStore.prototype.put = () => {
            throw new DOMException('It does not go.', fault);
          };
          Object.assign(globalThis, { mend: () => (IDBObjectStore.prototype.put = put) });
        }, name);
        await enter(window, 232);
        await expect.poll(() => banner(window)).toContain(words);
        expect(await banner(window)).toContain(goesOn);
        expect(await savedLine(window)).toBe('Not saved.');
        await enter(window, 220);

        await window.click('.entry-side [role=alert] button', 'Save to a file');
        const record = JSON.parse(await savedFile(browser().downloads)) as { events: { typed: string }[] };
        expect(record.events.map(({ typed }) => typed)).toEqual(['210', '232', '220']);

        await window.evaluate(() => {
          (globalThis as unknown as { mend: () => void }).mend();
        });
        await window.click('.entry-side [role=alert] button', 'Try again');
        await expect.poll(() => savedLine(window)).toBe(savedOnDevice);
        expect(await banner(window)).toBe('');
        expect(await stored(window)).toEqual({ version: 1, heads: 1, events: 3 });
      });
    },
  );

  it.each([
    [
      'no database',
      'This browser keeps nothing.',
      `Object.defineProperty(globalThis, 'indexedDB', { value: undefined });`,
    ],
    [
      'a refusal',
      'This browser refuses to keep anything.',
      `IDBFactory.prototype.open = () => { throw new DOMException('Not in this mode.', 'SecurityError'); };`,
    ],
    [
      'no answer',
      'The storage of this browser gives no answer.',
      `const { open } = IDBFactory.prototype;
       IDBFactory.prototype.open = function (...given) {
         const request = open.apply(this, given);
         const listen = request.addEventListener.bind(request);
         request.addEventListener = (type, tell) => type === 'success' || listen(type, tell);
         return request;
       };`,
    ],
  ])(
    '%s: the session goes on in the page, which says so before the first reading',
    async (_, words, script) => {
      const tryAt = async (address: string, refusing: EngineBrowser): Promise<void> => {
        const window = await refusing.newWindow();
        await begin(window, address);
        await expect.poll(() => banner(window)).toContain(words);
        expect(await banner(window)).toContain(goesOn);
        await enter(window, 210);
        expect(await savedLine(window)).toBe('Not saved.');
        await window.click('button', 'Leave the bench');
        await window.click('button', 'Go on with');
        await expect.poll(() => entries(window)).toEqual(['Read carburettor 1: 210']);
      };
      await withSite((address) => withBrowser(engine, (refusing) => tryAt(address, refusing), script));
    },
  );

  it('where a newer version of the site has its own: they are left as they are, in words', async () => {
    await withSite(async (address) => {
      const window = await browser().newWindow();
      await window.open(`${address}glossary/`);
      await window.evaluate(
        () =>
          new Promise<void>((resolve) => {
            const request = indexedDB.open('evendraw', 99);
            request.onupgradeneeded = () => {
              request.result.createObjectStore('heads').put('of a newer form', 'one');
              request.result.createObjectStore('events');
            };
            request.onsuccess = () => {
              request.result.close();
              resolve();
            };
          }),
      );
      await begin(window, address);
      await expect
        .poll(() => banner(window))
        .toContain('A newer version of this site keeps its sessions here; they are left as they are.');
      await enter(window, 210);
      expect(await savedLine(window)).toBe('Not saved.');
      expect(await stored(window)).toEqual({ version: 99, heads: 1, events: 0 });
    });
  });
});
