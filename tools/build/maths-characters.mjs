import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { listFiles } from './list-files.mjs';
import { plainText } from './plain-text.mjs';

/** Every character that stands in a formula of the built pages, in order. */
export function mathsCharacters(folder) {
  const pages = listFiles(folder).filter((file) => file.endsWith('.html'));
  const texts = pages.flatMap((file) =>
    [...readFileSync(join(folder, file), 'utf8').matchAll(/<math\b[\s\S]*?<\/math>/g)].map(([formula]) =>
      plainText(formula.replace(/<annotation\b[\s\S]*?<\/annotation>/g, '').replace(/<[^>]+>/g, '')),
    ),
  );
  return [...new Set(texts.join(''))].sort();
}
