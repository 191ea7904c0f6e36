import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { mmHg } from '../tests/engine/invented.ts';
import { cells } from './cells.ts';
import { runCell } from './run-cell.ts';
import { bandsTogether, type CellSummary, type MedianAnd95 } from './summary.ts';

/**
 * Studies the advice on invented engines, against three ways of working by hand.
 * `--engines` a cell (100), `--seed` (1), `--only` cells whose name contains this, `--write` a file with the date
 * `--date` in it.
 */
const { values } = parseArgs({
  options: {
    engines: { type: 'string', default: '100' },
    seed: { type: 'string', default: '1' },
    only: { type: 'string', default: '' },
    write: { type: 'string' },
    date: { type: 'string', default: '' },
  },
});
const wholeNumber = (name: 'engines' | 'seed', least: number): number => {
  const number = Number(values[name]);
  if (Number.isSafeInteger(number) && number >= least) return number;
  console.error(`--${name} needs a whole number from ${least} on, not “${values[name]}”.`);
  process.exit(2);
};
const engines = wholeNumber('engines', 1);
const seed = wholeNumber('seed', 0);

const nameOf = (cell: {
  method: string;
  hardship: string;
  generation: string;
  carburettors: number;
}): string => [cell.hardship, cell.generation, cell.carburettors, cell.method].join(' ');

const percent = (share: number | null): string => (share === null ? '–' : `${(100 * share).toFixed(1)} %`);
const pair = ({ median, most95 }: MedianAnd95, decimals: number, unit = 1): string =>
  `${(median / unit).toFixed(decimals)} / ${(most95 / unit).toFixed(decimals)}`;

const columns = [
  'case',
  'generation',
  'n',
  'method',
  'visits',
  'moves',
  'turns',
  'spread, mmHg',
  'wrong',
  'gave up',
] as const;
const widths = [26, 16, 2, 13, 10, 9, 12, 13, 7, 8];
const printRow = (row: readonly string[]): void =>
  console.log(row.map((word, k) => word.padEnd(widths[k]!)).join(' '));

const started = performance.now();
console.log(
  `${engines} engines a cell, seed ${seed}. Median / 95 % of visits, moves, turns and true spread.`,
);
printRow(columns);
const summaries: CellSummary[] = [];
for (const cell of cells.filter((candidate) => nameOf(candidate).includes(values.only))) {
  const summary = runCell(cell, engines, seed);
  summaries.push(summary);
  printRow([
    summary.hardship,
    summary.generation,
    String(summary.carburettors),
    summary.method,
    pair(summary.visits, 0),
    pair(summary.moves, 0),
    pair(summary.turns, 2),
    pair(summary.trueSpreadPa, 1, mmHg),
    percent(summary.wrongShare),
    percent(summary.gaveUpShare),
  ]);
}

const calibration = bandsTogether(summaries.filter(({ hardship }) => hardship === 'plain'));
console.log('\nStated chance, and how often it was true (plain cells, at every step):');
for (const { from, to, claims, share } of calibration)
  console.log(`${from.toFixed(1)}–${to.toFixed(1)}  ${percent(share)} of ${claims}`);
console.log(`${((performance.now() - started) / 1000).toFixed(0)} s`);

if (values.write !== undefined) {
  const command = `npm run study -- --engines ${engines} --seed ${seed}`;
  const written = summaries.map(({ claimBands, ...summary }) => summary);
  const study = { engines, seed, date: values.date, command, calibration, cells: written };
  writeFileSync(values.write, `${JSON.stringify(study, null, 2)}\n`);
}
