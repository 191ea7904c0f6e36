import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { placeOf, sourceFiles, type SourceFile, walk } from './source-tree.ts';

const arithmetic = new Set([
  ts.SyntaxKind.AsteriskToken,
  ts.SyntaxKind.AsteriskAsteriskToken,
  ts.SyntaxKind.SlashToken,
  ts.SyntaxKind.PercentToken,
  ts.SyntaxKind.AsteriskEqualsToken,
  ts.SyntaxKind.SlashEqualsToken,
]);
const roundings = /^(toFixed|toPrecision|toExponential)$/;

/**
 * Products, quotients, `Math` and rounding. Sums and differences are left out: without types a `+` of words looks the
 * same, and `place - 1` of a list is no physics.
 */
function arithmeticIn(file: SourceFile): string[] {
  const found: string[] = [];
  walk(file, (node, source) => {
    const isProduct = ts.isBinaryExpression(node) && arithmetic.has(node.operatorToken.kind);
    const isMath = ts.isPropertyAccessExpression(node) && node.expression.getText(source) === 'Math';
    const isRounding = ts.isPropertyAccessExpression(node) && roundings.test(node.name.text);
    const isParsing =
      ts.isCallExpression(node) && /^(Number|parseFloat|parseInt)$/.test(node.expression.getText(source));
    if (isProduct || isMath || isRounding || isParsing)
      found.push(`${placeOf(file, node, source)}: ${node.getText(source).slice(0, 60)}`);
  });
  return found;
}

describe('islands', () => {
  it('compute nothing: no products, no Math, no rounding, no reading of numbers', () => {
    const islands = sourceFiles('src/components/islands');
    expect(islands.length).toBeGreaterThan(3);
    expect(islands.flatMap(arithmeticIn)).toEqual([]);
  });

  it.each([
    'a * b',
    'a / 2',
    'a % 2',
    'a ** 2',
    'Math.abs(a)',
    'a.toFixed(1)',
    'Number(text)',
    'parseFloat(text)',
  ])('the scan finds %s', (text) => {
    expect(arithmeticIn({ path: 'a.tsx', text: `const x = ${text};` })).toHaveLength(1);
  });

  it('the scan lets words pass', () => {
    expect(arithmeticIn({ path: 'a.tsx', text: 'const x = <p>1/2 turn * {a + "b"} 95 %</p>;' })).toEqual([]);
  });

  it('no source puts text into a page as HTML, or a style into an element', () => {
    const sinks =
      /innerHTML|outerHTML|insertAdjacentHTML|document\.write|createContextualFragment|style=\{\{|style="|\bdefine:vars\b/;
    const isOurs = (html: string) => html === 'themeAtStart' || html.startsWith('renderFormula(');
    const faults = sourceFiles('src').flatMap(({ path, text }) => [
      ...(sinks.test(text) ? [`${path}: ${sinks.exec(text)?.[0]}`] : []),
      ...[...text.matchAll(/set:html=\{([^}]*)/g)]
        .filter(([, html]) => !isOurs(html ?? ''))
        .map(([all]) => `${path}: ${all}`),
    ]);
    expect(faults).toEqual([]);
  });
});
