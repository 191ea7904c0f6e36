import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Script } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { bundleForDisk } from '../../tools/build/bundle-for-disk.mjs';

async function bundleText(text: string): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'evendraw-'));
  try {
    writeFileSync(join(folder, 'other.js'), 'export default 1;');
    writeFileSync(join(folder, 'entry.js'), text);
    return await bundleForDisk(join(folder, 'entry.js'));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

describe('from a disk', () => {
  it('the bench session, the practice engine and every calculator fit into one classic script', async () => {
    const code = await bundleForDisk(new URL('./from-disk/entry.ts', import.meta.url).pathname);
    expect(code.length).toBeGreaterThan(20_000);
    expect(() => new Script(code)).not.toThrow(); // parses as a classic script, so no import or export is left
    expect(code).not.toMatch(/\bimport\s*\(|\bimport\.meta\b/);
  }, 60_000);

  it.each(['import("other")', 'import(name)', 'import.meta.url', 'import.meta.env.SITE'])(
    'a script with %s is refused',
    async (text) => {
      await expect(bundleText(`const name = './other.js'; globalThis.x = ${text};`)).rejects.toThrow(
        /cannot do/,
      );
    },
  );

  it('a part that is loaded when it is wanted becomes part of the script', async () => {
    const code = await bundleText('import("./other.js").then((other) => (globalThis.x = other.default));');
    expect(code).not.toMatch(/\bimport\s*\(/);
    const given: { x?: unknown } = {};
    new Script(code).runInNewContext(Object.assign(given, { globalThis: given }));
    await new Promise((resolve) => setTimeout(resolve));
    expect(given.x).toBe(1);
  });

  it('the base path becomes a plain value', async () => {
    expect(await bundleText('globalThis.x = import.meta.env.BASE_URL; // not import.meta')).toMatch(
      /x\s*=\s*["'`]\.\/["'`]/,
    );
  });
});
