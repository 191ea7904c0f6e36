import { expect, test, type Page } from '@playwright/test';
import { randomFrom } from '../engine/random.ts';
import { BenchPerson } from './bench-person.ts';

/** An invented set with its readings, from a link. */
const link = '#v=1&g=all-adjustable&n=4&o=a&r=212,248,251,187&u=mmHg&tol=10';

const openLink = async (page: Page, fragment = link): Promise<BenchPerson> => {
  const person = new BenchPerson(page, randomFrom(1), { keys: false });
  await person.open(`./bench-session/${fragment}`);
  return person;
};

const start = (page: Page) => page.getByRole('button', { name: 'Start the session' }).first().click();
const log = (page: Page) => page.locator('.log .entries > li');
const submit = (page: Page) => page.locator('.entry [type=submit]').click();

test('a link reproduces the set-up and its readings, and shows the next move in one press', async ({
  page,
}) => {
  await openLink(page);
  await expect(page.getByText('Filled in from the link')).toContainText('1: 212; 2: 248; 3: 251; 4: 187');
  await expect(page.getByLabel('Ganged, an adjuster on every carburettor')).toBeChecked();
  await expect(page.getByLabel('All within')).toHaveValue('10');
  await start(page);
  await expect(log(page)).toHaveCount(4);
  await expect(page.locator('#move')).toContainText(
    /^(Open|Close) the screw of carburettor.[1-4] by 1\/4.turn$/u,
  );
  expect(page.url()).not.toContain('#');
});

test('changing an answer changes the link; the link opens the same form elsewhere', async ({
  page,
  browser,
}) => {
  await openLink(page);
  await page.getByLabel('All within').fill('12,5');
  await page.getByLabel('Swing of the needle, each way').fill('4');
  await expect.poll(() => page.url()).toContain('fl=4');
  const url = page.url();
  expect(url).toContain('tol=12.5');
  expect(url).toContain('r=212,248,251,187');
  const other = await (await browser.newContext()).newPage();
  await other.goto(url);
  await expect(other.getByLabel('All within')).toHaveValue('12.5');
  await expect(other.getByLabel('Swing of the needle, each way')).toHaveValue('4');
  await other.context().close();
});

for (const [fragment, words] of [
  ['#v=2&g=all-adjustable&n=4', /newer version of this site/u],
  ['#v=1&g=all-adjustable&n=4&colour=red', /Not known and ignored: colour/u],
] as const)
  test(`a link that cannot be followed whole says so: ${fragment}`, async ({ page }) => {
    await openLink(page, fragment);
    await expect(page.locator('main')).toContainText(words);
  });

test('a link that cannot be read is said in the open session, which goes on', async ({ page }) => {
  await openLink(page, '#v=1&g=all-adjustable&n=4&o=a&u=mmHg&tol=10&r=212,230');
  await page.getByRole('button', { name: 'Start the session' }).first().click();
  await expect(page.locator('.log .entries > li')).toHaveCount(2);
  await page.evaluate(() => (location.hash = '#v=2&g=all-adjustable&n=4'));
  const alert = page.getByRole('alert').filter({ hasText: 'newer version of this site' });
  await expect(alert).toContainText('The session that is open here goes on.');
  await expect(page.locator('.log .entries > li')).toHaveCount(2);
  await alert.getByRole('button', { name: 'Go on' }).click();
  await expect(alert).toHaveCount(0);
  await page.locator('#reading').fill('221');
  await page.locator('.entry [type=submit]').click();
  await expect(page.locator('.log .entries > li')).toHaveCount(3);
});

for (const [fragment, field, words] of [
  ['n=9&g=all-adjustable', '#carburettors', /from 2 to 8; you gave 9/u],
  ['n=1&g=all-adjustable', '#carburettors', /from 2 to 8; you gave 1/u],
  ['n=4', '#generation', /nothing is chosen yet/u],
  ['n=4&g=all-adjustable&tol=0', '#tolerance', /above 0/u],
  ['n=4&g=all-adjustable&tol=NaN', '#tolerance', /“NaN”/u],
  ['n=4&g=all-adjustable&tol=1e309', '#tolerance', /“1e309”/u],
  ['n=4&g=all-adjustable&tol=900', '#tolerance', /760 mmHg|ambient/u],
  ['n=4&g=all-adjustable&fl=-3', '#flutter', /“-3”/u],
  ['n=4&g=all-adjustable&res=5+ells', '#resolution', /“ells” is not a unit/u],
  ['n=4&g=all-adjustable&t=1/x,1/1,1/1,1/1', '[id="thread.0.opening"]', /“x”/u],
  ['n=4&g=all-adjustable&r=212,900', '#readings', /ambient pressure.*you gave 900/u],
  ['n=4&g=fixed-reference&fixed=7', '#fixed', /from 1 to 4/u],
] as const)
  test(`bad answers keep what was typed and say the limit: ${fragment}`, async ({ page }) => {
    await openLink(page, `#v=1&${fragment}`);
    await start(page);
    await expect(page.getByRole('alert').filter({ hasText: 'to put right' })).toBeFocused();
    const question = page
      .locator('.question')
      .filter({ has: page.locator(field) })
      .or(page.locator(`fieldset${field}`));
    await expect(question.last().locator('.wrong').first()).toContainText(words);
    await expect(page.locator('.bench')).toHaveCount(0);
    const typed = new URLSearchParams(fragment).get('tol');
    if (typed !== null) await expect(page.getByLabel('All within')).toHaveValue(typed);
  });

