import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll } from 'vitest';
import type { Engine, EngineBrowser } from './browser.ts';
import { firefox } from './firefox.ts';
import { webkit } from './webkit.ts';

export const engines: readonly Engine[] = [firefox, webkit];

const newProfile = (): string => mkdtempSync(join(tmpdir(), 'evendraw-profile-'));
const dropProfile = (profile: string): void =>
  rmSync(profile, { recursive: true, force: true, maxRetries: 5 });

/** Gives a folder for a browser's data, and takes it away again. */
export async function withProfile(use: (profile: string) => Promise<void>): Promise<void> {
  const profile = newProfile();
  try {
    await use(profile);
  } finally {
    dropProfile(profile);
  }
}

/** A browser that has seen nothing yet, until the work is done. */
export const withBrowser = (
  engine: Engine,
  use: (browser: EngineBrowser) => Promise<void>,
  beforeLoad?: string,
): Promise<void> =>
  withProfile(async (profile) => {
    const browser = await engine.start({ profile, ...(beforeLoad && { beforeLoad }) });
    try {
      await use(browser);
    } finally {
      await browser.close();
    }
  });

/** One browser for a group of tests. Each of them serves the site at an address of its own, so each begins with nothing kept. */
export const browserOfGroup = (engine: Engine): (() => EngineBrowser) => {
  let browser: EngineBrowser | undefined;
  const profile = newProfile();
  beforeAll(async () => {
    browser = await engine.start({ profile });
  });
  afterAll(async () => {
    await browser?.close();
    dropProfile(profile);
  });
  return () => {
    if (!browser) throw new Error(`${engine.name} did not start`);
    return browser;
  };
};
