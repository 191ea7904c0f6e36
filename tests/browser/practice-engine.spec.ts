import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { faultWords, generations, lessons } from '../../src/calculators/index.ts';
import { PracticePerson } from './practice-person.ts';

// Each test opens a fresh profile, which would save the whole site every time.
test.use({ serviceWorkers: 'block' });

const goal = (page: Page) => page.locator('.goal');
async function openingsAtFirst(page: Page): Promise<string[]> {
  const cells = page.locator('.truth-tables table').first().locator('tbody td:nth-child(2)');
  await cells.first().waitFor();
  return cells.allTextContents();
}

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });
  test('lessons, gauge, faults and model stand in the page', async ({ page }) => {
    await page.goto('./practice-engine/');
    await expect(page.locator('.lessons > li')).toHaveCount(lessons.length);
    for (const { title, about } of lessons) {
      await expect(page.getByRole('heading', { name: title })).toBeVisible();
      await expect(page.locator('.lessons').getByText(about)).toBeVisible();
    }
    await expect(page.getByRole('img', { name: /^The dial of the practice engine/ })).toBeVisible();
    await expect(page.getByText(faultWords['air-leak'].name)).toBeVisible();
    expect(await page.locator('main .formula math').count()).toBeGreaterThanOrEqual(7);
    await expect(page.getByRole('button', { name: 'Go to the engine' })).toBeHidden();
    await expect(page.locator('.caution a[href$="/safety/"]')).toBeVisible();
  });
});

test('lesson one, to its end: three good readings, and the page remembers', async ({ page }) => {
  test.setTimeout(120_000);
  const person = new PracticePerson(page);
  await person.open();
  await person.begin('fluttering-needle');
  await expect(goal(page).getByText('not yet')).toHaveCount(2);
  // An open tap lets the needle shake: such a reading does not count.
  await person.holdSpeed();
  await person.press('Write down this reading');
  await person.read(1);
  await person.read(1);
  await person.read(1);
  await expect(goal(page).getByText('not yet')).toHaveCount(1);
  await person.read(2);
  await expect(goal(page).getByRole('heading', { name: 'Goal reached' })).toBeVisible();
  await person.showTruth();
  await expect(page.locator('[data-line="readings"] td')).toHaveText('5');
  await person.press('Another exercise');
  await expect(page.locator('[data-lesson="fluttering-needle"]')).toContainText('reached');
  await page.reload();
  await expect(page.locator('[data-lesson="fluttering-needle"] .aside')).toHaveText('reached');
  await expect(page.locator('[data-lesson="see-saw"] .aside')).toHaveText('not reached yet');
});

for (const generation of generations)
  test(`${generation}: a whole exercise with the bench session beside it, to the truth`, async ({ page }) => {
    test.setTimeout(240_000);
    const person = new PracticePerson(page);
    await person.open(`#v=1&generation=${generation}&carburettors=3&grade=1&seed=7`);
    await page.getByRole('checkbox', { name: /With the bench session/ }).check();
    await person.begin();
    const steps = await person.followAdviceToTheEnd();
    expect(steps).toBeGreaterThan(6);
    await person.showTruth();
    await expect(page.locator('.hold')).toContainText('Within the tolerance');
    await expect(page.locator('[data-line="turns"] td')).toContainText('movement');
    await expect(page.getByText(/^The advice called it done after/)).toBeVisible({ timeout: 60_000 });
    await page.getByRole('button', { name: 'Next step' }).click();
    await expect(page.locator('.replayed')).toContainText(/^Step 2 of \d+\. Read 2: \d+/);
  });

test('a cold engine with a tachometer that is off is warmed up first, and levelled', async ({ page }) => {
  test.setTimeout(240_000);
  const person = new PracticePerson(page);
  await person.open('#v=1&generation=all-adjustable&carburettors=4&grade=3&seed=12');
  await page.getByRole('checkbox', { name: /With the bench session/ }).check();
  await person.begin();
  await expect(page.locator('.practice .bar')).toContainText('cold');
  await person.warmUp();
  expect(await person.seconds()).toBeGreaterThan(60);
  await person.followAdviceToTheEnd();
  await person.showTruth();
  await expect(page.locator('.hold')).toContainText('Within the tolerance');
});

