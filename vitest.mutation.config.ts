import { defineConfig } from 'vitest/config';
import { bundleTests } from './tools/bundle-tests.mjs';
import { testsOf } from './tools/mutation-groups.mjs';
import { ShortestFirst } from './tools/shortest-first.mjs';

/** Tests of one group of files, for `npm run test:mutation`: always the same inputs, and few of them. */
process.env['PROPERTY_RUNS'] ??= '0.02';

export default defineConfig({
  plugins: [bundleTests],
  test: {
    include: testsOf(process.env['MUTATION_GROUP'] ?? 'numbers'),
    isolate: false,
    sequence: { sequencer: ShortestFirst },
    testTimeout: 60_000,
  },
});
