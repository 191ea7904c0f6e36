import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test, type Page } from '@playwright/test';
import { readRecord, writeRecord, type SessionRecord } from '../../src/device/session-record.ts';
import { open } from './built-pages.ts';
import { watch } from './watch.ts';

test.use({ serviceWorkers: 'block' });

const good = readFileSync('tests/data/session-schema-1.json', 'utf8');
const deep = '['.repeat(200_000) + ']'.repeat(200_000);
const swapped = (from: string | RegExp, to: string): string => {
  const text = good.replace(from, () => to);
  expect(text).not.toBe(good);
  return text;
};
/** The good session with changes, honestly written. */
const rewritten = (changes: Partial<SessionRecord>): string => {
  const read = readRecord(good);
  if (!read.ok) throw new Error(read.fault.kind);
  return writeRecord({ ...read.record, ...changes });
};

const hostile: readonly (readonly [string, () => string | Buffer])[] = [
  ['50 MB', () => Buffer.alloc(50_000_000, ' ')],
  ['empty', () => ''],
  ['binary', () => Buffer.from(Array.from({ length: 5000 }, (_, k) => (k * 37 + 128) % 256))],
  ['UTF-16 with its mark', () => Buffer.from(`\ufeff${good}`, 'utf16le')],
  ['UTF-16 without', () => Buffer.from(good, 'utf16le')],
  ['truncated', () => good.slice(0, good.length / 2)],
  ['200,000 levels deep', () => deep],
  ['200,000 levels deep for a name', () => swapped(/"name": "[^"]*"/u, `"name": ${deep}`)],
  ['__proto__', () => swapped('{', '{"__proto__": {"polluted": true},')],
  ['constructor', () => swapped('{', '{"constructor": {"prototype": {"polluted": true}},')],
  ['1e999', () => swapped(/"tolerancePa": [\d.]+/u, '"tolerancePa": 1e999')],
  ['a million events', () => swapped('"events": [', `"events": [${'0,'.repeat(450_000)}`)],
  ['a list', () => '[]'],
  ['a page', () => '<!doctype html><script>document.title="taken"</script>'],
];

/** Everything that this device keeps, as text. */
const kept = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const asked = indexedDB.open('evendraw');
      asked.onsuccess = () => resolve(asked.result);
      asked.onerror = () => reject(new Error('no database'));
    });
    const all: unknown[] = [];
    for (const name of database.objectStoreNames)
      all.push(
        name,
        await new Promise((resolve) => {
          const asked = database.transaction(name).objectStore(name).getAll();
          asked.onsuccess = () => resolve(asked.result);
        }),
      );
    database.close();
    return JSON.stringify([all, { ...localStorage }]);
  });

const chooseFile = (page: Page, content: string | Buffer, name = 'session.json') =>
  page
    .locator('main input[type=file]')
    .first()
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(content) });

/** Notes how long it takes from the choice of a file to the sentence. */
const timeAnswers = (page: Page) =>
  page.addInitScript(() => {
    const times = globalThis as unknown as { answeredMs: number | null };
    let chosen = 0;
    addEventListener('change', () => ((chosen = performance.now()), (times.answeredMs = null)), true);
    new MutationObserver(() => {
      if (document.querySelector('main [role=alert]')) times.answeredMs ??= performance.now() - chosen;
    }).observe(document, { childList: true, subtree: true, characterData: true });
  });

test('hostile files are each answered by a sentence within a second, and change nothing', async ({
  page,
}) => {
  const faults = await watch(page);
  await timeAnswers(page);
  await open(page, 'bench-session/');
  await chooseFile(page, good);
  await expect(page.locator('.records > li')).toHaveCount(1);
  const before = await kept(page);
  expect(before).toContain('frozen-schema-1');
  const folder = mkdtempSync(join(tmpdir(), 'evendraw-'));
  for (const [name, content] of hostile) {
    await page.reload();
    await expect(page.locator('.records > li')).toHaveCount(1);
    const file = join(folder, `${name}.json`);
    writeFileSync(file, content());
    await page.locator('main input[type=file]').first().setInputFiles(file);
    await expect(page.locator('main [role=alert]'), name).toHaveText(
      new RegExp(`^“${name}\\.json” .*Nothing was changed\\.$`, 'u'),
    );
    const answeredMs = await page.evaluate(
      () => (globalThis as unknown as { answeredMs: number | null }).answeredMs,
    );
    expect(answeredMs, name).toBeLessThan(1000);
    expect(await kept(page), name).toBe(before);
    await expect(page.locator('.records > li')).toHaveCount(1);
    expect(await page.evaluate(() => (({}) as { polluted?: boolean }).polluted)).toBeUndefined();
  }
  rmSync(folder, { recursive: true });
  const blocked = 'console: Service Worker registration blocked by Playwright';
  expect(faults.filter((fault) => fault !== blocked)).toEqual([]);
});

const names: readonly (readonly [string, string])[] = [
  ['<script>document.title = "taken"</script>', '<script>document.title = "taken"</script>'],
  ['<img src=x onerror="document.title=\'taken\'">', '<img src=x onerror="document.title=\'taken\'">'],
  ['"><svg onload=document.title="taken">', '"><svg onload=document.title="taken">'],
  ['{{7*7}} ${7*7} &lt;b&gt; &amp;', '{{7*7}} ${7*7} &lt;b&gt; &amp;'],
  ['grey \u202eruof', 'grey ruof'],
  ['\u2066four\u2069\u2069 grey\u200b', 'four grey'],
  ['javascript:document.title="taken"', 'javascript:document.title="taken"'],
  ['half \ud83d of a pair', 'half'],
];

test('names and notes from a file stay text, in the list, the record and its fields', async ({ page }) => {
  const faults = await watch(page);
  await open(page, 'bench-session/');
  for (const [k, [name]] of names.entries()) {
    const text = rewritten({
      id: `hostile-name-${k}`,
      name,
      notes: name,
      signOff: { fromEvent: 9, verdict: 'not-within' },
    });
    await chooseFile(page, text, `${k}.json`);
    await expect(page.locator('.records > li')).toHaveCount(k + 1);
  }
  const list = (await page.locator('.records > li').allInnerTexts()).join('\n');
  for (const [, shown] of names) expect(list).toContain(shown);
  expect(list).not.toMatch(/[\u200b\u202a-\u202e\u2066-\u2069]/u);
  await page.locator('.records > li').filter({ hasText: '<script>' }).getByRole('button').first().click();
  await expect(page.getByLabel('Notes')).toHaveValue(names[0]![0]);
  await expect(page.getByLabel('Engine, as you call it')).toHaveValue(names[0]![0]);
  expect(await page.locator('main astro-island :is(script, img, [onload], [onerror])').count()).toBe(0);
  expect(await page.title()).not.toBe('taken');
  const blocked = 'console: Service Worker registration blocked by Playwright';
  expect(faults.filter((fault) => fault !== blocked)).toEqual([]);
});
