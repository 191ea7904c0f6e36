import { expect, test } from '@playwright/test';
import { serveFolder } from '../../tools/serve.mjs';
import { folder } from './built-pages.ts';
import { codeOn, line, openList } from './checklist-sheet.ts';
import { smallTargets } from './page-measures.ts';
import { axeFindings, watch } from './watch.ts';
import { copiedText } from './copied-text.ts';

const four = '#v=1&g=all-adjustable&n=4';
const club = '#v=1&g=paired-screws&n=4&h=Spring+evening&t=Tappets+first.%0ACoffee+at+eight.';

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });
  test('the list for four, all adjustable, stands in the page, whole', async ({ page }) => {
    await page.goto('./checklists/');
    await expect(page.getByRole('heading', { name: 'Four carburettors, an adjuster on each' })).toBeVisible();
    await expect(page.locator('noscript p')).toBeVisible();
    await expect(page.getByRole('heading', { name: 'Which list?' })).toBeHidden();
    await expect(page.locator('.check li')).toHaveCount(25);
    await expect(page.locator('.check li').first()).toHaveText(
      /Exhaust\s*outdoors, or extractor on the pipe/,
    );
    await expect(page.locator('.hold').filter({ hasText: 'or the engine is not started' })).toBeVisible();
    await expect(page.getByRole('button')).toHaveCount(0);
  });
});

test('a kind and a number open their list; the way back leads to all of them', async ({ page }) => {
  await openList(page, '');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Checklists');
  const links = page.locator('.list-choice dd a');
  await expect(links).toHaveCount(35);
  await page.getByRole('link', { name: '6, Screws between neighbours' }).click();
  const title = page.getByRole('heading', { level: 1 });
  await expect(title).toHaveText('Six carburettors, screws between neighbours');
  await expect(title).toBeFocused();
  await expect(page).toHaveTitle('Checklist: Six carburettors, screws between neighbours · Evendraw');
  await expect(page.getByRole('heading', { name: 'Which list?' })).toBeHidden();
  await expect(page.locator('.record tbody tr')).toHaveCount(6);
  await page.getByRole('link', { name: 'The tools list' }).click();
  await expect(title).toHaveText('Tools for six carburettors, screws between neighbours');
  await expect(page.getByText('Hoses, 6').first()).toBeVisible();
  await page.goBack();
  await expect(title).toHaveText('Six carburettors, screws between neighbours');
  await page.goBack();
  await expect(title).toHaveText('Checklists');
  await expect(page).toHaveTitle('Checklists · Evendraw');
});

test('every link of the page opens the list that it names', async ({ page }) => {
  await openList(page, '');
  const addresses = await page
    .locator('.list-choice dd a')
    .evaluateAll((links) => links.map((link) => new URL((link as HTMLAnchorElement).href).hash));
  const titles = new Set<string>();
  for (const hash of addresses) {
    await page.evaluate((next) => (location.hash = next), hash);
    const { g, n } = Object.fromEntries(new URLSearchParams(hash.slice(1)));
    await expect(page.locator('.sheet-foot b')).toHaveText(`${g}, ${n}`);
    titles.add(await page.getByRole('heading', { level: 1 }).innerText());
  }
  expect(titles.size).toBe(35);
});

test('ticks are kept on this device, list by list, until somebody starts afresh', async ({ page }) => {
  await openList(page, four);
  const ticked = page.locator('.check input:checked');
  await expect(page.getByRole('button', { name: 'Start afresh' })).toBeDisabled();
  const answer = await page.locator('#answer-exhaust').boundingBox();
  await page.mouse.click(answer!.x + answer!.width - 5, answer!.y + 5); // the answer is part of the target
  await line(page, 'Fuel and fire').click();
  await line(page, 'Warmed up').click();
  await line(page, 'Fuel and fire').click();
  await line(page, 'Needle').click();
  await expect(ticked).toHaveCount(3);
  await expect(page.getByText('These ticks are of')).toHaveCount(0);

  await page.reload();
  await expect(ticked).toHaveCount(3);
  await expect(page.getByText('Start afresh before a new session.').first()).toBeVisible();
  await page.evaluate(() => (location.hash = '#v=1&g=all-adjustable&n=2'));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Two carburettors');
  await expect(ticked).toHaveCount(0);
  await page.goBack();
  await expect(ticked).toHaveCount(3);

  await page.getByRole('button', { name: 'Start the block again: During, engine warm' }).click();
  await expect(ticked).toHaveCount(1);
  await expect(page.getByRole('checkbox', { name: 'Exhaust', exact: true })).toBeChecked();
  await page.getByRole('button', { name: 'Start afresh' }).click();
  await expect(ticked).toHaveCount(0);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Four carburettors');
  await expect(ticked).toHaveCount(0);
});

test('ticks of another version of the list are not taken over', async ({ page }) => {
  await openList(page, four);
  await line(page, 'Exhaust').click();
  await page.evaluate(() => {
    const key = 'evendraw-form-checklist-all-adjustable-4';
    const kept = JSON.parse(localStorage.getItem(key) ?? '{}') as Record<string, string>;
    localStorage.setItem(key, JSON.stringify({ ...kept, version: '0.9' }));
  });
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Four carburettors');
  await expect(page.locator('.check input:checked')).toHaveCount(0);
});

