import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { addresses, open } from './built-pages.ts';

test.use({ serviceWorkers: 'block' });

/** Questions as people type them, with the page, or one of two, that has to come first. */
const questions = JSON.parse(
  readFileSync(new URL('../data/search-questions.json', import.meta.url), 'utf8'),
) as { question: string; pages: string[] }[];

test('there are forty questions and more, each with pages that exist', () => {
  expect(questions.length).toBeGreaterThanOrEqual(40);
  expect(new Set(questions.map(({ question }) => question)).size).toBe(questions.length);
  for (const { pages } of questions) {
    expect(pages.length).toBeGreaterThan(0);
    expect(pages.length).toBeLessThanOrEqual(2);
    expect(addresses).toEqual(expect.arrayContaining(pages.map((page) => `${page}/`)));
  }
});

test('the right page comes first for every question', async ({ page }) => {
  await open(page, 'search/');
  const field = page.getByLabel('A few words or a question');
  const status = page.getByRole('status').filter({ hasText: /^(One page|\d+ pages)\.$/ });
  const wrong: string[] = [];
  for (const { question, pages } of questions) {
    await field.fill('');
    await expect(page.locator('.found')).toHaveCount(0);
    await field.fill(question);
    await expect(status).toBeVisible();
    const first = page.locator('.found > li a').first();
    await expect(first).toBeVisible();
    const address = (await first.getAttribute('href')) ?? '';
    if (!pages.some((one) => address.endsWith(`/${one}/`))) wrong.push(`${question}: ${address}`);
  }
  expect(wrong).toEqual([]);
});
