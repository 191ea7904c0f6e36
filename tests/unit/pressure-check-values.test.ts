import { describe, expect, it } from 'vitest';
import {
  columnDensityKgPerM3,
  computeConversions,
  findPressureUnit,
  inUnit,
  metresPerInch,
  parseConversion,
} from '../../src/calculators/index.ts';
import type { ConversionForm, PressureKind, PressureUnit } from '../../src/calculators/index.ts';
import { agrees, describeRow, expectedNumber, readDataRows, toNumber } from '../data-rows.ts';
import type { DataRow } from '../data-rows.ts';
import { tolerances } from '../tolerances.ts';

const rows = readDataRows('1-pressure-units.csv', 396);

/** What an adapter sees of a row: never the expected value. */
type Question = Pick<DataRow, 'quantity' | 'input' | 'inputUnit' | 'expectedUnit' | 'line'>;

/** A unit as the table of a publication spells it; notes such as “(BS 350)”, “abs” and “vacuum” are dropped. */
function unitOf(spelling: string): PressureUnit {
  const bare = spelling.replace(/ ?\(BS 350\)| abs$| vacuum$/u, '');
  const unit = findPressureUnit(bare);
  if (unit === null) throw new Error(`no unit “${spelling}”`);
  return unit;
}

/** Through the whole converter, as a person types it. */
function convert(
  { input, inputUnit, expectedUnit, line }: Question,
  kind: PressureKind,
  shown: PressureKind = kind,
): number {
  const form: ConversionForm = {
    typed: `${input} ${unitOf(inputUnit).symbol}`,
    kind,
    usualUnit: 'Pa',
    ambientTyped: '101325 Pa',
  };
  const question = parseConversion(form);
  const answer = question.ok ? computeConversions(question.value) : question;
  if (!answer.ok) throw new Error(`line ${line}: ${JSON.stringify(answer.problem)}`);
  const target = unitOf(expectedUnit);
  const row = answer.value.rows.find(({ unit }) => unit === target);
  const value = row?.values[answer.value.kinds.indexOf(shown)]?.value;
  if (value === undefined) throw new Error(`line ${line}: no answer`);
  return value;
}

const factor = (row: Question): number =>
  inUnit(toNumber(row.input, `line ${row.line}`) * unitOf(row.inputUnit).pascals, unitOf(row.expectedUnit));

const densityBehindInch = (row: Question): number =>
  columnDensityKgPerM3(toNumber(row.input, `line ${row.line}`), metresPerInch);

const adapters: readonly (readonly [RegExp, number, (row: Question) => number])[] = [
  [/^unit factor to Pa$/u, 9, factor],
  [/^rounded published factor$/u, 8, factor],
  [/^factor from a general library$/u, 5, factor],
  [/^inHg conversion, published table$/u, 6, factor],
  [/^density behind 60 degF in(Hg|H2O)$/u, 2, densityBehindInch],
  [/^vacuum reading conversion (mmHg|inHg|kPa|psi)$/u, 302, (row) => convert(row, 'depression')],
  [/^vacuum reading conversion bar \(gauge, signed\)$/u, 10, (row) => convert(row, 'gauge')],
  [/^small difference between cylinders /u, 41, (row) => convert(row, 'difference')],
  [
    /^absolute pressure from vacuum at standard sea level$/u,
    8,
    (row) => convert(row, 'depression', 'absolute'),
  ],
  [/^barometer conversion$/u, 5, (row) => convert(row, 'absolute')],
];

/**
 * The one row whose printed value contradicts the definitions printed beside it: 13 595.1 kg/m³ × 0.0254 m makes
 * 345.315 54 kgf/m², exactly 0.034531554 at; the table prints 0.0345315, cut off instead of rounded.
 */
const cutOffRow = { quantity: 'inHg conversion, published table', input: '1', expectedUnit: 'at' } as const;

const isCutOff = (row: DataRow): boolean =>
  row.quantity === cutOffRow.quantity &&
  row.input === cutOffRow.input &&
  row.expectedUnit === cutOffRow.expectedUnit;

describe('check values: pressure units', () => {
  it('every row has exactly one adapter, and none is dropped', () => {
    const counts = rows.map(({ quantity }) => adapters.filter(([name]) => name.test(quantity)).length);
    expect(counts).toEqual(rows.map(() => 1));
    expect(adapters.reduce((sum, [, count]) => sum + count, 0)).toBe(396);
  });

  for (const [name, count, compute] of adapters) {
    it(`${name.source}: ${count} rows`, () => {
      const own = rows.filter(({ quantity }) => name.test(quantity));
      expect(own).toHaveLength(count);
      const wrong = own
        .map((row) => ({ row, computed: compute(row) }))
        .filter(({ row, computed }) => !isCutOff(row) && !agrees(computed, row))
        .map(({ row, computed }) => `${describeRow(row)}: computed ${computed}`);
      expect(wrong).toEqual([]);
    });
  }

  it('the row that its table cut off: one unit of its last digit, and the exact value by its own definitions', () => {
    const own = rows.filter(isCutOff);
    expect(own).toHaveLength(1);
    for (const row of own) {
      const difference = Math.abs(factor(row) - expectedNumber(row));
      expect(difference).toBeLessThan(tolerances.cutOffPrint.absolute);
      expect(Math.abs(factor(row) - (13595.1 * 0.0254) / 10_000)).toBeLessThan(1e-17);
    }
  });

  it('a wrong value does not agree', () => {
    const [first] = rows;
    if (first === undefined) throw new Error('no rows');
    expect(agrees(factor(first), first)).toBe(true);
    expect(agrees(factor(first) * (1 + 1e-11), first)).toBe(false);
    expect(agrees(Number.NaN, first)).toBe(false);
  });
});
