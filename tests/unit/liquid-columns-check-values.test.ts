import { describe, expect, test } from 'vitest';
import { checkRow } from '../../truth/check-row.ts';
import { describeRow, readDataRows } from '../../truth/data-rows.ts';
import { liquidColumnAdapters } from '../../truth/liquid-columns.ts';

const rows = readDataRows('3-liquid-density-manometer.csv', 69);

describe('the 69 rows of tests/data/3-liquid-density-manometer.csv', () => {
  test('have an adapter for every quantity, and no adapter stands idle', () => {
    expect(Object.keys(liquidColumnAdapters).sort()).toEqual(
      [...new Set(rows.map(({ quantity }) => quantity))].sort(),
    );
  });

  test.each(rows.map((row) => [describeRow(row), row] as const))('%s', (_, row) => {
    expect(checkRow(row, liquidColumnAdapters)).toMatchObject({ outcome: 'passed', why: null });
  });
});

const ask = (quantity: string, input: string, inputUnit: string, expectedUnit: string) =>
  liquidColumnAdapters[quantity]?.({ input, inputUnit, expectedUnit }).values[0];

describe('other ways to ask', () => {
  test.each([
    ['water density, CIPM (Tanaka 2001)', '68', 'degF', 'g/cm3', 0.9982067],
    ['water density, older table', '100', 'degC', 'g/cm3', 0.95838],
    ['water density, older table', '50', 'degC', 'kg/m3', 988.07],
    ['mercury specific volume, CRC excerpt', '340', 'degC', 'mL/g', 0.0782033],
    ['mercury density, older table', '0', 'degC', 'g/cm3', 13.5955],
    ['typical liquid density 20 degC', 'SAE 10W oil', 'fluid', 'kg/m3', 870],
    ['typical liquid density 20 degC', 'Water', 'fluid', 'kg/m3', 998.2],
    ['ethylene glycol solution density at 70 degF', '90', '% by volume', 'lb/ft3', 70.04],
    ['U-tube pressure rho g h', '1 in of mercury 0 degC (13.5951 g/cm3)', 'in', 'inHg', 1],
    ['U-tube pressure rho g h', '100 mm of ethanol', 'mm', 'Pa', 773.74],
    ['U-tube height h = p/(rho g)', '1 kPa on water 68 degF', 'kPa', 'cm', 10.2155],
    ['mercury column reduced to 0 degC (column only, no scale expansion)', '30 in at 68 degF', 'in, degF', 'inHg conv.', 29.8914],
    ['gravity at latitude (GRS80 normal gravity, sea level)', '-90', 'deg', 'm/s2', 9.832186],
  ])('%s: “%s” in %s → %s', (quantity, input, inputUnit, expectedUnit, expected) => {
    expect(Math.abs((ask(quantity, input, inputUnit, expectedUnit) ?? NaN) / expected - 1)).toBeLessThan(2e-5);
  }); // prettier-ignore

  test.each([
    ['water density, CIPM (Tanaka 2001)', '41', 'degC', 'kg/m3'],
    ['water density, CIPM (Tanaka 2001)', 'warm', 'degC', 'kg/m3'],
    ['water density, CIPM (Tanaka 2001)', '20', 'degC', 'furlong'],
    ['mercury specific volume, CRC excerpt', '20', 'degC', 'kg/m3'],
    ['typical liquid density 20 degC', 'treacle', 'fluid', 'kg/m3'],
    ['ethylene glycol solution density at 70 degF', '20', 'spoons', 'lb/ft3'],
    ['U-tube pressure rho g h', '100 mm', 'mm', 'Pa'],
    ['U-tube pressure rho g h', '100 mm of treacle', 'mm', 'Pa'],
    ['U-tube height h = p/(rho g)', '100 furlong on water', 'Pa', 'mm'],
    [
      'mercury column reduced to 0 degC (column only, no scale expansion)',
      '300 mm',
      'mm, degC',
      'mmHg conv.',
    ],
    ['gravity at latitude (GRS80 normal gravity, sea level)', '45', 'mile', 'm/s2'],
  ])('%s: “%s” in %s → %s is refused', (quantity, input, inputUnit, expectedUnit) => {
    expect(() => ask(quantity, input, inputUnit, expectedUnit)).toThrow();
  });
});
