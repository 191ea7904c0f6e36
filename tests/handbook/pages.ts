import { readdirSync, readFileSync } from 'node:fs';

/** A page of the handbook as it is written, with its front matter by key. */
export type HandbookPage = { slug: string; front: Map<string, string>; body: string; prose: string };

const folder = new URL('../../src/content/handbook/', import.meta.url);

export const handbookPages: readonly HandbookPage[] = readdirSync(folder)
  .filter((name) => name.endsWith('.mdx'))
  .map((name) => {
    const [, head = '', body = ''] =
      /^---\n(.*?)\n---\n(.*)$/s.exec(readFileSync(new URL(name, folder), 'utf8')) ?? [];
    const front = frontMatter(head);
    return {
      slug: name.slice(0, -'.mdx'.length),
      front,
      body,
      prose: proseOf(`${front.get('answer')}\n\n${body}`),
    };
  });

/** Keys with their text; a list over several lines is put on one, a quoted text is taken out of its quotes. */
function frontMatter(head: string): Map<string, string> {
  const lines = head
    .replace(/:\n((?: +- .*(?:\n|$))+)/gu, (_, items: string) => {
      const list = items.split('\n').map((item) => item.replace(/^ +- /u, '').trim());
      return `: [${list.filter(Boolean).map(quoted).join(', ')}]\n`;
    })
    .replace(/:\s*\[[^\]]*\]/gu, (list) =>
      list.replace(/\s+/gu, ' ').replace('[ ', '[').replace(/,? \]/u, ']'),
    )
    .replace(/\n {2,}(?=\S)/gu, ' ')
    .split('\n');
  return new Map(
    lines.map((line): [string, string] => {
      const colon = line.indexOf(':');
      const value = line
        .slice(colon + 1)
        .trim()
        .replace(/^[>|]-?\s+/u, '');
      return [line.slice(0, colon), /^(['"]).*\1$/u.test(value) ? value.slice(1, -1) : value];
    }),
  );
}

function quoted(item: string): string {
  return /^'.*'$/u.test(item) ? item : `'${item}'`;
}

/** The items of a list of the front matter. */
export const listOf = (page: HandbookPage, field: string): string[] =>
  (page.front.get(field) ?? '')
    .replace(/^\[|\]$/gu, '')
    .split(/,(?=(?:[^']*'[^']*')*[^']*$)/u)
    .map((item) => item.trim().replace(/^'(.*)'$/u, '$1'))
    .filter(Boolean);

/** Without what is read by the build alone: imports, and constants that a page names for itself. */
function withoutCode(body: string): string {
  return body.replace(/^import\s.*?;$/gmsu, '').replace(/^export\s.*?;$/gmsu, '');
}

/** What is read as running text: no code, no formulae, no tags, no expressions, no tables’ rules, no addresses. */
export function proseOf(text: string): string {
  return withoutCode(text)
    .replace(/\$\$.*?\$\$/gsu, '')
    .replace(/<Value>.*?<\/Value>/gsu, ' 1 ')
    .replace(/<\/?(?:From|Term|Quoted|a|b|i|em|strong|sub|sup|span)\b(?:[^>"]|"[^"]*")*>/gsu, ' ')
    .replace(/\{' '\}/gu, ' ')
    .replace(/<[^<>]*>/gu, '\n\n')
    .replace(/\]\([^)]*\)/gu, ']')
    .replace(/^\s*(?:[-#|]|\d+\.).*$/gmu, (line) => `\n${line.replace(/[-#|]|^\s*\d+\./gu, '\n')}\n`);
}

/** The paragraphs of running text, each on one line; an item of a list and a cell of a table count as one. */
export const paragraphsOf = (prose: string): string[] =>
  prose
    .split(/\n\s*\n/u)
    .map((paragraph) => paragraph.replace(/\s+/gu, ' ').trim())
    .filter((paragraph) => /\p{L}/u.test(paragraph));

export const sentencesOf = (prose: string): string[] =>
  paragraphsOf(prose).flatMap((paragraph) => paragraph.split(/(?<=[.?:][*_”)]*)\s+(?=[\p{Lu}*“])/u));

export const wordsIn = (text: string): number =>
  text.split(' ').filter((word) => /[\p{L}\d]/u.test(word)).length;

export const longestOf = (texts: readonly string[]): string =>
  texts.reduce((most, text) => (wordsIn(text) > wordsIn(most) ? text : most), '');
