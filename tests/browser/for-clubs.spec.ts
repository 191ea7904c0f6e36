import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { codeOn } from './checklist-sheet.ts';
import { copiedText } from './copied-text.ts';

async function open(page: Page, fragment = '') {
  await page.goto(`./for-clubs/${fragment}`);
  await page.waitForFunction(() => !document.querySelector('astro-island[ssr]'));
}

const heading = (page: Page) => page.getByLabel('Your heading', { exact: true });
const notes = (page: Page) => page.getByLabel('Your notes', { exact: true });
const link = (page: Page) => page.locator('.club-link a');

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });
  test('the page says what needs one, and what a link does', async ({ page }) => {
    await page.goto('./for-clubs/');
    await expect(page.locator('noscript p')).toBeVisible();
    await expect(
      page.getByText('It opens the checklist filled in, without an account').first(),
    ).toBeVisible();
  });
});

test('a club officer makes a list, and a member opens it filled in', async ({ page, browser, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(page);
  await page.getByRole('radio', { name: 'Ganged, one carburettor has no adjuster' }).check();
  await page.getByLabel('How many carburettors?').selectOption('3');
  await heading(page).fill('Open evening, 3 May');
  await notes(page).fill('Bring your own manual.\nÄrmel hoch & los: 1 < 2');
  await expect(
    page.getByText('The link opens the list “Three carburettors, one without an adjuster”.').first(),
  ).toBeVisible();
  await page.getByRole('button', { name: 'Copy the link' }).click();
  await expect(page.getByRole('status').filter({ hasText: 'Copied: the link to this list.' })).toBeVisible();
  const copied = await copiedText(page);
  expect(copied).toBe(await link(page).getAttribute('href'));
  expect(copied).toMatch(/\/checklists\/#v=1&g=fixed-reference&n=3&h=Open\+evening,\+3\+May&t=Bring/);
  expect(await codeOn(page)).toBe(`${copied}&p=1.0`);

  const stranger = await browser.newContext();
  const member = await stranger.newPage();
  await member.goto(copied);
  await expect(member.getByRole('heading', { level: 1 })).toHaveText('Open evening, 3 May');
  await expect(member.locator('.said-by-club p')).toHaveText([
    'Bring your own manual.',
    'Ärmel hoch & los: 1 < 2',
  ]);
  await expect(member.locator('.record tbody tr')).toHaveCount(3);
  await expect(member.getByText('Without adjuster: number')).toBeVisible();
  await stranger.close();
});

test('too many characters are answered beside the field, and stay', async ({ page }) => {
  await open(page);
  await heading(page).fill('x'.repeat(75));
  await expect(page.locator('#heading-wrong')).toHaveText('Give at most 60 characters; there are 75.');
  await expect(heading(page)).toHaveValue('x'.repeat(75));
  await expect(heading(page)).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByText('No link yet.').first()).toBeVisible();
  await expect(link(page)).toHaveCount(0);
  await expect(page.locator('svg.qr')).toHaveCount(0);
  await page.getByRole('button', { name: 'Go to what has to be put right' }).click();
  await expect(heading(page)).toBeFocused();
  await heading(page).fill('x');
  await expect(link(page)).toHaveAttribute('href', /&h=x$/);
});

test('words that make the code too fine stay in the link, and the page says so', async ({ page }) => {
  await open(page);
  await notes(page).fill('щ'.repeat(200));
  await expect(page.getByText('the code would be too fine for a telephone').first()).toBeVisible();
  await expect(link(page)).toHaveAttribute('href', /(?:%D1%89){200}$/);
  expect(await codeOn(page)).toMatch(/#v=1&g=all-adjustable&n=4&p=1\.0$/);
});

test('the entries are kept on this device, and a link to this page brings them elsewhere', async ({
  page,
  context,
}) => {
  await open(page);
  await heading(page).fill('Winter workshop');
  await expect.poll(() => page.url()).toContain('h=Winter+workshop');
  const second = await context.newPage();
  await open(second, new URL(page.url()).hash);
  await expect(heading(second)).toHaveValue('Winter workshop');
  await page.goto('about:blank');
  await open(page);
  await expect(heading(page)).toHaveValue('Winter workshop');
  await page.getByRole('button', { name: 'Clear the form' }).click();
  await expect(heading(page)).toHaveValue('');
  await expect(link(page)).toHaveAttribute('href', /#v=1&g=all-adjustable&n=4$/);
});

test('by keyboard alone: kind, number, heading, open the list', async ({ page }) => {
  await open(page);
  await page.getByRole('radio', { name: 'Ganged, an adjuster on every carburettor' }).focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Tab');
  await page.keyboard.press('2');
  await page.keyboard.press('Tab');
  await page.keyboard.type('Two of a kind');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await expect(link(page)).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Two of a kind');
  await expect(page.locator('.sheet-foot b')).toHaveText('paired-screws, 2');
});
