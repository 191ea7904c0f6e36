import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { copiedText } from './copied-text.ts';

async function open(page: Page, fragment = '') {
  await page.goto(`./liquid-column/${fragment}`);
  await page.locator('astro-island:not([ssr])').first().waitFor();
}

const field = (page: Page, label: string) => page.getByLabel(label, { exact: true });
const figure = (page: Page, id: string) => page.locator(`tr[data-answer="${id}"] td`);
const lead = (page: Page) => page.locator('p.understood');
const caution = (page: Page) => page.locator('.answered .caution');

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });
  test('the cautions and the worked example stand in the page', async ({ page }) => {
    await page.goto('./liquid-column/');
    await expect(page.locator('main > .caution')).toContainText('No mercury');
    await expect(page.locator('main > .caution')).toContainText('No petrol');
    await expect(field(page, 'Largest difference to show')).toHaveValue('30 mmHg');
    await expect(figure(page, 'level')).toHaveText('409 mm');
    await expect(figure(page, 'open-side')).toHaveText('3.40 m');
    await expect(page.locator('main > p').first()).toContainText('would need 3.40 m for 250 mmHg');
    await expect(page.locator('.figure svg')).toHaveAttribute('aria-label', /half full/);
    await expect(page.locator('main math')).toHaveCount(3);
    const [first, form] = await Promise.all(
      ['main > .caution', 'form.calculator'].map((part) => page.locator(part).boundingBox()),
    );
    expect(first!.y).toBeLessThan(form!.y);
  });
});

test('somebody plans a column: against the air it is too tall, between two carburettors it fits', async ({
  page,
}) => {
  await open(page);
  await page.getByLabel('one carburettor and the open air').check();
  await expect(lead(page)).toContainText('does not stand on a bench. Join the column to two carburettors');
  await expect(figure(page, 'level')).toHaveText('3.40 m');
  await expect(field(page, 'Largest difference to show')).toHaveCount(0);
  await page.getByLabel('two carburettors').check();
  await field(page, 'Largest difference to show').fill('0,8 inHg');
  await expect(figure(page, 'per-unit')).toHaveText('345,9 mm');
  await expect(figure(page, 'leg')).toHaveText('346 mm');
  await expect(page.getByText('each catch pot must hold twice all of it').first()).toBeVisible();
});

test('a leaning tube asks for its well and its angle, and the drawing follows', async ({ page }) => {
  await open(page);
  await expect(field(page, 'Bore of the well')).toHaveCount(0);
  await page.getByLabel('inclined: one leaning tube out of a wide well').check();
  await field(page, 'Angle of the tube from the level').fill('30');
  await expect(figure(page, 'level')).toHaveText('801 mm');
  await expect(page.locator('.figure svg')).toHaveAttribute('aria-label', /leans out of its foot/);
  await expect(page.getByText('L is 801 mm, h is 409 mm.').first()).toBeVisible();
});

test('what was read is answered in the units of gauges, and copied', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(page);
  await field(page, 'What you read, if you have a column').fill('120 mm');
  await expect(figure(page, 'read-mmHg')).toHaveText('8.811 mmHg');
  await page.getByRole('button', { name: 'Copy kilopascals: 1.175 kPa' }).click();
  expect(await copiedText(page)).toBe('1.175 kPa');
});

test('petrol and mercury are refused first, and nothing to build is given', async ({ page }) => {
  await open(page);
  await field(page, 'Liquid').selectOption('gasoline');
  await expect(lead(page)).toContainText('Do not fill a column with petrol.');
  await expect(caution(page)).toContainText('hot pipes and sparks');
  await expect(figure(page, 'leg')).toHaveCount(0);
  await field(page, 'Liquid').selectOption('mercury');
  await expect(caution(page)).toContainText('Minamata');
  await field(page, 'Liquid').selectOption('own');
  await field(page, 'Density').fill('0.87 g/cm3');
  await expect(figure(page, 'density')).toHaveText('870 kg/m³');
  await expect(field(page, 'Temperature of the liquid')).toHaveCount(0);
});

test('bad input is answered beside its field and kept', async ({ page }) => {
  await open(page);
  await field(page, 'Bore of the tube').fill('3 in');
  await expect(page.locator('#bore-wrong')).toHaveText('Give one from 2 mm to 25 mm; you wrote “3 in”.');
  await expect(page.getByText('No answer yet').first()).toBeVisible();
  await page.getByRole('button', { name: 'Go to what has to be put right' }).click();
  await expect(field(page, 'Bore of the tube')).toBeFocused();
  await expect(field(page, 'Bore of the tube')).toHaveValue('3 in');
});

test('the link reproduces the answer; a reload keeps the entries', async ({ page, context }) => {
  await open(page, '#v=1&kind=well&liquid=sae-10w&difference=20+mmHg');
  await expect(figure(page, 'density')).toHaveText('870 kg/m³');
  await field(page, 'Temperature of the liquid').fill('50 °F');
  await expect(figure(page, 'density')).toHaveText('876 kg/m³');
  await expect.poll(() => page.url()).toContain('temperature=50');
  const second = await context.newPage();
  await second.goto(page.url());
  await expect(figure(second, 'density')).toHaveText('876 kg/m³');
  await page.reload();
  await expect(field(page, 'Temperature of the liquid')).toHaveValue('50 °F');
});

test('by keyboard: through the fields to a figure', async ({ page }) => {
  await open(page);
  await field(page, 'Temperature of the liquid').focus();
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type('60');
  await expect(figure(page, 'density')).toHaveText('983.2 kg/m³');
  await page.keyboard.press('Tab');
  await expect(field(page, 'Largest difference to show')).toBeFocused();
});
