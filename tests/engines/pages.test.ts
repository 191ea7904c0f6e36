import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { serveFolder } from '../../tools/serve.mjs';
import { parseCsv } from '../../truth/parse-csv.ts';
import { folder } from '../browser/built-pages.ts';
import type { EngineBrowser } from './browser.ts';
import { browserOfGroup, engines, withBrowser } from './engines.ts';
import { answersReady, wordsOf } from './on-the-page.ts';

/** Debian builds WebKit without manifests, so it does not know their directive, and says so of every page. */
const unknownDirective =
  "CONSOLE SECURITY ERROR Unrecognized Content-Security-Policy directive 'manifest-src'.";
const complaintsOf = (browser: EngineBrowser): readonly string[] =>
  browser.complaints.filter((complaint) => complaint !== unknownDirective);

/** 250 mmHg in other units, from the table of outside values. */
const outsideValues = parseCsv(readFileSync('tests/data/1-pressure-units.csv', 'utf8'))
  .filter(([quantity, input]) => quantity === 'vacuum reading conversion mmHg' && input === '250')
  .map(([, , , expected, unit]) => ({ unit: unit ?? '', expected: Number(expected) }));
/** A figure is shown with four digits. */
const halfOfLastDigit = 5e-4;

describe.each(engines)('$name', (engine) => {
  const browser = browserOfGroup(engine);

  it('converts a reading into the outside values', async () => {
    const { address, close } = await serveFolder({ folder });
    const window = await browser().newWindow();
    await window.open(`${address}unit-converter/`);
    await expect.poll(() => answersReady(window)).toBe(true);
    await window.type('#typed', '250 mmHg');
    const figure = (unit: string) => wordsOf(window, `tr[data-unit="${unit}"] .answer`);
    await expect.poll(() => figure('mmHg')).toBe('250');
    expect(outsideValues.length).toBeGreaterThan(7);
    for (const { unit, expected } of outsideValues) {
      const shown = Number(await figure(unit));
      expect(Math.abs(shown / expected - 1), `${shown} ${unit}`).toBeLessThan(halfOfLastDigit);
    }
    await close();
  });

  it('complains of an error, of one that nobody catches, and of what the policy forbids', async () => {
    await withBrowser(engine, async (other) => {
      const { address, close } = await serveFolder({ folder });
      const window = await other.newWindow();
      await window.open(`${address}glossary/`);
      await window.evaluate(() => {
        console.error('said');
        void Promise.reject(new Error('rejected'));
        setTimeout(() => {
          throw new Error('thrown');
        });
        document.body.setAttribute('style', 'color: red');
      });
      const heard = () => complaintsOf(other).join('\n');
      for (const words of ['said', 'rejected', 'thrown', 'Content.Security.Policy'])
        await expect.poll(heard).toMatch(new RegExp(words, 'u'));
      await close();
    });
  });
});
