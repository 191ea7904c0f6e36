import { expect, test } from '@playwright/test';
import { addresses, nameOf, open } from './built-pages.ts';
import { contrastRatio, type Rgb } from './contrast.ts';
import { faintWords, smallTargets, solid, wordsOn } from './page-measures.ts';

// Each test opens a fresh profile, which would save the whole site every time.
test.use({ serviceWorkers: 'block' });

const widths = [320, 412, 1280];

test('the contrast of known pairs comes out as published', () => {
  const white: Rgb = [255, 255, 255];
  expect(contrastRatio([0, 0, 0], white)).toBeCloseTo(21, 10);
  expect(contrastRatio([0x76, 0x76, 0x76], white)).toBeCloseTo(4.54, 2);
  expect(contrastRatio(white, [0x77, 0x77, 0x77])).toBeCloseTo(4.48, 2);
  expect(contrastRatio(white, white)).toBe(1);
});

for (const address of addresses) {
  test.describe(nameOf(address), () => {
    test('fits from 320 px on, with targets for a finger', async ({ page }) => {
      for (const width of widths) {
        await page.setViewportSize({ width, height: 800 });
        await open(page, address);
        const overflow = await page.evaluate(() => {
          const { scrollWidth, clientWidth } = document.documentElement;
          return scrollWidth - clientWidth;
        });
        expect(overflow, `sideways scroll at ${width} px`).toBeLessThanOrEqual(0);
        expect(await smallTargets(page), `targets at ${width} px`).toEqual([]);
      }
    });

    test('has words at 7 : 1 or more, light and dark', async ({ page }) => {
      await open(page, address);
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme });
        const words = await wordsOn(page);
        expect(words.length).toBeGreaterThan(5);
        expect(faintWords(words), colorScheme).toEqual([]);
      }
    });

    test('prints dark on light, whatever the screen shows', async ({ page }) => {
      await page.emulateMedia({ colorScheme: 'dark', media: 'print' });
      await open(page, address);
      await page.evaluate(() => (document.documentElement.dataset.theme = 'dark'));
      const paper = await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
      expect(contrastRatio(solid(paper)!, [0, 0, 0])).toBeGreaterThan(18);
      expect(faintWords(await wordsOn(page))).toEqual([]);
      const sheet = await page.pdf({ preferCSSPageSize: true });
      expect(sheet.subarray(0, 5).toString()).toBe('%PDF-');
      expect(sheet.length).toBeGreaterThan(8_000);
    });
  });
}
