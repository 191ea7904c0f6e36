import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    // `npm run test:coverage`: every line and branch of the package, by the unit and property tests.
    coverage: {
      provider: 'v8',
      include: ['src/calculators/**/*.ts'],
      reportsDirectory: 'reports/coverage',
      reporter: ['text-summary', 'json'],
      reportOnFailure: true,
      thresholds: { 100: true },
    },
    projects: [
      {
        test: {
          name: 'unit',
          include: ['tests/{unit,property,architecture}/**/*.test.{ts,tsx}'],
          // Minutes of engine time and thousands of drawn inputs, on a machine that may be busy.
          testTimeout: 60_000,
        },
      },
      {
        // Reads the built site: `npm run build` first (OUT_DIR and CLUB_DIR name other folders).
        test: { name: 'site', include: ['tests/site/**/*.test.ts'], testTimeout: 60_000 },
      },
    ],
  },
});