for (const [typed, words] of [
  ['', /nothing is written/u],
  ['NaN', /“NaN”/u],
  ['1e309', /“1e309”/u],
  ['-5', /cannot be below 0/u],
  ['800', /cannot exceed the ambient pressure: give one below 760/u],
  ['9 furlongs', /“furlongs” is not a unit/u],
  ['<b>9</b>', /“<b>9<\/b>”/u],
  ['9'.repeat(500), /at most 80 characters/u],
] as const)
  test(`a reading of “${typed.slice(0, 20)}” is answered beside its field and nothing is lost`, async ({
    page,
  }) => {
    await openLink(page, '#v=1&g=all-adjustable&n=2');
    await start(page);
    await page.locator('#reading').fill(typed);
    await submit(page);
    await expect(page.locator('#reading-wrong')).toContainText(words);
    await expect(page.locator('#reading')).toHaveValue(typed);
    await expect(log(page)).toHaveCount(0);
  });

test('1,234 is asked about, never guessed', async ({ page }) => {
  await openLink(page, '#v=1&g=all-adjustable&n=2&u=mbar&tol=13');
  await start(page);
  await page.locator('#reading').fill('0,234');
  await submit(page);
  await expect(log(page)).toHaveCount(1);
  await page.locator('#reading').fill('1,234');
  await submit(page);
  await expect(page.locator('#reading-wrong')).toContainText('can be read two ways');
  await page.getByRole('button', { name: '1.234', exact: true }).click();
  await expect(log(page)).toHaveCount(2);
  await expect(log(page).first()).toContainText('Read carburettor 2: 1');
});

test('a reading in another unit is taken as it is typed', async ({ page }) => {
  await openLink(page, '#v=1&g=all-adjustable&n=2');
  await start(page);
  await page.locator('#reading').fill('9 1/2 inHg');
  await submit(page);
  await expect(log(page).first()).toContainText('Read carburettor 1: 241 (9 1/2 inHg)');
});

test('undo takes back the last key, then the last event; a correction changes any entry', async ({
  page,
}) => {
  const person = await openLink(page);
  await start(page);
  const first = await person.move();
  await page.locator('#reading').fill('23');
  await page.getByRole('button', { name: 'Undo last key' }).click();
  await expect(page.locator('#reading')).toHaveValue('2');
  await page.locator('#reading').fill('236');
  await submit(page);
  await expect(log(page)).toHaveCount(6);
  await page.locator('#reading').fill('');
  await page.getByRole('button', { name: 'Undo event 6', exact: true }).first().click();
  await page.getByRole('button', { name: 'Undo event 5', exact: true }).first().click();
  await expect(log(page)).toHaveCount(4);
  expect(await person.move()).toBe(first);

  await page.getByRole('button', { name: 'Correct event 4' }).click();
  await page.getByLabel('Reading', { exact: true }).fill('240');
  await page.getByRole('button', { name: 'Put it right' }).click();
  await expect(log(page).first()).toContainText('Read carburettor 4: 240');
  await page.reload();
  await page.getByRole('button', { name: /^Go on with/u }).click();
  await expect(log(page).first()).toContainText('Read carburettor 4: 240');
});

test('the session takes another amount and another carburettor than it asked for', async ({ page }) => {
  await openLink(page);
  await start(page);
  await page.locator('.amount').click();
  await page.getByLabel('Amount, in turns').fill('5 min');
  await page.getByRole('button', { name: 'Take this' }).click();
  await page.locator('#reading').fill('245');
  await submit(page);
  await expect(log(page).nth(1)).toContainText('by 1/12');
  await page.getByRole('button', { name: 'Read another carburettor' }).click();
  await page
    .getByRole('group', { name: 'Which carburettor is read' })
    .getByRole('button', { name: '2' })
    .click();
  await page.locator('#reading').fill('250');
  await submit(page);
  await expect(log(page).first()).toContainText('Read carburettor 2: 250');
});

