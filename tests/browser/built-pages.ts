import type { Page } from '@playwright/test';
import { listFiles } from '../../tools/build/list-files.mjs';
import { addressOf } from '../../tools/build/write-worker.mjs';

export const folder = process.env.OUT_DIR ?? 'dist';

/** Every page of the build, by its address below the base path: '' is the front page. */
export const addresses = listFiles(folder)
  .filter((file) => file.endsWith('.html'))
  .map(addressOf);

export const nameOf = (address: string) => address || 'front page';

/** Opens a page and waits until its islands answer, those aside that start when they are seen. */
export async function open(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.waitForFunction(() => !document.querySelector('astro-island[ssr]'));
}
