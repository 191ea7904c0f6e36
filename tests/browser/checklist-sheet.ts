import type { Page } from '@playwright/test';
import { readQr } from '../second-formula/qr-reader.ts';

/** Opens a list by the state of its link, and waits until it answers. */
export async function openList(page: Page, state: string): Promise<void> {
  await page.goto(`./checklists/${state}`);
  await page.waitForFunction(() => !document.querySelector('astro-island[ssr]'));
}

/** What the code on the page says, read from the drawing itself. */
export async function codeOn(page: Page): Promise<string> {
  const { viewBox, path } = await page.locator('svg.qr').evaluate((svg) => ({
    viewBox: svg.getAttribute('viewBox') ?? '',
    path: svg.querySelector('path')?.getAttribute('d') ?? '',
  }));
  const [from = 0, , whole = 0] = viewBox.split(' ').map(Number);
  const side = whole + 2 * from;
  const grid = Array.from({ length: side }, () => Array.from({ length: side }, () => false));
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)/gu))
    grid[Number(y)]?.fill(true, Number(x), Number(x) + Number(length));
  return readQr(grid);
}

/** Sheets of a PDF as Chromium writes it: one object of type Page for each. */
export const sheetsOf = (pdf: Buffer): number =>
  (pdf.toString('latin1').match(/\/Type\s*\/Page(?![a-z])/gu) ?? []).length;

/** Ticks or unticks the line with this name: the whole line is the target. */
export const line = (page: Page, name: string) =>
  page.locator('.check li').filter({ has: page.getByRole('checkbox', { name, exact: true }) });
