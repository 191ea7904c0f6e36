import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';

const address = './exhaust-gas-in-a-room/';

async function open(page: Page, fragment = '') {
  await page.goto(`${address}${fragment}`);
  await page.locator('astro-island:not([ssr])').first().waitFor();
}

const field = (page: Page, name: string) => page.locator(`[name="${name}"]`);
const figure = (page: Page, id: string) => page.locator(`[data-answer="${id}"] button`);
const limit = (page: Page, id: string) => page.locator(`[data-limit="${id}"] td`);
const lead = (page: Page) => page.locator('.understood');

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });
  test('the worked example stands in the page, cautions first', async ({ page }) => {
    await page.goto(address);
    await expect(page.locator('main > p').first()).toContainText(/past 1200\sppm/u);
    await expect(page.locator('main > p').first()).toContainText(/within 4\smin 50\ss/u);
    await expect(figure(page, 'final')).toHaveText('4664 ppm');
    await expect(limit(page, 'niosh-idlh').first()).toHaveText('4:50');
    await expect(page.locator('svg.strip')).toHaveCount(2);
    const order = await page.evaluate(() => {
      const before = (first: string, second: string) => {
        const [a, b] = [document.querySelector(first), document.querySelector(second)];
        return a && b ? a.compareDocumentPosition(b) === Node.DOCUMENT_POSITION_FOLLOWING : null;
      };
      return [before('main .caution', 'main form'), before('form .caution', 'form .answers')];
    });
    expect(order).toEqual([true, true]);
    await expect(page.locator('main .caution').first()).toContainText('out into the open air at once');
    await expect(page.locator('main .caution').first()).toContainText('fans do not guarantee safety');
  });
});

test('a person enters a room and sees how little it takes', async ({ page }) => {
  await open(page);
  await field(page, 'length').fill('20 ft');
  await field(page, 'width').fill('10 ft');
  await field(page, 'height').fill('8 ft');
  await expect(figure(page, 'room')).toHaveText('45.3 m³');
  await field(page, 'airChanges').fill('1');
  await page.getByRole('radio', { name: 'Carbon monoxide in litres a minute' }).check();
  await field(page, 'flow').fill('0.818 ft3/min');
  await expect(figure(page, 'source')).toHaveText('23.2 L/min');
  await field(page, 'running').fill('10');
  await expect(lead(page)).toContainText('After 10 min');
  await expect(lead(page)).toContainText('immediately dangerous to life or health');
  await expect(page.locator('[data-blood]')).toHaveCount(4);
  await page.getByRole('radio', { name: 'Linear' }).check();
  await expect(page.getByRole('img', { name: /Concentration against time/ })).toContainText('1200 ppm');
  await page.getByRole('radio', { name: 'At rest' }).check();
  await expect(page.getByText('at rest the equation gives').first()).toBeVisible();
});

test('a sealed room is allowed, and only rises', async ({ page }) => {
  await open(page);
  await field(page, 'airChanges').fill('0');
  await expect(figure(page, 'final')).toHaveText('5063 ppm');
  await expect(figure(page, 'steady')).toHaveCount(0);
});

for (const [name, typed, words] of [
  ['length', '', 'nothing is written here'],
  ['airChanges', '-2', 'from 0 to 100; you wrote “-2”'],
  ['displacement', '750 furlongs', '“furlongs” is not a unit'],
  ['carbonMonoxide', '40', 'from 0 to 15; you wrote “40”'],
  ['running', '1e309', 'you wrote “1e309”'],
  ['initial', '9'.repeat(200), 'at most 80 characters; there are 200'],
] as const)
  test(`${name} “${typed.slice(0, 12)}” is answered beside the field, and stays`, async ({ page }) => {
    await open(page);
    await field(page, name).fill(typed);
    await expect(page.locator(`#${name}-wrong`)).toContainText(words);
    await expect(field(page, name)).toHaveValue(typed);
    await expect(field(page, name)).toHaveAttribute('aria-invalid', 'true');
    await expect(page.getByText('No answer yet.').first()).toBeVisible();
    await expect(page.locator('.gas-panels')).toBeHidden();
  });

test('a room too small for the sum is refused in words', async ({ page }) => {
  await open(page);
  await page.getByRole('radio', { name: 'Volume' }).check();
  await field(page, 'volume').fill('1');
  await field(page, 'running').fill('480');
  await expect(page.locator('#running-wrong')).toContainText('more than 100000 ppm');
});

