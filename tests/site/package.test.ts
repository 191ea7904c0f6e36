import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { listFiles } from '../../tools/build/list-files.mjs';

const root = new URL('../..', import.meta.url).pathname;
let place = '';
const inPlace = (...parts: string[]) => join(place, ...parts);
const run = (command: string, options: string[], cwd = place) =>
  execFileSync(command, options, { cwd, encoding: 'utf8' });

beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), 'evendraw-package-'));
  execFileSync(process.execPath, [join(root, 'tools/build-package.mjs')], {
    env: { ...process.env, OUT_DIR: inPlace('built') },
    stdio: 'pipe',
  });
  const packed = run('npm', ['pack', inPlace('built'), '--silent']).trim();
  const installed = inPlace('node_modules', 'evendraw-calculators');
  mkdirSync(installed, { recursive: true });
  run('tar', ['-xzf', packed, '-C', installed, '--strip-components=1']);
}, 120_000);

afterAll(() => rmSync(place, { recursive: true, force: true }));

test('a script imports the packed package and converts a pressure', () => {
  writeFileSync(
    inPlace('convert.mjs'),
    `import { inUnit, parsePressure, pressureUnit } from 'evendraw-calculators';
     const parsed = parsePressure('9 1/2 inHg', pressureUnit('kPa'));
     console.log(parsed.ok && inUnit(parsed.value.pascals, pressureUnit('mmHg')).toFixed(9));`,
  );
  expect(run(process.execPath, ['convert.mjs']).trim()).toBe('241.300000000');
});

test('it needs no other package, and every module has its types', () => {
  const { dependencies, peerDependencies } = JSON.parse(
    readFileSync(inPlace('node_modules/evendraw-calculators/package.json'), 'utf8'),
  ) as Record<string, unknown>;
  expect([dependencies, peerDependencies]).toEqual([undefined, undefined]);
  const files = listFiles(inPlace('node_modules/evendraw-calculators'));
  const modules = files.filter((file) => file.endsWith('.js'));
  expect(modules.length).toBeGreaterThan(80);
  expect(modules.filter((file) => !files.includes(file.replace(/\.js$/, '.d.ts')))).toEqual([]);
  const outside = modules.filter((file) =>
    /from '(?!\.{1,2}\/)/.test(readFileSync(inPlace('node_modules/evendraw-calculators', file), 'utf8')),
  );
  expect(outside).toEqual([]);
});

test('a typed program without the browser’s types is checked against it', () => {
  const tsc = (name: string, text: string): string => {
    writeFileSync(inPlace(name), text);
    const compilerOptions = {
      strict: true,
      noEmit: true,
      module: 'nodenext',
      target: 'es2023',
      lib: ['es2023'],
      types: [],
    };
    writeFileSync(inPlace('tsconfig.json'), JSON.stringify({ compilerOptions, files: [name] }));
    try {
      return run(process.execPath, [join(root, 'node_modules/typescript/bin/tsc'), '-p', place]);
    } catch (error) {
      return String((error as { stdout: string }).stdout);
    }
  };
  const right = `import { inUnit, pressureUnit } from 'evendraw-calculators';
    export const mmHg: number = inUnit(30_000, pressureUnit('mmHg'));`;
  expect(tsc('right.mts', right)).toBe('');
  expect(tsc('wrong.mts', right.replace('number', 'string'))).toMatch(/TS2322/);
}, 60_000);
