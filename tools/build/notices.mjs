import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

const modules = new URL('../../node_modules/', import.meta.url).pathname;
/** Astro starts the islands by a script in the page, the face of the formulae is cut out of its package. */
const notBundled = ['astro', '@fontsource/stix-two-math'];

/** The package that a bundled module belongs to, or null where it is ours. */
const packageOf = (id) => /.*\/node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(id)?.[1] ?? null;

/** Name, version and licence of each package, then its licence to the letter. */
export function noticesOf(names) {
  const notices = [...new Set([...names, ...notBundled])].sort().map((name) => {
    const folder = join(modules, name);
    const { version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    const file = readdirSync(folder).find((each) => /^licen[cs]e(?:\.(?:md|txt))?$/i.test(each));
    if (!file) throw new Error(`${name} has no file with its licence`);
    const path = join(folder, file);
    const text = readFileSync(statSync(path).isDirectory() ? join(path, 'LICENSE') : path, 'utf8');
    return `${name} ${version}, ${license}\n\n${text.trim()}`;
  });
  const rule = `\n\n${'-'.repeat(72)}\n\n`;
  return `Packages of others of which a part is in this site.${rule}${notices.join(rule)}\n`;
}

/** Adds `notices.txt` to the pages: the licences of all packages that the bundler took something from. */
export const writeNotices = () => ({
  name: 'notices',
  generateBundle(_, bundle) {
    if (this.environment?.name !== 'client') return;
    const ids = Object.values(bundle).flatMap((chunk) => Object.keys(chunk.modules ?? {}));
    const names = ids.map(packageOf).filter((name) => name !== null);
    this.emitFile({ type: 'asset', fileName: 'notices.txt', source: noticesOf(names) });
  },
});
