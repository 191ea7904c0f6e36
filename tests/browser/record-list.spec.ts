import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { readSessions, writeCollections } from '../../src/device/session-collection.ts';
import { writeRecord, type SessionRecord } from '../../src/device/session-record.ts';
import { recordOf } from '../unit/invented-records.ts';
import { smallTargets } from './page-measures.ts';
import { give, open } from './session-files.ts';
import { axeFindings, watch } from './watch.ts';

const spring = recordOf('all-adjustable', { id: 'invented-spring', name: 'The grey one' });
const autumn: SessionRecord = {
  ...spring,
  id: 'invented-autumn',
  startedAt: '2026-10-03T15:00:00+02:00',
  signOff: { fromEvent: 0, verdict: 'not-within' },
};
const twin = recordOf('separate-cables', {
  id: 'invented-twin',
  name: 'Twin',
  startedAt: '2025-05-01T10:00:00Z',
});

const giveAll = (page: Page, records: readonly SessionRecord[]): Promise<void> =>
  give(page, writeCollections(records, 'evendraw test')[0]!);
const said = (page: Page) => page.getByText('Read from the file.');
const saved = async (page: Page, button: string): Promise<{ name: string; text: string }> => {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: button }).click();
  const file = await download;
  return { name: file.suggestedFilename(), text: readFileSync(await file.path(), 'utf8') };
};
const lines = (page: Page) => page.locator('.records > li');
const recordsOf = (text: string): readonly SessionRecord[] => {
  const read = readSessions(text);
  if (!read.ok || !read.whole) throw new Error('not a file of sessions');
  return read.records;
};

test('a file of many is merged, and the same file again changes nothing', async ({ page }) => {
  const faults = await watch(page);
  await open(page);
  await giveAll(page, [spring, autumn, twin]);
  await expect(said(page)).toContainText('“sessions.json”: 3 added.');
  await expect(lines(page)).toHaveCount(3);
  // The newest first.
  await expect(lines(page).first()).toContainText('3 October 2026');
  await expect(lines(page).last()).toContainText(
    /Twin.*1 May 2025.*2 carburettors.*5 readings · 2 turns · open/u,
  );

  await giveAll(page, [spring, autumn, twin]);
  await expect(said(page)).toContainText('3 already here. Nothing was changed.');
  const { events } = spring;
  const further = { ...spring, events: [...events, events[0]!] };
  const other = { ...twin, events: [twin.events[1]!, ...twin.events.slice(1)] };
  await giveAll(page, [further, other, autumn]);
  await expect(said(page)).toContainText(
    '1 taken further than it was here; 1 added beside the one that is here, because they differ; its notes say where; 1 already here.',
  );
  await expect(lines(page)).toHaveCount(4);
  await page.reload();
  await expect(lines(page)).toHaveCount(4);
  await give(page, writeRecord(spring), 'one.json');
  await expect(said(page)).toContainText(
    '“one.json”: 1 already here, with more entries. Nothing was changed.',
  );
  await lines(page)
    .filter({ hasText: 'Twin' })
    .first()
    .getByRole('button', { name: /^Go on/u })
    .waitFor();
  expect(faults).toEqual([]);
});

test('one damaged session leaves the others, and a file that is none changes nothing', async ({ page }) => {
  await open(page);
  const [text = ''] = writeCollections([spring, twin], 'evendraw test');
  await give(page, text.replace('"name":"Twin"', '"name":"Twim"'));
  await expect(page.getByRole('alert')).toContainText('1 added; 1 damaged and left out.');
  await expect(lines(page)).toHaveCount(1);
  await give(page, 'no session', 'x.json');
  await expect(page.getByRole('alert')).toContainText('“x.json” is not a session that was saved here.');
  await expect(lines(page)).toHaveCount(1);
});

