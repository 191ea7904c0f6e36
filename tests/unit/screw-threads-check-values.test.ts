import { describe, expect, test } from 'vitest';
import { checkRow } from '../../truth/check-row.ts';
import { describeRow, readDataRows } from '../../truth/data-rows.ts';
import { screwThreadAdapters } from '../../truth/screw-threads.ts';

const rows = readDataRows('4-screw-threads.csv', 137);

describe('the 137 rows of tests/data/4-screw-threads.csv', () => {
  test('have an adapter for every quantity, and no adapter stands idle', () => {
    expect(Object.keys(screwThreadAdapters).sort()).toEqual(
      [...new Set(rows.map(({ quantity }) => quantity))].sort(),
    );
  });

  test.each(rows.map((row) => [describeRow(row), row] as const))('%s', (_, row) => {
    expect(checkRow(row, screwThreadAdapters)).toMatchObject({ outcome: 'passed', why: null });
  });
});

const ask = (quantity: string, input: string, inputUnit: string, expectedUnit: string) =>
  screwThreadAdapters[quantity]?.({ input, inputUnit, expectedUnit }).values;

describe('other ways to ask', () => {
  test.each([
    ['screw advance per turn fraction', '3/4 turn of #10 UNF', 'turn', 'mm', (0.75 * 25.4) / 32],
    ['screw advance per turn fraction', '45 deg of M8 x 0.75', 'deg', 'mm', 0.75 / 8],
    ['screw advance per turn fraction', '1 1/2 turns of 1.25 mm pitch', 'turn', 'mm', 1.875],
    ['screw advance per turn fraction', '30° of 26 tpi', 'deg', 'in', 1 / 312],
    ['screw advance per turn fraction', '0.25 of 2BA', 'turn', 'mm', 0.2025],
    ['screw advance per turn fraction', '15 min of M6', 'min', 'mm', 0.25],
    ['pitch from threads per inch', '28 tpi', '1/in', 'mm', 25.4 / 28],
    ['pitch from threads per inch', '28', '1/in', 'in', 1 / 28],
    ['pitch from threads per inch', '7/16 UNF', '1/in', 'mm', 1.27],
    ['UNC threads per inch', '#10 UNC', 'size', '1/in', 24],
    ['BSF threads per inch', '7/32', 'in', '1/in', 28],
    ['BA pitch', '10 BA', 'size', 'mm', 0.35],
    ['BA design rule p = 0.9^n', '3BA', 'BA number', 'mm', 0.729],
    ['tensile stress area', 'M5 x 0.8', 'mm', 'cm2', 0.141824],
    ['ISO 4032 nut height max', 'M16', 'size', 'cm', 1.48],
  ])('%s: %s %s → %s', (quantity, input, inputUnit, expectedUnit, expected) => {
    expect(ask(quantity, input, inputUnit, expectedUnit)?.[0]).toBeCloseTo(expected, 5);
  });

  test('a fine pitch is one of those that the table offers', () => {
    expect(ask('ISO fine pitch option', 'M10 fine', 'size', 'mm')).toEqual([1.25, 1, 0.75]);
    expect(ask('ISO fine pitch option', 'M15 fine', 'size', 'mm')).toEqual([1.5, 1]);
    expect(ask('screw advance per turn fraction', '1/2 turn of M8 fine', 'turn', 'mm')).toEqual([0.5, 0.375]);
  });

  test.each([
    ['screw advance per turn fraction', 'a bit of M5', 'turn', 'mm'],
    ['screw advance per turn fraction', '1/8 turn', 'turn', 'mm'],
    ['screw advance per turn fraction', '1/8 league of M5', 'league', 'mm'],
    ['UNC threads per inch', '#11', 'size', '1/in'],
    ['UNC threads per inch', '#10 UNC', 'size', 'mm'],
    ['BA pitch', '99BA', 'size', 'mm'],
    ['BA design rule p = 0.9^n', '1.5', 'BA number', 'mm'],
    ['ISO coarse pitch', 'M5', 'size', 'furlong'],
    ['tensile stress area', 'M5 x 0.8', 'mm', 'mm'],
    ['ISO 4032 nut height max', 'M7', 'size', 'mm'],
    ['ISO fine pitch option', 'M5.2 fine', 'size', 'mm'],
  ])('%s: “%s” in %s → %s is refused', (quantity, input, inputUnit, expectedUnit) => {
    expect(() => ask(quantity, input, inputUnit, expectedUnit)).toThrow();
  });
});
