import { expect, test } from '@playwright/test';
import { open } from './built-pages.ts';

test.use({ serviceWorkers: 'block' });

test.describe('search', () => {
  test('finds a page by a word on it, shows where, and leads there', async ({ page }) => {
    await open(page, 'search/');
    await page.getByLabel('A few words or a question').fill('depression');
    await expect(page.getByRole('status').filter({ hasText: /pages?\.$/ })).toBeVisible();
    const first = page.locator('.found > li').first();
    await expect(first.locator('mark').first()).toHaveText(/depress/i);
    const link = first.getByRole('link');
    const title = await link.innerText();
    await link.click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(title);
  });

  test('is reproduced by its address', async ({ page }) => {
    await open(page, 'search/#q=depression');
    await expect(page.getByLabel('A few words or a question')).toHaveValue('depression');
    await expect(page.locator('.found > li').first()).toBeVisible();
    await page.getByLabel('A few words or a question').fill('lock nut');
    await expect(page).toHaveURL(/#q=lock\+nut$/);
    await page.getByLabel('A few words or a question').fill('');
    await expect(page.locator('.found')).toHaveCount(0);
    await expect(page).toHaveURL(/search\/$/);
  });

  test('says what to try when no page has the word, and keeps what was typed', async ({ page }) => {
    await open(page, 'search/');
    await page.getByLabel('A few words or a question').fill('<b>xqzvw</b>');
    await expect(page.getByText('No page has “<b>xqzvw</b>”.')).toBeVisible();
    await expect(page.getByText(/Try one word/)).toBeVisible();
    await expect(page.getByLabel('A few words or a question')).toHaveValue('<b>xqzvw</b>');
  });

  test('says so when the index cannot be loaded, and works once it can', async ({ browser, baseURL }) => {
    const context = await browser.newContext({ serviceWorkers: 'block', baseURL: baseURL! });
    const page = await context.newPage();
    await page.route('**/search-index.json', (route) => route.abort());
    await open(page, 'search/');
    await page.getByLabel('A few words or a question').fill('depression');
    await expect(page.getByText(/The index could not be loaded/)).toBeVisible();
    await expect(page.getByLabel('A few words or a question')).toHaveValue('depression');
    await context.close();
  });

  test('without the texts it still says which pages, and what they are about', async ({ page }) => {
    await page.route('**/search-texts.json', (route) => route.abort());
    await open(page, 'search/');
    await page.getByLabel('A few words or a question').fill('needle jumps');
    const first = page.locator('.found > li').first();
    await expect(first.getByRole('link')).toHaveText('Flutter and damping');
    await expect(first.locator('p')).not.toBeEmpty();
    await expect(page.locator('.found mark')).toHaveCount(0);
  });

  test('says without JavaScript that it needs it', async ({ browser, baseURL }) => {
    const context = await browser.newContext({ javaScriptEnabled: false, baseURL: baseURL! });
    const page = await context.newPage();
    await page.goto('search/');
    await expect(page.getByText(/The search needs JavaScript/)).toBeVisible();
    await expect(page.getByText('Colours', { exact: true })).toBeHidden();
    await context.close();
  });
});
