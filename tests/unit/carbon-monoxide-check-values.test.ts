/** All 81 rows of tests/data/6-carbon-monoxide.csv, each within its own tolerance. */
import { describe, expect, test } from 'vitest';
import { carbonMonoxideAdapters } from '../../truth/carbon-monoxide.ts';
import { checkRow } from '../../truth/check-row.ts';
import { describeRow, readDataRows } from '../../truth/data-rows.ts';

const rows = readDataRows('6-carbon-monoxide.csv', 81);

describe('check values of carbon monoxide', () => {
  test('every quantity has its adapter', () => {
    expect(rows.map(({ quantity }) => quantity).filter((each) => !(each in carbonMonoxideAdapters))).toEqual(
      [],
    );
  });

  test.each(rows.map((row) => [describeRow(row), row] as const))('%s', (_, row) => {
    expect(checkRow(row, carbonMonoxideAdapters)).toMatchObject({ outcome: 'passed', why: null });
  });

  test('facts are quoted, relations are computed', () => {
    const quoted = rows.filter((row) => checkRow(row, carbonMonoxideAdapters).kind === 'quoted');
    expect(quoted.map(({ quantity }) => quantity.split(/[:,]/u)[0])).toEqual(
      rows
        .map(({ quantity }) => quantity.split(/[:,]/u)[0])
        .filter((name) => /^(exposure limit|WHO|UL|AEGL|CFK constant)/u.test(name ?? '')),
    );
  });
});

/** More of the same grammar, from the same sources. */
test.each([
  ['exposure limit: NIOSH REL TWA', '-', '-', 'ppm', 35],
  ['exposure limit: OSHA PEL 8 h TWA', '-', '-', 'mg/m3', 55],
  ['exposure limit: US NAAQS 8 h', '8', 'h', 'ppm', 9],
  ['exposure limit: US NAAQS 1 h', '60', 'min', 'mg/m3', 40],
  ['WHO 2000 guideline', '480', 'min', 'mg/m3', 10],
  ['WHO 2000 guideline', '8', 'h', 'mg/m3', 10],
  ['WHO 2010 indoor guideline', '24 h', 'averaging', 'mg/m3', 7],
  ['AEGL-2 for CO', '30', 'min', 'ppm', 150],
  ['AEGL-2 for CO', '8', 'h', 'ppm', 27],
  ['AEGL-3 for CO', '10', 'min', 'ppm', 1700],
  ['AEGL-3 for CO', '240', 'min', 'ppm', 150],
  ['UL 2034 alarm: earliest', '400', 'ppm', 'min', 4],
  ['UL 2034 alarm: earliest', '150', 'ppm', 'min', 10],
  ['CFK constant: PcO2', '-', '-', 'mmHg', 100],
])('%s, %s %s is %s %d', (quantity, input, inputUnit, expectedUnit, expected) => {
  expect(carbonMonoxideAdapters[quantity]?.({ input, inputUnit, expectedUnit })).toEqual({
    kind: 'quoted',
    values: [expected],
  });
});

test.each([
  ['WHO 2000 guideline', '45', 'min', 'mg/m3'],
  ['UL 2034 alarm: latest', '100', 'ppm', 'min'],
  ['exposure limit: NIOSH IDLH', '-', '-', 'mg/m3'],
  ['ppm to mg/m3 at 101325 Pa', '5 ppm', 'ppm', 'mg/m3'],
  ['ppm to mg/m3 at 101325 Pa', '5 ppm at 20 furlongs', 'ppm', 'mg/m3'],
  ['well-mixed room concentration', 'V=60 m3, ACH=0.5 1/h, t=10 min', '-', 'ppm'],
  ['well-mixed room time to limit', 'V=60 m3, ACH=9 1/h, CO source=0 L/min, limit=35 ppm', '-', 'min'],
  ['CFK linear solution, COHb', '50 ppm, 60 min, swimming, COHb0=0.8 %', '-', '% COHb'],
  ['CFK equilibrium CO for a COHb level', '100', '% COHb', 'ppm'],
])('%s does not answer “%s”', (quantity, input, inputUnit, expectedUnit) => {
  expect(() => carbonMonoxideAdapters[quantity]?.({ input, inputUnit, expectedUnit })).toThrow();
});
