import { describe, expect, test } from 'vitest';
import { checkRow } from '../../truth/check-row.ts';
import { compressibleFlowAdapters } from '../../truth/compressible-flow.ts';
import { describeRow, readDataRows } from '../../truth/data-rows.ts';

const rows = readDataRows('5-compressible-flow.csv', 69);

test('the 69 rows name 13 quantities, each with an adapter', () => {
  expect([...new Set(rows.map(({ quantity }) => quantity))].sort()).toEqual(
    Object.keys(compressibleFlowAdapters).sort(),
  );
  expect(Object.keys(compressibleFlowAdapters)).toHaveLength(13);
});

test.each(rows.map((row) => [describeRow(row), row] as const))('%s', (_, row) => {
  expect(checkRow(row, compressibleFlowAdapters)).toMatchObject({
    outcome: 'passed',
    kind: 'computed',
    why: null,
  });
});

const answer = (quantity: string, input: string, inputUnit: string, expectedUnit: string): number => {
  const [value] = compressibleFlowAdapters[quantity]!({ input, inputUnit, expectedUnit }).values;
  return value ?? NaN;
};

describe('inputs are read generally', () => {
  test.each([
    ['A=0.01 cm2, Cd=1, p0=1.01325 bar, T0=20 degC, p2/p0=0.5', 'g/s', 0.2391735597],
    ['p2=506.625 hPa, T0=68 °F, p0=1 atm, Cd=1.0, A=1 mm²', 'kg/h', 0.2391735597 * 3.6],
  ])('throttle mass flow: %s', (input, unit, expected) => {
    expect(answer('throttle mass flow', input, '-', unit) / expected).toBeCloseTo(1, 9);
  });

  test('throttle plate and air flow in other units and another order', () => {
    const plate = 'throttle plate open area (no shaft)';
    expect(answer(plate, 'plate at 10 deg, D=3 cm, closed 7 deg', '-', 'cm2')).toBeCloseTo(0.0551103005, 9);
    const air = 'engine air flow at idle';
    const turned = 'eta_v=0.75, T=40 degC, p_man=350 mbar, Vd=1 L, N=1000 r/min';
    expect(answer(air, turned, '-', 'g/s')).toBeCloseTo(2.43353779, 7);
  });

  test('friction in other units', () => {
    expect(answer('motored friction mep, SI engine', '3000', 'rpm', 'kPa')).toBeCloseTo(187, 9);
  });
});

describe('what is not understood fails', () => {
  test.each([
    ['A/A*, gamma 1.4', '0', 'Mach', '1'],
    ['A/A*, gamma 1.4', 'one', 'Mach', '1'],
    ['A/A*, gamma 1.4', '1', 'rpm', '1'],
    ['isentropic p/pt, gamma 1.4', '-1', 'Mach', '1'],
    ['isentropic p/pt, gamma 1.4', '1', 'Mach', 'bar'],
    ['critical pressure ratio', '1', 'gamma', '1'],
    ['choked mass-flow function', '0.9', 'gamma', '1'],
    ['mass-flow function psi(p2/p1), gamma 1.4', '1.1', 'p2/p1', '1'],
    ['throttle mass flow', 'A=1 mm2, Cd=1, p0=1 bar, T0=300 K', '-', 'g/s'],
    ['throttle mass flow', 'A=1 mm, Cd=1, p0=1 bar, T0=300 K, p2/p0=0.5', '-', 'g/s'],
    ['throttle mass flow', 'A=1 mm2, Cd=1, p0=1 bar, T0=300 K, p2/p0=0.5', '-', 'g'],
    ['throttle plate open area (no shaft)', 'D=30 mm, closed 7 deg, plate at 5 deg', '-', 'mm2'],
    ['throttle plate open area (no shaft)', 'D=30 mm, closed 7 turns, plate at 9 deg', '-', 'mm2'],
    [
      'engine air flow at idle',
      'Vd=1 L, N=900 rpm, p_man=1 bar, T=300 K, eta_v=1 (ambient based)',
      '-',
      'g/s',
    ],
    ['motored friction mep, SI engine', '3000', 'km', 'bar'],
  ])('%s of %s %s in %s', (quantity, input, inputUnit, expectedUnit) => {
    expect(() => answer(quantity, input, inputUnit, expectedUnit)).toThrow(Error);
  });
});
