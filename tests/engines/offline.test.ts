import type { ServerResponse } from 'node:http';
import { describe, expect, it } from 'vitest';
import { calculators } from '../../src/content/calculators.ts';
import { serveFolder } from '../../tools/serve.mjs';
import { addresses, folder } from '../browser/built-pages.ts';
import { withCopy, withFaults, wrongWorkers } from '../copied-site.ts';
import { engines, withBrowser } from './engines.ts';
import { answersReady, heading, offlineLine, savedWords, wordsOf } from './on-the-page.ts';

describe.each(engines)('$name without a network', (engine) => {
  it('after one visit every page opens with the server stopped, the calculators answer and the search finds', async () => {
    await withBrowser(engine, async (browser) => {
      const { address, close } = await serveFolder({ folder });
      const window = await browser.newWindow();
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
        words === '' || (words === 'There is no page at this address') !== (other === '404.html');
      expect([...headings].filter(isWrong)).toEqual([]);

      for (const { path } of calculators) {
        await window.open(address + path.slice(1));
        await expect.poll(() => answersReady(window), { message: path }).toBe(true);
      }

      await window.open(`${address}search/#q=depression`);
      await expect.poll(() => wordsOf(window, '.found a')).not.toBe('');
      await window.open(`${address}no-such-page/`);
      expect(await heading(window)).toBe('There is no page at this address');
    });
  });

  const refuseWorker = `ServiceWorkerContainer.prototype.register = async () => { throw new Error('refused'); };`;

  it('without the worker nothing opens once the server has stopped', async () => {
    await withBrowser(
      engine,
      async (browser) => {
        const { address, close } = await serveFolder({ folder });
        const window = await browser.newWindow();
        await window.open(address);
        await expect
          .poll(() => offlineLine(window))
          .toMatch(/^Not saved for use without a network: the connection broke/u);
        await close();
        await window.open(`${address}search/`);
        expect(await heading(window)).not.toBe('Search');
        expect(await wordsOf(window, 'title')).not.toMatch(/Evendraw/u);
      },
      refuseWorker,
    );
  });

  it.each(wrongWorkers)('a new version whose worker $what leaves the old one as it was', async (wrong) => {
    await withCopy(folder, async ({ address: site }) => {
      let isWrong = false;
      let isDown = false;
      let asked = 0;
      const instead = (path: string, answer: ServerResponse): boolean => {
        if (isDown) answer.destroy();
        else if (isWrong && path === '/sw.js') {
          asked += 1;
          answer.writeHead(wrong.status, { 'content-type': wrong.type }).end(wrong.body);
        } else return false;
        return true;
      };
      await withFaults(site, instead, (address) =>
        withBrowser(engine, async (browser) => {
          const window = await browser.newWindow();
          await window.open(`${address}search/`);
          await expect.poll(() => offlineLine(window)).toMatch(savedWords);
          const version = await offlineLine(window);
          isWrong = true;
          await window.reload();
          const update = () =>
            window.evaluate(async () => {
              const registration = await navigator.serviceWorker.ready;
              return registration.update().then(
                () => 'taken',
                () => 'refused',
              );
            });
          expect(await update()).toBe('refused');
          expect(asked).toBeGreaterThan(0);
          await expect.poll(() => offlineLine(window)).toBe(version);
          isDown = true;
          await window.open(`${address}glossary/`);
          expect(await heading(window)).toBe('Glossary');
        }),
      );
    });
  });
});
