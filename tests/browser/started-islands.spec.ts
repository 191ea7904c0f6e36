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

/** The parts that an island names, and those of them that the page asks for as it is opened. */
async function namedParts(page: Page) {
  const path = (part: string) => new URL(part, page.url()).pathname;
  const named = (await page.locator('astro-island').getAttribute('data-parts'))!.split(' ').map(path);
  const links = await page
    .locator('link[rel=modulepreload], script[type=module][src]')
    .evaluateAll((all) => all.map((one) => one.getAttribute('href') ?? one.getAttribute('src')!));
  return { named, atOnce: named.filter((part) => links.map(path).includes(part)) };
}

test('a calculator asks for its own parts when it is first used, and for all of them together', async ({
  page,
}) => {
  const { asked, release } = await holdParts(page);
  await page.goto('./ambient-pressure/', { waitUntil: 'commit' });
  const height = page.getByLabel('Height above the sea');
  await expect(height).toBeVisible();
  const { named, atOnce: shared } = await namedParts(page);
  expect(shared.length).toBeGreaterThan(1);
  await expect.poll(() => shared.filter((part) => !asked.includes(part))).toEqual([]);
  const own = named.filter((part) => !shared.includes(part));
  expect(own.length).toBeGreaterThan(0);
  expect(own.filter((part) => asked.includes(part))).toEqual([]);

  await height.focus();
  await expect.poll(() => named.filter((part) => !asked.includes(part))).toEqual([]);
  release();
  await height.fill('1000 m');
  await expect(verdict(page)).toContainText('898.8 hPa');
});

test('the unit converter asks for all its parts as it is opened, and for the words of problems when it is used', async ({
  page,
}) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(new URL(request.url()).pathname));
  const isWords = (part: string) => part.includes('say-problem');
  await page.goto('./unit-converter/', { waitUntil: 'networkidle' });
  const { named, atOnce } = await namedParts(page);
  expect(named.length).toBeGreaterThan(3);
  expect(atOnce.toSorted()).toEqual(named.toSorted());
  expect(named.filter((part) => !asked.includes(part))).toEqual([]);
  expect(asked.filter(isWords)).toEqual([]);
  await reading(page).focus();
  await expect.poll(() => asked.filter(isWords).length).toBe(1);
});

test('an entry is refused before the words of problems come, and then in words; so is a link', async ({
  page,
}) => {
  let release = (): void => undefined;
  const released = new Promise<void>((resolve) => (release = resolve));
  await page.route(/say-problem/u, async (route) => {
    await released;
    await route.continue();
  });
  await page.goto('./unit-converter/#v=1&q=9&as=sideways');
  await reading(page).fill('9 furlongs');
  const beside = page.locator('#typed-wrong');
  await expect(beside).toHaveText('This cannot be read. One moment: the words for it are on their way.');
  await expect(verdict(page)).toContainText('No answer yet.');
  release();
  await expect(beside).toContainText('“furlongs” is not a unit that is known here.');
  await expect(page.getByRole('alert')).toContainText('This link: give depression, gauge');
  await expect(page.locator('.unseen[role=status]')).toContainText('“furlongs” is not a unit');
  await expect(reading(page)).toHaveValue('9 furlongs');
});

test('words of problems that do not arrive are said to be missing, and the calculator goes on', async ({
  page,
}) => {
  await page.route(/say-problem/u, (route) => route.abort());
  await page.goto('./unit-converter/');
  await reading(page).fill('9 furlongs');
  await expect(page.locator('#typed-wrong')).toHaveText(
    'This cannot be read, and the words for it did not arrive. Load the page again once there is a network.',
  );
  await expect(reading(page)).toHaveValue('9 furlongs');
  await reading(page).fill('10 inHg');
  await expect(millimetres(page)).toHaveText('254');
  await expect(page.locator('#typed-wrong')).toHaveCount(0);
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
