import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { listFiles } from './list-files.mjs';
import { islandsOf, modulesOf } from './modules-of.mjs';

/**
 * Names all modules of the islands in the built pages, so that a browser asks for them together: in the head those of
 * islands that start with the page, at the island those of one that starts when it is used.
 */
export function preloadParts(folder, base) {
  const partsOf = ({ modules }) => [
    ...new Set(modules.flatMap((address) => [...modulesOf(folder, address.slice(base.length))])),
  ];
  for (const file of listFiles(folder).filter((name) => name.endsWith('.html'))) {
    const path = join(folder, file);
    const html = readFileSync(path, 'utf8');
    const islands = islandsOf(html);
    const atOnce = new Set(islands.filter(({ starts }) => starts === 'now').flatMap(partsOf));
    const links = [...atOnce].map((part) => `<link rel="modulepreload" href="${base}${part}">`).join('');
    const named = islands
      .filter(({ starts }) => starts === 'use')
      .reduce((text, island) => {
        const parts = partsOf(island).map((part) => base + part);
        return text.replace(island.tag, `${island.tag.slice(0, -1)} data-parts="${parts.join(' ')}">`);
      }, html);
    if (islands.length > 0) writeFileSync(path, named.replace('</head>', `${links}</head>`));
  }
}
