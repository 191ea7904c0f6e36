import { defineConfig } from '@playwright/test';
import { findBrowser, launchFlags } from './tools/find-browser.mjs';

const port = Number(process.env.TEST_PORT ?? 4421);
const folder = process.env.OUT_DIR ?? 'dist';

export default defineConfig({
  testDir: 'tests/browser',
  outputDir: 'test-results',
  fullyParallel: true,
  workers: 2,
  timeout: 120_000,
  // A machine that does other work as well is slow, not wrong.
  expect: { timeout: 15_000 },
  forbidOnly: true,
  reporter: [['list']],
  use: {
    baseURL: `http://127.0.0.1:${port}/`,
    browserName: 'chromium',
    launchOptions: { executablePath: findBrowser(), args: launchFlags },
    locale: 'en-GB',
  },
  projects: [
    { name: 'desktop', use: { viewport: { width: 1280, height: 800 } } },
    {
      name: 'phone',
      // Those whose flow goes another way under a finger; every page is looked at in this size by `layout` and `look`.
      testMatch:
        /(bench-session|checklists|practice-engine|record-list|search|terms|unit-converter)\.spec\.ts/,
      use: {
        viewport: { width: 412, height: 839 },
        deviceScaleFactor: 2.625,
        isMobile: true,
        hasTouch: true,
      },
    },
  ],
  webServer: {
    command: `node tools/serve.mjs ${folder} --port ${port}`,
    url: `http://127.0.0.1:${port}/`,
    reuseExistingServer: false,
  },
});
