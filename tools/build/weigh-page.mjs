import { readFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { brotliCompressSync, constants } from 'node:zlib';

const packed = new Map();

/** Bytes of a file as it is sent. */
function sentBytes(path) {
  if (!packed.has(path)) {
    const options = { params: { [constants.BROTLI_PARAM_QUALITY]: 11 } };
    packed.set(path, brotliCompressSync(readFileSync(path), options).length);
  }
  return packed.get(path);
}

/** A module and all that it imports at once; what is imported later, on demand, is not counted. */
function withImports(folder, file, found = new Set()) {
  if (found.has(file)) return found;
  found.add(file);
  const text = readFileSync(join(folder, file), 'utf8');
  for (const [, imported] of text.matchAll(/(?:\bfrom|\bimport)\s*["'](\.{1,2}\/[^"']+)["']/g))
    withImports(folder, posix.join(dirname(file), imported), found);
  return found;
}

/**
 * What a page weighs, in bytes: `all` of HTML, styles and scripts, `scripts` alone, `first` HTML and styles; and how
 * many elements, formulae and islands it has.
 */
export function weighPage(folder, file) {
  const html = readFileSync(join(folder, file), 'utf8');
  const base = /<link rel="manifest" href="([^"]*\/)manifest\.webmanifest"/.exec(html)?.[1] ?? '/';
  const inSite = (address) => address.slice(base.length).replace(/[?#].*$/, '');
  const styles = [...html.matchAll(/<link[^>]+rel="stylesheet"[^>]*>/g)].map(([tag]) =>
    inSite(/href="([^"]+)"/.exec(tag)?.[1] ?? ''),
  );
  const modules = [
    ...[...html.matchAll(/<script[^>]+src="([^"]+)"/g)].map(([, address]) => address),
    ...[...html.matchAll(/\b(?:component|renderer|before-hydration)-url="([^"]+)"/g)].map(
      ([, address]) => address,
    ),
  ].map(inSite);
  const scripts = new Set(modules.flatMap((module) => [...withImports(folder, module)]));
  const sum = (files) => [...files].reduce((total, each) => total + sentBytes(join(folder, each)), 0);
  const first = sentBytes(join(folder, file)) + sum(new Set(styles));
  return {
    path: file.replace(/(^|\/)index\.html$/, '$1'),
    first,
    scripts: sum(scripts),
    all: first + sum(scripts),
    nodes: html.match(/<[a-z][^>]*>/g)?.length ?? 0,
    formulae: html.match(/<math\b/g)?.length ?? 0,
    islands: html.match(/<astro-island\b/g)?.length ?? 0,
  };
}
