import { expect, test, type Browser } from '@playwright/test';
import { screwsOf, type Generation } from '../../src/calculators/index.ts';
import { serveFolder } from '../../tools/serve.mjs';
import { inventedEngine, mmHg } from '../engine/invented.ts';
import { randomFrom } from '../engine/random.ts';
import { BenchPerson, type PersonsEngine } from './bench-person.ts';

/** Another seed for all sessions: SEED=… npm run test:browser -- bench-session. It is printed in the titles. */
const seedShift = Number(process.env['SEED'] ?? 0);

type Plan = {
  readonly generation: Generation;
  readonly kind: string;
  readonly carburettors: number;
  readonly fixed?: number;
  readonly opens: 'clockwise' | 'anticlockwise';
  readonly told: 'Clockwise' | 'Anticlockwise' | 'I don’t know';
  readonly seed: number;
};

const plans: readonly Plan[] = [
  {
    generation: 'separate-cables',
    kind: 'Each carburettor has its own cable',
    carburettors: 2,
    opens: 'clockwise',
    told: 'Clockwise',
    seed: 41,
  },
  {
    generation: 'all-adjustable',
    kind: 'Ganged, an adjuster on every carburettor',
    carburettors: 4,
    opens: 'anticlockwise',
    told: 'Anticlockwise',
    seed: 42,
  },
  {
    generation: 'fixed-reference',
    kind: 'Ganged, one carburettor has no adjuster',
    carburettors: 3,
    fixed: 2,
    opens: 'clockwise',
    told: 'I don’t know',
    seed: 43,
  },
  {
    generation: 'paired-screws',
    kind: 'Ganged, screws between neighbours',
    carburettors: 4,
    opens: 'anticlockwise',
    told: 'Anticlockwise',
    seed: 44,
  },
  {
    generation: 'bypass-screws',
    kind: 'Throttle bodies with an air screw each',
    carburettors: 4,
    fixed: 1,
    opens: 'clockwise',
    told: 'Clockwise',
    seed: 45,
  },
];

const inventedFor = (plan: Plan, seed: number): PersonsEngine => {
  const screws = screwsOf(
    plan.generation,
    plan.carburettors,
    plan.fixed === undefined ? {} : { fixed: plan.fixed },
  );
  if (!screws.ok) throw new Error(screws.problem.kind);
  const columns = screws.value.map(({ moves }) => moves);
  const engine = inventedEngine({ linkage: columns, screwSpread: 0.2 }, randomFrom(seed));
  const name = (moves: readonly number[]): string => {
    const moved = moves.flatMap((share, i) => (share === 0 ? [] : [i + 1]));
    return moved.length === 1
      ? `the screw of carburettor ${moved[0]}`
      : `the screw that moves ${moved.join(' and ')}`;
  };
  return { engine, screws: columns.map(name), opens: plan.opens };
};

const setUpByHand = async ({ page }: BenchPerson, plan: Plan): Promise<void> => {
  await page.getByRole('button', { name: 'Set up a session' }).click();
  await page
    .getByRole('group', { name: 'How many carburettors?' })
    .getByLabel(`${plan.carburettors}`, { exact: true })
    .check();
  await page.getByLabel(plan.kind).check();
  if (plan.fixed !== undefined)
    await page.locator('#fixed').getByLabel(`${plan.fixed}`, { exact: true }).check();
  await page
    .getByRole('group', { name: 'Which way opens a screw?' })
    .getByLabel(plan.told, { exact: true })
    .check();
  await page.getByRole('button', { name: 'Start the session' }).first().click();
};

/** In a fresh profile: takes the file, opens the session, and says the move that it shows. */
const moveInFreshProfile = async (browser: Browser, address: string, text: string): Promise<string> => {
  const context = await browser.newContext();
  const page = await context.newPage();
  const person = new BenchPerson(page, randomFrom(1), { keys: false });
  await person.open(address);
  await page.getByLabel('Read a session from a file').setInputFiles({
    name: 'session.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
  await page.getByRole('button', { name: /^Go on with/u }).click();
  const move = await person.move();
  await context.close();
  return move;
};

for (const plan of plans) {
  const seed = plan.seed + seedShift;
  test(`a whole session, set-up to record: ${plan.generation}, ${plan.carburettors} carburettors, seed ${seed}`, async ({
    page,
    browser,
    isMobile,
  }) => {
    const invented = inventedFor(plan, seed);
    const before = invented.engine.spreadPa;
    const person = new BenchPerson(page, randomFrom(seed + 1000), { keys: isMobile });
    await person.open();
    await setUpByHand(person, plan);
    let steps = 0;
    for (let ended = false; !ended && steps < 150; steps++) {
      if (steps === plan.carburettors + 1) {
        const file = await person.saveFile();
        expect(await moveInFreshProfile(browser, page.url(), file)).toBe(await person.move());
      }
      const step = await person.step(invented);
      expect(step).not.toBe('stop');
      ended = step === 'sign-off';
    }
    await expect(page.getByRole('heading', { name: 'Record of a bench session' })).toBeVisible();
    await expect(page.locator('.hold')).toContainText('Signed off: within 10');
    expect(
      invented.engine.spreadPa / mmHg,
      `true spread after ${steps} steps, ${before / mmHg} before`,
    ).toBeLessThanOrEqual(10);

    await page.getByLabel('Engine, as you call it').fill('Invented four');
    await page.getByLabel('Notes').fill('A test of the page');
    await page.getByLabel('Notes').blur();
    await expect(page.getByText('Saved on this device only.')).toBeVisible();
    const record = JSON.parse(await person.saveFile()) as Record<string, unknown>;
    expect(record).toMatchObject({
      format: 'evendraw-session',
      schema: 1,
      generation: plan.generation,
      unit: 'mmHg',
      name: 'Invented four',
      notes: 'A test of the page',
      signOff: { verdict: 'within' },
    });

    await page.reload();
    await expect(page.getByRole('button', { name: 'Show Invented four' })).toBeVisible();
  });
}

test('a whole session with the server stopped after the first load', async ({ browser }) => {
  const server = await serveFolder({ folder: process.env['OUT_DIR'] ?? 'dist', base: '/', port: 0 });
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  await page.goto(server.address);
  await expect(page.getByText('Saved for use without a network')).toBeVisible({ timeout: 30_000 });
  await server.close();
  const plan = plans[1]!;
  const invented = inventedFor(plan, 77);
  const person = new BenchPerson(page, randomFrom(78), { keys: true });
  await person.open(`${server.address}bench-session/`);
  await setUpByHand(person, plan);
  for (let steps = 0, ended = false; !ended && steps < 150; steps++)
    ended = (await person.step(invented)) === 'sign-off';
  await expect(page.locator('.hold')).toContainText('Signed off: within 10');
  expect(invented.engine.spreadPa / mmHg).toBeLessThanOrEqual(10);
  await expect(page.getByText('Saved on this device only.')).toBeVisible();
  await page.reload();
  await expect(page.getByRole('button', { name: /^Show/u })).toBeVisible();
  await context.close();
});
