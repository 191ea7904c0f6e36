import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import MiniSearch from 'minisearch';
import { ELEMENT_NODE, parse, TEXT_NODE, walkSync } from 'ultrahtml';
import { searchTerms } from '../../src/device/search-terms.ts';
import { listFiles } from './list-files.mjs';
import { plainText } from './plain-text.mjs';
import { addressOf } from './write-worker.mjs';

/** Not read, or no words. */
const unread = new Set(['math', 'noscript', 'script', 'style', 'svg', 'template']);
/** These stand within a line. */
const inline = new Set(
  'a abbr astro-island astro-slot b bdi button cite code data em i mark q s small span strong sub sup time u var'.split(
    ' ',
  ),
);

/** A term stands with what it means, and a cell with its row. */
const around = { dt: ['\n', ': '], dd: ['', '\n'], td: ['', ' '], th: ['', ' '] };

const classesOf = ({ attributes }) => (attributes.class ?? '').split(/\s+/);
const isRead = (node) =>
  !unread.has(node.name) && !('data-unsearched' in node.attributes) && !classesOf(node).includes('unseen');

/** The text under an element, a line for each paragraph, row or heading. */
function textUnder(node) {
  if (node.type === TEXT_NODE) return plainText(node.value).replace(/\s+/g, ' ');
  if (node.type === ELEMENT_NODE && !isRead(node)) return ' ';
  const text = (node.children ?? []).map(textUnder).join('');
  if (inline.has(node.name)) return text;
  const [before, after] = around[node.name] ?? ['\n', '\n'];
  return before + text + after;
}

const trimmed = (text) =>
  text
    .split('\n')
    .map((line) => line.replace(/ +/g, ' ').trim())
    .filter(Boolean)
    .join('\n');

function elementWith(document, isIt) {
  let found;
  walkSync(document, (node) => {
    if (node.type === ELEMENT_NODE && isIt(node)) found ??= node;
  });
  return found;
}

/** The pages that are to be found: those whose `main` says so. */
function searchedPages(folder, base) {
  return listFiles(folder)
    .filter((file) => file.endsWith('.html'))
    .flatMap((file) => {
      const document = parse(readFileSync(join(folder, file), 'utf8'));
      const main = elementWith(document, ({ attributes }) => 'data-searched' in attributes);
      if (!main) return [];
      const heading = elementWith(main, ({ name }) => name === 'h1');
      if (!heading) throw new Error(`${file} has no heading for the search.`);
      return [
        {
          address: base + addressOf(file),
          title: trimmed(textUnder(heading)),
          text: trimmed(textUnder(main)),
        },
      ];
    });
}

/** `search-index.json`, and the texts that its excerpts are taken from; gives the number of pages. */
export function writeSearchIndex(folder, base) {
  const pages = searchedPages(folder, base);
  if (pages.length === 0) throw new Error('The search index was given no page.');
  const index = new MiniSearch(searchTerms);
  index.addAll(pages);
  writeFileSync(join(folder, 'search-index.json'), JSON.stringify(index));
  const texts = Object.fromEntries(pages.map(({ address, text }) => [address, text]));
  writeFileSync(join(folder, 'search-texts.json'), JSON.stringify(texts));
  return pages.length;
}
