import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { copiedText } from './copied-text.ts';

async function open(page: Page, fragment = '') {
  await page.goto(`./unit-converter/${fragment}`);
  await page.locator('astro-island:not([ssr])').first().waitFor();
}

const reading = (page: Page) => page.getByLabel('Reading', { exact: true });
const ambient = (page: Page) => page.getByLabel('Ambient pressure', { exact: true });
/** The large figure of a unit, in the table of the kind that was asked for. */
const figure = (page: Page, unit: string) => page.locator(`tr[data-unit="${unit}"] .answer`).first();
/** A figure of the same state, counted otherwise: 0 for the first column. */
const other = (page: Page, unit: string, column: number) =>
  page.locator(`tr[data-unit="${unit}"]:not(:has(.answer)) td`).nth(column);

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });
  test('the worked example stands in the page', async ({ page }) => {
    await page.goto('./unit-converter/');
    await expect(reading(page)).toHaveValue('9 inHg');
    await expect(figure(page, 'mmHg')).toHaveText('228.6');
    await expect(other(page, 'kPa', 1)).toHaveText('70.85');
    await expect(page.locator('main > p').first()).toContainText('228.6 mmHg');
    await expect(page.locator('main math')).toHaveCount(5);
  });
});

test('9 inHg answers in every unit, and as gauge and absolute', async ({ page }) => {
  await open(page);
  await reading(page).fill('9 inHg');
  for (const [unit, text] of [
    ['Pa', '30477'],
    ['kPa', '30.48'],
    ['mbar', '304.8'],
    ['mmHg', '228.6'],
    ['cmHg', '22.86'],
    ['inHg', '9'],
    ['inH2O', '122.4'],
    ['psi', '4.420'],
    ['at', '0.3108'],
  ] as const)
    await expect(figure(page, unit)).toHaveText(text);
  await expect(other(page, 'mmHg', 0)).toHaveText('−228.6');
  await expect(other(page, 'mmHg', 1)).toHaveText('531.4');
  await expect(page.locator('.answer:visible')).toHaveCount(16);
});

test('a comma, a fraction and a number without a unit are understood', async ({ page }) => {
  await open(page);
  await reading(page).fill('12,5 cmHg');
  await expect(figure(page, 'inHg')).toHaveText('4,921');
  await reading(page).fill('9 1/2 inHg');
  await expect(figure(page, 'mmHg')).toHaveText('241.3');
  await expect(
    page.getByText('9.5 inHg is 32.17 kPa below an ambient pressure of 101.325 kPa.').first(),
  ).toBeVisible();
  await reading(page).fill('12');
  await expect(figure(page, 'mmHg')).toHaveText('304.8');
  await page.getByLabel('Unit, if none is typed').selectOption('kPa');
  await expect(reading(page)).toHaveValue('12');
  await expect(figure(page, 'mbar')).toHaveText('120');
});

test('the entries and the unit last used are kept on the device', async ({ page }) => {
  await open(page);
  await reading(page).fill('212 mmHg');
  await expect.poll(() => page.url()).toContain('q=212+mmHg');
  await page.goto('about:blank');
  await open(page);
  await expect(reading(page)).toHaveValue('212 mmHg');
  await expect(page.getByText('your entries of an earlier visit').first()).toBeVisible();
  await reading(page).fill('213');
  await expect(figure(page, 'inHg')).toHaveText('8.386');
  await page.getByRole('button', { name: 'Back to the example' }).click();
  await expect(reading(page)).toHaveValue('9 inHg');
});

test('another quantity keeps the number; a unit of another quantity shows the way', async ({ page }) => {
  await open(page);
  await page.getByLabel('Quantity').selectOption('Length');
  await expect(reading(page)).toHaveValue('9');
  await expect(page.getByText('A length of 9 mm is 0.3543 in.').first()).toBeVisible();
  await expect(page.getByLabel('Ambient pressure', { exact: true })).toHaveCount(0);
  await reading(page).fill('5.5 mm');
  await expect(figure(page, 'cm')).toHaveText('0.55');
  await expect(page.locator('.answer:visible')).toHaveCount(10);
  await reading(page).fill('20 °C');
  await expect(page.locator('#typed-wrong')).toContainText('“°C” is not a unit that is known here');
  await page.getByRole('button', { name: 'Read it as a temperature', exact: true }).click();
  await expect(reading(page)).toHaveValue('20 °C');
  await expect(figure(page, 'F')).toHaveText('68');
  await page.getByLabel('Quantity').selectOption('Temperature difference');
  await expect(figure(page, 'F')).toHaveText('36');
  await page.getByLabel('Quantity').selectOption('Thread pitch');
  await reading(page).fill('20 TPI');
  await expect(figure(page, 'mm')).toHaveText('1.27');
});

