// The tests of `tests/engines`, in Firefox and WebKit. Never skips: what is missing is installed (Debian, as root) or named.
//   node tools/test-engines.mjs [what vitest run takes]
import './check-node.mjs';
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const answers = (command, ...args) => spawnSync(command, args, { stdio: 'ignore' }).status === 0;
const isThere = (command) => () => existsSync(`/usr/bin/${command}`);
const loadsWebKit = () => answers('gjs', '-c', 'imports.gi.versions.WebKit2 = "4.1"; imports.gi.WebKit2;');

/** Debian's packages, and how to see that they are there. WebKit needs a screen and a bus; Firefox does not. */
const packages = [
  ['firefox-esr', isThere('firefox-esr')],
  ['webkit2gtk-driver', isThere('WebKitWebDriver')],
  ['gjs', isThere('gjs')],
  ['gir1.2-webkit2-4.1', loadsWebKit],
  ['xvfb', isThere('xvfb-run')],
  ['xauth', isThere('xauth')],
  ['dbus', isThere('dbus-run-session')],
];
const findMissing = () => packages.filter(([, isInstalled]) => !isInstalled()).map(([name]) => name);

function install(names) {
  console.error(`Installing packages of this system: ${names.join(' ')}`);
  const options = { stdio: ['ignore', 'ignore', 'inherit'] };
  spawnSync('apt-get', ['update', '-q'], options);
  spawnSync('apt-get', ['install', '-yq', '--no-install-recommends', ...names], options);
}

let missing = findMissing();
if (missing.length > 0 && process.getuid?.() === 0 && existsSync('/etc/debian_version')) {
  install(missing);
  missing = findMissing();
}
if (missing.length > 0) {
  console.error(`The tests in Firefox and WebKit need packages of Debian that are not here: ${missing.join(' ')}
  As root: apt-get install ${missing.join(' ')}`);
  process.exit(1);
}

const vitest = ['vitest', 'run', '--config', 'vitest.engines.config.ts', ...process.argv.slice(2)];
const { status } = spawnSync('xvfb-run', ['-a', 'dbus-run-session', '--', ...vitest], { stdio: 'inherit' });
process.exit(status ?? 1);
