import { expect, test } from '@playwright/test';
import { addresses, nameOf, open } from './built-pages.ts';
import { axeFindings, watch } from './watch.ts';

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
      const { found, passes } = await axeFindings(page);
      expect(found, colorScheme).toEqual([]);
      expect(passes).toBeGreaterThan(5);
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
