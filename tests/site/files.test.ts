import { mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { mathsCharacters } from '../../tools/build/maths-characters.mjs';
import { addressOf, writeWorker } from '../../tools/build/write-worker.mjs';
import { builds, filesOf, pagesOf } from './built-site.ts';

interface Saved {
  version: string;
  megabytes: number;
  base: string;
  files: string[];
}

describe.each(builds)('files of $folder', (build) => {
  const text = (file: string) => readFileSync(join(build.folder, file), 'utf8');

  it('the worker saves every file but those that only hosts and crawlers ask for', () => {
    const firstLine = text('sw.js').split('\n', 1)[0] ?? '';
    const saved = runInNewContext(`${firstLine} saved`) as Saved;
    const others = ['_headers', 'sw.js', 'robots.txt', 'sitemap.xml', 'icons/share.png'];
    const expected = filesOf(build).filter((file) => !others.includes(file));
    expect([...saved.files]).toEqual(expected.map(addressOf));
    expect(saved.base).toBe(build.base);
    expect(saved.megabytes).toBeGreaterThan(0.1);
    expect(saved.megabytes).toBeLessThan(5); // a phone on a slow line waits for it once
  });

  it('the face of the formulae was cut for every character of them (npm run maths-face)', () => {
    const cut = JSON.parse(readFileSync('src/styles/maths-characters.json', 'utf8')) as string;
    const set = mathsCharacters(build.folder);
    expect(set.length).toBeGreaterThan(50);
    expect(set.filter((character) => !cut.includes(character))).toEqual([]);
  });

  it('the notices name every package that reaches the reader, with its licence', () => {
    const read = (file: string) =>
      JSON.parse(readFileSync(file, 'utf8')) as { dependencies: object; version: string };
    const notices = text('notices.txt');
    for (const name of [
      ...Object.keys(read('package.json').dependencies),
      'astro',
      '@fontsource/stix-two-math',
    ])
      expect(notices).toContain(`\n${name} ${read(`node_modules/${name}/package.json`).version}, `);
    const permissions = notices.match(/Permission is hereby granted|Permission to use, copy, modify/gu);
    expect(permissions?.length).toBeGreaterThanOrEqual(notices.match(/^-{72}$/gmu)?.length ?? Infinity);
  });

  it('the search index holds every page that asks to be in it, with its text', async () => {
    const index = JSON.parse(text('search-index.json')) as { documentIds: Record<string, string> };
    const texts = JSON.parse(text('search-texts.json')) as Record<string, string>;
    const wanted = (await pagesOf(build))
      .filter(({ document }) => document.querySelector('[data-searched]'))
      .map(({ address }) => build.base + address)
      .sort();
    expect(wanted.length).toBeGreaterThan(60);
    expect(Object.values(index.documentIds).sort()).toEqual(wanted);
    expect(Object.keys(texts).sort()).toEqual(wanted);
    for (const [address, words] of Object.entries(texts)) {
      expect(words.length, address).toBeGreaterThan(100);
      expect(words, address).not.toMatch(/<[a-z]|&[a-z]+;|&#/u);
    }
  });

  it('the manifest names icons that are there, under the base path', () => {
    const manifest = JSON.parse(text('manifest.webmanifest')) as {
      start_url: string;
      scope: string;
      icons: { src: string; sizes: string; purpose: string }[];
      shortcuts: { url: string }[];
    };
    const files = filesOf(build).map((file) => build.base + addressOf(file));
    expect(manifest.start_url).toBe(build.base);
    expect(manifest.scope).toBe(build.base);
    for (const { src } of manifest.icons) expect(files).toContain(src);
    for (const { url } of manifest.shortcuts) expect(files).toContain(url);
    expect(manifest.icons.map((icon) => icon.purpose)).toContain('maskable');
  });

  it('robots.txt allows every page, and names the sitemap when there is one', () => {
    const robots = text('robots.txt');
    expect(robots).toMatch(/^User-agent: \*\nAllow: \/\n/);
    expect(robots.includes('Sitemap:')).toBe(build.site !== undefined);
    if (build.site) {
      expect(robots).toContain(`Sitemap: ${build.site}${build.base}sitemap.xml\n`);
      expect(text('sitemap.xml')).toContain(`<loc>${build.site}${build.base}</loc>`);
      expect(text('sitemap.xml')).not.toContain('404');
    }
  });
});

describe('the version of the worker', () => {
  function versionsOf(change: (folder: string) => void, base = '/'): [string, string] {
    const folder = mkdtempSync(join(tmpdir(), 'evendraw-'));
    try {
      mkdirSync(join(folder, 'a'));
      writeFileSync(join(folder, 'a', 'index.html'), 'one');
      writeFileSync(join(folder, 'b.js'), 'two');
      const { version } = writeWorker(folder, '/');
      change(folder);
      return [version, writeWorker(folder, base).version];
    } finally {
      rmSync(folder, { recursive: true });
    }
  }

  it('is the same for the same files', () => {
    const [before, after] = versionsOf(() => undefined);
    expect(after).toBe(before);
  });

  it.each([
    ['a content', (folder: string) => writeFileSync(join(folder, 'b.js'), 'owt'), '/'],
    ['a name', (folder: string) => renameSync(join(folder, 'b.js'), join(folder, 'c.js')), '/'],
    ['the base path', () => undefined, '/club/'],
  ])('changes with %s', (_, change, base) => {
    const [before, after] = versionsOf(change, base);
    expect(after).not.toBe(before);
  });
});
