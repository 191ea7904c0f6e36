import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { launch, type ElementHandle, type Page } from 'puppeteer-core';
import { callOf, findShown, patienceMs, type Engine, type EngineWindow } from './browser.ts';

const elementOf = async (page: Page, selector: string, words = ''): Promise<ElementHandle<Element>> => {
  const found = await page.waitForFunction(findShown, { timeout: patienceMs, polling: 100 }, selector, words);
  return found as ElementHandle<Element>;
};

const windowOf = (page: Page): EngineWindow => ({
  open: async (address) => {
    await page.goto(address, { timeout: patienceMs }).catch((error: Error) => {
      if (!error.message.includes('NS_ERROR_CONNECTION_REFUSED')) throw error;
    });
  },
  reload: async () => {
    await page.reload({ timeout: patienceMs });
  },
  click: async (selector, words) => (await elementOf(page, selector, words)).click(),
  type: async (selector, text) => {
    const field = await elementOf(page, selector);
    await field.evaluate((element) => (element as HTMLInputElement).select());
    await field.type(text);
  },
  choose: async (selector, file) => {
    const field = (await page.waitForSelector(selector)) as ElementHandle<HTMLInputElement>;
    await field.uploadFile(file);
  },
  evaluate: async <Answer>(work: (...given: never[]) => unknown, ...given: readonly unknown[]) =>
    (await page.evaluate(callOf(work, given))) as Answer,
  picture: async () => Buffer.from(await page.screenshot()),
  close: () => page.close(),
});

/** Firefox as Debian carries it, without a screen, over WebDriver BiDi. */
export const firefox: Engine = {
  name: 'Firefox',
  start: async ({ profile, beforeLoad }) => {
    const downloads = join(profile, 'downloads');
    mkdirSync(downloads, { recursive: true });
    const browser = await launch({
      browser: 'firefox',
      executablePath: '/usr/bin/firefox-esr',
      headless: true,
      timeout: 2 * patienceMs,
      userDataDir: profile,
      defaultViewport: { width: 1280, height: 800 },
      extraPrefsFirefox: { 'browser.download.folderList': 2, 'browser.download.dir': downloads },
    });
    const complaints: string[] = [];
    return {
      version: (await browser.version()).replace('firefox/', ''),
      downloads,
      complaints,
      newWindow: async () => {
        const page = await browser.newPage();
        page.on('pageerror', (error) => complaints.push(String(error)));
        page.on('console', (message) => {
          if (['error', 'warn'].includes(message.type())) complaints.push(message.text());
        });
        if (beforeLoad) await page.evaluateOnNewDocument(beforeLoad);
        return windowOf(page);
      },
      close: () => browser.close(),
    };
  },
};
