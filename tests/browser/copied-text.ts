import type { Page } from '@playwright/test';

/** What lies on the clipboard, read on a blank page of another site: ours are not allowed to read it. */
export async function copiedText(page: Page): Promise<string> {
  const blank = await page.context().newPage();
  await blank.route('**/*', (route) =>
    route.fulfill({ contentType: 'text/html', body: '<title>Blank</title>' }),
  );
  await blank.goto('https://blank.invalid/');
  const text = await blank.evaluate(() => navigator.clipboard.readText());
  await blank.close();
  await page.bringToFront();
  return text;
}
