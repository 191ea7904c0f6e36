import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { close, createIndex } from 'pagefind';

// The search page has its own words and boxes, it searches without a worker, and every page is in English.
const unused = /(^|\/)pagefind-(ui|modular-ui|component-ui|highlight|worker)\.|\/?wasm\.unknown\./;

function mustBeClean(errors) {
  if (errors.length > 0) throw new Error(`The search index failed: ${errors.join('; ')}`);
}

/** The search index over the built pages. Any error fails the build; so does an index without pages. */
export async function writeSearchIndex(folder) {
  const { index, errors } = await createIndex({
    keepIndexUrl: false,
    excludeSelectors: ['.unseen', '.formula', 'annotation'],
  });
  mustBeClean(errors);
  const added = await index.addDirectory({ path: folder });
  mustBeClean(added.errors);
  if (added.page_count === 0) throw new Error('The search index was given no page.');
  const { files, errors: fileErrors } = await index.getFiles();
  mustBeClean(fileErrors);
  for (const { path, content } of files.filter((file) => !unused.test(file.path))) {
    const target = join(folder, 'pagefind', path);
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, content);
  }
  await close();
  // What was read is not what was indexed: pages without data-pagefind-body are left out.
  const entry = JSON.parse(readFileSync(join(folder, 'pagefind', 'pagefind-entry.json'), 'utf8'));
  const pages = Object.values(entry.languages).reduce((sum, language) => sum + language.page_count, 0);
  if (pages === 0) throw new Error('The search index holds no page.');
  return pages;
}
