import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';

async function open(page: Page, fragment = '') {
  await page.goto(`./flutter-and-repeats/${fragment}`);
  await page.locator('astro-island:not([ssr])').first().waitFor();
}

const field = (page: Page, label: string) => page.getByLabel(label, { exact: true });
const figure = (page: Page, id: string) => page.locator(`tr[data-answer="${id}"] td`);
const lead = (page: Page) => page.locator('p.understood');

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });
  test('the worked example stands in the page', async ({ page }) => {
    await page.goto('./flutter-and-repeats/');
    await expect(field(page, 'Engine speed')).toHaveValue('2100');
    await expect(lead(page)).toContainText('Leave the tap so: the needle just still moves.');
    await expect(figure(page, 'intake')).toHaveText('17.5 Hz');
    await expect(page.locator('main > p').first()).toContainText('takes 0.50 s to settle leaves 8.3 %');
    await expect(page.locator('main math')).toHaveCount(7);
    await expect(page.locator('svg.strip path')).toHaveCount(2);
  });
});

test('the tap: too far shut, too far open, and the time to aim at', async ({ page }) => {
  await open(page);
  await field(page, 'Time to settle, as damped').fill('4 s');
  await expect(lead(page)).toContainText('Open the tap a little');
  await expect(page.locator('.answered .caution')).toBeVisible();
  await field(page, 'Time to settle, as damped').fill('0.1');
  await expect(lead(page)).toContainText('until the needle takes 0.33 s to 0.67 s to settle');
  await expect(page.locator('.answered .caution')).toHaveCount(0);
  await page.getByLabel('the time constant').check();
  await field(page, 'Time constant, as damped').fill('100 ms');
  await expect(figure(page, 'wait-99')).toHaveText('0.46 s');
});

test('a finer difference needs more readings, until the step forbids it', async ({ page }) => {
  await open(page);
  await field(page, 'Difference to tell apart').fill('5');
  await expect(page.getByText('Take 4 readings of each to tell 5 mmHg apart.').first()).toBeVisible();
  await field(page, 'Difference to tell apart').fill('4');
  await expect(page.getByText('a step of 5 mmHg forbids it').first()).toBeVisible();
  await page.getByRole('button', { name: 'Back to the example' }).click();
  await expect(figure(page, 'needed')).toHaveText('3');
});

test('bad input is answered beside its field and kept', async ({ page }) => {
  await open(page);
  await field(page, 'Readings of each carburettor').fill('1');
  await expect(page.locator('#readings-wrong')).toHaveText(
    'Give a number of readings from 2 to 1000; there is 1.',
  );
  await expect(page.getByText('No answer yet').first()).toBeVisible();
  await page.getByRole('button', { name: 'Go to what has to be put right' }).click();
  await expect(field(page, 'Readings of each carburettor')).toBeFocused();
  await expect(field(page, 'Readings of each carburettor')).toHaveValue('1');
});

test('the link reproduces the answer; a reload keeps the entries', async ({ page }) => {
  await open(page, '#v=1&rpm=900&flutter=60&damping=2');
  await expect(figure(page, 'intake')).toHaveText('7.50 Hz');
  await expect(field(page, 'Swing with the tap open, each way')).toHaveValue('60');
  await field(page, 'Engine speed').fill('1200');
  await expect.poll(() => page.url()).toContain('rpm=1200');
  await page.reload();
  await expect(field(page, 'Engine speed')).toHaveValue('1200');
  await expect(figure(page, 'intake')).toHaveText('10.0 Hz');
});

test('by keyboard: through the fields to a figure', async ({ page }) => {
  await open(page);
  await field(page, 'Engine speed').focus();
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type('3000');
  await expect(figure(page, 'intake')).toHaveText('25.0 Hz');
  await page.keyboard.press('Tab');
  await expect(field(page, 'Unit of the gauge')).toBeFocused();
});
