// Installs the locked packages unless that was done for this very lock file. Runs under Node 20 and uses nothing
// that has to be installed. A second run does nothing, so it needs no network.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const stamp = `${root}node_modules/.installed`;
const wanted = createHash('sha256')
  .update(readFileSync(`${root}package-lock.json`))
  .digest('hex');

if (!existsSync(stamp) || readFileSync(stamp, 'utf8') !== wanted) {
  console.log('Installing the packages that package-lock.json names.');
  const npm = spawnSync(
    'npm',
    ['ci', '--include=dev', '--include=optional', '--loglevel=error', '--no-audit', '--no-fund'],
    {
      cwd: root,
      stdio: 'inherit',
      shell: process.platform === 'win32',
    },
  );
  if (npm.status !== 0) {
    console.error(
      'The packages could not be installed. The first time this needs a network; later runs do not.',
    );
    process.exit(npm.status ?? 1);
  }
  writeFileSync(stamp, wanted);
}
