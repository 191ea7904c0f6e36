/**
 * Sends tables of outside values through the package: `npm run check:values [-- FILE.csv …] [--json]`.
 * Without a file, all of tests/data. The last line alone is `N passed, N failed, N unknown`.
 */
import { readFileSync, readdirSync } from 'node:fs';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { adapters } from './adapters.ts';
import { checkRow } from './check-row.ts';
import { dataFolder, parseDataRows } from './data-rows.ts';
import { failureLines, jsonLines, quantityLines, summaryLine } from './report.ts';

const options = process.argv.slice(2);
const named = options.filter((option) => !option.startsWith('--'));
const unknownOption = options.find((option) => option.startsWith('--') && option !== '--json');
if (unknownOption !== undefined) throw new Error(`no option ${unknownOption}; give files, or --json`);

const kept = readdirSync(dataFolder)
  .filter((file) => file.endsWith('.csv'))
  .map((file) => fileURLToPath(new URL(file, dataFolder)));
const rows = (named.length > 0 ? named : kept).flatMap((path) => {
  const file = basename(path);
  return parseDataRows(readFileSync(path, 'utf8'), file).map((row) => ({
    file,
    row,
    ...checkRow(row, adapters),
  }));
});

const lines = options.includes('--json')
  ? jsonLines(rows)
  : [...quantityLines(rows), '', ...failureLines(rows)];
console.log([...lines, summaryLine(rows)].join('\n'));
process.exitCode = rows.length > 0 && rows.every(({ outcome }) => outcome === 'passed') ? 0 : 1;