test('all are saved to one file, which another device reads; the reminder goes', async ({
  page,
  browser,
}) => {
  await open(page);
  await page.goto('./bench-session/#v=1&g=all-adjustable&n=2&o=a&r=230/231');
  await page.getByRole('button', { name: 'Start the session' }).first().click();
  await page.getByRole('button', { name: 'End without signing off' }).click();
  await page.getByLabel('Engine, as you call it').fill('Made here');
  await page.getByRole('button', { name: 'All sessions' }).click();
  await expect(page.getByText('One session is in no file yet')).toBeVisible();
  await giveAll(page, [spring, twin]);
  await expect(lines(page)).toHaveCount(3);
  await expect(page.getByText('One session is in no file yet')).toBeVisible();
  const { name, text } = await saved(page, 'Save all to one file');
  expect(name).toMatch(/^evendraw-\d{4}-\d\d-\d\d-all-sessions\.json$/u);
  expect(
    recordsOf(text)
      .map((record) => record.name)
      .sort(),
  ).toEqual(['Made here', 'The grey one', 'Twin']);
  await expect(page.getByText('in no file yet')).toHaveCount(0);

  const elsewhere = await (await browser.newContext()).newPage();
  await open(elsewhere);
  await give(elsewhere, text);
  await expect(said(elsewhere)).toContainText('3 added.');
  const again = await saved(elsewhere, 'Save all to one file');
  expect(recordsOf(again.text)).toEqual(recordsOf(text));
  await elsewhere.context().close();
});

test('a session is renamed where it stands, and the name stays', async ({ page }) => {
  await open(page);
  await giveAll(page, [spring, twin]);
  await page.getByRole('button', { name: 'Rename Twin' }).click();
  const field = page.getByLabel('Engine, as you call it');
  await expect(field).toBeFocused();
  await field.fill('Blue twin');
  await page.getByRole('button', { name: 'Leave it' }).click();
  await expect(page.getByRole('button', { name: 'Rename Twin' })).toBeFocused();
  await page.getByRole('button', { name: 'Rename Twin' }).click();
  await field.fill('Blue twin');
  await field.press('Enter');
  await expect(page.getByRole('button', { name: 'Rename Blue twin' })).toBeFocused();
  await page.reload();
  await expect(page.getByRole('button', { name: 'Go on with Blue twin' })).toBeVisible();
  await expect(lines(page).filter({ hasText: 'Blue twin' })).toContainText('5 readings · 2 turns');
});

test('a session is deleted, from the list or its record, and brought back', async ({ page }) => {
  await open(page);
  await giveAll(page, [spring, autumn, twin]);
  await page.getByRole('button', { name: 'Delete Twin' }).click();
  await expect(lines(page)).toHaveCount(2);
  await expect(page.getByText('“Twin” is deleted.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Bring back Twin' })).toBeFocused();

  await page.getByRole('button', { name: 'Show The grey one' }).click();
  await page.getByRole('button', { name: 'Delete this record' }).click();
  await expect(lines(page)).toHaveCount(1);
  await page.getByRole('button', { name: 'Bring back The grey one' }).click();
  await page.getByRole('button', { name: 'Bring back Twin' }).click();
  await expect(lines(page)).toHaveCount(3);
  const { text } = await saved(page, 'Save all to one file');
  const bySession = (records: readonly SessionRecord[]) =>
    [...records].sort((a, b) => (a.id < b.id ? -1 : 1));
  expect(bySession(recordsOf(text))).toEqual(bySession([spring, autumn, twin]));

  await page.getByRole('button', { name: 'Delete Twin' }).click();
  await expect(lines(page)).toHaveCount(2);
  await page.reload();
  await expect(lines(page)).toHaveCount(2);
  await expect(page.getByText('is deleted')).toHaveCount(0);
});

/** Every write of this kind fails until `mend` is called. */
const breakStore = (page: Page, method: 'put' | 'delete'): Promise<void> =>
  page.evaluate((name) => {
    const { [name]: whole } = IDBObjectStore.prototype;
    IDBObjectStore.prototype[name] = () => {
      throw new DOMException('It does not go.', 'QuotaExceededError');
    };
    Object.assign(window, { mend: () => (IDBObjectStore.prototype[name] = whole as never) });
  }, method);
const mend = (page: Page): Promise<void> =>
  page.evaluate(() => (window as unknown as { mend: () => void }).mend());
const notSaved = (page: Page) =>
  page.getByRole('alert').filter({ hasText: 'Not saved: the space for this site is full.' });

