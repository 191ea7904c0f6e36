import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { copiedText } from './copied-text.ts';

async function open(page: Page, fragment = '') {
  await page.goto(`./balance-analyser/${fragment}`);
  await page.locator('astro-island:not([ssr])').first().waitFor();
}

const readings = (page: Page) => page.getByLabel('Readings, in the order you took them');
const verdict = (page: Page) => page.locator('.understood');
const row = (page: Page, id: string) => page.locator(`tr[data-answer="${id}"]`);
const bench = (page: Page) => page.getByRole('link', { name: 'Go on in the bench session' });

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });
  test('the worked example stands in the page, and its link leads to the bench', async ({ page }) => {
    await page.goto('./balance-analyser/');
    await expect(readings(page)).toHaveValue('2: 248, 1: 212, 3: 251, 4: 187, 2: 252');
    await expect(verdict(page)).toHaveText('Outside 20 mmHg: the chance that all four are within is 0 %.');
    await expect(row(page, 'screw-3').getByRole('button')).toHaveText('close');
    await expect(row(page, 'spread').getByRole('button')).toHaveText('65 ± 6 mmHg');
    await expect(page.locator('.strip .mark')).toHaveCount(4);
    await expect(bench(page)).toHaveAttribute('href', /r=2:248,1:212,3:251,4:187,2:252/);
    await expect(page.locator('main math').first()).toBeAttached();
  });
});

test('readings in mixed units, with speeds, are answered as they are typed', async ({ page }) => {
  await open(page);
  await readings(page).fill('1: 24,8 cmHg\n2: 9 3/4 inHg\n3: 250\n4: 249');
  await page.getByLabel('Which one shows the drift?').selectOption('none');
  await expect(verdict(page)).toHaveText('Within 20 mmHg: the chance that all four are is 100 %.');
  await expect(page.getByText('Leave the screws alone.', { exact: true })).toBeVisible();
  await readings(page).fill('1: 212 @ 2150, 2: 248 @ 2100, 3: 251 @ 2100, 4: 187 @ 2100');
  await expect(page.getByText(/The speeds differ, from 2100 to 2150 rpm/).first()).toBeVisible();
  await page.getByLabel('What 100 rpm more change').fill('-5');
  await expect(row(page, 'speed').getByRole('button')).toHaveText('−5 mmHg');
  await expect(page.getByText(/The speeds differ/)).toHaveCount(0);
});

test('what cannot be told says what to read again', async ({ page }) => {
  await open(page);
  await page.getByLabel('Carburettors', { exact: true }).selectOption('2');
  await page.getByLabel('What do the screws move?').selectOption('separate-cables');
  await readings(page).fill('250; 232');
  await expect(verdict(page)).toContainText('Cannot tell: the chance that both are within 20 mmHg is');
  await expect(page.getByText(/^Read carburettor\s1 again first\./).first()).toBeVisible();
  await expect(page.getByLabel('Which one is left alone?')).toHaveCount(0);
  await expect(page.locator('.strip .mark')).toHaveCount(2);
});

for (const [field, typed, words] of [
  ['readings', '1: 212, 2: many, 3: 251, 4: 187', 'you wrote “many”'],
  ['readings', '1: 212, 2: 248, 4: 187', 'Give at least one reading of carburettor 3; there is none.'],
  ['readings', '', 'Give at least one reading; there is none.'],
  ['tolerance', '-1', 'Give a number above 0; you wrote “-1”.'],
  ['confidence', '100', 'Give a number from 50 to 99.9; you wrote “100”.'],
] as const)
  test(`${field} “${typed}” is answered in words beside the field, and stays`, async ({ page }) => {
    await open(page);
    await page.locator(`#${field}`).fill(typed);
    await expect(page.locator(`#${field}-wrong`)).toContainText(words);
    await expect(page.locator(`#${field}`)).toHaveValue(typed);
    await expect(page.locator(`#${field}`)).toHaveAttribute('aria-invalid', 'true');
    await expect(verdict(page)).toContainText('No answer yet.');
    await page.getByRole('button', { name: 'Go to what has to be put right' }).click();
    await expect(page.locator(`#${field}`)).toBeFocused();
  });

test('a comma that can be read two ways is asked about inside the list', async ({ page }) => {
  await open(page);
  await readings(page).fill('2: 248; 1: 1,234 Pa; 3: 251; 4: 187');
  await page.getByRole('button', { name: 'one thousand two hundred and thirty-four' }).click();
  await expect(readings(page)).toHaveValue('2: 248; 1: 1234 Pa; 3: 251; 4: 187');
  await expect(verdict(page)).toContainText('Outside');
});

test('a link reproduces the state; a reload keeps it', async ({ page, context }) => {
  await open(page);
  await readings(page).fill('1: 248 @ 2100, 2: 251, 1: 249');
  await page.getByLabel('Carburettors', { exact: true }).selectOption('2');
  await expect.poll(() => page.url()).toContain('carburettors=2');
  expect(decodeURIComponent(page.url())).toContain('readings=1:+248+@+2100,+2:+251,+1:+249');
  const second = await context.newPage();
  await second.goto(page.url());
  await expect(readings(second)).toHaveValue('1: 248 @ 2100, 2: 251, 1: 249');
  await expect(verdict(second)).toHaveText((await verdict(page).textContent()) ?? '-');
  await open(page);
  await expect(readings(page)).toHaveValue('1: 248 @ 2100, 2: 251, 1: 249');
  await expect(page.getByText('These are your entries of an earlier visit.').first()).toBeVisible();
  await page.getByRole('button', { name: 'Back to the example' }).click();
  await expect(verdict(page)).toContainText('Outside 20 mmHg');
});

test('the bench session takes set, gauge and readings over, and begins with them', async ({ page }) => {
  await open(page);
  await page.getByLabel('All within').fill('15');
  await readings(page).fill('2: 248 @ 2150, 1: 212, 3: 251, 4: 187, 2: 252');
  await bench(page).click();
  await expect(page.getByLabel('Readings you already have')).toHaveValue(
    '2: 248 @ 2150; 1: 212; 3: 251; 4: 187; 2: 252',
  );
  await expect(page.getByLabel('All within')).toHaveValue('15');
  await page.getByRole('button', { name: 'Start the session' }).first().click();
  await expect(page.getByText('Read carburettor 2: 248 at 2150 rpm')).toBeAttached();
  await expect(page.getByText('Read carburettor 2: 252')).toBeAttached();
});

test('by keyboard alone: type, and copy the spread', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(page);
  await readings(page).focus();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('2: 248; 1: 240; 3: 251; 4: 249');
  await expect(verdict(page)).toContainText('Within 20 mmHg');
  await row(page, 'spread').getByRole('button').focus();
  await page.keyboard.press('Enter');
  expect(await copiedText(page)).toBe('11 ± 6 mmHg');
  await expect(page.getByRole('status').filter({ hasText: 'Leave the screws alone.' })).toHaveCount(1);
});

test('eight carburettors fit a screen of 320 px', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await open(page, '#v=1&carburettors=8&generation=separate-cables&readings=212;224;213;240;212;224;213;240');
  await expect(page.locator('.strip .mark')).toHaveCount(8);
  await expect(verdict(page)).toContainText('all eight');
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
});
