import { expect, type Page, test } from '@playwright/test';
import { addresses, nameOf, open } from './built-pages.ts';
import { contrastRatio, type Rgb } from './contrast.ts';

// Each test opens a fresh profile, which would save the whole site every time.
test.use({ serviceWorkers: 'block' });

const smallestTarget = 44; // CSS px, WCAG 2.2, 2.5.5
const smallestContrast = 7; // WCAG 2.2, 1.4.6
const widths = [320, 412, 1280];

test('the contrast of known pairs comes out as published', () => {
  const white: Rgb = [255, 255, 255];
  expect(contrastRatio([0, 0, 0], white)).toBeCloseTo(21, 10);
  expect(contrastRatio([0x76, 0x76, 0x76], white)).toBeCloseTo(4.54, 2);
  expect(contrastRatio(white, [0x77, 0x77, 0x77])).toBeCloseTo(4.48, 2);
  expect(contrastRatio(white, white)).toBe(1);
});

/** What can be touched and is smaller than a finger. Links within a sentence are exempt; a box counts with its label. */
function smallTargets(page: Page) {
  return page.evaluate((least) => {
    const isShown = (element: Element) => element.checkVisibility({ visibilityProperty: true });
    const isUnseen = (element: Element) => element.closest('.unseen') !== null;
    const size = (element: Element) => {
      const label = element.closest('label') ?? (element as HTMLInputElement).labels?.[0];
      const boxes = [
        element,
        ...(element.matches('[type="radio"], [type="checkbox"]') && label ? [label] : []),
      ];
      const rects = boxes.map((box) => box.getBoundingClientRect());
      return {
        width: Math.max(...rects.map((r) => r.width)),
        height: Math.max(...rects.map((r) => r.height)),
      };
    };
    return [
      ...document.querySelectorAll('a[href], button, summary, select, textarea, input:not([type="hidden"])'),
    ]
      .filter((element) => isShown(element) && !isUnseen(element))
      .filter((element) => element.localName !== 'a' || getComputedStyle(element).display !== 'inline')
      .map((element) => ({ element, ...size(element) }))
      .filter(({ width, height }) => width < least - 0.01 || height < least - 0.01)
      .map(
        ({ element, width, height }) =>
          `${element.outerHTML.slice(0, 90)} is ${width.toFixed(1)} × ${height.toFixed(1)}`,
      );
  }, smallestTarget);
}

interface Words {
  words: string;
  ink: string;
  papers: string[];
}

/** Every run of words that can be seen, with its colour and the colours behind it, nearest first. */
function wordsOn(page: Page): Promise<Words[]> {
  return page.evaluate(() => {
    const found: Words[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const element = node.parentElement!;
      const words = node.textContent!.trim();
      if (words === '' || !element.checkVisibility({ visibilityProperty: true, opacityProperty: true }))
        continue;
      if (element.closest('script, style, noscript, annotation, .unseen')) continue;
      const style = getComputedStyle(element);
      const papers: string[] = [];
      for (let behind: Element | null = element; behind; behind = behind.parentElement)
        papers.push(getComputedStyle(behind).backgroundColor);
      found.push({
        words: words.slice(0, 40),
        ink: element.closest('svg') ? style.fill : style.color,
        papers,
      });
    }
    return found;
  });
}

/** A solid colour, or undefined for one that lets everything through. A half-clear one is a fault of ours. */
function solid(colour: string): Rgb | undefined {
  const parts = colour.match(/^rgba?\((\d+), (\d+), (\d+)(?:, ([\d.]+))?\)$/);
  if (!parts) throw new Error(`cannot read the colour ${colour}`);
  const [red, green, blue, alpha = 1] = parts
    .slice(1)
    .map((part) => (part === undefined ? undefined : Number(part)));
  if (alpha === 0) return undefined;
  if (alpha !== 1) throw new Error(`${colour} is half clear`);
  return [red!, green!, blue!];
}

function faintWords(all: Words[]): string[] {
  return all.flatMap(({ words, ink, papers }) => {
    const paper = papers.map(solid).find((colour) => colour !== undefined);
    const front = solid(ink);
    if (!paper || !front) return [`“${words}” has no colour: ${ink} on ${papers.join(', ')}`];
    const ratio = contrastRatio(front, paper);
    return ratio < smallestContrast ? [`“${words}” ${ink} on ${paper.join(', ')}: ${ratio.toFixed(2)}`] : [];
  });
}

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
