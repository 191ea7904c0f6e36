import { expect, test, type Page } from '@playwright/test';
import { smallTargets } from './page-measures.ts';
import { axeFindings, watch } from './watch.ts';

/** Where each explorable stands, what it says before it is touched, and a slider with what it then says. */
const explorables = [
  {
    id: 'turn-one-screw',
    page: 'the-adjusting-cycle',
    finding: 'One screw moves every reading.',
    said: 'carburettor 1 reads 25 mmHg lower, and carburettors 2, 3 and 4 read 7 to 10 mmHg higher.',
    slider: 'Turned by',
    keys: ['End'],
    heard: '1/2 turn open',
    then: 'opened by 1/2 turn, the speed brought back to 2100 rpm: carburettor 1 reads 47 mmHg lower',
  },
  {
    id: 'most-thread-level',
    page: 'running-out-of-thread',
    finding: 'every adjuster keeps at least 1/2 turn either way.',
    said: 'The scarcest thread has 1/2 turn left: adjuster 1, to open.',
    slider: 'All adjusters together',
    keys: ['Home'],
    heard: '1 turn further shut',
    then: 'It does not fit: adjuster 4 lacks 1 1/4 turns to close.',
  },
  {
    id: 'flutter-and-verdict',
    page: 'when-to-stop',
    finding: 'Flutter moves no reading, but it decides what the readings are worth.',
    said: 'the set is within the tolerance. The chance that it is within 20 mmHg is 100 %.',
    slider: 'Swing of the needle, each way',
    keys: ['End'],
    heard: '20 mmHg',
    then: 'nobody can tell whether the set is within the tolerance',
  },
  {
    id: 'altitude-and-reading',
    page: 'altitude-and-weather',
    finding: 'Thinner air leaves less to draw on: 250 mmHg at sea level becomes 124 to 209 mmHg at 1500 m.',
    said: 'At 1500 m, in 846 hPa of air, the same engine shows 209 mmHg',
    slider: 'Height above the sea',
    keys: ['Home'],
    heard: '0 m',
    then: 'At sea level, in 1013 hPa of air, the gauge shows 250 mmHg.',
  },
  {
    id: 'absolute-and-depression',
    page: 'depression-gauge-absolute',
    finding: 'A depression is counted from the air outside.',
    said: 'the gauge shows a depression of 335 hPa, which is 251 mmHg.',
    slider: 'Air outside',
    keys: ['ArrowLeft', 'ArrowLeft', 'ArrowLeft'],
    heard: '1000 hPa',
    then: 'the gauge shows a depression of 320 hPa, which is 240 mmHg.',
  },
  {
    id: 'room-and-exhaust',
    page: 'exhaust-gas-indoors',
    finding: 'letting air in buys seconds, and no permission.',
    said: 'It is past 200 ppm (NIOSH: ceiling at work) after 49 s.',
    slider: 'Changes of air',
    keys: ['End'],
    heard: '30 an hour',
    then: 'By this sum it never reaches 1200 ppm (NIOSH: immediately dangerous to life or health), which is no permission.',
  },
  {
    id: 'mean-or-two-closest',
    page: 'all-adjustable',
    finding: 'One carburettor that is far out pulls the mean with it',
    said: 'To the mean, 234 mmHg, all four have to be turned.',
    slider: 'Carburettor 4 reads',
    keys: ['End'],
    heard: '350 mmHg',
    then: 'To the mean, 274 mmHg, all four have to be turned.',
  },
  {
    id: 'learned-effect',
    page: 'method',
    finding:
      'It starts at 43 to 454 mmHg a turn; one small turn that has been read narrows that to 62 to 150 mmHg.',
    said: 'After five turns, the last of 13/60 turn,',
    slider: 'Turns that have been read',
    keys: ['Home', 'ArrowRight'],
    heard: '1',
    then: 'After one turn, the last of 1/4 turn, the effect is believed to be about 96 mmHg a turn',
  },
] as const;

async function show(page: Page, { id, page: slug }: (typeof explorables)[number]) {
  await page.goto(`./${slug}/`);
  const part = page.locator(`#${id}`);
  await part.scrollIntoViewIfNeeded();
  await page.waitForFunction(
    (name) => document.getElementById(name)?.closest('astro-island:not([ssr])') !== null,
    id,
  );
  return part;
}

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });
  for (const each of explorables)
    test(`${each.id} says its finding, and offers nothing that would not answer`, async ({ page }) => {
      await page.goto(`./${each.page}/`);
      const part = page.locator(`#${each.id}`);
      await expect(part).toContainText(each.finding);
      await expect(part.getByRole('status')).toContainText(each.said);
      await expect(part.getByRole('img').first()).toBeVisible();
      await expect(part.getByRole('slider')).toHaveCount(0);
      await expect(part.getByRole('button')).toHaveCount(0);
    });
});

