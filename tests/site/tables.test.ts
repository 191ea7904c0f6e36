import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { csvOf } from '../../src/content/tables/data-table.ts';
import { dataTables } from '../../src/content/tables/index.ts';
import { attribute, builds, filesOf, pagesOf } from './built-site.ts';

describe.each(builds)('tables of $folder', (build) => {
  const names = Object.keys(dataTables) as (keyof typeof dataTables)[];

  it('are files of their own, each with its mark of UTF-8', () => {
    const files = filesOf(build).filter((file) => file.startsWith('tables/'));
    expect(files).toEqual(names.map((name) => `tables/${name}.csv`).sort());
    for (const name of names)
      expect(readFileSync(join(build.folder, `tables/${name}.csv`), 'utf8')).toBe(
        `\ufeff${csvOf(dataTables[name])}`,
      );
  });

  it('are each offered on a page, beneath the table', async () => {
    const offered = (await pagesOf(build)).flatMap(({ document }) =>
      document
        .querySelectorAll('.data-table a[download]')
        .map((link) => attribute(link, 'href').slice(build.base.length)),
    );
    expect(offered.sort()).toEqual(names.map((name) => `tables/${name}.csv`).sort());
  }, 30_000);
});
