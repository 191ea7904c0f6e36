import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';

async function open(page: Page, fragment = '') {
  await page.goto(`./gauge-comparison/${fragment}`);
  await page.locator('astro-island:not([ssr])').first().waitFor();
}

const field = (page: Page, label: string) => page.getByLabel(label, { exact: true });
const figure = (page: Page, id: string) => page.locator(`tr[data-answer="${id}"] td`);
const lead = (page: Page) => page.locator('p.understood');

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });
  test('the worked example stands in the page', async ({ page }) => {
    await page.goto('./gauge-comparison/');
    await expect(field(page, 'Readings of gauge 4')).toHaveValue('275; 280; 275');
    await expect(lead(page)).toHaveText('Gauge 4 reads 20.4 mmHg high against the mean of all.');
    await expect(figure(page, 'offset-3')).toHaveText('−2.9 ± 3.5 mmHg');
    await expect(page.locator('main > p').first()).toContainText('gauge 4 reads 20.4 mmHg high');
    await expect(page.locator('main math')).toHaveCount(5);
    await expect(page.locator('svg.strip .mark')).toHaveCount(4);
  });
});

test('two gauges, then three, against one that is trusted', async ({ page }) => {
  await open(page);
  await field(page, 'Gauges').selectOption('2');
  await expect(field(page, 'Readings of gauge 3')).toHaveCount(0);
  await field(page, 'Readings of gauge 1').fill('250; 251; 250');
  await field(page, 'Readings of gauge 2').fill('260; 262; 261');
  await field(page, 'Held against').selectOption('1');
  await field(page, 'Readings of the carburettors').fill('1: 212; 2: 248');
  await expect(lead(page)).toContainText('Gauge 2 reads 10.7 mmHg high beside gauge 1.');
  await expect(figure(page, 'offset-1')).toHaveText('reference');
  await expect(figure(page, 'corrected-2')).toHaveText('237.3 mmHg');
  await field(page, 'Gauges').selectOption('3');
  await expect(field(page, 'Readings of gauge 3')).toHaveValue('255; 255; 250');
});

test('two are exchanged, A, B, B, A', async ({ page }) => {
  await open(page);
  await page.getByLabel('two exchanged: A, B, B, A').check();
  await expect(field(page, 'Readings in the order A, B, B, A')).toHaveValue('250; 262.5; 263.5; 253');
  await expect(figure(page, 'offset-2')).toHaveText('+5.7 ± 2.6 mmHg');
  await field(page, 'Readings in the order A, B, B, A').fill('250; 262.5; 263.5');
  await expect(page.locator('#swap-wrong')).toContainText('in the order A, B, B, A: four, or eight');
});

test('the corrected readings are taken to the balance analyser', async ({ page }) => {
  await open(page);
  await page.getByRole('link', { name: 'Take them to the balance analyser' }).click();
  await page.waitForURL(/balance-analyser\//u);
  await page.locator('astro-island:not([ssr])').first().waitFor();
  await expect(page.locator('[name="readings"]')).toHaveValue('1: 216.6, 2: 260.9, 3: 253.9, 4: 166.6');
  await expect(page.locator('[name="offsetUncertainty"]')).toHaveValue('3.5');
  await expect(page.getByText('No answer yet')).toHaveCount(0);
});

test('a bad scale opens its fold and is answered beside its field', async ({ page }) => {
  await open(page, '#v=1&span2=wide');
  await expect(page.locator('#span2-wrong')).toBeVisible();
  await page.getByRole('button', { name: 'Go to what has to be put right' }).click();
  await expect(field(page, 'Scale of gauge 2')).toBeFocused();
  await expect(field(page, 'Scale of gauge 2')).toHaveValue('wide');
  await field(page, 'Scale of gauge 2').fill('-1..0 bar');
  await expect(figure(page, 'class-2')).toHaveText('± 18.8 mmHg');
  await expect(field(page, 'Scale of gauge 2')).toBeVisible();
});

test('the link reproduces the answer; a reload keeps the entries', async ({ page }) => {
  await open(page, '#v=1&gauges=2&way=in-turn&readings1=250&readings2=280&engine=');
  await expect(figure(page, 'offset-2')).toHaveText('+15.0 ± 3.1 mmHg');
  await field(page, 'Readings of gauge 2').fill('290');
  await expect.poll(() => page.url()).toContain('readings2=290');
  await page.reload();
  await expect(field(page, 'Readings of gauge 2')).toHaveValue('290');
  await expect(figure(page, 'offset-2')).toHaveText('+20.0 ± 3.1 mmHg');
});
