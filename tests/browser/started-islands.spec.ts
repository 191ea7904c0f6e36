import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { copiedText } from './copied-text.ts';

// The worker would bring from its copy what a test holds back.
test.use({ serviceWorkers: 'block' });

const isPart = (address: string) => /\/_astro\/.*\.js$/.test(address);

/** Holds back every script until `release` is called; `asked` lists those that were asked for. */
async function holdParts(page: Page) {
  const asked: string[] = [];
  let release = (): void => undefined;
  const released = new Promise<void>((resolve) => (release = resolve));
  await page.route(
    (address) => isPart(address.pathname),
    async (route) => {
      asked.push(new URL(route.request().url()).pathname);
      await released;
      await route.continue();
    },
  );
  return { asked, release };
}

const reading = (page: Page) => page.getByLabel('Reading', { exact: true });
const verdict = (page: Page) => page.locator('.understood').first();
const millimetres = (page: Page) => page.locator('tr[data-unit="mmHg"] .answer').first();

test('a calculator asks for its own parts when it is first used, and for all of them together', async ({
  page,
}) => {
  const { asked, release } = await holdParts(page);
  await page.goto('./unit-converter/', { waitUntil: 'commit' });
  await expect(millimetres(page)).toHaveText('228.6');
  const path = (part: string) => new URL(part, page.url()).pathname;
  const named = (await page.locator('astro-island').getAttribute('data-parts'))!.split(' ').map(path);
  const ofAll = await page
    .locator('link[rel=modulepreload]')
    .evaluateAll((links) => links.map((link) => (link as HTMLLinkElement).href));
  const shared = ofAll.map(path);
  expect(shared.length).toBeGreaterThan(1);
  expect(shared.filter((part) => !named.includes(part))).toEqual([]);
  await expect.poll(() => shared.filter((part) => !asked.includes(part))).toEqual([]);
  const own = named.filter((part) => !shared.includes(part));
  expect(own.length).toBeGreaterThan(0);
  expect(own.filter((part) => asked.includes(part))).toEqual([]);

  await reading(page).focus();
  await expect.poll(() => named.filter((part) => !asked.includes(part))).toEqual([]);
  release();
  await reading(page).fill('10 inHg');
  await expect(millimetres(page)).toHaveText('254');
});

test('what is typed, chosen and marked before the parts come is kept and answered', async ({ page }) => {
  const { release } = await holdParts(page);
  await page.goto('./unit-converter/', { waitUntil: 'commit' });
  await reading(page).click();
  await page.keyboard.type('10');
  await page.getByLabel('Unit, if none is typed').selectOption('kPa');
  await expect(reading(page)).toHaveValue('10');
  release();
  await expect(page.locator('tr[data-unit="Pa"] .answer').first()).toHaveText('10000');
  await page.keyboard.press('Control+Home');
  await expect(reading(page)).toHaveValue('10');

  const other = await page.context().newPage();
  const held = await holdParts(other);
  await other.goto('./balance-analyser/', { waitUntil: 'commit' });
  await other.getByLabel(/^Readings, in the order/).focus();
  await other.keyboard.press('ControlOrMeta+a');
  held.release();
  await other.keyboard.type('1: 240, 2: 240, 3: 240, 4: 240');
  await expect(other.getByLabel(/^Readings, in the order/)).toHaveValue('1: 240, 2: 240, 3: 240, 4: 240');
  await expect(verdict(other)).toContainText('Within 20 mmHg');
});

test('ticks that are set before the parts come stand afterwards, and after a reload', async ({ page }) => {
  const { release } = await holdParts(page);
  await page.goto('./checklists/', { waitUntil: 'commit' });
  const ticks = page.locator('.sheet input[type="checkbox"]');
  for (const place of [0, 1, 3]) await page.locator('.sheet li label').nth(place).click();
  release();
  await expect(page.getByRole('button', { name: /^Start the block again/ }).first()).toBeEnabled();
  for (const [place, done] of [true, true, false, true, false].entries())
    await expect(ticks.nth(place)).toBeChecked({ checked: done });
  await page.reload();
  for (const [place, done] of [true, true, false, true, false].entries())
    await expect(ticks.nth(place)).toBeChecked({ checked: done });
});

test('a search that is typed before the parts come finds', async ({ page }) => {
  const { release } = await holdParts(page);
  await page.goto('./search/', { waitUntil: 'commit' });
  await page.getByLabel('A few words or a question').fill('depression');
  release();
  await expect(page.locator('.found a').first()).toBeVisible();
  await expect(page.getByLabel('A few words or a question')).toHaveValue('depression');
});

test('a part of the bench that does not arrive is said in words, and comes when it is asked for again', async ({
  page,
}) => {
  const setUp = (address: URL) => /\/_astro\/SetUp\..*\.js$/.test(address.pathname);
  await page.goto('./bench-session/');
  await page.route(setUp, (route) => route.abort());
  await page.getByRole('button', { name: 'Set up a session' }).click();
  await expect(page.getByRole('alert')).toContainText('This part of the page did not arrive.');
  await page.unroute(setUp);
  await page.getByRole('button', { name: 'Try once more' }).click();
  await expect(page.getByRole('button', { name: 'Start the session' }).first()).toBeVisible();
});

test('a figure that is pressed before the parts come is copied, and a link leads where the entries say', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const { release } = await holdParts(page);
  await page.goto('./unit-converter/', { waitUntil: 'commit' });
  await page.getByRole('button', { name: 'Copy 228.6 mmHg, depression' }).click();
  release();
  await expect(page.locator('.copied').first()).toContainText('Copied');
  expect(await copiedText(page)).toContain('228.6');

  const other = await context.newPage();
  const held = await holdParts(other);
  await other.goto('./ambient-pressure/', { waitUntil: 'commit' });
  await other.getByLabel('Height above the sea').fill('1000 m');
  await other.getByRole('link', { name: 'Convert readings under this pressure' }).click();
  held.release();
  await expect(other).toHaveURL(/unit-converter\/#.*89\.8/);
});

test('parts that do not arrive are said in words, and what was typed stays', async ({ page }) => {
  await page.route(
    (address) => isPart(address.pathname),
    (route) => route.abort(),
  );
  await page.goto('./unit-converter/');
  await reading(page).fill('10 inHg');
  await expect(page.getByRole('alert')).toContainText('A part of this page did not arrive', {
    timeout: 30_000,
  });
  await expect(reading(page)).toHaveValue('10 inHg');
});