test('with full storage a new name, a deletion and a file stand in the page, which says that they are not saved', async ({
  page,
}) => {
  await open(page);
  await giveAll(page, [spring, twin]);
  await expect(lines(page)).toHaveCount(2);
  await breakStore(page, 'put');
  await page.getByRole('button', { name: 'Rename Twin' }).click();
  await page.getByLabel('Engine, as you call it').fill('Blue twin');
  await page.getByRole('button', { name: 'Keep this name' }).click();
  await expect(page.getByRole('button', { name: 'Go on with Blue twin' })).toBeVisible();
  await expect(notSaved(page)).toBeVisible();
  await giveAll(page, [autumn]);
  await expect(lines(page)).toHaveCount(3);
  await expect(notSaved(page)).toBeVisible();
  await mend(page);

  await breakStore(page, 'delete');
  await page.getByRole('button', { name: 'Delete The grey one' }).first().click();
  await expect(lines(page)).toHaveCount(2);
  await expect(notSaved(page)).toBeVisible();
  await mend(page);
  await page.getByRole('button', { name: 'Rename Blue twin' }).click();
  await page.getByLabel('Engine, as you call it').fill('Red twin');
  await page.getByRole('button', { name: 'Keep this name' }).click();
  await expect(notSaved(page)).toHaveCount(0);
  await page.reload();
  await expect(page.getByRole('button', { name: 'Go on with Red twin' })).toBeVisible();
  await expect(lines(page)).toHaveCount(2);
});

test('another window renames, reads a file and deletes, and no entry of the open session is lost', async ({
  page,
}) => {
  await page.goto('./bench-session/#v=1&g=all-adjustable&n=4&o=a&u=mmHg&tol=10&r=212,230');
  await page.getByRole('button', { name: 'Start the session' }).first().click();
  const entries = page.locator('.log .entries > li', { hasText: 'Read carburettor' });
  await expect(entries).toHaveCount(2);
  const enter = async (reading: number, count: number): Promise<void> => {
    await page.locator('#reading').fill(String(reading));
    await page.locator('.entry [type=submit]').click();
    await expect(entries).toHaveCount(count);
    await expect(page.locator('.log [role=status]').first()).toHaveText('Saved on this device only.');
  };
  const other = await page.context().newPage();
  await open(other);
  await expect(lines(other)).toContainText('2 readings');
  const asItWas = await saved(other, 'Save all to one file');

  await enter(231, 3);
  await other.getByRole('button', { name: /^Rename/u }).click();
  await other.getByLabel('Engine, as you call it').fill('Blue twin');
  await other.getByRole('button', { name: 'Keep this name' }).click();
  await expect(lines(other)).toContainText(/Blue twin.*3 readings/u);
  await enter(232, 4);
  await give(other, asItWas.text);
  await expect(said(other)).toContainText('1 already here, with more entries. Nothing was changed.');
  await other.getByRole('button', { name: 'Delete Blue twin' }).click();
  await expect(lines(other)).toHaveCount(0);
  await enter(233, 5);
  await other.reload();
  await expect(lines(other)).toContainText('5 readings');
});

test('among many a field finds one by name, day or notes', async ({ page }) => {
  await open(page);
  const many = Array.from({ length: 14 }, (_, k) => ({
    ...twin,
    id: `invented-${k}`.padEnd(12, 'x'),
    name: `Engine ${k + 1}`,
    notes: k === 4 ? 'Cold start took long.' : '',
    startedAt: `2025-01-${String(k + 10)}T10:00:00Z`,
  }));
  await giveAll(page, many.slice(0, 10));
  await expect(lines(page)).toHaveCount(10);
  await expect(page.getByLabel('Find a session')).toHaveCount(0);
  await giveAll(page, many);
  await expect(lines(page)).toHaveCount(14);
  const field = page.getByLabel('Find a session');
  for (const [sought, count] of [
    ['engine 1', 6],
    ['COLD start', 1],
    ['12 january', 1],
    ['nobody', 0],
    ['', 14],
  ] as const) {
    await field.fill(sought);
    await expect(lines(page)).toHaveCount(count);
  }
});

