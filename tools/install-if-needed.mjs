// Installs the locked packages unless they are there. Runs under Node 20 and uses nothing that has to be installed.
// A second run does nothing, so it needs no network.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const stamp = `${root}node_modules/.installed`;
const lock = readFileSync(`${root}package-lock.json`, 'utf8');
const wanted = createHash('sha256').update(lock).digest('hex');

const isStamped = () => existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted;

/** Whether `npm install`, run by hand, has put all of the lock there already: npm keeps a list of what it installed. */
function isInstalledByHand() {
  try {
    const list = JSON.parse(readFileSync(`${root}node_modules/.package-lock.json`, 'utf8')).packages;
    // An optional package is needed when it is made for this very machine, as Node itself is.
    const isNeeded = ({ optional, os, cpu, libc }) =>
      !optional || (os?.includes(process.platform) && cpu?.includes(process.arch) && !libc);
    return Object.entries(JSON.parse(lock).packages).every(
      ([path, entry]) =>
        path === '' || list[path]?.version === entry.version || (!list[path] && !isNeeded(entry)),
    );
  } catch {
    return false;
  }
}

if (!isStamped()) {
  if (!isInstalledByHand()) {
    console.log('Installing the packages that package-lock.json names.');
    const args = ['ci', '--include=dev', '--include=optional', '--loglevel=error', '--no-audit', '--no-fund'];
    const npm = spawnSync('npm', args, { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' });
    if (npm.status !== 0) {
      console.error(
        'The packages could not be installed. The first time this needs a network; later runs do not.',
      );
      process.exit(npm.status ?? 1);
    }
  }
  writeFileSync(stamp, wanted);
}
