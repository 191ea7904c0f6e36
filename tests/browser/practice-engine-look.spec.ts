import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { smallTargets } from './page-measures.ts';
import { PracticePerson } from './practice-person.ts';
import { axeFindings, watch } from './watch.ts';

test.use({ serviceWorkers: 'block' });

/** Six carburettors, screws between them, perhaps a fault: all that the page can show. */
const hardExercise = '#v=1&generation=paired-screws&carburettors=6&grade=3&fault=hidden';

/** How often the needle is drawn anew in so many milliseconds. */
const needleMoves = (page: Page, ms: number) =>
  page.locator('.practice .needle').evaluate(
    (needle, wait) =>
      new Promise<number>((resolve) => {
        let moves = 0;
        const observer = new MutationObserver((changes) => (moves += changes.length));
        observer.observe(needle, { attributeFilter: ['transform'] });
        setTimeout(() => resolve(moves), wait);
      }),
    ms,
  );

const setVisibility = (page: Page, state: 'hidden' | 'visible') =>
  page.evaluate((value) => {
    Object.defineProperty(document, 'visibilityState', { value, configurable: true });
    document.dispatchEvent(new Event('visibilitychange'));
  }, state);

test('a hidden page pauses, and goes on where it was', async ({ page }) => {
  const person = new PracticePerson(page);
  await person.open();
  await person.begin();
  await person.wait(5);
  await setVisibility(page, 'hidden');
  const before = await person.seconds();
  expect(await needleMoves(page, 1500)).toBeLessThanOrEqual(1);
  expect(await person.seconds()).toBeLessThan(before + 8); // the figures may have been a fifth of a second late
  const hidden = await person.seconds();
  await page.waitForTimeout(1000);
  expect(await person.seconds()).toBe(hidden);
  await setVisibility(page, 'visible');
  await person.wait(5);
});

test('the needle moves with the screen; with reduced motion about twice a second', async ({ page }) => {
  const person = new PracticePerson(page);
  await person.open();
  await person.begin();
  expect(await needleMoves(page, 2000)).toBeGreaterThan(20);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  const calm = await needleMoves(page, 2000);
  expect(calm).toBeGreaterThanOrEqual(2);
  expect(calm).toBeLessThanOrEqual(6);
});

test('paused, nothing passes, and the controls still answer', async ({ page }) => {
  const person = new PracticePerson(page);
  await person.open();
  await person.begin();
  await person.press('Pause');
  await expect(page.locator('.practice .bar')).toContainText('paused');
  const before = await person.seconds();
  await person.press('Fan');
  await page.waitForTimeout(500);
  expect(await person.seconds()).toBe(before);
  await expect(page.locator('.practice .bar')).toContainText('fan on');
});

for (const [width, height] of [
  [320, 640],
  [360, 640],
  [640, 360],
  [1280, 800],
] as const)
  test(`at ${width} × ${height} nothing is too wide or too small, at the engine and in the truth`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    const person = new PracticePerson(page);
    const fits = async (): Promise<void> => {
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      expect(await smallTargets(page)).toEqual([]);
    };
    await person.open(hardExercise);
    await page.getByRole('checkbox', { name: /With the bench session/ }).check();
    await person.press('Go to the engine');
    for (const side of ['Screws', 'Engine', 'Gauge'] as const) {
      await person.side(side);
      await fits();
    }
    await person.showTruth();
    await expect(page.getByText(/^The advice (called|stopped)/)).toBeVisible({ timeout: 60_000 });
    await fits();
  });

for (const colorScheme of ['light', 'dark'] as const)
  test(`axe finds nothing at the engine and in the truth, ${colorScheme}`, async ({ page }) => {
    test.setTimeout(120_000);
    const faults = await watch(page);
    await page.emulateMedia({ colorScheme });
    const person = new PracticePerson(page);
    const finds = async (): Promise<void> => expect((await axeFindings(page)).found).toEqual([]);
    await person.open(hardExercise);
    await page.getByRole('checkbox', { name: /With the bench session/ }).check();
    await person.begin();
    await finds();
    await page.getByRole('checkbox', { name: /^The needle in words/ }).check();
    await person.press('Look at the needle');
    await finds();
    await person.showTruth();
    await expect(page.getByText(/^The advice (called|stopped)/)).toBeVisible({ timeout: 60_000 });
    await finds();
    expect(faults.filter((fault) => !fault.includes('Service Worker registration blocked'))).toEqual([]);
  });

