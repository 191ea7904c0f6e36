import { describe, expect, it } from 'vitest';
import { serveFolder } from '../../tools/serve.mjs';
import { addresses, folder } from '../browser/built-pages.ts';
import { engines, withBrowser } from './engines.ts';
import { heading, offlineLine, savedWords } from './on-the-page.ts';

describe.each(engines)('$name without a network', (engine) => {
  it('after one visit every page opens with the server stopped', async () => {
    await withBrowser(engine, async (browser) => {
      const { address, close } = await serveFolder({ folder });
      const window = await browser.newWindow();
      await window.open(address);
      await expect.poll(() => offlineLine(window)).toMatch(savedWords);
      await close();

      for (const other of addresses) {
        await window.open(address + other);
        expect(await heading(window), other).not.toBe('');
      }
      expect(addresses.length).toBeGreaterThan(60);
    });
  });
});