test('a link reproduces the quantity; a link of the first version still opens', async ({ page, context }) => {
  await open(page);
  await page.getByLabel('Quantity').selectOption('Torque');
  await reading(page).fill('9 ft-lb');
  await expect.poll(() => new URL(page.url()).hash).toBe('#v=2&of=torque&q=9+ft-lb');
  const second = await context.newPage();
  await second.goto(page.url());
  await expect(second.getByLabel('Quantity')).toHaveValue('torque');
  await expect(figure(second, 'Nm')).toHaveText('12.20');
  await second.goto('about:blank');
  await open(second, '#v=1&q=212&u=mmHg&as=gauge&ambient=98+kPa');
  await expect(second.getByLabel('Quantity')).toHaveValue('pressure');
  await expect(figure(second, 'inHg')).toHaveText('8.346');
});

for (const [quantity, typed, words] of [
  ['Temperature', '-300 °C', 'Nothing is colder than absolute zero'],
  ['Thread pitch', '0', 'Give a thread pitch above 0; you wrote “0”.'],
  ['Thread pitch', '-1.25 mm', 'Give a thread pitch above 0; you wrote “-1.25 mm”.'],
  ['Volume', '1 gallon', '“gallon” is not a unit that is known here'],
] as const)
  test(`${quantity}: “${typed}” is answered in words beside the field, and stays`, async ({ page }) => {
    await open(page);
    await page.getByLabel('Quantity').selectOption(quantity);
    await reading(page).fill(typed);
    await expect(page.locator('#typed-wrong')).toContainText(words);
    await expect(reading(page)).toHaveValue(typed);
    await expect(page.getByText('No answer yet.').first()).toBeVisible();
  });

test('by keyboard alone: quantity, reading, copy', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(page);
  await page.getByLabel('Quantity').focus();
  await page.keyboard.type('Speed');
  await expect(page.getByLabel('Quantity')).toHaveValue('speed');
  await page.keyboard.press('Tab');
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type('50 mph');
  await expect(figure(page, 'km/h')).toHaveText('80.47');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('status').filter({ hasText: 'Copied: 80.47 km/h.' })).toBeVisible();
});

test('1,234 is asked about, and each answer is taken', async ({ page }) => {
  await open(page);
  await reading(page).fill('1,234 Pa');
  await expect(page.locator('#typed-wrong')).toContainText('can be read two ways');
  await page.getByRole('button', { name: 'one thousand two hundred and thirty-four' }).click();
  await expect(reading(page)).toHaveValue('1234 Pa');
  await expect(figure(page, 'mbar')).toHaveText('12.34');
  await reading(page).fill('1,234 Pa');
  await page.getByRole('button', { name: '1.234', exact: true }).click();
  await expect(reading(page)).toHaveValue('1.234 Pa');
  await expect(figure(page, 'mbar')).toHaveText('0.01234');
});

for (const [typed, words] of [
  ['', 'nothing is written here'],
  ['NaN', 'you wrote “NaN”'],
  ['1e309 inHg', 'you wrote “1e309 inHg”'],
  ['9 furlongs', '“furlongs” is not a unit that is known here'],
  ['30 inHg', 'give one from 0 to 29.92 inHg; you gave 30 inHg'],
  ['-5 kPa', 'cannot be below 0; you gave −5 kPa'],
  ['5/0 kPa', 'you wrote “5/0 kPa”'],
  ['9'.repeat(500), 'Give at most 80 characters; there are 500'],
] as const)
  test(`“${typed.slice(0, 12)}” is answered in words beside the field, and stays`, async ({ page }) => {
    await open(page);
    await reading(page).fill(typed);
    await expect(page.locator('#typed-wrong')).toContainText(words);
    await expect(reading(page)).toHaveValue(typed);
    await expect(reading(page)).toHaveAttribute('aria-invalid', 'true');
    await expect(reading(page)).toHaveAttribute('aria-describedby', /typed-wrong/);
    await expect(figure(page, 'mmHg')).toBeHidden();
    await expect(page.getByText('No answer yet.').first()).toBeVisible();
  });

test('a wrong ambient pressure is answered beside its own field', async ({ page }) => {
  await open(page);
  await ambient(page).fill('500');
  await expect(page.locator('#ambient-wrong')).toContainText('from 20 kPa to 120 kPa; you wrote “500”');
  await expect(page.locator('#typed-wrong')).toHaveCount(0);
  await ambient(page).fill('28 inHg');
  await expect(other(page, 'inHg', 1)).toHaveText('19');
});

