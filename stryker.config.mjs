import { filesOf } from './tools/mutation/groups.mjs';

/** One group at a time: `npm run test:mutation` goes through them. The build command reads it as well. */
const group = (process.env.MUTATION_GROUP ??= 'numbers');

export default {
  testRunner: 'script',
  plugins: ['./tools/mutation/test-runner.mjs'],
  buildCommand: 'node tools/mutation/bundle-tests.mjs',
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
  // A loop that never ends is noticed after this time and so many times what all tests take.
  timeoutMS: 2000,
  timeoutFactor: 3,
};
