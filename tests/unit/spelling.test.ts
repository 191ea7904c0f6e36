import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { drawnPartOf } from '../architecture/drawn-text.ts';
import { sourceFiles, type SourceFile, walk } from '../architecture/source-tree.ts';
import { handbookPages, listOf } from '../handbook/pages.ts';
import { doubled, misspelt } from '../handbook/spelling.ts';

/** What is read of a page of the handbook. */
const textOf = (page: (typeof handbookPages)[number]): string =>
  [
    ...['title', 'description', 'answer'].map((key) => page.front.get(key) ?? ''),
    ...listOf(page, 'asks'),
    page.prose,
  ].join('\n\n');

/** Titles and names of others are spelt as they spell them. */
const isCitation = (node: ts.Node): boolean =>
  ts.isPropertyAssignment(node.parent) && node.parent.name.getText() === 'citation';

/** Names of classes, paths of drawings, formulae and addresses are no words. */
const isNotRead = (node: ts.Node): boolean => {
  for (let at: ts.Node | undefined = node.parent; at; at = at.parent) {
    if (ts.isJsxAttribute(at))
      return !/^(aria-label|title|words|label|placeholder)$/u.test(at.name.getText());
    if (ts.isCallExpression(at) && /renderFormula|^Error|RegExp/u.test(at.expression.getText())) return true;
    if (ts.isNewExpression(at)) return true; // an error for ourselves
    if (ts.isTypeNode(at) || ts.isImportDeclaration(at)) return true;
  }
  return false;
};

/** Sentences that a file says: its texts of several words, and the texts between its tags. */
function wordsOf(file: SourceFile): string {
  const found: string[] = [];
  const parts = file.path.endsWith('.astro') ? [file, drawnPartOf(file)] : [file];
  for (const part of parts)
    walk(part, (node) => {
      const isText =
        ts.isJsxText(node) ||
        ts.isStringLiteral(node) ||
        ts.isNoSubstitutionTemplateLiteral(node) ||
        ts.isTemplateHead(node) ||
        ts.isTemplateMiddle(node) ||
        ts.isTemplateTail(node);
      if (!isText || !/\p{L}\s+\p{L}|^\p{Lu}\p{Ll}+[.:]?$/u.test(node.text)) return;
      if (!ts.isJsxText(node) && (isCitation(node) || isNotRead(node))) return;
      if (!/[{}<>;=]/u.test(node.text)) found.push(node.text);
    });
  return found.join('\n\n');
}

/** Tables of what a reader may type hold the spellings of everybody. */
const holdsSpellings = /calculators\/[a-z-]+-(?:units|unit-table)\.ts$|device\/search-words\.ts$/u;

describe('spelling', () => {
  it.each(handbookPages)('of the page $slug is British, with no word twice', (page) => {
    const text = textOf(page);
    expect(misspelt(text)).toEqual([]);
    expect(doubled(text)).toEqual([]);
  });

  it.each(['calculators', 'components', 'content', 'device', 'drawing', 'layouts', 'pages'])(
    'of what src/%s says is British, with no word twice',
    (folder) => {
      const files = sourceFiles(`src/${folder}`).filter(
        ({ path }) => /\.(ts|tsx|astro)$/u.test(path) && !holdsSpellings.test(path),
      );
      const faults = files.flatMap((file) => {
        const text = wordsOf(file);
        return [...misspelt(text), ...doubled(text)].map((word) => `${file.path}: ${word}`);
      });
      expect(files.length).toBeGreaterThan(0);
      expect([...new Set(faults)]).toEqual([]);
    },
  );

  it.each([
    ['the color of the gage', ['color', 'gage']],
    ['synchronize at the center', ['synchronize', 'center']],
    ['a liter, a meter and a tire', ['liter', 'meter', 'tire']],
    ['the depresion is wrong', ['depresion']],
  ])('finds what is wrong in “%s”', (text, expected) => expect(misspelt(text)).toEqual(expected));

  it('lets pass what is right', () => {
    expect(misspelt('The carburettor’s colour at the centre, in mmHg, isn’t grey; see M5 and x2.')).toEqual(
      [],
    );
    expect(doubled('read the the needle')).toEqual(['the the']);
  });
});
