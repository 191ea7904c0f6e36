import type { ServerResponse } from 'node:http';
import { describe, expect, it } from 'vitest';
import { calculators } from '../../src/content/calculators.ts';
import { serveFolder } from '../../tools/serve.mjs';
import { addresses, folder } from '../browser/built-pages.ts';
import { withCopy, withFaults, wrongWorkers } from '../copied-site.ts';
import { browserOfGroup, engines, withBrowser } from './engines.ts';
import { answersReady, heading, offlineLine, savedWords, wordsOf } from './on-the-page.ts';

const nothingHere = 'There is no page at this address';

describe.each(engines)('$name without a network', (engine) => {
  const browser = browserOfGroup(engine);

  it('after one visit every page opens with the server stopped, the calculators answer and the search finds', async () => {
    const { address, close } = await serveFolder({ folder });
    const window = await browser().newWindow();
    await window.open(address);
    await expect.poll(() => offlineLine(window)).toMatch(savedWords);
    await close();

    const headings = new Map<string, string>();
    for (const other of addresses) {
      await window.open(address + other);
      headings.set(other, await heading(window));
    }
    expect(headings.size).toBeGreaterThan(60);
    const isWrong = ([other, words]: [string, string]): boolean =>
      words === '' || (words === nothingHere) !== (other === '404.html');
    expect([...headings].filter(isWrong)).toEqual([]);

    for (const { path } of calculators) {
      await window.open(address + path.slice(1));
      await expect.poll(() => answersReady(window), { message: path }).toBe(true);
    }

    await window.open(`${address}search/#q=depression`);
    await expect.poll(() => wordsOf(window, '.found a')).not.toBe('');
    await window.open(`${address}no-such-page/`);
    expect(await heading(window)).toBe(nothingHere);
  });

  it('without the worker nothing opens once the server has stopped', async () => {
    await withBrowser(
      engine,
      async (withoutWorker) => {
        const { address, close } = await serveFolder({ folder });
        const window = await withoutWorker.newWindow();
        await window.open(address);
        await expect
          .poll(() => offlineLine(window))
          .toMatch(/^Not saved for use without a network: the connection broke/u);
        await window.open(`${address}search/`);
        expect(await heading(window)).toBe('Search');
        await close();
        for (const other of ['search/', 'glossary/']) {
          const later = await withoutWorker.newWindow();
          await later.open(address + other);
          expect(await heading(later)).not.toMatch(/^(Search|Glossary)$/u);
        }
      },
      `ServiceWorkerContainer.prototype.register = async () => { throw new Error('refused'); };`,
    );
  });

  it('a new version whose worker is a fault, some other page or a script that breaks leaves the old one', async () => {
    let wrong: (typeof wrongWorkers)[number] | undefined;
    let isDown = false;
    let asked = 0;
    const instead = (path: string, answer: ServerResponse): boolean => {
      if (isDown) answer.destroy();
      else if (wrong && path === '/sw.js') {
        asked += 1;
        answer.writeHead(wrong.status, { 'content-type': wrong.type }).end(wrong.body);
      } else return false;
      return true;
    };
    await withCopy(folder, ({ address: site }) =>
      withFaults(site, instead, async (address) => {
        const window = await browser().newWindow();
        await window.open(`${address}search/`);
        await expect.poll(() => offlineLine(window)).toMatch(savedWords);
        const version = await offlineLine(window);
        for (const each of wrongWorkers) {
          wrong = each;
          asked = 0;
          const update = window.evaluate(async () => {
            const registration = await navigator.serviceWorker.ready;
            return registration.update().then(
              () => 'taken',
              () => 'refused',
            );
          });
          expect(await update, each.what).toBe('refused');
          expect(asked, each.what).toBeGreaterThan(0);
          await window.reload();
          await expect.poll(() => offlineLine(window), { message: each.what }).toBe(version);
        }
        isDown = true;
        await window.open(`${address}glossary/`);
        expect(await heading(window)).toBe('Glossary');
      }),
    );
  });
});
