// `npm run test:mutation`: every group of tools/mutation-groups.mjs, or those that are named, then the bounds.
import './check-node.mjs';
import { spawnSync } from 'node:child_process';
import { checkMutation } from './check-mutation.mjs';
import { groups } from './mutation-groups.mjs';

const asked = process.argv.slice(2);
const unknown = asked.filter((group) => !(group in groups));
if (unknown.length > 0) {
  console.error(`No group ${unknown.join(', ')}. There are ${Object.keys(groups).join(', ')}.`);
  process.exit(1);
}

for (const group of asked.length > 0 ? asked : Object.keys(groups)) {
  const started = performance.now();
  const { status } = spawnSync('stryker', ['run'], {
    stdio: 'inherit',
    env: { ...process.env, MUTATION_GROUP: group },
    shell: process.platform === 'win32',
  });
  if (status !== 0) process.exit(status ?? 1);
  console.log(`${group}: ${((performance.now() - started) / 60_000).toFixed(1)} minutes`);
}
process.exitCode = checkMutation() ? 0 : 1;
