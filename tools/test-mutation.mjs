// `npm run test:mutation`: every group of tools/mutation/groups.mjs, or those that are named, then the bounds.
import './check-node.mjs';
import { spawnSync } from 'node:child_process';
import { checkMutation } from './mutation/check.mjs';
import { groups } from './mutation/groups.mjs';

const named = process.argv.slice(2);
const unknown = named.filter((group) => !Object.hasOwn(groups, group));
if (unknown.length > 0) {
  console.error(`No group ${unknown.join(', ')}. There are ${Object.keys(groups).join(', ')}.`);
  process.exit(1);
}

const asked = named.length > 0 ? named : Object.keys(groups);
const start = performance.now();
const minutesSince = (from) => `${((performance.now() - from) / 60_000).toFixed(1)} minutes`;
for (const group of asked) {
  const started = performance.now();
  const { status } = spawnSync('stryker', ['run'], {
    stdio: 'inherit',
    env: { ...process.env, MUTATION_GROUP: group, NODE_COMPILE_CACHE: 'reports/compiled' },
    shell: process.platform === 'win32',
  });
  if (status !== 0) process.exit(status ?? 1);
  console.log(`${group}: ${minutesSince(started)}`);
}
console.log(`All that was asked: ${minutesSince(start)}`);
process.exitCode = checkMutation(asked) ? 0 : 1;
