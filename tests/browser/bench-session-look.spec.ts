import { expect, test, type Page } from '@playwright/test';
import { randomFrom } from '../engine/random.ts';
import { BenchPerson } from './bench-person.ts';
import { faintWords, smallTargets, wordsOn } from './page-measures.ts';
import { axeFindings, watch } from './watch.ts';

const smallestKey = 64; // px: a glove or a knuckle at the running engine

const submit = async (page: Page, reading: string): Promise<void> => {
  await page.locator('#reading').fill(reading);
  await page.locator('.entry [type=submit]').click();
};

const start = (page: Page) => page.getByRole('button', { name: 'Start the session' }).first().click();
const even = '#v=1&g=all-adjustable&n=2&o=a&r=230/230/230,231/230/230';
const uneven = '#v=1&g=all-adjustable&n=4&o=a&r=212,248,251,187&t=1/1,1/1,1/1,0.2/1';

/** The moments of the bench, each from its link. */
const moments: Readonly<Record<string, { link: string; reach: (page: Page) => Promise<void> }>> = {
  'the start': { link: '', reach: async () => {} },
  'the set-up': {
    link: '',
    reach: async (page) => page.getByRole('button', { name: 'Set up a session' }).click(),
  },
  'a set-up with errors': { link: '#v=1&n=9&tol=x', reach: start },
  'nothing read yet': { link: '#v=1&g=fixed-reference&n=4&fixed=2', reach: start },
  'a turn': { link: uneven, reach: start },
  'another amount': {
    link: uneven,
    reach: async (page) => {
      await start(page);
      await page.locator('.amount').click();
    },
  },
  'a reading that is no reading': {
    link: uneven,
    reach: async (page) => {
      await start(page);
      await submit(page, '9 furlongs');
    },
  },
  'a correction': {
    link: uneven,
    reach: async (page) => {
      await start(page);
      await page.getByRole('button', { name: 'Correct event 2' }).click();
    },
  },
  done: { link: even, reach: start },
  'the sign-off': {
    link: even,
    reach: async (page) => {
      await start(page);
      await page.getByRole('button', { name: 'Start the sign-off round' }).click();
      await submit(page, '230');
      await submit(page, '230');
    },
  },
  'the record': {
    link: even,
    reach: async (page) => {
      await start(page);
      await page.getByRole('button', { name: 'End without signing off' }).click();
      await page.getByRole('heading', { name: 'Record of a bench session' }).waitFor();
    },
  },
};

for (const [name, { link, reach }] of Object.entries(moments))
  test(`${name}: fits, can be touched, read and heard, and keeps the policy`, async ({ page }) => {
    const faults = await watch(page);
    const person = new BenchPerson(page, randomFrom(1), { keys: false });
    await page.setViewportSize({ width: 320, height: 640 });
    await person.open(`./bench-session/${link}`);
    await reach(page);
    for (const width of [320, 412, 1280]) {
      await page.setViewportSize({ width, height: 800 });
      const overflow = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(overflow, `sideways scroll at ${width} px`).toBeLessThanOrEqual(0);
      expect(await smallTargets(page), `targets at ${width} px`).toEqual([]);
      for (const box of await page
        .locator('.entry .key')
        .evaluateAll((keys) => keys.map((key) => key.getBoundingClientRect().toJSON())))
        expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(smallestKey - 0.01);
    }
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(faintWords(await wordsOn(page)), colorScheme).toEqual([]);
      const { found, passes } = await axeFindings(page);
      expect(found, colorScheme).toEqual([]);
      expect(passes).toBeGreaterThan(5);
    }
    expect(faults).toEqual([]);
  });

for (const [width, height] of [
  [320, 640],
  [360, 640],
  [412, 839],
] as const)
  test(`move, reading and all keys fit into ${width} × ${height}`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    const person = new BenchPerson(page, randomFrom(1), { keys: false });
    await person.open(`./bench-session/${uneven}`);
    await start(page);
    const last = await page.locator('.entry .key').last().boundingBox();
    expect(last!.y + last!.height).toBeLessThanOrEqual(height);
  });

test('a session is done by keyboard alone', async ({ page }) => {
  const person = new BenchPerson(page, randomFrom(1), { keys: false });
  await person.open('./bench-session/#v=1&g=all-adjustable&n=2');
  await page.getByRole('button', { name: 'Start the session' }).first().focus();
  await page.keyboard.press('Enter');
  await page.locator('#reading').focus();
  await page.keyboard.type('230');
  await page.keyboard.press('Enter');
  await expect(page.locator('#reading')).toBeFocused();
  await page.keyboard.type('231');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Start the sign-off round' })).toBeFocused();
  await page.keyboard.press('Enter');
  for (const reading of ['231', '230']) {
    await page.locator('#reading').focus();
    await page.keyboard.type(reading);
    await page.keyboard.press('Enter');
  }
  await expect(page.getByRole('button', { name: 'Sign off', exact: true })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Record of a bench session' })).toBeFocused();
});

test('the record prints on one or two sheets, with the log and without the keys', async ({ page }) => {
  const person = new BenchPerson(page, randomFrom(1), { keys: false });
  await person.open(`./bench-session/${uneven}`);
  await start(page);
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.entry .key').first()).toBeHidden();
  await expect(page.locator('.log .entries > li').first()).toBeVisible();
  for (const format of ['A4', 'Letter']) {
    const sheet = (await page.pdf({ format })).toString('latin1');
    const pages = sheet.match(/\/Type\s*\/Page\b/gu)?.length ?? 0;
    expect(pages).toBeGreaterThanOrEqual(1);
    expect(pages).toBeLessThanOrEqual(2);
  }
});
