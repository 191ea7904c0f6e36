import { existsSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { constantGroups, constantTables } from '../../src/calculators/index.ts';
import { notListed } from './not-listed-numbers.ts';
import { root, sourceFiles, type SourceFile } from './source-tree.ts';

const constants = constantGroups.flatMap((group) => group.constants);
/** All of the package but the list itself; and of the practice engine, which is invented, only what is listed. */
const files = sourceFiles('src/calculators').filter(
  ({ path }) =>
    path.endsWith('.ts') &&
    !path.startsWith('src/calculators/constants') &&
    (!path.includes('/practice') || path.endsWith('/practice/constants.ts')),
);

/** Factors that say nothing of their own: halves, doubles and the steps between milli, unit and kilo. */
const plainFactor = /^(?:0|1|2|10+|1e[+-]?\d+|0\.5)$/u;

const isNumber = (node: ts.Expression): boolean => {
  if (ts.isNumericLiteral(node)) return !plainFactor.test(node.getText().replaceAll('_', ''));
  if (ts.isPrefixUnaryExpression(node)) return isNumber(node.operand);
  if (ts.isParenthesizedExpression(node) || ts.isAsExpression(node) || ts.isSatisfiesExpression(node))
    return isNumber(node.expression);
  if (ts.isBinaryExpression(node)) return isNumber(node.left) || isNumber(node.right);
  if (ts.isCallExpression(node)) return /^Math\./u.test(node.getText()) && node.arguments.some(isNumber);
  if (ts.isArrayLiteralExpression(node)) return node.elements.some(isNumber);
  if (ts.isObjectLiteralExpression(node))
    return node.properties.some(
      (property) => ts.isPropertyAssignment(property) && isNumber(property.initializer),
    );
  return false;
};

/** Names at the top of a file that hold numbers; limits of fields are said beside the fields. */
function numbersOf(file: SourceFile): string[] {
  const source = ts.createSourceFile(file.path, file.text, ts.ScriptTarget.Latest, true);
  return source.statements
    .filter(ts.isVariableStatement)
    .flatMap((statement) => [...statement.declarationList.declarations])
    .filter(({ name, initializer }) => ts.isIdentifier(name) && initializer && isNumber(initializer))
    .map(({ name }) => name.getText())
    .filter((name) => !/limits?(?:Mm)?$/iu.test(name));
}

const listed = new Set(constants.map(({ name }) => name.split('.')[0] ?? ''));
const left = new Set<string>(Object.values(notListed).flat());

describe('constants', () => {
  it('every number at the top of a file is listed, or named among those that are none', () => {
    const found = files.flatMap((file) => numbersOf(file).map((name) => `${file.path}: ${name}`));
    expect(found.length).toBeGreaterThan(100);
    expect(found.filter((each) => !listed.has(nameOf(each)) && !left.has(nameOf(each)))).toEqual([]);
    const names = new Set(found.map(nameOf));
    expect(
      [...left].filter((name) => !names.has(name)),
      'named among those that are none, but gone',
    ).toEqual([]);
    expect([...left].filter((name) => listed.has(name))).toEqual([]);
  });

  it.each([
    ['const a = 9.81;', ['a']],
    ['export const b = -(3 / 7);', ['b']],
    ['const c = [1, [0.25, 3]] as const;', ['c']],
    ['export const d = { e: 4, f: "x" };', ['d']],
    ['const g = Math.sqrt(3) * h;', ['g']],
    ['const i = j / 1000, k = 1e-3, l = "5", m = n(7);', []],
    ['function o() { const p = 9.81; return p; }', []],
  ])('the scan reads %s', (text, names) => {
    expect(numbersOf({ path: 'planted.ts', text })).toEqual(names);
  });

  it('what is listed is what the code computes with: the same name, exported once, the same value', async () => {
    const modules = await Promise.all(
      files.map(async ({ path }) => (await import(root + path)) as Record<string, unknown>),
    );
    for (const { name, value } of constants) {
      const [head = '', member] = name.split('.');
      const owners = modules.filter((each, index) => Object.hasOwn(each, head) && !isEntrance(files[index]));
      expect(owners, name).toHaveLength(1);
      const held = owners[0]?.[head] as Record<string, unknown>;
      const own = member === undefined ? held : held[member];
      const plain = typeof own === 'object' && own !== null && 'value' in own ? own.value : own;
      expect(value, name).toBe(plain);
    }
  });

  it('each table has its page', () => {
    expect(constantTables.length).toBeGreaterThan(0);
    for (const { what, page } of constantTables)
      expect(existsSync(`${root}src/pages/${page}.astro`), `${what}: ${page}`).toBe(true);
  });
});

function nameOf(found: string): string {
  return found.split(': ')[1] ?? '';
}

function isEntrance(file: SourceFile | undefined): boolean {
  return file?.path === 'src/calculators/index.ts';
}
