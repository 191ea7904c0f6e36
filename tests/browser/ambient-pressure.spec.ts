import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';

async function open(page: Page, fragment = '') {
  await page.goto(`./ambient-pressure/${fragment}`);
  await page.locator('astro-island:not([ssr])').first().waitFor();
}

const field = (page: Page, label: string) => page.getByLabel(label, { exact: true });
const figure = (page: Page, id: string) => page.locator(`tr[data-answer="${id}"] td`);
const lead = (page: Page) => page.locator('p.understood');

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });
  test('the worked example stands in the page', async ({ page }) => {
    await page.goto('./ambient-pressure/');
    await expect(field(page, 'Height above the sea')).toHaveValue('500 m');
    await expect(lead(page)).toContainText('The ambient pressure is 954.6 hPa (28.19 inHg)');
    await expect(figure(page, 'largest')).toHaveText('716.0 mmHg');
    await expect(figure(page, 'same-opening')).toHaveText('236 mmHg');
    await expect(page.locator('main > p').first()).toContainText('954.6 hPa, 94.2 %');
    await expect(page.locator('main math')).toHaveCount(5);
  });
});

test('last year at the sea, today on the pass: what the reading would be, and on to the converter', async ({
  page,
}) => {
  await open(page);
  await field(page, 'Height above the sea').fill('6500 ft');
  await field(page, 'A reading taken elsewhere').fill('10 inHg');
  await expect(figure(page, 'same-opening')).toHaveText('7.86 inHg');
  await expect(figure(page, 'same-charge')).toHaveText('3.61 inHg');
  await expect(
    page.getByText('10 inHg there would be about 3.61 inHg to 7.86 inHg here.').first(),
  ).toBeVisible();
  await page.getByRole('link', { name: 'Convert readings under this pressure' }).click();
  await expect(page).toHaveURL(/unit-converter\/#v=1&typed=10\+inHg&ambient=79\.6/);
  await expect(page.getByLabel('Ambient pressure', { exact: true })).toHaveValue(/^79\.6\d* kPa$/);
});

test('a barometer, and a sea-level setting with a height', async ({ page }) => {
  await open(page);
  await page.getByLabel('a barometer that shows the pressure of this place').check();
  await field(page, 'Barometer').fill('28,4 inHg');
  await expect(figure(page, 'ambient-hPa')).toHaveText('961,7 hPa');
  await expect(field(page, 'Height above the sea')).toHaveCount(0);
  await page.getByLabel('its height and the sea-level setting (QNH)').check();
  await field(page, 'Sea-level setting').fill('990');
  await expect(figure(page, 'ambient-hPa')).toHaveText('932.5 hPa');
  await field(page, 'A reading taken elsewhere').fill('');
  await expect(figure(page, 'same-opening')).toHaveCount(0);
  await expect(field(page, 'Height of that place')).toHaveCount(0);
});

test('bad input is answered beside its field and kept', async ({ page }) => {
  await open(page);
  await field(page, 'Height above the sea').fill('12 km');
  await expect(page.locator('#altitude-wrong')).toHaveText(
    'Give one from −500 m to 9000 m; you wrote “12 km”.',
  );
  await expect(field(page, 'Height above the sea')).toHaveValue('12 km');
  await field(page, 'Height above the sea').fill('500 m');
  await field(page, 'A reading taken elsewhere').fill('800 mmHg');
  await expect(page.locator('#reading-wrong')).toContainText('cannot exceed the ambient pressure');
});

test('the link reproduces the answer; a reload keeps the entries', async ({ page, context }) => {
  await open(page, '#v=1&altitude=1000+m&altitudeIs=geopotential&reading=');
  await expect(figure(page, 'ambient-Pa')).toHaveText('89875 Pa');
  await field(page, 'Height above the sea').fill('2000 m');
  await expect.poll(() => page.url()).toContain('altitude=2000+m');
  const second = await context.newPage();
  await second.goto(page.url());
  await expect(figure(second, 'ambient-Pa')).toHaveText('79495 Pa');
  await page.reload();
  await expect(field(page, 'Height above the sea')).toHaveValue('2000 m');
});

test('by keyboard: through the fields to a figure', async ({ page }) => {
  await open(page);
  await field(page, 'Height above the sea').focus();
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type('0 m');
  await expect(figure(page, 'ambient-kPa')).toHaveText(/^101.3/);
  await page.keyboard.press('Tab');
  await expect(field(page, 'A reading taken elsewhere')).toBeFocused();
});
