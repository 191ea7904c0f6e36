import { spawn, type ChildProcess } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, expect, test, type Locator, type Page } from '@playwright/test';
import { findBrowser, launchFlags } from '../../tools/find-browser.mjs';
import { randomFrom } from '../engine/random.ts';

const kills = Number(process.env.KILLS ?? 50);
/** More than this are undone before it goes on, so that the session never comes to its end. */
const mostEvents = 8;

let running: ChildProcess | null = null;
test.afterEach(async () => {
  if (running) await kill(running);
});

/** A browser with a profile of its own, and the page of the bench in it. */
async function start(profile: string, address: string): Promise<{ browser: ChildProcess; page: Page }> {
  const portFile = join(profile, 'DevToolsActivePort');
  rmSync(portFile, { force: true });
  const flags = [
    '--headless',
    '--remote-debugging-port=0',
    `--user-data-dir=${profile}`,
    '--no-startup-window',
  ];
  const browser = spawn(findBrowser(), [...flags, ...launchFlags], { stdio: 'ignore', detached: true });
  running = browser;
  await expect.poll(() => existsSync(portFile) && readFileSync(portFile, 'utf8').split('\n').length).toBe(2);
  const [port] = readFileSync(portFile, 'utf8').split('\n');
  const connected = await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
  const page = await (connected.contexts()[0] ?? (await connected.newContext())).newPage();
  page.setDefaultTimeout(30_000);
  await page.goto(address);
  await page.locator('astro-island:not([ssr])').first().waitFor({ state: 'attached' });
  return { browser, page };
}

/** The whole family of processes at once, without a word. */
async function kill(browser: ChildProcess): Promise<void> {
  if (browser.pid === undefined) throw new Error('the browser did not start');
  const ended = new Promise((resolve) => browser.once('exit', resolve));
  process.kill(-browser.pid, 'SIGKILL');
  await ended;
  running = null;
}

/** The log, oldest first. */
const entries = async (page: Page): Promise<string[]> =>
  (await page.locator('.log .entries > li > span:nth-of-type(2)').allInnerTexts()).reverse();
const savedLine = (page: Page) => page.locator('.log [role=status]');

/** The field for a reading, whatever the session would rather have next. */
async function readingField(page: Page): Promise<Locator> {
  const field = page.locator('#reading');
  const believe = page.getByRole('button', { name: 'It is right as recorded' });
  if (await believe.isVisible()) await believe.click();
  if (!(await field.isVisible())) {
    await page.getByRole('button', { name: 'Read another carburettor' }).click();
    const panel = page.getByRole('group', { name: 'Which carburettor is read' });
    await panel.getByRole('button', { name: '1', exact: true }).click();
  }
  return field;
}

/**
 * Opens the session that stands. A browser that was killed does not always read its own files at once: what the page says
 * then is printed, and the page loaded anew, once in the whole test.
 */
async function goOn(page: Page, k: number, mayReload: boolean): Promise<{ reloaded: boolean }> {
  const button = page.getByRole('button', { name: /^Go on with/u });
  const came = await button.waitFor().then(
    () => true,
    () => false,
  );
  if (!came) {
    const words = `After kill ${k} the page says: ${await page.locator('main').innerText()}`;
    console.log(words);
    expect(mayReload, words).toBe(true);
    await page.reload();
  }
  await button.click();
  return { reloaded: !came };
}

test(`killed ${kills} times in one session, it has every entry that was called saved`, async ({
  baseURL,
}) => {
  test.setTimeout(60_000 + kills * 10_000);
  const random = randomFrom(5);
  const profile = mkdtempSync(join(tmpdir(), 'evendraw-kills-'));
  const bench = `${baseURL}bench-session/`;
  let acknowledged: string[] = [];
  let unfinished = 0;
  let mayReload = true;

  for (let k = 0; k <= kills; k += 1) {
    const { browser, page } = await start(
      profile,
      k === 0 ? `${bench}#v=1&g=all-adjustable&n=4&o=a&u=mmHg` : bench,
    );
    if (k === 0) await page.getByRole('button', { name: 'Start the session' }).first().click();
    else if ((await goOn(page, k, mayReload)).reloaded) mayReload = false;
    await expect(page.locator('.log')).toBeVisible();
    const found = await entries(page);
    expect(found.slice(0, acknowledged.length), `after kill ${k}`).toEqual(acknowledged);
    // A turn and a reading at most were under way.
    expect(found.length - acknowledged.length).toBeLessThanOrEqual(2);
    unfinished += found.length - acknowledged.length;
    if (k === kills) {
      await kill(browser);
      break;
    }

    for (let count = found.length; count > mostEvents; count -= 1)
      await page
        .locator('.log')
        .getByRole('button', { name: `Undo event ${count}` })
        .click();
    const before = await page.locator('.log .entries > li').count();
    await (await readingField(page)).fill(String(200 + random.integer(0, 60)));
    await page.locator('.entry [type=submit]').click();
    await page.locator('.log .entries > li').nth(before).waitFor();
    await expect(savedLine(page)).toHaveText('Saved on this device only.');
    acknowledged = await entries(page);
    await (await readingField(page)).fill(String(200 + random.integer(0, 60)));
    // Dies with the browser, somewhere between the press and the end of the write.
    const press = page.locator('.entry [type=submit]').evaluate((button) => (button as HTMLElement).click());
    press.catch(() => {});
    await new Promise((resolve) => setTimeout(resolve, random.uniform(0, 60)));
    await kill(browser);
  }
  expect(acknowledged.length).toBeGreaterThan(0);
  console.log(`${kills} kills; ${unfinished} entries were found that had not been called saved yet.`);
  rmSync(profile, { recursive: true });
});
