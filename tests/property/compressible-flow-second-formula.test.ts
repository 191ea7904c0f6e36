import { describe, expect, test } from 'vitest';
import { compressibleFlowAdapters } from '../../truth/compressible-flow.ts';
import * as second from '../second-formula/compressible-flow.ts';
import { seededRandom } from '../seeded-random.ts';
import { tolerances } from '../tolerances.ts';

const random = seededRandom(5);
const between = (low: number, high: number, decimals = 4): string =>
  (low + (high - low) * random()).toFixed(decimals);
const times = Array.from({ length: 50 });

const adapted = (quantity: string, input: string, inputUnit: string, expectedUnit: string): number => {
  const [value] = compressibleFlowAdapters[quantity]!({ input, inputUnit, expectedUnit }).values;
  return value ?? NaN;
};
const same = (one: number, other: number, input: string): void =>
  expect(Math.abs(one / other - 1), input).toBeLessThanOrEqual(tolerances.flow.relative);

const gamma = 1.4;
const plain: Readonly<Record<string, readonly [string, number, number, (value: number) => number]>> = {
  'isentropic p/pt, gamma 1.4': ['Mach', 0.01, 4, (mach) => second.pressureOverTotal(mach, gamma)],
  'isentropic rho/rhot, gamma 1.4': ['Mach', 0.01, 4, (mach) => second.densityOverTotal(mach, gamma)],
  'A/A*, gamma 1.4': ['Mach', 0.02, 4, (mach) => second.areaOverThroat(mach, gamma)],
  'published p/pt table': ['Mach', 0.01, 4, (mach) => second.pressureOverTotal(mach, gamma)],
  'published A/A* table': ['Mach', 0.02, 4, (mach) => second.areaOverThroat(mach, gamma)],
  'critical pressure ratio': ['gamma', 1.02, 2.5, (k) => second.criticalPressureRatio(k)],
  'choked mass-flow function': ['gamma', 1.02, 2.5, (k) => second.flowFunction(0, k)],
  'mass-flow function psi(p2/p1), gamma 1.4': ['p2/p1', 0.1, 0.999, (r) => second.flowFunction(r, gamma)],
  'incompressible over compressible flow': [
    'p2/p1',
    0.1,
    0.999,
    (r) => Math.sqrt(2 * (1 - r)) / second.flowFunction(r, gamma),
  ],
};

describe('fifty inputs each, against the second formula', () => {
  test.each(Object.entries(plain))('%s', (quantity, [unit, low, high, slow]) => {
    for (const _ of times) {
      const input = between(low, high);
      same(adapted(quantity, input, unit, '1'), slow(Number(input)), input);
    }
  });

  test('throttle mass flow', () => {
    for (const _ of times) {
      const [area, cd, bar, celsius, ratio] = [
        between(0.5, 300),
        between(0.6, 1),
        between(0.7, 1.1),
        between(-20, 60),
        between(0.2, 0.99),
      ];
      const input = `p2/p0=${ratio}, T0=${celsius} degC, A=${area} mm2, p0=${bar} bar, Cd=${cd}`;
      const flux = (Number(bar) * 1e5) / Math.sqrt(287.05 * (Number(celsius) + 273.15));
      const slow = Number(cd) * Number(area) * 1e-3 * flux * second.flowFunction(Number(ratio), gamma);
      same(adapted('throttle mass flow', input, '-', 'g/s'), slow, input);
    }
  });

  test('throttle plate open area (no shaft)', () => {
    for (const _ of times) {
      const closed = between(0, 12);
      const [bore, plate] = [between(18, 45), between(Number(closed) + 0.5, 85)];
      const input = `closed ${closed} deg, plate at ${plate} deg, D=${bore} mm`;
      const inRadians = (degrees: string) => (Number(degrees) * Math.PI) / 180;
      const slow = second.plateOpenArea(Number(bore), inRadians(closed), inRadians(plate));
      same(adapted('throttle plate open area (no shaft)', input, '-', 'mm2'), slow, input);
    }
  });

  test('motored friction mep, SI engine', () => {
    for (const _ of times) {
      const rpm = between(300, 9000, 2);
      same(
        adapted('motored friction mep, SI engine', rpm, 'rpm', 'bar'),
        second.motoringFrictionBar(rpm),
        rpm,
      );
    }
  });

  test('engine air flow at idle', () => {
    for (const _ of times) {
      const [litres, rpm, kilopascals, kelvins, share] = [
        between(0.05, 2),
        between(700, 6000, 1),
        between(20, 100),
        between(270, 340, 2),
        between(0.5, 1),
      ];
      const input = `N=${rpm} rpm, T=${kelvins} K, Vd=${litres} L, eta_v=${share} (manifold based), p_man=${kilopascals} kPa`;
      const slow = second.engineAirFlow(litres, rpm, kilopascals, kelvins, share);
      same(adapted('engine air flow at idle', input, '-', 'g/s'), slow, input);
    }
  });

  test('every adapter of the topic is among them', () => {
    const others = [
      'throttle mass flow',
      'throttle plate open area (no shaft)',
      'motored friction mep, SI engine',
      'engine air flow at idle',
    ];
    expect([...Object.keys(plain), ...others].sort()).toEqual(Object.keys(compressibleFlowAdapters).sort());
  });
});