test('on a phone of 360 × 640 a reading needs no scrolling', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 640 });
  const person = new PracticePerson(page);
  await person.open();
  await page.getByRole('checkbox', { name: /With the bench session/ }).check();
  await person.begin();
  for (const part of ['.practice .dial', '.tachometer', '#move', '.nudges >> nth=0', '.gauge-side'])
    expect(
      await page
        .locator(part)
        .boundingBox()
        .then((box) => box!.y + box!.height),
    ).toBeLessThan(640);
  expect(await page.evaluate(() => scrollY)).toBe(0);
});

test('in words, by keyboard alone: lesson one to its end', async ({ page }) => {
  test.setTimeout(120_000);
  const person = new PracticePerson(page);
  await person.open();
  const tabTo = async (name: string): Promise<void> => {
    for (let tabs = 0; tabs < 150; tabs += 1) {
      await page.keyboard.press('Tab');
      const here = await page.evaluate(() => {
        const at = document.activeElement;
        return at?.getAttribute('aria-label') ?? at?.closest('label')?.textContent ?? at?.textContent ?? '';
      });
      if (here.trim().replaceAll(/\s+/gu, ' ').startsWith(name)) return;
    }
    throw new Error(`no way to “${name}” by the tab key`);
  };
  const press = async (name: string): Promise<void> => {
    await tabTo(name);
    await page.keyboard.press('Enter');
  };
  /** Presses a button; what was told since then, once the needle has come to rest. */
  const pressAndSettle = async (name: string): Promise<string> => {
    await tabTo(name);
    await page.evaluate(() => {
      document.querySelector('.said')!.setAttribute('data-heard', '');
    });
    await page.keyboard.press('Enter');
    const heard = page.locator('.said');
    await expect(heard).toHaveAttribute('data-heard', /(swinging|still|moving).*\srpm\./u, {
      timeout: 20_000,
    });
    return (await heard.getAttribute('data-heard')) ?? '';
  };
  await tabTo('The needle in words');
  await page.keyboard.press('Space');
  await press('Begin lesson one');
  await expect(page.locator('.practice .dial')).toHaveCount(0);
  await press('Time ×16');
  await press('Look at the needle');
  await expect(page.locator('.said')).toContainText(/About \d+\smmHg, swinging \d+ either way\. \d+\srpm\./);
  await page.locator('.said').evaluate((said) => {
    const hear = (): void =>
      said.setAttribute('data-heard', `${said.getAttribute('data-heard') ?? ''}\n${said.textContent}`);
    new MutationObserver(hear).observe(said, { childList: true });
  });

  await tabTo('Tap');
  for (let shut = 0; shut < 85; shut += 1) await page.keyboard.press('ArrowLeft');
  await expect(page.locator('.said')).toContainText(/swinging \d either way|hardly moving/, {
    timeout: 20_000,
  });
  for (let tries = 0; tries < 40; tries += 1) {
    const off = (await page.locator('.tachometer .aside').textContent()) ?? '';
    if (off === 'speed is right') break;
    const much = Number.parseInt(off, 10) >= 80 ? 'much' : 'a little';
    await pressAndSettle(`Throttle ${off.includes('slow') ? 'up' : 'down'}, ${much}`);
  }
  for (const carburettor of [1, 2, 1]) {
    await pressAndSettle(`Carburettor ${carburettor}`);
    expect(await pressAndSettle('Write down this reading')).toContain(`Read ${carburettor}: `);
  }
  await expect(page.getByRole('heading', { name: 'Goal reached' })).toBeVisible();
});
