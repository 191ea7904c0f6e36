import { defineConfig } from 'vitest/config';
import { testsOf } from './tools/mutation-groups.mjs';

/** Tests of one group of files, for `npm run test:mutation`: always the same inputs, and few of them. */
process.env['PROPERTY_RUNS'] ??= '0.02';

export default defineConfig({
  test: {
    include: testsOf(process.env['MUTATION_GROUP'] ?? ''),
    setupFiles: ['tests/same-inputs.ts'],
    isolate: false,
    testTimeout: 60_000,
  },
});
