import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { listFiles } from './list-files.mjs';

const names = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };
const named = (whole, name) =>
  name.startsWith('#x')
    ? String.fromCodePoint(Number.parseInt(name.slice(2), 16))
    : name.startsWith('#')
      ? String.fromCodePoint(Number(name.slice(1)))
      : (names[name] ?? whole);

/** Every character that stands in a formula of the built pages, in order. */
export function mathsCharacters(folder) {
  const pages = listFiles(folder).filter((file) => file.endsWith('.html'));
  const texts = pages.flatMap((file) =>
    [...readFileSync(join(folder, file), 'utf8').matchAll(/<math\b[\s\S]*?<\/math>/g)].map(([formula]) =>
      formula
        .replace(/<annotation\b[\s\S]*?<\/annotation>/g, '')
        .replace(/<[^>]+>/g, '')
        .replace(/&(#?\w+);/g, named),
    ),
  );
  return [...new Set(texts.join(''))].sort();
}