for (const each of explorables) {
  test(`${each.id}: by keyboard alone, a change moves figure and words`, async ({ page }) => {
    const faults = await watch(page);
    const part = await show(page, each);
    const figure = part.getByRole('img').first();
    const before = await figure.innerHTML();
    const slider = part.getByRole('slider', { name: each.slider, exact: true });
    await slider.focus();
    for (const key of each.keys) await page.keyboard.press(key);
    await expect(slider).toHaveAttribute(
      'aria-valuetext',
      each.heard.replaceAll(/ (?=mmHg|hPa|m$|turn)/g, '\u00a0'),
    );
    await expect(part.getByRole('status')).toContainText(each.then);
    expect(await figure.innerHTML()).not.toBe(before);
    expect(await figure.getAttribute('aria-label')).not.toMatch(/NaN|undefined|^$/u);
    expect(faults).toEqual([]);
  });

  test(`${each.id} has no finding of axe, fits a small phone, and a finger`, async ({ page }) => {
    await page.setViewportSize({ width: 320, height: 640 });
    await show(page, each);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      const { found, passes } = await axeFindings(page, `#${each.id}`);
      expect(found, colorScheme).toEqual([]);
      expect(passes).toBeGreaterThan(5);
    }
    const box = await page.locator(`#${each.id}`).boundingBox();
    expect(box!.x + box!.width).toBeLessThanOrEqual(320);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
    expect(await smallTargets(page, `#${each.id}`)).toEqual([]);
  });
}

test('one screw: another linkage has other screws, and a speed left to itself is told', async ({ page }) => {
  const part = await show(page, explorables[0]);
  await part.getByLabel('screws between neighbours').check();
  await part.getByLabel('3 and 4', { exact: true }).check();
  await part.getByLabel('left to itself').check();
  await expect(part.getByRole('status')).toContainText(
    'The screw that moves 3 and 4 opened by 1/4 turn, the throttle left alone, so that the engine runs at 2170 rpm',
  );
});

test('the level: one button matches the two closest, the other leaves the most', async ({ page }) => {
  const part = await show(page, explorables[1]);
  await part.getByRole('button', { name: 'Match the two closest' }).click();
  await expect(part.getByRole('status')).toHaveText('It does not fit: adjuster 4 lacks 1/4 turn to close.');
  await part.getByRole('button', { name: 'Leave the most thread' }).click();
  await expect(part.getByRole('slider')).toHaveValue('9');
  await expect(part.getByRole('status')).toContainText('The scarcest thread has 1/2 turn left');
});

test('the room: the caution stands before the sliders, and what the sum does not know beneath', async ({
  page,
}) => {
  const part = await show(page, explorables[5]);
  const text = (await part.innerText()).replaceAll('\u00a0', ' ');
  const [caution, slider, unknown] = [
    'Run the engine outdoors',
    'Changes of air',
    'What this sum does not know',
  ].map((words) => text.indexOf(words));
  expect(caution).toBeGreaterThan(-1);
  expect(slider).toBeGreaterThan(caution!);
  expect(unknown).toBeGreaterThan(slider!);
  expect(text).not.toMatch(/safe/i);
});

test('what is matched to: the band and the arrows follow the choice', async ({ page }) => {
  const part = await show(page, explorables[6]);
  await expect(part.locator('svg .go')).toHaveCount(4);
  await part.getByLabel('the two closest').check();
  await expect(part.locator('svg .go')).toHaveCount(2);
  await expect(part.getByRole('row', { name: /^4 190/ })).toContainText('60 lower: close');
});

test('an engine that answers more strongly is learned as well', async ({ page }) => {
  const part = await show(page, explorables[7]);
  await part.getByLabel('210').check();
  await expect(part.getByRole('status')).toContainText('from 178 to 257 mmHg');
});

test('on paper the figure and the words stand, the controls do not', async ({ page }) => {
  const part = await show(page, explorables[1]);
  await page.emulateMedia({ media: 'print' });
  await expect(part.getByRole('slider')).toHaveCount(0);
  await expect(part.getByRole('img').first()).toBeVisible();
  await expect(part.getByRole('status')).toBeVisible();
});
