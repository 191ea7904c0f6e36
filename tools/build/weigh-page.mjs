import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { listFiles } from './list-files.mjs';
import { islandsOf, modulesOf } from './modules-of.mjs';
import { packed } from './packed.mjs';

/** Bytes of a file as it is sent. */
export const sentBytes = (path) => packed(path).length;

/**
 * What a page of a site under a base path weighs, in bytes: `all` of HTML, styles and scripts as it is opened, `scripts` alone, `inUse` the scripts
 * once all of it is used, `first` HTML and styles, `fonts` besides; and how many elements, formulae it has, and whether it is a calculator.
 */
export function weighPage(folder, file, base) {
  const html = readFileSync(join(folder, file), 'utf8');
  const inSite = (address) => address.slice(base.length).replace(/[?#].*$/, '');
  const styles = [...html.matchAll(/<link[^>]+rel="stylesheet"[^>]*>/g)].map(([tag]) =>
    inSite(/href="([^"]+)"/.exec(tag)?.[1] ?? ''),
  );
  const islands = islandsOf(html);
  const own = [...html.matchAll(/<script[^>]+src="([^"]+)"|<link rel="modulepreload" href="([^"]+)"/g)].map(
    ([, script, preloaded]) => script ?? preloaded,
  );
  const asked = islands.flatMap(({ starts, modules }) => (starts === 'use' ? [] : modules));
  const graph = (addresses, options) =>
    new Set(addresses.map(inSite).flatMap((module) => [...modulesOf(folder, module, options)]));
  const scripts = graph([...own, ...asked]);
  const inUse = graph([...own, ...islands.flatMap(({ modules }) => modules)], { later: true });
  const sum = (files) => [...files].reduce((total, each) => total + sentBytes(join(folder, each)), 0);
  const first = sentBytes(join(folder, file)) + sum(new Set(styles));
  const formulae = html.match(/<math\b/g)?.length ?? 0;
  const faces = formulae === 0 ? [] : listFiles(folder).filter((each) => each.endsWith('.woff2'));
  return {
    path: file.replace(/(^|\/)index\.html$/, '$1'),
    first,
    scripts: sum(scripts),
    inUse: sum(inUse),
    all: first + sum(scripts),
    nodes: html.match(/<[a-z][^>]*>/g)?.length ?? 0,
    formulae,
    fonts: sum(faces),
    isCalculator: islands.some(({ starts, keepsEntries }) => starts === 'now' || keepsEntries),
  };
}
