import { filesOf } from './tools/mutation-groups.mjs';

/** One group at a time: `npm run test:mutation` goes through them. */
const group = process.env.MUTATION_GROUP ?? 'numbers';

export default {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'vitest.mutation.config.ts', related: false },
  mutate: filesOf(group),
  coverageAnalysis: 'perTest',
  concurrency: Number(process.env.MUTATION_CONCURRENCY ?? 2),
  tempDirName: 'reports/stryker',
  ignorePatterns: [
    'dist',
    'dist-*',
    'reports',
    '.astro',
    'test-results',
    'docs',
    'public',
    'src/pages',
    'src/components',
  ],
  reporters: ['progress-append-only', 'json'],
  jsonReporter: { fileName: `reports/mutation/${group}.json` },
  cleanTempDir: 'always',
  // Half of the mutants are read when a file is first loaded, so that all tests of the group run for each.
  warnings: { slow: false },
  // A loop that never ends is noticed after this and a part of what the tests take while it is counted what they run,
  // which is up to twenty times what they take for a mutant.
  timeoutMS: 3000,
  timeoutFactor: 0.1,
};
