import { defineConfig } from 'vitest/config';

/** Firefox and WebKit on the built site, for `npm run test:engines`, which sees to a screen for them. */
export default defineConfig({
  test: {
    include: ['tests/engines/**/*.test.ts'],
    maxWorkers: 2,
    testTimeout: 180_000,
    hookTimeout: 120_000,
    expect: { poll: { timeout: 30_000, interval: 100 } },
  },
});
