import { expect, test } from '@playwright/test';
import { writeRecord } from '../../src/device/session-record.ts';
import { recordOf } from '../unit/invented-records.ts';
import { give, open } from './session-files.ts';

const autumn = recordOf('all-adjustable', {
  id: 'invented-autumn',
  signOff: { fromEvent: 0, verdict: 'not-within' },
});

test('a record of the longest kind of session prints on one or two sheets', async ({ page }) => {
  await open(page);
  const long = {
    ...autumn,
    notes: 'Valves set the week before. '.repeat(12),
    events: Array.from({ length: 60 }, (_, k) => autumn.events[k % autumn.events.length]!),
  };
  for (const [record, most] of [
    [{ ...autumn, id: 'invented-short' }, 1],
    [long, 2],
  ] as const) {
    await give(page, writeRecord({ ...record, name: `Printed ${most}` }));
    await page.getByRole('button', { name: `Show Printed ${most}` }).click();
    for (const format of ['A4', 'Letter']) {
      const sheet = (await page.pdf({ format })).toString('latin1');
      expect(
        sheet.match(/\/Type\s*\/Page\b/gu)?.length,
        `${format}, ${record.events.length} events`,
      ).toBeLessThanOrEqual(most);
    }
    await page.emulateMedia({ media: 'print' });
    await expect(page.getByRole('button')).toHaveCount(0);
    await expect(page.locator('.entries > li').last()).toBeVisible();
    await expect(page.getByText(`Engine: Printed ${most}`)).toBeVisible();
    await page.emulateMedia({ media: null });
    await page.getByRole('button', { name: 'All sessions' }).click();
  }
});
