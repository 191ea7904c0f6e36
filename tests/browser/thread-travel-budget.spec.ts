import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';

async function open(page: Page, fragment = '') {
  await page.goto(`./thread-travel-budget/${fragment}`);
  await page.locator('astro-island:not([ssr])').first().waitFor();
}

const entry = (page: Page, number: number, column: 'to close' | 'to open' | 'plan') =>
  page.getByLabel(`Adjuster ${number}, ${column}`, { exact: true });
const lead = (page: Page) => page.locator('.understood');
const figure = (page: Page, id: string) => page.locator(`tr[data-answer="${id}"] td`);
/** What is left of an adjuster after the plan: the last two cells of its row in the first table of turns. */
const after = (page: Page, number: number, side: 'close' | 'open') =>
  page
    .locator(`tr[data-adjuster="${number}"]`)
    .first()
    .locator('td')
    .nth(side === 'close' ? 3 : 4);

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });
  test('the worked example, the threads and the caution stand in the page', async ({ page }) => {
    await page.goto('./thread-travel-budget/');
    await expect(page.locator('main > p').first()).toContainText('adjuster 4 has 3/4 turn left to open');
    await expect(page.locator('main .caution').first()).toContainText('Never back a screw out');
    await expect(entry(page, 4, 'to open')).toHaveValue('0.2');
    await expect(after(page, 4, 'open')).toHaveText('0.75');
    await expect(page.locator('main math')).toHaveCount(4);
    await page.getByText('British Association, BA: 17 threads').click();
    await expect(page.getByRole('row', { name: '10BA 1.7 0.35 72.6' })).toBeVisible();
    await page.getByText('Lock nuts: thin and regular').click();
    await expect(page.getByRole('row', { name: 'M5 2.45–2.7 4.4–4.7 8', exact: true })).toBeVisible();
  });
});

test('a plan that does not fit, and the common move that saves it', async ({ page }) => {
  await open(page);
  await entry(page, 4, 'plan').fill('2');
  await expect(lead(page)).toHaveText('The plan does not fit: adjuster 4 lacks 1/2 turn to open.');
  await expect(after(page, 4, 'open')).toHaveText('−0.50');
  await expect(after(page, 4, 'open')).toHaveClass(/late/);
  await expect(figure(page, 'all')).toHaveText('close 1 1/4 turns');
  await expect(figure(page, 'idle')).toHaveText('open 1 turn');
  await expect(figure(page, 'least')).toHaveText('3/4 turn');
});

test('threads by system and size, each with its own pitch', async ({ page }) => {
  await open(page);
  await page.getByLabel('Lock nut', { exact: true }).selectOption('none');
  const system = page.getByLabel('Thread of the adjusters');
  const size = page.locator('#thread');
  await size.selectOption('M6');
  await expect(figure(page, 'turn')).toHaveText('1 mm');
  await system.selectOption('iso-fine');
  await expect(size).toHaveValue('M5x0.5');
  await expect(figure(page, 'turn')).toHaveText('0.5 mm');
  await system.selectOption('unf');
  await size.selectOption('1/4 UNF');
  await expect(figure(page, 'turn')).toHaveText('0.907 mm');
  await system.selectOption('ba');
  await size.selectOption('4BA');
  await expect(figure(page, 'turn')).toHaveText('0.66 mm');
  await system.selectOption('measured');
  await page.getByLabel('So many turns').fill('20');
  await page.getByLabel('go this far').fill('1/2 in');
  await expect(figure(page, 'turn')).toHaveText('0.635 mm');
});

test('an inch thread has no nut in the tables: said beside the nut, and measured instead', async ({
  page,
}) => {
  await open(page);
  await page.getByLabel('Thread of the adjusters').selectOption('bsf');
  await expect(page.locator('#nut-wrong')).toContainText('hold no nut for 1/4 BSF');
  await page.getByLabel('Lock nut', { exact: true }).selectOption('measured');
  await page.getByLabel('Height of the nut').fill('3');
  await expect(page.locator('#nut-wrong')).toHaveCount(0);
  await expect(figure(page, 'nut')).toHaveText('3 mm');
});

for (const [typed, words] of [
  ['', 'nothing is written here'],
  ['-1', 'from 0 to 200 mm; you wrote “-1”'],
  ['a lot', 'you wrote “a lot”'],
  ['1e309', 'you wrote “1e309”'],
  ['5 kPa', '“kPa” is not a unit'],
  ['9'.repeat(500), 'Give at most 80 characters; there are 500'],
] as const)
  test(`“${typed.slice(0, 12)}” is answered above the adjusters, with its number, and stays`, async ({
    page,
  }) => {
    await open(page);
    await entry(page, 2, 'to close').fill(typed);
    await expect(page.locator('#closing2-wrong')).toContainText('Adjuster 2, to close: ');
    await expect(page.locator('#closing2-wrong')).toContainText(words);
    await expect(entry(page, 2, 'to close')).toHaveValue(typed);
    await expect(entry(page, 2, 'to close')).toHaveAttribute('aria-invalid', 'true');
    await expect(entry(page, 2, 'to close')).toHaveAttribute('aria-describedby', 'closing2-wrong');
    await expect(page.getByText('No answer yet.').first()).toBeVisible();
    await page.getByRole('button', { name: 'Go to what has to be put right' }).click();
    await expect(entry(page, 2, 'to close')).toBeFocused();
  });

