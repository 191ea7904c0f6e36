// Every check of the project. Goes on after a failure; the last line is always "N passed, N failed".
import './check-node.mjs';
import { createServer } from 'node:net';
import { countPlaywright, countVitest } from './test/count-results.mjs';
import { runStep } from './test/run-step.mjs';

const club = { BASE: '/club/', SITE: 'https://club.example', OUT_DIR: 'dist-club', CLUB_DIR: 'dist-club' };
const root = { BASE: '', SITE: '', OUT_DIR: 'dist', CLUB_DIR: 'dist-club' };

const vitest = (project) => {
  const report = `reports/${project}.json`;
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  return {
    command: 'vitest',
    args: ['run', '--project', project, ...reporters],
    env: root,
    report,
    count: countVitest,
  };
};

function freePort() {
  return new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });
}

const results = [];
async function inOrder(...steps) {
  for (const step of steps) results.push(await runStep(step));
}

// Two lanes, since most steps use one core. The pages are checked after the builds: both write the same generated types.
await Promise.all([
  inOrder(
    { name: 'Format', command: 'prettier', args: ['--check', '.'] },
    { name: 'Types of the calculators', command: 'tsc', args: ['-p', 'src/calculators'] },
    { name: 'Unit, property, data and architecture tests', ...vitest('unit') },
  ),
  inOrder(
    { name: 'Browser for the tests', command: 'node', args: ['tools/find-browser.mjs'] },
    { name: 'Build at /', command: 'node', args: ['tools/build.mjs'], env: root },
    { name: 'Sizes', command: 'node', args: ['tools/check-size.mjs'], env: root },
    { name: 'Build at /club/', command: 'node', args: ['tools/build.mjs'], env: club },
    { name: 'Types of the pages', command: 'astro', args: ['check'] },
    { name: 'Types of the tests', command: 'tsc', args: ['-p', 'tests'] },
    { name: 'Site tests', ...vitest('site') },
  ),
]);

const browser = results.find((step) => step.name === 'Browser for the tests' && step.failed === 0);
await inOrder({
  name: 'Browser tests',
  command: 'playwright',
  args: ['test', '--reporter=list,json'],
  env: {
    ...root,
    PLAYWRIGHT_JSON_OUTPUT_FILE: 'reports/browser.json',
    TEST_PORT: String(await freePort()),
    ...(browser && { EVENDRAW_BROWSER: browser.words.trim().split('\n').at(-1) }),
  },
  live: true,
  report: 'reports/browser.json',
  count: countPlaywright,
});

const enginesReport = 'reports/engines.json';
await inOrder({
  name: 'Tests in Firefox and WebKit',
  command: 'node',
  args: [
    'tools/test-engines.mjs',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${enginesReport}`,
  ],
  env: root,
  live: true,
  report: enginesReport,
  count: countVitest,
});

console.log('');
for (const { name, passed, failed, seconds } of results)
  console.log(
    `${failed === 0 ? ' ' : '✗'} ${name}: ${passed} passed, ${failed} failed, ${seconds.toFixed(1)} s`,
  );
const sum = (key) => results.reduce((total, step) => total + step[key], 0);
process.exitCode = sum('failed') > 0 || sum('passed') === 0 ? 1 : 0;
console.log(`${sum('passed')} passed, ${sum('failed')} failed`);