test('a club’s link opens filled in, with its words marked as its own', async ({ page }) => {
  await openList(page, club);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Spring evening');
  await expect(page.locator('.sheet-for')).toHaveText('Four carburettors, screws between neighbours');
  await expect(page.getByText('Notes by whoever made this link').first()).toBeVisible();
  await expect(page.locator('.said-by-club p')).toHaveText(['Tappets first.', 'Coffee at eight.']);
  await expect(page.locator('.sheet-foot')).toContainText('Heading and notes are by whoever made the link.');
});

test('markup, script and signs that turn words round are words, or gone', async ({ page }) => {
  const faults = await watch(page);
  const hostile = '<img src=x onerror=alert(1)>\u202E\u0000<script>alert(2)</script>';
  page.on('dialog', (dialog) => void dialog.dismiss().then(() => faults.push('a dialog')));
  await openList(
    page,
    `#${new URLSearchParams({ v: '1', g: 'all-adjustable', n: '4', h: hostile, t: hostile })}`,
  );
  const said = '<img src=x onerror=alert(1)> <script>alert(2)</script>';
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(said);
  await expect(page.locator('.said-by-club p')).toHaveText(said);
  expect(await page.locator('main img, main article script').count()).toBe(0);
  expect(faults).toEqual([]);
});

for (const [state, words, opened] of [
  ['#v=2&g=all-adjustable&n=4', 'written by a newer version of this site', false],
  ['#v=1&g=two-strokes&n=4', 'you wrote “two-strokes”', false],
  ['#v=1&g=all-adjustable&n=NaN', 'you wrote “NaN”', false],
  ['#v=1&g=all-adjustable', 'names no list that is here', false],
  [
    `#v=1&g=all-adjustable&n=4&t=${'x'.repeat(400)}`,
    'Notes of this link: give at most 240 characters; there are 400.',
    true,
  ],
  ['#v=1&g=all-adjustable&n=4&colour=red', '“colour” is not known here and was ignored', true],
  ['#v=1&g=all-adjustable&n=4&p=0.9', 'is version “0.9” of this list', true],
] as const)
  test(`a link such as ${state.slice(0, 40)} is answered in words`, async ({ page }) => {
    await openList(page, state);
    await expect(page.getByRole('alert')).toContainText(words);
    await expect(page.getByRole('heading', { name: 'Which list?' })).toBeVisible({ visible: !opened });
    await expect(page.getByRole('heading', { name: 'Four carburettors, an adjuster on each' })).toBeVisible();
  });

test('by keyboard alone: to the text, tick, and the list stays open', async ({ page }) => {
  await openList(page, four);
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter'); // skips to the text
  await expect(page).toHaveURL(/#main$/);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Four carburettors, an adjuster on each');
  const exhaust = page.getByRole('checkbox', { name: 'Exhaust', exact: true });
  for (let stops = 0; stops < 12; stops += 1) {
    if (await exhaust.evaluate((box) => box === document.activeElement)) break;
    await page.keyboard.press('Tab');
  }
  await page.keyboard.press('Space');
  await expect(exhaust).toBeChecked();
  await expect(exhaust).toHaveAccessibleDescription('outdoors, or extractor on the pipe');
});

test('the link is copied, and the code says the same and which version is printed', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openList(page, club);
  const page4 = new URL('./checklists/', page.url().replace(/checklists.*/, '')).href;
  await page.getByRole('button', { name: 'Copy the link' }).click();
  await expect(page.getByRole('status').filter({ hasText: 'Copied: the link to this list.' })).toBeVisible();
  expect(await copiedText(page)).toBe(page4 + club);
  expect(await codeOn(page)).toBe(`${page4}${club}&p=1.0`);
});

test('a list that is open has no finding, light or dark, and fits from 320 px on', async ({ page }) => {
  const faults = await watch(page);
  await openList(page, club);
  await line(page, 'Exhaust').click();
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect((await axeFindings(page)).found, colorScheme).toEqual([]);
    // A camera needs dark on light, in the dark too.
    const colours = await page
      .locator('svg.qr')
      .evaluate((svg) => [
        getComputedStyle(svg).backgroundColor,
        getComputedStyle(svg.querySelector('path')!).fill,
      ]);
    expect(colours).toEqual(['rgb(252, 249, 241)', 'rgb(27, 24, 21)']);
  }
  for (const width of [320, 412, 1280]) {
    await page.setViewportSize({ width, height: 800 });
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow, `${width} px`).toBeLessThanOrEqual(0);
    expect(await smallTargets(page), `${width} px`).toEqual([]);
  }
  expect(faults).toEqual([]);
});

test('after one visit to any page a club’s link opens filled in with the server stopped', async ({
  page,
}) => {
  const { address, close } = await serveFolder({ folder });
  await page.goto(`${address}for-clubs/`);
  await expect(page.locator('#offline')).toHaveText(/^Saved for use without a network/, { timeout: 30_000 });
  await close();
  await page.goto(`${address}checklists/${club}`);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Spring evening');
  await expect(page.locator('.said-by-club p').last()).toHaveText('Coffee at eight.');
  await line(page, 'Exhaust').click();
  await page.reload();
  await expect(page.getByRole('checkbox', { name: 'Exhaust', exact: true })).toBeChecked();
});
