import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { placeOf, root, sourceFiles, type SourceFile, walk } from './source-tree.ts';

/** Names that reach outside: the clock, chance, the network, the page, the machine. */
const outside = new Set(
  (
    'Date performance crypto fetch XMLHttpRequest WebSocket EventSource document window navigator location history ' +
    'localStorage sessionStorage indexedDB caches alert setTimeout setInterval requestAnimationFrame queueMicrotask ' +
    'globalThis self process require console Temporal'
  ).split(' '),
);

/** Uses of such names, of `Math.random`, and of imports at run time. A property or a type of the same name is none. */
function reachesOutside(file: SourceFile): string[] {
  const found: string[] = [];
  walk(file, (node, source) => {
    const report = (what: string) => found.push(`${placeOf(file, node, source)} uses ${what}`);
    if (ts.isPropertyAccessExpression(node) && node.getText(source) === 'Math.random') report('Math.random');
    if (node.kind === ts.SyntaxKind.ImportKeyword && ts.isCallExpression(node.parent)) report('import()');
    if (ts.isMetaProperty(node)) report('import.meta');
    if (!ts.isIdentifier(node) || !outside.has(node.text)) return;
    const { parent } = node;
    const isOwnName =
      (ts.isPropertyAccessExpression(parent) && parent.name === node) ||
      ((ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent)) && parent.name === node);
    if (!isOwnName) report(node.text);
  });
  return found;
}

const calculators = sourceFiles('src/calculators').filter(({ path }) => path.endsWith('.ts'));

function compile(text: string): { status: number | null; words: string } {
  const folder = mkdtempSync(join(tmpdir(), 'evendraw-'));
  try {
    writeFileSync(join(folder, 'planted.ts'), text);
    const config = {
      extends: `${root}src/calculators/tsconfig.json`,
      include: ['planted.ts'],
      compilerOptions: { typeRoots: [] },
    };
    writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify(config));
    const { status, stdout } = spawnSync(
      process.execPath,
      [`${root}node_modules/typescript/bin/tsc`, '-p', folder],
      { encoding: 'utf8' },
    );
    return { status, words: stdout };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

describe('src/calculators', () => {
  it('reaches for no clock, chance, network, page or machine', () => {
    expect(calculators.length).toBeGreaterThan(20);
    expect(calculators.flatMap(reachesOutside)).toEqual([]);
  });

  it.each([
    'Date.now()',
    'Math.random()',
    'fetch("/")',
    'document.title',
    'globalThis',
    'import("./a.ts")',
    'import.meta.url',
    'new Date()',
    'crypto.randomUUID()',
  ])('the scan finds %s', (text) => {
    expect(
      reachesOutside({ path: 'src/calculators/planted.ts', text: `export const a = () => ${text};` }),
    ).toHaveLength(1);
  });

  it('the scan lets a property of such a name pass', () => {
    const text = 'export const a = (b: { location: number }) => ({ history: b.location, document: 1 });';
    expect(reachesOutside({ path: 'src/calculators/planted.ts', text })).toEqual([]);
  });

  it('compiles without the types of a page or of Node: a file that uses them does not', () => {
    const names = [
      'document.title',
      'fetch("/")',
      'process.exitCode',
      'setTimeout(() => undefined)',
      'window',
    ];
    const { status, words } = compile(
      names.map((name, i) => `export const a${i} = () => ${name};`).join('\n'),
    );
    expect(status).not.toBe(0);
    for (const name of ['document', 'fetch', 'process', 'setTimeout', 'window'])
      expect(words).toMatch(new RegExp(`Cannot find name '${name}'`));
  }, 30_000);

  it('the same compiler accepts plain code', () => {
    expect(compile('export const a = (b: number): number => Math.sqrt(b);')).toEqual({
      status: 0,
      words: '',
    });
  }, 30_000);

  it('runs as it is under Node, without being compiled', () => {
    const code = `const all = await import(${JSON.stringify(`${root}src/calculators/index.ts`)}); console.log(Object.keys(all).length);`;
    const words = execFileSync(process.execPath, ['--input-type=module', '--eval', code], {
      encoding: 'utf8',
    });
    expect(Number(words)).toBeGreaterThan(20);
  });
});