test('a reading that moved the wrong way is asked about, and the answer puts the turn right', async ({
  page,
}) => {
  const person = await openLink(page);
  await start(page);
  const asked = await person.move();
  const opens = asked.startsWith('Open');
  const stood = [212, 248, 251, 187][Number(/carburettor (\d)/u.exec(asked)?.[1]) - 1]!;
  await page.locator('#reading').fill(String(opens ? stood + 24 : stood - 24));
  await submit(page);
  await expect(page.locator('#move')).toContainText('moved the wrong way');
  await page.getByRole('button', { name: 'I turned it the other way' }).click();
  await expect(log(page).nth(1)).toContainText(opens ? 'Closed the screw' : 'Opened the screw');
  await expect(page.locator('#move')).not.toContainText('wrong way');
});

test('a doubtful reading is asked for again, with what was expected', async ({ page }) => {
  await openLink(page, '#v=1&g=all-adjustable&n=2&r=250,200');
  await start(page);
  await page.getByRole('button', { name: 'Read another carburettor' }).click();
  await page
    .getByRole('group', { name: 'Which carburettor is read' })
    .getByRole('button', { name: '1' })
    .click();
  await page.locator('#reading').fill('350');
  await submit(page);
  await expect(page.locator('#move')).toContainText('Read carburettor 1 again');
  await expect(page.locator('.reason')).toContainText('350 does not fit; about 250 was expected');
});

test('without storage the session says so before the first reading and goes on in memory', async ({
  page,
}) => {
  await page.addInitScript(() => Object.defineProperty(globalThis, 'indexedDB', { value: undefined }));
  await openLink(page);
  await expect(page.getByRole('alert')).toContainText('This browser keeps nothing');
  await start(page);
  await expect(page.getByRole('alert')).toContainText('goes on while this page stays open');
  await page.locator('#reading').fill('236');
  await submit(page);
  await expect(log(page)).toHaveCount(6);
});

test('files that are no sessions are refused in words', async ({ page }) => {
  const person = new BenchPerson(page, randomFrom(1), { keys: false });
  await person.open();
  for (const [content, words] of [
    ['', 'is empty'],
    ['{"format":"evendraw-session","schema":2}', 'written by a newer version'],
    ['{"format":"evendraw-session","schema":1,"__proto__":{}}', 'is not a session'],
    ['x'.repeat(1_000_001), 'larger than a session can be'],
  ] as const) {
    await page.getByLabel('Read a session from a file').setInputFiles({
      name: 'given.json',
      mimeType: 'application/json',
      buffer: Buffer.from(content),
    });
    await expect(page.getByRole('alert')).toContainText(words);
  }
  await expect(page.getByText('Sessions on this device')).toHaveCount(0);
});

test('the two-minute test fills in step, swing and slip; what is wrong is said beside its field', async ({
  page,
}) => {
  await openLink(page, '#v=1&g=all-adjustable&n=4');
  await page.getByText('Measure step, swing and slip in two minutes').click();
  await page.getByLabel('Lowest and highest in ten seconds').fill('228; 236');
  await page.getByLabel('The same carburettor five times').fill('230; 232');
  await page.getByRole('button', { name: 'Take these over' }).click();
  await expect(page.locator('#trial-repeats-wrong')).toContainText('5');
  await page.getByLabel('The same carburettor five times').fill('230; 232; 230; 230; 232');
  await page.getByRole('button', { name: 'Take these over' }).click();
  await expect(page.getByText('Taken over into the answers.')).toBeVisible();
  await expect(page.getByLabel('Swing of the needle, each way')).toHaveValue('4.0');
  await expect(page.getByLabel('Finest step you can read on the gauge')).toHaveValue('2.0');
});

test('says from where to where a reading is believed, and what one outside means', async ({ page }) => {
  await openLink(page);
  await start(page);
  await expect(page.locator('.proof')).toContainText(
    /A reading of \d from \d+ to \d+ goes with all that is known; another is asked for again/u,
  );
});

test('a set without thread is stopped, and the way on leads to a place that is there', async ({ page }) => {
  await openLink(page, '#v=1&g=all-adjustable&n=2&o=a&r=200,300&t=0/0,0/0');
  await start(page);
  await expect(page.locator('#move')).toContainText('Stop: the thread left does not allow it');
  const way = page.getByRole('link', { name: 'Show how to re-centre the screws' });
  const anchor = new URL((await way.getAttribute('href'))!, page.url()).hash;
  await way.click();
  await expect(page.locator(anchor)).toBeInViewport();
});
