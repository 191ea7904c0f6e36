import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { drawnPartOf } from './drawn-text.ts';
import { placeOf, sourceFiles, type SourceFile, walk } from './source-tree.ts';

/** A `sub`, a `sup` and an unseen `span` belong to the word before them. */
const inline = /^<(?:a|b|em|strong|code|small)[\s>]/u;

/** An expression that puts words among words; lists, conditions and `{' '}` look after their own gaps. */
const isWords = (node: ts.Node | undefined): boolean =>
  node !== undefined &&
  (ts.isJsxExpression(node)
    ? /^\{[^'"`&?]*\}$/su.test(node.getText()) && !/=>|\.map\(/u.test(node.getText())
    : ts.isJsxElement(node) && inline.test(node.getText()));

/**
 * Words that would stand without a gap: a line break between a word and its neighbour is dropped, as JSX has it,
 * and a word that touches an expression is glued to what it gives.
 */
function gluedIn(file: SourceFile): string[] {
  const found: string[] = [];
  const part = file.path.endsWith('.astro') ? drawnPartOf(file) : file;
  walk(part, (node, source) => {
    if (!ts.isJsxElement(node) && !ts.isJsxFragment(node)) return;
    node.children.forEach((child, index) => {
      if (!ts.isJsxText(child)) return;
      const text = child.text.replace(/&nbsp;$/u, '\u00a0');
      const before = /[\p{L}\d,;:.]$/u.test(text) || /[\p{L}\d,;:.]\s*\n\s*$/u.test(text);
      const after = /^[\p{L}\d]/u.test(text) || /^\s*\n\s*[\p{L}\d(]/u.test(text);
      if (before && isWords(node.children[index + 1]))
        found.push(`${placeOf(part, child, source)}: ${text.trim().slice(-30)}`);
      if (after && isWords(node.children[index - 1]))
        found.push(`${placeOf(part, child, source)}: ${text.trim().slice(0, 30)}`);
    });
  });
  return found;
}

describe('gaps between words', () => {
  it('are not lost between a text and what stands beside it', () => {
    const files = sourceFiles('src').filter(({ path }) => /\.(?:tsx|astro)$/u.test(path));
    expect(files.length).toBeGreaterThan(50);
    expect(files.flatMap(gluedIn)).toEqual([]);
  });

  it.each([
    ['<p>Depression in{unit}: as read</p>', 1],
    ['<p>{count}digits</p>', 1],
    ['<p>\n  taken by\n  <code>x</code>\n</p>', 1],
    ['<p>\n  Depression in {unit}: as read, in <b>one</b> line\n</p>', 0],
    ["<p>\n  read{' '}\n  <b>this</b>\n</p>", 0],
  ])('are missed in %s', (text, count) => {
    expect(gluedIn({ path: 'src/x.astro', text })).toHaveLength(count);
  });
});
