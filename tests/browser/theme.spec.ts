import { expect, type Page, test } from '@playwright/test';
import { open } from './built-pages.ts';

test.use({ serviceWorkers: 'block' });

const light = 'rgb(252, 249, 241)';
const dark = 'rgb(19, 17, 14)';
const paper = (page: Page) => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
const themeColour = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLMetaElement>('meta[name="theme-color"]')]
      .filter((meta) => matchMedia(meta.media).matches)
      .map((meta) => meta.content)
      .join(),
  );
const choose = (page: Page, name: string) =>
  page.getByRole('group', { name: 'Colours of this site' }).getByLabel(name).check();

test('the colours follow the device until the reader chooses, and then the reader', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await open(page, 'search/');
  expect(await paper(page)).toBe(dark);
  await choose(page, 'Light');
  expect(await paper(page)).toBe(light);
  expect(await themeColour(page)).toBe('#fcf9f1');

  await open(page, 'search/');
  await expect(page.getByLabel('Light')).toBeChecked();
  expect(await paper(page)).toBe(light);

  await choose(page, 'Auto');
  expect(await paper(page)).toBe(dark);
  expect(await themeColour(page)).toBe('#13110e');
});

test('the choice holds before the first paint, and in a window that is already open', async ({
  page,
  context,
}) => {
  await page.emulateMedia({ colorScheme: 'light' });
  await open(page, 'search/');
  const other = await context.newPage();
  await open(other, 'search/');
  await choose(page, 'Dark');
  await expect.poll(() => paper(other)).toBe(dark);

  // The body is not there yet when the root already has the choice.
  await page.addInitScript(() => {
    new MutationObserver((_, observer) => {
      if (!document.body) return;
      document.documentElement.dataset.themeAtBody = document.documentElement.dataset.theme ?? 'none';
      observer.disconnect();
    }).observe(document, { childList: true, subtree: true });
  });
  await open(page, 'search/');
  await expect(page.locator('html')).toHaveAttribute('data-theme-at-body', 'dark');
});

test('without storage the choice holds for the page', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('denied', 'SecurityError');
      },
    });
  });
  await page.emulateMedia({ colorScheme: 'light' });
  await open(page, 'search/');
  await choose(page, 'Dark');
  expect(await paper(page)).toBe(dark);
});
