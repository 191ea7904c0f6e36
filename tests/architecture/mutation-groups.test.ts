import { existsSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { filesOf, groups, isParser, testsOf } from '../../tools/mutation-groups.mjs';
import { root, sourceFiles, type SourceFile } from './source-tree.ts';

const grouped = Object.keys(groups).flatMap((group) => filesOf(group));

/** False of a file of types, and of one that only passes on what others export. */
const hasCode = (file: SourceFile): boolean =>
  ts
    .createSourceFile(file.path, file.text, ts.ScriptTarget.Latest)
    .statements.some(
      (statement) =>
        !ts.isImportDeclaration(statement) &&
        !ts.isExportDeclaration(statement) &&
        !ts.isInterfaceDeclaration(statement) &&
        !ts.isTypeAliasDeclaration(statement),
    );

describe('the groups of the mutation run', () => {
  it('have every file of the package that has code', () => {
    const withCode = sourceFiles('src/calculators')
      .filter((file) => file.path.endsWith('.ts') && hasCode(file))
      .map(({ path }) => path);
    expect(withCode.length).toBeGreaterThan(200);
    expect(withCode.filter((path) => !grouped.includes(path))).toEqual([]);
  });

  it('have no file twice, and none that is not there', () => {
    expect(grouped.filter((path, index) => grouped.indexOf(path) !== index)).toEqual([]);
    expect(grouped.filter((path) => !existsSync(root + path))).toEqual([]);
  });

  it.each(Object.keys(groups))('have tests that are there: %s', (group) => {
    const tests = testsOf(group);
    expect(tests.length).toBeGreaterThan(0);
    expect(tests.filter((path) => !existsSync(root + path))).toEqual([]);
  });

  it.each([
    ["import type { A } from './a.ts';\nexport type B = A;", false],
    ["export { a } from './a.ts';\nexport interface B {}", false],
    ['export const a = 1;', true],
    ['export function a() {}', true],
    ['if (a) b();', true],
  ])('%j is code: %s', (text, code) => {
    expect(hasCode({ path: 'planted.ts', text })).toBe(code);
  });

  it('know what reads what was typed', () => {
    const parsers = grouped.filter(isParser).map((path) => path.slice('src/calculators/'.length));
    for (const name of ['parse-number', 'plain-number', 'plain-text', 'session-link', 'typed-fields'])
      expect(parsers).toContain(`${name}.ts`);
    expect(parsers).not.toContain('describe-problem.ts');
  });
});