test('a minus sign leads to gauge pressure in one tap', async ({ page }) => {
  await open(page);
  await reading(page).fill('-0.4 bar');
  await page.getByRole('button', { name: 'Read it as a signed gauge pressure' }).click();
  await expect(page.getByRole('radio', { name: /Gauge pressure/ })).toBeChecked();
  await expect(figure(page, 'kPa')).toHaveText('−40');
  await expect(page.locator('#typed-wrong')).toHaveCount(0);
});

test('a link reproduces the state', async ({ page, context }) => {
  await open(page);
  await reading(page).fill('71,3 kPa');
  await page.getByRole('radio', { name: 'Absolute pressure' }).check();
  await ambient(page).fill('98 kPa');
  await expect.poll(() => page.url()).toContain('ambient=98+kPa');
  expect(new URL(page.url()).hash).toBe('#v=1&q=71,3+kPa&as=absolute&ambient=98+kPa');
  const second = await context.newPage();
  await second.goto(page.url());
  await expect(reading(second)).toHaveValue('71,3 kPa');
  await expect(second.getByRole('radio', { name: 'Absolute pressure' })).toBeChecked();
  await expect(ambient(second)).toHaveValue('98 kPa');
  await expect(other(second, 'kPa', 0)).toHaveText('26,7');
});

test('a link with a bare ambient pressure, in pascals', async ({ page }) => {
  await open(page, '#v=1&q=9+1/2+inHg&as=depression&ambient=95000');
  await expect(reading(page)).toHaveValue('9 1/2 inHg');
  await expect(
    page.getByText('9.5 inHg is 32.17 kPa below an ambient pressure of 95 kPa.').first(),
  ).toBeVisible();
});

test('a link from a newer version is refused in words; unknown keys are named', async ({ page }) => {
  await open(page, '#v=3&q=9+inHg');
  await expect(page.getByRole('alert')).toContainText('written by a newer version');
  await open(page, '#v=1&q=9+inHg&colour=red');
  await page.reload();
  await page.locator('astro-island:not([ssr])').first().waitFor();
  await expect(page.getByRole('alert')).toContainText('“colour” is not known here');
});

test('a figure is copied in one tap, with its unit', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(page);
  await page.getByRole('button', { name: 'Copy 228.6 mmHg, depression' }).click();
  await expect(page.getByRole('status').filter({ hasText: 'Copied: 228.6 mmHg.' })).toBeVisible();
  expect(await copiedText(page)).toBe('228.6 mmHg');
  await page.getByRole('button', { name: 'Copy the link' }).click();
  await expect(page.getByRole('status').filter({ hasText: 'Copied: the link' })).toBeVisible();
  expect(await copiedText(page)).toContain('/unit-converter/#v=1&q=9+inHg');
});

test('without a clipboard the page says so and shows what to select', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(navigator, 'clipboard', { value: undefined });
  });
  await open(page);
  await page.getByRole('button', { name: 'Copy 228.6 mmHg, depression' }).click();
  await expect(
    page.getByRole('status').filter({ hasText: 'Select it here by hand: 228.6 mmHg' }),
  ).toBeVisible();
});

test('without storage it works as before', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get() {
        throw new DOMException('denied', 'SecurityError');
      },
    });
  });
  await open(page);
  await reading(page).fill('212 mmHg');
  await expect(figure(page, 'inHg')).toHaveText('8.346');
});

test('the answer is announced once the typing pauses', async ({ page }) => {
  await open(page);
  // The example is selected by a click, so that typing replaces it.
  await reading(page).click();
  await page.keyboard.type('12 inHg');
  await expect(reading(page)).toHaveValue('12 inHg');
  await expect(
    page.getByRole('status').filter({ hasText: 'That is also 304.8 millimetres of mercury' }),
  ).toHaveCount(1);
});

test('a unit half typed is not called wrong at once', async ({ page }) => {
  await open(page);
  await reading(page).fill('');
  await reading(page).pressSequentially('9 in', { delay: 20 });
  expect(await page.locator('#typed-wrong').count()).toBe(0);
  await expect(page.locator('#typed-wrong')).toContainText('“in” is not a unit');
});

test('nothing is wider than a screen of 320 px, and everything to touch is 44 px high', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await open(page);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
  const small = await page
    .locator('.calculator :is(button, input:not([type="radio"]), select, label:has(input), summary):visible')
    .evaluateAll((all) =>
      all.filter((each) => each.getBoundingClientRect().height < 44).map((each) => each.outerHTML),
    );
  expect(small).toEqual([]);
});

test('on paper the figures stand', async ({ page }) => {
  await open(page);
  await page.emulateMedia({ media: 'print' });
  await expect(figure(page, 'mmHg').getByText('228.6')).toBeVisible();
  await expect(other(page, 'kPa', 1).getByText('70.85')).toBeVisible();
});