test('the answer goes along with the questions, but never stands over what is below both', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await open(page);
  const edges = () =>
    page.evaluate(() => {
      const box = (part: string) => document.querySelector(part)!.getBoundingClientRect();
      return { top: box('.answered').top, bottom: box('.answered').bottom, below: box('.gas-panels').top };
    });
  await page.evaluate(() => scrollTo(0, 1200));
  expect((await edges()).top).toBeGreaterThan(0);
  for (const y of [1200, 2000, 2600, 3500]) {
    await page.evaluate((to) => scrollTo(0, to), y);
    const { bottom, below } = await edges();
    expect(bottom, `scrolled by ${y}`).toBeLessThan(below);
  }
});

test('a link reproduces the entries, and a reload keeps them', async ({ page, context }) => {
  await open(page);
  await field(page, 'speed').fill('900 rpm');
  await page.getByRole('radio', { name: 'Two-stroke' }).check();
  await page.getByRole('radio', { name: 'Linear' }).check();
  await expect.poll(() => page.url()).toContain('scale=linear');
  const final = await figure(page, 'final').textContent();
  const second = await context.newPage();
  await second.goto(page.url());
  await expect(field(second, 'speed')).toHaveValue('900 rpm');
  await expect(second.getByRole('radio', { name: 'Two-stroke' })).toBeChecked();
  await expect(figure(second, 'final')).toHaveText(final ?? '');
  await page.goto(address);
  await expect(field(page, 'speed')).toHaveValue('900 rpm');
  await page.getByRole('button', { name: 'Back to the example' }).click();
  await expect(figure(page, 'final')).toHaveText('4664 ppm');
});

test('it is filled in with the keyboard alone, and the answer is announced', async ({ page }) => {
  await open(page);
  await field(page, 'running').focus();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('5');
  await page.keyboard.press('Tab');
  await expect(field(page, 'initial')).toBeFocused();
  await expect(figure(page, 'final')).toHaveText('1240 ppm');
  await expect(page.getByRole('status').filter({ hasText: 'Run the engine outdoors' })).toHaveCount(1);
});

/** Entries from the worst to none at all: the words must hold for each. */
const everyKind = [
  '',
  '#v=1&airChanges=0&running=480&roomAs=volume&volume=5000',
  '#v=1&sourceAs=flow&flow=0',
  '#v=1&sourceAs=flow&flow=0.01+L/min&airChanges=60',
  '#v=1&initial=5000&running=1',
];
for (const fragment of everyKind)
  test(`nobody is told that a time indoors is harmless: “${fragment}”`, async ({ page }) => {
    await open(page, fragment);
    // The title of a paper may ask what a “well-ventilated area” is; the page itself may not speak of one.
    await page.locator('main .sources').evaluate((list) => list.toggleAttribute('hidden', true));
    const main = (await page.locator('main').innerText()).replaceAll(/\s+/gu, ' ');
    expect(main).not.toMatch(
      /\bsafe(ly|r)?\b|harmless|no danger|\byou (still )?have\b|\bminutes left\b|\bremaining\b|good air|well[- ]ventilated|\bopen (the|a) (door|window)/iu,
    );
    // “acceptable” and “permission” are said only to be denied.
    expect(main.length).toBeGreaterThan(5000);
    for (const sentence of main.match(/[^.]*\b(acceptable|permission|permits)\b[^.]*\./giu) ?? [])
      expect(sentence).toMatch(/\bno\b|nothing/iu);
    expect(main).toContain('Run the engine outdoors, or on an extractor that is fixed to its pipe.');
    await expect(page.locator('form').getByText('What this does not know')).toHaveCount(4);
    const greens = await page.locator('main *').evaluateAll(
      (all) =>
        all.filter((element) => {
          const style = getComputedStyle(element);
          return [style.color, style.backgroundColor, style.borderTopColor, style.fill, style.stroke].some(
            (colour) => {
              const [red = 0, green = 0, blue = 0] = (colour.match(/[\d.]+/gu) ?? []).map(Number);
              return green > red + 40 && green > blue + 40;
            },
          );
        }).length,
    );
    expect(greens).toBe(0);
  });

test('every panel with a figure has beside it what it does not know', async ({ page }) => {
  await open(page);
  for (const name of [
    'Answer',
    'The air against time',
    'Carboxyhaemoglobin against time',
    'Published limits',
  ])
    await expect(page.getByRole('region', { name }).getByText('What this does not know')).toHaveCount(1);
});

test('nothing is wider than a screen of 320 px, and everything to touch is 44 px high', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await open(page);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
  const small = await page
    .locator('form :is(button, input:not([type="radio"]), label:has(input)):visible')
    .evaluateAll((all) => all.filter((each) => each.getBoundingClientRect().height < 44).length);
  expect(small).toBe(0);
});

test('on paper the figures, plots and cautions stand', async ({ page }) => {
  await open(page);
  await page.emulateMedia({ media: 'print' });
  await expect(figure(page, 'final')).toBeVisible();
  await expect(page.locator('svg.strip').first()).toBeVisible();
  await expect(page.locator('main .caution').first()).toBeVisible();
});
