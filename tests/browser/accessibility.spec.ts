import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { addresses, nameOf, open } from './built-pages.ts';

const standards = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa'];

/** Collects what must not happen: errors, breaches of the policy, requests to anywhere else. */
async function watch(page: Page): Promise<string[]> {
  const faults: string[] = [];
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) faults.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => faults.push(`error: ${error.message}`));
  page.context().on('request', (request) => {
    const { origin, protocol } = new URL(request.url());
    const isOurs = origin === new URL(test.info().project.use.baseURL!).origin;
    if (!isOurs && !['data:', 'blob:'].includes(protocol)) faults.push(`request: ${request.url()}`);
  });
  await page.exposeFunction('reportBreach', (text: string) => faults.push(text));
  await page.addInitScript(() => {
    addEventListener('securitypolicyviolation', (event) => {
      const report = (globalThis as unknown as { reportBreach(text: string): void }).reportBreach;
      report(
        `policy: ${event.violatedDirective} ${event.blockedURI} ${event.sourceFile}:${event.lineNumber}`,
      );
    });
  });
  return faults;
}

test('the watch sees a breach of the policy, an error and a request to another origin', async ({ page }) => {
  const faults = await watch(page);
  await open(page, '');
  await page.evaluate(() => {
    document.body.setAttribute('style', 'color: red');
    new Image().src = 'https://elsewhere.example/x.png';
    setTimeout(() => {
      throw new Error('planted');
    });
  });
  await expect
    .poll(() => faults.join('\n'))
    .toMatch(/policy: style-src-attr[^]*error: planted|error: planted[^]*policy: style-src-attr/);
  expect(faults.join('\n')).toContain('policy: img-src https://elsewhere.example');
});

for (const address of addresses) {
  test(`${nameOf(address)} has no finding, light or dark`, async ({ page }) => {
    const faults = await watch(page);
    await open(page, address);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      const { violations, passes } = await new AxeBuilder({ page }).withTags(standards).analyze();
      const found = violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`);
      expect(found, colorScheme).toEqual([]);
      expect(passes.length).toBeGreaterThan(5);
    }
    expect(faults).toEqual([]);
    expect(await page.context().cookies()).toEqual([]);
  });
}

test('the skip link is the first stop of the keyboard, is seen there, and leads to the text', async ({
  page,
}) => {
  await open(page, '');
  await page.keyboard.press('Tab');
  const skip = page.getByRole('link', { name: 'Skip to the text' });
  await expect(skip).toBeFocused();
  const box = await skip.boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(44);
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/#main$/);
});