test('two sessions of one engine are compared', async ({ page }) => {
  await open(page);
  await giveAll(page, [twin, spring]);
  await expect(lines(page)).toHaveCount(2);
  await expect(page.getByRole('button', { name: 'Compare two sessions' })).toHaveCount(0);
  const moved: SessionRecord = {
    ...autumn,
    name: 'Grey, after the summer',
    events: autumn.events.map((event, k) =>
      k === 2 && event.kind === 'reading' ? { ...event, depressionPa: event.depressionPa - 8_000 } : event,
    ),
  };
  await giveAll(page, [moved]);
  await page.getByRole('button', { name: 'Compare two sessions' }).click();
  await expect(page.getByRole('heading', { name: 'Two sessions compared' })).toBeFocused();
  const part = page.locator('.comparison');
  await expect(part).toContainText('Their names differ.');
  await expect(part).toContainText(
    /Between the two, carburettors? .*moved by more than the readings can tell/u,
  );
  await expect(part).toContainText(/One turn of a screw did about \d+ \(\d+–\d+\)\smmHg then/u);
  await expect(part.locator('tbody tr')).toHaveCount(8);
  await expect(part.locator('tbody tr').nth(2)).toContainText(/^3.*− ?\d+ ± \d+/u);
  await expect(part.locator('option', { hasText: 'Twin' })).toHaveCount(0);
  await expect(part).toContainText(/Then: 11 April 2026.*Now: 3 October 2026/u);
  await part.getByLabel('Session', { exact: true }).selectOption('invented-spring');
  await expect(part).toContainText(/Then: 11 April 2026.*Now: 3 October 2026/u);

  for (const width of [320, 412, 1280]) {
    await page.setViewportSize({ width, height: 800 });
    const wide = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(wide, `sideways scroll at ${width} px`).toBeLessThanOrEqual(0);
    expect(await smallTargets(page), `targets at ${width} px`).toEqual([]);
  }
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect((await axeFindings(page)).found, colorScheme).toEqual([]);
  }
  await part.getByRole('button', { name: 'Close the comparison' }).click();
  await expect(part).toHaveCount(0);
  await expect(page.getByRole('heading', { name: 'Sessions on this device' })).toBeFocused();
});

test('one session and all are saved as a table in which no cell is a formula', async ({ page }) => {
  await open(page);
  const named = { ...spring, name: '=cmd|x', signOff: { fromEvent: 0, verdict: 'not-within' as const } };
  await giveAll(page, [named, twin]);
  await expect(lines(page)).toHaveCount(2);
  const all = await saved(page, 'Save all as a table (CSV)');
  expect(all.name).toMatch(/^evendraw-.*-all-sessions\.csv$/u);
  expect(all.text.startsWith('\ufeffsession,engine,started (ISO 8601),')).toBe(true);
  expect(all.text.trim().split('\r\n')).toHaveLength(1 + spring.events.length + twin.events.length);
  await page.getByRole('button', { name: 'Show =cmd|x' }).click();
  const one = await saved(page, 'Save as a table (CSV)');
  expect(one.name).toBe('evendraw-2026-04-11-cmd-x.csv');
  const cells = one.text
    .trim()
    .split('\r\n')
    .map((line) => line.split(','));
  expect(cells).toHaveLength(1 + spring.events.length);
  expect(cells.slice(1).every((row) => row[1] === "'=cmd|x" && row[2] === '2026-04-11T09:30:00+02:00')).toBe(
    true,
  );
  expect(cells.flat().filter((cell) => /^[=+@\t\r]/u.test(cell))).toEqual([]);
  const turns = cells
    .slice(1)
    .map((row) => row[10])
    .filter((cell) => cell !== '');
  expect(turns.filter((cell) => cell!.startsWith('-')).map(Number)).not.toContain(NaN);
  expect(turns.some((cell) => cell!.startsWith('-'))).toBe(true);
});

test.describe('without the worker, which would bring it from its copy', () => {
  test.use({ serviceWorkers: 'block' });
  test('a part that does not come is said, and can be asked for again', async ({ page }) => {
    await open(page);
    await giveAll(page, [spring, autumn]);
    await expect(lines(page)).toHaveCount(2);
    await page.route('**/SessionComparison*', (route) => route.abort());
    await page.getByRole('button', { name: 'Compare two sessions' }).click();
    await expect(page.getByRole('alert')).toContainText('This part of the page did not arrive.');
    await expect(lines(page)).toHaveCount(2);
    await page.unroute('**/SessionComparison*');
    await page.getByRole('button', { name: 'Try once more' }).click();
    await expect(page.getByRole('alert')).toHaveCount(0);
  });
});
