import { existsSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { filesOf, groups, isParser, testsOf } from '../../tools/mutation/groups.mjs';
import { collectTests, scriptOf } from '../../tools/mutation/collect-tests.mjs';
import { mutantSwitch } from '../../tools/mutation/mutant-switch.mjs';
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

describe('the runner of the mutation run', () => {
  it('collects each row of a table as a test, with the script and the place that it stands in', () => {
    const { tests, api } = collectTests();
    const seen: unknown[] = [];
    api.inScript('a.cjs');
    api.describe.each([['x'], ['y']])('group %s', (letter: string) => {
      api.it.each([
        [1, 2],
        [3, 4],
      ])('sum', (a: number, b: number) => {
        seen.push(letter, a + b);
      });
    });
    api.inScript('b.cjs');
    api.test('row', { timeout: 1 }, () => seen.push('row'));
    expect(seen).toEqual([]);
    for (const test of tests) test.run();
    expect(seen).toEqual(['x', 3, 'x', 7, 'y', 3, 'y', 7, 'row']);
    expect(tests.map(({ id }) => scriptOf(id))).toEqual(['a.cjs', 'a.cjs', 'a.cjs', 'a.cjs', 'b.cjs']);
    expect(new Set(tests.map(({ id }) => id)).size).toBe(5);
  });

  it.each<[string, (expect: ReturnType<typeof collectTests>['api']['expect']) => void, boolean]>([
    ['equal', (its) => its({ a: [1] }).toEqual({ a: [1] }), true],
    ['not equal', (its) => its({ a: [1] }).toEqual({ a: [2] }), false],
    ['close', (its) => its({ a: 1 }).toEqual({ a: its.closeTo(1.001, 2) }), true],
    ['not close', (its) => its({ a: 1 }).toEqual({ a: its.closeTo(1.1, 2) }), false],
    ['thrown', (its) => its(() => null).toThrow(), false],
  ])('notices what vitest notices: %s', (_, check, passes) => {
    const run = (): void => check(collectTests().api.expect);
    if (passes) expect(run).not.toThrow();
    else expect(run).toThrow();
  });

  it('runs one mutant alone, and gives it up when it is come to too often', () => {
    const mutants = mutantSwitch(2);
    expect(mutants.isActive(7)).toBe(false);
    mutants.activate(7);
    expect([mutants.isActive(8), mutants.isActive(7), mutants.isActive(7)]).toEqual([false, true, true]);
    expect(mutants.hitLimitReached()).toBe(false);
    expect(() => mutants.isActive(7)).toThrow();
    expect(mutants.hitLimitReached()).toBe(true);
  });

  it('counts what each test comes to', () => {
    const mutants = mutantSwitch();
    mutants.cover(1);
    mutants.takeHits();
    mutants.cover(1, 2);
    mutants.cover(2);
    expect(mutants.takeHits()).toEqual({ 1: 1, 2: 2 });
    expect(mutants.takeHits()).toEqual({});
  });
});
