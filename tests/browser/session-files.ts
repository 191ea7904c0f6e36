import { expect, type Page } from '@playwright/test';

/** The bench session, ready. */
export const open = async (page: Page): Promise<void> => {
  await page.goto('./bench-session/');
  await page.locator('astro-island:not([ssr])').first().waitFor({ state: 'attached' });
  await expect(page.getByRole('button', { name: 'Set up a session' })).toBeEnabled();
};
/** Gives it a file of a text. */
export const give = async (page: Page, text: string, name = 'sessions.json'): Promise<void> => {
  const file = { name, mimeType: 'application/json', buffer: Buffer.from(text) };
  await page.getByLabel('Read a session from a file').setInputFiles(file);
};