test('a nut that is tight forbids the turn; thread ends where it ends; a reading needs every nut tight', async ({
  page,
}) => {
  const person = new PracticePerson(page);
  await person.open('#v=1&grade=2&fault=end-of-thread');
  await person.begin();
  await person.side('Screws');
  await page.getByRole('button', { name: 'Open by 1/8 turn', exact: true }).click();
  await expect(page.locator('.said')).toContainText('is tight: loosen it first');
  await expect(page.locator('.stand').first()).toContainText('as found');
  await person.press('Loosen the nut');
  await page.getByRole('button', { name: 'Open by 1/8 turn', exact: true }).click();
  await expect(page.locator('.stand').first()).toContainText('1/8 opened');
  for (let turns = 0; turns < 12; turns += 1)
    await page.getByRole('button', { name: 'Open by 1/2 turn', exact: true }).click();
  await expect(page.locator('.said')).toContainText('at the end of its thread');
  await person.side('Gauge');
  await person.press('Write down this reading');
  await expect(page.locator('.said')).toContainText('a nut loose. The bench session takes none of these.');
});

test('stopped, it says so and starts again', async ({ page }) => {
  const person = new PracticePerson(page);
  await person.open();
  await person.begin();
  await person.side('Engine');
  await person.press('Stop the engine');
  await expect(page.locator('#move')).toHaveText('The engine stands still');
  await expect.poll(() => person.rpm()).toBeLessThan(100);
  await page.locator('.practice-move').getByRole('button', { name: 'Start the engine' }).click();
  await expect(page.locator('#move')).toHaveText('Level the set');
  await expect.poll(() => person.rpm()).toBeGreaterThan(500);
});

test('a fault is named and checked; the last lesson is reached without a turn', async ({ page }) => {
  const person = new PracticePerson(page);
  await person.open();
  await person.begin('not-balance');
  await person.holdSpeed();
  await person.press('shut');
  await person.press('Vent');
  await person.wait(2);
  const name = page.getByRole('combobox', { name: 'What is wrong?' });
  await name.selectOption(faultWords['air-leak'].name);
  await person.press('Check it');
  await expect(page.getByText('No, that is not it.')).toBeVisible();
  await name.selectOption(faultWords['trapped-depression'].name);
  await person.press('Check it');
  await expect(page.getByText('Right. With the selector shut')).toBeVisible();
  await expect(goal(page).getByRole('heading', { name: 'Goal reached' })).toBeVisible();
});

test('the same link gives the same exercise in a fresh profile, another number another', async ({
  page,
  browser,
  baseURL,
}) => {
  const person = new PracticePerson(page);
  await person.open();
  await page.getByLabel('Kind of linkage').selectOption('paired-screws');
  await page.getByLabel('Number of the engine').fill('4711');
  await expect.poll(() => page.url()).toContain('seed=4711');
  await person.begin();
  await person.showTruth();
  const first = await openingsAtFirst(page);
  expect(first).toHaveLength(4);

  const context = await browser.newContext({ baseURL: baseURL!, serviceWorkers: 'block' });
  const other = new PracticePerson(await context.newPage());
  await other.open(new URL(page.url()).hash);
  await other.begin();
  await other.showTruth();
  expect(await openingsAtFirst(other.page)).toEqual(first);
  await other.press('Another exercise');
  await other.press('Another engine');
  await expect(other.page.getByLabel('Number of the engine')).not.toHaveValue('4711');
  await other.begin();
  await other.showTruth();
  expect(await openingsAtFirst(other.page)).not.toEqual(first);
  await context.close();
});

for (const [typed, words] of [
  ['1000000', 'Give a number from 0 to 999999; you wrote “1000000”.'],
  ['1.5', 'whole'],
  ['', 'nothing is written here'],
  ['seven', 'you wrote “seven”'],
] as const)
  test(`the number “${typed}” is answered in words beside the field, and stays`, async ({ page }) => {
    const person = new PracticePerson(page);
    await person.open();
    await page.getByLabel('Number of the engine').fill(typed);
    await expect(page.locator('#seed-wrong')).toContainText(words);
    await expect(page.getByLabel('Number of the engine')).toHaveValue(typed);
    await expect(page.getByRole('button', { name: 'Go to the engine' })).toBeHidden();
  });

test('the unit of the gauge is the reader’s, and kept', async ({ page }) => {
  const person = new PracticePerson(page);
  await person.open();
  await page.getByLabel('Unit of the gauge').selectOption('kPa');
  await page.reload();
  await person.begin();
  await expect(page.locator('.practice .dial text').last()).toHaveText('kPa');
  await person.read(1);
  await expect(page.locator('.said')).toHaveText(/^Read 1: \d+\.\d\skPa at \d+\srpm\.$/);
});
