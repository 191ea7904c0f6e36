import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type HtmlElement, HtmlValidate, Parser, StaticConfigLoader } from 'html-validate';
import { listFiles } from '../../tools/build/list-files.mjs';
import { addressOf } from '../../tools/build/write-worker.mjs';

/** Two builds are read: one at the root without SITE, one under a base path with it. */
export const builds = [
  { folder: process.env.OUT_DIR ?? 'dist', base: '/', site: undefined },
  { folder: process.env.CLUB_DIR ?? 'dist-club', base: '/club/', site: 'https://club.example' },
] as const;
export type Build = (typeof builds)[number];

export interface BuiltPage {
  /** Below the base path, as `safety/`. */
  address: string;
  html: string;
  document: HtmlElement;
}

export const validator = new HtmlValidate(
  new StaticConfigLoader({
    extends: ['html-validate:standard', 'html-validate:document'],
    rules: {
      'require-sri': 'off', // nothing comes from another origin
      'long-title': 'off', // a limit of result lists, not of HTML
    },
  }),
);

export function filesOf(build: Build): string[] {
  if (!existsSync(join(build.folder, 'sw.js')))
    throw new Error(
      `${build.folder} is not built. Run \`npm test\`, or build it: BASE=${build.base} OUT_DIR=${build.folder} npm run build`,
    );
  return listFiles(build.folder);
}

export async function pagesOf(build: Build): Promise<BuiltPage[]> {
  const parser = new Parser(await validator.getConfigFor('page.html'));
  return filesOf(build)
    .filter((file) => file.endsWith('.html'))
    .map((file) => {
      const html = readFileSync(join(build.folder, file), 'utf8');
      return { address: addressOf(file), html, document: parser.parseHtml(html) };
    });
}

/** The value of an attribute as a browser reads it, or '' when there is none. */
export function attribute(element: HtmlElement | null, name: string): string {
  const value = element?.getAttributeValue(name) ?? '';
  return value
    .replace(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)))
    .replaceAll('&quot;', '"')
    .replaceAll('&#x27;', "'")
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&');
}

/** Every fault with the page that has it; a test expects the list to be empty. */
export function faultsOn(pages: BuiltPage[], faultsOf: (page: BuiltPage) => (string | false)[]): string[] {
  return pages.flatMap((page) =>
    faultsOf(page)
      .filter((fault) => fault !== false)
      .map((fault) => `${page.address || 'front page'}: ${fault}`),
  );
}
