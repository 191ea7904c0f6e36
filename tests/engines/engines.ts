import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Engine, EngineBrowser } from './browser.ts';
import { firefox } from './firefox.ts';
import { webkit } from './webkit.ts';

export const engines: readonly Engine[] = [firefox, webkit];

/** Gives a folder for a browser's data, and takes it away again. */
export async function withProfile(use: (profile: string) => Promise<void>): Promise<void> {
  const profile = mkdtempSync(join(tmpdir(), 'evendraw-profile-'));
  try {
    await use(profile);
  } finally {
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
}

/** A browser that has seen nothing yet, until the work is done. */
export const withBrowser = (
  engine: Engine,
  use: (browser: EngineBrowser, profile: string) => Promise<void>,
  beforeLoad?: string,
): Promise<void> =>
  withProfile(async (profile) => {
    const browser = await engine.start({ profile, ...(beforeLoad && { beforeLoad }) });
    try {
      await use(browser, profile);
    } finally {
      await browser.close();
    }
  });