test('a comma that can be read two ways is asked about in words', async ({ page }) => {
  await open(page);
  await entry(page, 1, 'to open').fill('1,234');
  await expect(page.locator('#opening1-wrong')).toContainText('can be read two ways');
});

test('counted turns: neither engagement nor nut is asked', async ({ page }) => {
  await open(page);
  await page.getByLabel('What did you look at?').selectOption('turns');
  await expect(page.getByLabel('Lock nut', { exact: true })).toHaveCount(0);
  for (const number of [1, 2, 3, 4]) {
    await entry(page, number, 'to close').fill('3');
    await entry(page, number, 'to open').fill('1 1/2');
  }
  await expect(after(page, 3, 'open')).toHaveText('1.75');
  await expect(figure(page, 'nut')).toHaveCount(0);
});

test('a set without a free common move says why', async ({ page }) => {
  await open(page);
  await page.getByLabel('What do the screws move?').selectOption('fixed-reference');
  await expect(page.getByText('This kind has no free common move: one carburettor').first()).toBeVisible();
  await expect(figure(page, 'all')).toHaveCount(0);
});

test('the idle-speed screw bounds the common move', async ({ page }) => {
  await open(page);
  await page.getByLabel('It shows, to open').fill('0.25');
  await expect(figure(page, 'idle')).toHaveText('open 1/4 turn');
  await expect(page.locator('.answered .caution')).toContainText('The idle-speed screw ends first');
});

test('a link carries everything, and a reload keeps it', async ({ page, context }) => {
  await open(page);
  await page.getByLabel('Adjusters', { exact: true }).selectOption('2');
  await page.getByLabel('Thread of the adjusters').selectOption('iso-fine');
  await entry(page, 1, 'plan').fill('-1/2');
  await page.getByLabel('Its turns for one turn of all adjusters').fill('1.5');
  await expect.poll(() => page.url()).toContain('idleRatio=1.5');
  const text = await lead(page).textContent();
  const second = await context.newPage();
  await second.goto(page.url());
  await expect(lead(second)).toHaveText(text ?? '');
  await expect(second.locator('#thread')).toHaveValue('M5x0.5');
  await expect(entry(second, 1, 'plan')).toHaveValue('-1/2');
  await expect(entry(second, 3, 'plan')).toHaveCount(0);
  await second.reload();
  await expect(second.getByLabel('Its turns for one turn of all adjusters')).toHaveValue('1.5');
  await open(page);
  await expect(entry(page, 1, 'plan')).toHaveValue('-1/2');
  await page.getByRole('button', { name: 'Back to the example' }).click();
  await expect(entry(page, 1, 'plan')).toHaveValue('1/2');
});

test('a link with a thread that no table holds shows it, and says so', async ({ page }) => {
  await open(page, '#v=1&thread=M5.2&nut=none');
  await expect(page.locator('#thread')).toHaveValue('M5.2');
  await expect(page.locator('#thread-wrong')).toContainText('“M5.2” is not a thread of the tables');
  await open(page, '#v=1&colour=red');
  await page.reload();
  await expect(page.getByRole('alert')).toContainText('“colour” is not known here');
});

test('a mechanic: two carburettors, counted, with the keyboard alone, on to the bench', async ({ page }) => {
  await open(page, '#v=1&adjusters=2&showing=turns&idle=unknown');
  await entry(page, 1, 'to close').click();
  for (const amount of ['2', '1/2', '1/4', '2 1/2', '1', '0']) {
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type(amount);
    await page.keyboard.press('Tab');
  }
  await expect(lead(page)).toHaveText(
    'The plan fits. After it adjuster 1 has 1/4 turn left to open, the least of all.',
  );
  await expect(page.getByRole('status').filter({ hasText: 'Close both adjusters by 1 turn' })).toHaveCount(1);
  await page.getByRole('link', { name: 'Set up a bench session with this thread' }).click();
  await page.waitForURL(/bench-session/);
  await expect(page.getByLabel('Screw of 1, turns to open')).toHaveValue('0.5');
  await expect(page.getByLabel('Screw of 2, turns to close')).toHaveValue('2.5');
});

test('the plot says in words what it shows, and stays within 320 px', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await open(page);
  await expect(
    page.getByRole('img', { name: /Adjuster 4: 3\.50 to close, 1\.50 to open, planned 0\.75/ }),
  ).toBeVisible();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
});
