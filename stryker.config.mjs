import { filesOf } from './tools/mutation-groups.mjs';
const group = process.env.MUTATION_GROUP;
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
  reporters: ['clear-text', 'json', 'progress-append-only'],
  jsonReporter: { fileName: `reports/mutation/${group}.json` },
  incremental: true,
  incrementalFile: `reports/mutation/${group}-incremental.json`,
  cleanTempDir: 'always',
  timeoutMS: 5000,
};
