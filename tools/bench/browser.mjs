// What the parts of `npm run bench:browser` share: a phone's page, slowed down, and words for a figure and its bar.
import { loadavg } from 'node:os';
import { chromium } from 'playwright';
import { findBrowser, launchFlags } from '../find-browser.mjs';
import { serveFolder } from '../serve.mjs';

/** Latency in milliseconds, bytes a second: as the tools of browsers name them, from memory. */
export const networks = {
  'slow 3G': { latency: 400, throughput: 50_000 },
  'fast 3G': { latency: 150, throughput: 200_000 },
};

/** The built site and the hand-written page, each by the same server program, and a browser. */
export async function openBench() {
  const site = await serveFolder({ folder: process.env.OUT_DIR ?? 'dist', packsOnce: true });
  const hand = await serveFolder({ folder: 'tools/bench', packsOnce: true });
  const browser = await chromium.launch({ executablePath: findBrowser(), args: launchFlags });
  return {
    browser,
    ours: (path) => `${site.address}${path}`,
    handWritten: `${hand.address}one-unit.html`,
    close: () => Promise.all([browser.close(), site.close(), hand.close()]),
  };
}

/** A page with nothing in its cache, on a processor and a network that are slowed down. */
export async function openPage(browser, { slowdown = 1, network, scripts = [] } = {}) {
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    deviceScaleFactor: 2,
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  const devtools = await context.newCDPSession(page);
  for (const script of scripts) await page.addInitScript(script);
  if (network) {
    const { latency, throughput } = networks[network];
    await devtools.send('Network.enable');
    await devtools.send('Network.emulateNetworkConditions', {
      offline: false,
      latency,
      downloadThroughput: throughput,
      uploadThroughput: throughput,
    });
  }
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  return { page, devtools, close: () => context.close() };
}

/** Until the page's own script has taken over what the server sent. */
export const takenOver = (page) =>
  page.locator('astro-island:not([ssr])').first().waitFor({ state: 'attached' });

export function quantile(values, share) {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
}
export const median = (values) => quantile(values, 0.5);

const shown = (value) => value.toFixed(Math.abs(value) < 10 ? 2 : 0);

let over = 0;
/** One line: the figure, its bar, and in words whether it is kept. */
export function judge(what, value, unit, bar) {
  const kept = value <= bar;
  if (!kept) over += 1;
  console.log(`  ${kept ? 'within' : 'OVER  '}  ${what}: ${shown(value)}${unit}, at most ${bar}${unit}`);
}
export const say = (words) => console.log(`          ${words}`);
export const countOver = () => over;
export const loadInWords = () =>
  `the machine had ${loadavg()[0].toFixed(1)} tasks at once in the last minute`;
