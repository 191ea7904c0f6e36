import { expect, test } from '@playwright/test';
import { axeFindings } from './watch.ts';

test.use({ serviceWorkers: 'block' });

const withTerms = 'setting-up-the-gauge/';

test.describe('a term of the glossary', () => {
  test('explains itself in a tap without scripts, and lets itself be put away', async ({
    browser,
    baseURL,
  }) => {
    const context = await browser.newContext({ javaScriptEnabled: false, baseURL: baseURL! });
    const page = await context.newPage();
    await page.goto(withTerms);
    const term = page.getByRole('button', { name: 'selector', exact: true });
    const words = page.locator('#term-selector');
    await expect(words).toBeHidden();
    await term.click();
    await expect(words).toBeVisible();
    await expect(words).toContainText('connects one hose after another');
    await page.keyboard.press('Escape');
    await expect(words).toBeHidden();
    await context.close();
  });

  test('stands beside its word, inside the window, from a narrow phone on', async ({ page }) => {
    for (const width of [320, 412, 1280]) {
      await page.setViewportSize({ width, height: 800 });
      await page.goto(withTerms);
      for (const term of await page.locator('main .term').all()) {
        await term.scrollIntoViewIfNeeded();
        await term.click();
        const words = page.locator('.explained:popover-open');
        await expect(words).toHaveCount(1);
        const box = (await words.boundingBox())!;
        const word = (await term.boundingBox())!;
        expect(box.x).toBeGreaterThanOrEqual(0);
        expect(box.x + box.width).toBeLessThanOrEqual(width);
        expect(
          Math.min(Math.abs(box.y - word.y - word.height), Math.abs(word.y - box.y - box.height)),
        ).toBeLessThan(60);
        await page.keyboard.press('Escape');
      }
    }
  });

  test('works by keyboard, says that it can be opened, and leads to the glossary', async ({ page }) => {
    await page.goto(withTerms);
    const term = page.getByRole('button', { name: 'selector', exact: true });
    await term.focus();
    await page.keyboard.press('Enter');
    const words = page.locator('#term-selector');
    await expect(words).toBeVisible();
    const { found } = await axeFindings(page);
    expect(found).toEqual([]);
    await page.keyboard.press('Tab');
    await expect(words.getByRole('link', { name: 'All terms' })).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(page).toHaveURL(/\/glossary\/#selector$/);
    await expect(page.locator('#selector')).toBeInViewport();
  });

  test('is a button once on a page and plain words after that, and on paper', async ({ page }) => {
    await page.goto(withTerms);
    const targets = await page
      .locator('.term')
      .evaluateAll((terms) => terms.map((term) => term.getAttribute('popovertarget')));
    expect(targets.length).toBeGreaterThan(3);
    expect(new Set(targets).size).toBe(targets.length);
    await page.locator('.term').first().click();
    await page.emulateMedia({ media: 'print' });
    await expect(page.locator('.explained:visible')).toHaveCount(0);
  });
});
