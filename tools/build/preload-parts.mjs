import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { budgets } from './budgets.mjs';
import { listFiles } from './list-files.mjs';
import { islandsOf, modulesOf } from './modules-of.mjs';
import { policyTag } from './policy.mjs';
import { sentBytes, weighPage } from './weigh-page.mjs';

/** What every calculator uses, whichever it is, first what most pages use; see code-splitting.mjs. */
const shared = ['preact', 'figures', 'form'];
const sum = (values) => values.reduce((total, value) => total + value, 0);
/** Room kept in a page for the link to a module: our choice, about its length before it is packed. */
const linkBytes = 60;

/**
 * Names all modules of the islands in the built pages, so that a browser asks for them together: in the head those of
 * islands that start with the page, at the island those of one that starts when it is used. Of a calculator, which starts
 * when it is used, the head names so many of the parts that all calculators share as its budget has room for, and its own
 * if they fit as well.
 */
export function preloadParts(folder, base) {
  const partsOf = ({ modules }) => [
    ...new Set(modules.flatMap((address) => [...modulesOf(folder, address.slice(base.length))])),
  ];

  function partsWithRoom(file, islands) {
    const parts = islands.filter(({ keepsEntries }) => keepsEntries).flatMap(partsOf);
    const candidates = shared.flatMap((name) => parts.find((part) => part.includes(`/${name}.`)) ?? []);
    if (candidates.length === 0) return []; // Most pages are no calculators: nothing is packed to be weighed.
    const own = parts.filter((part) => !candidates.includes(part));
    let { all, scripts } = weighPage(folder, file, base);
    const fitting = [];
    // Its own parts are of use only together: with one of them missing the page waits as long as without any.
    for (const together of [...candidates.map((part) => [part]), own]) {
      const bytes = sum(together.map((part) => sentBytes(join(folder, part))));
      const page = { all: all + bytes + together.length * linkBytes, scripts: scripts + bytes };
      if (page.all > budgets.calculator.all || page.scripts > budgets.calculator.scripts) continue;
      fitting.push(...together);
      ({ all, scripts } = page);
    }
    return fitting;
  }

  for (const file of listFiles(folder).filter((name) => name.endsWith('.html'))) {
    const path = join(folder, file);
    const html = readFileSync(path, 'utf8');
    const islands = islandsOf(html);
    const atOnce = new Set([
      ...islands.filter(({ starts }) => starts === 'now').flatMap(partsOf),
      ...partsWithRoom(file, islands),
    ]);
    const links = [...atOnce].map((part) => `<link rel="modulepreload" href="${base}${part}">`).join('');
    const named = islands
      .filter(({ starts }) => starts === 'use')
      .reduce((text, island) => {
        const parts = partsOf(island).map((part) => base + part);
        return text.replace(island.tag, `${island.tag.slice(0, -1)} data-parts="${parts.join(' ')}">`);
      }, html);
    if (islands.length > 0) writeFileSync(path, named.replace(policyTag, `$&${links}`));
  }
}
