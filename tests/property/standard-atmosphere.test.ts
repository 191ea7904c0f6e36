import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pressureAltitude, standardAtmosphere } from '../../src/calculators/standard-atmosphere.ts';
import { tolerances } from '../tolerances.ts';

const height = fc.double({ min: -5000, max: 79000, noNaN: true });
const standard = fc.constantFrom('us-1976' as const, 'iso-2533' as const);

const air = (geopotentialM: number, of: 'us-1976' | 'iso-2533') => {
  const result = standardAtmosphere({ geopotentialM }, of);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
};

test('pressure and density fall with height, and the pressure gives the height back', () => {
  fc.assert(
    fc.property(height, height, standard, (one, other, of) => {
      const [lower, upper] = one < other ? [one, other] : [other, one];
      fc.pre(upper - lower > 1e-6);
      expect(air(lower, of).pressurePa).toBeGreaterThan(air(upper, of).pressurePa);
      expect(air(lower, of).densityKgPerM3).toBeGreaterThan(air(upper, of).densityKgPerM3);
      const back = pressureAltitude(air(one, of).pressurePa, of);
      expect(Math.abs((back.ok ? back.value.geopotentialM : NaN) - one)).toBeLessThanOrEqual(
        tolerances.atmosphereHeight.absolute,
      );
    }),
  );
});

test('geometric and geopotential height of the same place give the same air', () => {
  fc.assert(
    fc.property(height, standard, (geopotentialM, of) => {
      const there = air(geopotentialM, of);
      fc.pre(there.geometricM >= -5000 && there.geometricM <= 79000);
      const again = standardAtmosphere({ geometricM: there.geometricM }, of);
      const ratio = again.ok ? again.value.pressurePa / there.pressurePa : NaN;
      expect(Math.abs(ratio - 1)).toBeLessThanOrEqual(1e-11);
    }),
  );
});
