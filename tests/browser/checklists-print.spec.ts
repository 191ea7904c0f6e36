import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import {
  checklistKinds,
  checklistNumbers,
  generations,
  headingLimit,
  notesLimit,
} from '../../src/calculators/index.ts';
import { line, openList, sheetsOf } from './checklist-sheet.ts';

test.use({ serviceWorkers: 'block' });

/** Words as long as a link may carry, wide letters among them, in as many lines. */
const heading = 'WHITSUN WORKSHOP MEETING OF THE MOUNTAIN & MOORLAND WHEELMEN'.slice(0, headingLimit);
const notes = Array.from({ length: 6 }, (_, k) =>
  `${k + 1}. ${'Whoever WORKS here wears gloves. '.repeat(2)}`.slice(0, 39),
).join('\n');
const words = new URLSearchParams({ h: heading, t: notes });

/** What a sheet leaves inside margins of 12 mm, at 96 px an inch, in CSS pixels. */
const inside = { A4: { width: 703, height: 1031 }, Letter: { width: 725, height: 964 } } as const;
/** Other machines have other letters: the longest sheet must leave so much of its height free in ours. */
const spare = 0.05;

const states = checklistKinds.flatMap((list) =>
  generations.flatMap((generation) =>
    checklistNumbers.map((number) => `#v=1&l=${list}&g=${generation}&n=${number}`),
  ),
);

async function measure(page: Page, format: keyof typeof inside) {
  await page.setViewportSize(inside[format]);
  return page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    return {
      height: document.querySelector('main')!.getBoundingClientRect().height,
      tooWide: scrollWidth - clientWidth,
      blocks: [...document.querySelectorAll('.sheet section, .sheet-foot')].every(
        (one) => one.getBoundingClientRect().height > 10,
      ),
    };
  });
}

test('the count of sheets sees a second one', async ({ page }) => {
  await page.setContent('<p>one</p>');
  expect(sheetsOf(await page.pdf({ format: 'A4' }))).toBe(1);
  await page.setContent('<p style="break-after: page">one</p><p>two</p>');
  expect(sheetsOf(await page.pdf({ format: 'A4' }))).toBe(2);
  expect(notes.length).toBeGreaterThan(notesLimit - 10);
  expect(notes.length).toBeLessThanOrEqual(notesLimit);
});

for (const format of ['A4', 'Letter'] as const)
  for (const generation of generations)
    test(`every list of ${generation}, with long words and without, is one sheet of ${format}`, async ({
      page,
    }) => {
      const own = states.filter((state) => state.includes(`g=${generation}`));
      expect(own).toHaveLength(14);
      await openList(page, own[0]!);
      let seen = 0;
      for (const state of own.flatMap((each) => [each, `${each}&${words}`])) {
        await page.evaluate((next) => (location.hash = next), state);
        const named = new URLSearchParams(state.slice(1));
        await expect(page.locator('.sheet-foot b')).toHaveText(
          `${named.get('l') === 'tools' ? 'tools, ' : ''}${named.get('g')}, ${named.get('n')}`,
        );
        await expect(page.locator('.said-by-club p')).toHaveCount(named.has('t') ? 6 : 0);
        expect(sheetsOf(await page.pdf({ format })), state).toBe(1);
        await page.emulateMedia({ media: 'print' });
        const { height, tooWide, blocks } = await measure(page, format);
        expect(tooWide, state).toBeLessThanOrEqual(0);
        expect(blocks, state).toBe(true);
        expect(height, state).toBeLessThan(inside[format].height * (1 - spare));
        await page.emulateMedia({ media: null });
        seen += 1;
      }
      expect(seen).toBe(28);
    });

test('words made to fill a sheet do not: marks, wide letters, one long word', async ({ page }) => {
  for (const hostile of ['﷽'.repeat(60), 'W'.repeat(60), `${'Z̵̡̛͕̱'.repeat(12)}`, '𒀱'.repeat(30)]) {
    const own = new URLSearchParams({
      h: hostile,
      t: Array.from({ length: 6 }, () => hostile.slice(0, 38)).join('\n'),
    });
    await openList(page, `#v=1&g=separate-cables&n=8&${own}`);
    await page.reload();
    await expect(page.locator('.sheet-foot b')).toHaveText('separate-cables, 8');
    for (const format of ['A4', 'Letter'] as const)
      expect(sheetsOf(await page.pdf({ format })), hostile).toBe(1);
  }
});

test('the page without a choice prints the example alone', async ({ page }) => {
  await openList(page, '');
  expect(sheetsOf(await page.pdf({ format: 'A4' }))).toBe(1);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('heading', { name: 'Which list?' })).toBeHidden();
  await expect(page.getByRole('heading', { name: 'How the lists are written' })).toBeHidden();
  await expect(page.getByRole('heading', { name: 'Four carburettors, an adjuster on each' })).toBeVisible();
  await expect(page.getByRole('button')).toHaveCount(0);
});

test('ticks are printed, and boxes are borders', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await openList(page, '#v=1&g=bypass-screws&n=2');
  await line(page, 'Exhaust').click();
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  const box = (name: string) =>
    page.getByRole('checkbox', { name, exact: true }).evaluate((one) => {
      const style = getComputedStyle(one);
      const tick = getComputedStyle(one, '::before');
      return {
        look: style.appearance,
        border: style.borderTopWidth !== '0px' && style.borderTopColor,
        background: style.backgroundColor,
        tick: tick.content === 'none' ? null : [tick.borderRightWidth !== '0px', tick.borderRightColor],
      };
    });
  const ink = 'rgb(27, 24, 21)';
  const empty = { look: 'none', border: ink, background: 'rgba(0, 0, 0, 0)' };
  expect(await box('Exhaust')).toEqual({ ...empty, tick: [true, ink] });
  expect(await box('Fuel and fire')).toEqual({ ...empty, tick: null });
  const qr = await page.locator('svg.qr').boundingBox();
  expect(qr!.width).toBeGreaterThan(113); // 30 mm
});
