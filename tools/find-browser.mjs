// A browser for the tests. Never skips: without one it names the cures and ends with an error.
import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright';

/** Quiet, and able to run as root in a container. */
export const launchFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

const usualPlaces = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/opt/google/chrome/chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
];

const cures = `No browser was found that runs, and the tests need one. Any one of these cures it:
  1. Install Chromium or Chrome (Debian, as root: apt-get install chromium).
  2. Set CHROME_PATH to a Chromium or Chrome that you have.
  3. Run: npx playwright install chromium`;

/** Whether the program starts, shows an empty page and ends. */
function runs(path) {
  if (!path || !existsSync(path)) return false;
  try {
    const page = execFileSync(path, ['--headless', ...launchFlags, '--dump-dom', 'about:blank'], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
      timeout: 30_000,
    });
    return page.includes('<html');
  } catch {
    return false;
  }
}

function installDebianPackage() {
  if (process.getuid?.() !== 0 || !existsSync('/etc/debian_version')) return;
  console.error('Installing the chromium package of this system.');
  const options = { stdio: ['ignore', 'ignore', 'inherit'] };
  spawnSync('apt-get', ['update', '-q'], options);
  spawnSync('apt-get', ['install', '-yq', '--no-install-recommends', 'chromium', 'fonts-dejavu'], options);
}

function downloadPlaywrightsOwn() {
  console.error('Asking Playwright to download its browser.');
  spawnSync('npx', ['playwright', 'install', 'chromium'], {
    stdio: ['ignore', 'ignore', 'inherit'],
    shell: process.platform === 'win32',
  });
}

/** The path of a browser that was seen to run. Found once, it is handed to child processes as CHROME_PATH. */
export function findBrowser() {
  if (process.env.EVENDRAW_BROWSER) return process.env.EVENDRAW_BROWSER;
  const chosen = process.env.CHROME_PATH;
  if (chosen && !runs(chosen))
    console.error(`CHROME_PATH is ${chosen}, which does not run. Looking elsewhere.`);
  const look = () => [chosen, ...usualPlaces, chromium.executablePath()].find(runs);
  let found = look();
  for (const fetch of [installDebianPackage, downloadPlaywrightsOwn]) {
    if (found) break;
    fetch();
    found = look();
  }
  if (!found) {
    console.error(cures);
    process.exit(1);
  }
  process.env.EVENDRAW_BROWSER = found;
  return found;
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) console.log(findBrowser());
