// Takes the README's picture of the real bench session: builds nothing, serves dist, plays a few steps of an invented engine.
import { mkdirSync } from 'node:fs';
import { chromium } from 'playwright';
import { findBrowser, launchFlags } from './find-browser.mjs';
import { serveFolder } from './serve.mjs';

const folder = process.env.OUT_DIR ?? 'dist';
const { address, close } = await serveFolder({ folder });
const browser = await chromium.launch({ executablePath: findBrowser(), args: launchFlags });
const context = await browser.newContext({
  viewport: { width: 390, height: 844 },
  deviceScaleFactor: 2,
  serviceWorkers: 'block',
  reducedMotion: 'reduce',
});
const page = await context.newPage();
await page.clock.setFixedTime('2026-11-14T09:00:00Z');
await page.goto(
  `${address}bench-session/#v=1&g=all-adjustable&n=4&o=a&r=212,248,251,187&t=1.5/1.5,1.5/1.5,1.5/1.5,0.4/2`,
);
await page.getByRole('button', { name: 'Start the session' }).first().click();
for (const [time, reading] of Object.entries({ '09:00:30': '236', '09:03:10': '231', '09:07:10': '224' })) {
  await page.clock.setFixedTime(`2026-11-14T${time}Z`);
  await page.locator('#reading').fill(reading);
  await page.locator('.entry [type=submit]').click();
}
await page.locator('#reading').blur();
await page.mouse.move(0, 0);
await page.getByText('Running 6:40').waitFor();
mkdirSync('docs', { recursive: true });
await page.screenshot({ path: 'docs/bench-session.png' });
await browser.close();
await close();
