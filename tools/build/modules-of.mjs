import { readFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';

const atOnce = /(?:\bfrom|\bimport)\s*["'](\.{1,2}\/[^"']+)["']/g;
const onDemand = /\bimport\(\s*["'`](\.{1,2}\/[^"'`]+)["'`]\s*\)/g;

/** A built module and all that it imports, as paths in the folder; with `later`, what it imports on demand as well. */
export function modulesOf(folder, file, { later = false } = {}, found = new Set()) {
  if (found.has(file)) return found;
  found.add(file);
  const text = readFileSync(join(folder, file), 'utf8');
  for (const pattern of later ? [atOnce, onDemand] : [atOnce])
    for (const [, imported] of text.matchAll(pattern))
      modulesOf(folder, posix.join(dirname(file), imported), { later }, found);
  return found;
}

const attribute = (tag, name) => new RegExp(`\\b${name}="([^"]*)"`).exec(tag)?.[1];

/** The islands of a page: how each starts, whether it keeps entries, and the addresses of the modules that it starts with. */
export const islandsOf = (html) =>
  [...html.matchAll(/<astro-island\b[^>]*>/g)].map(([tag]) => ({
    tag,
    starts: attribute(tag, 'client'),
    keepsEntries: !attribute(tag, 'opts')?.includes('&quot;value&quot;:true'),
    modules: ['component-url', 'renderer-url', 'before-hydration-url'].flatMap(
      (name) => attribute(tag, name) ?? [],
    ),
  }));
