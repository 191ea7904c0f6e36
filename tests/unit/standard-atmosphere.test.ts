import { describe, expect, test } from 'vitest';
import {
  atmosphereHeightLimit,
  barometricExponent,
  geometricFromGeopotential,
  geopotentialFromGeometric,
  pressureAltitude,
  standardAtmosphere,
} from '../../src/calculators/standard-atmosphere.ts';
import { tolerances } from '../tolerances.ts';

const air = (geopotentialM: number) => {
  const result = standardAtmosphere({ geopotentialM });
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
};

test('standardAtmosphere({ geopotentialM }) at the base of every layer as the 1976 standard prints it', () => {
  // U.S. Standard Atmosphere 1976, table I: temperature in K, pressure in mbar.
  for (const [geopotentialM, temperatureK, mbar] of [
    [0, '288.150', '1.01325e+3'],
    [11_000, '216.650', '2.2632e+2'],
    [20_000, '216.650', '5.4749e+1'],
    [32_000, '228.650', '8.6802e+0'],
    [47_000, '270.650', '1.1091e+0'],
    [51_000, '270.650', '6.6939e-1'],
    [71_000, '214.650', '3.9564e-2'],
  ] as const) {
    expect(air(geopotentialM).temperatureK.toFixed(3)).toBe(temperatureK);
    const digits = (mbar.split('e')[0]?.length ?? 0) - 2;
    expect((air(geopotentialM).pressurePa / 100).toExponential(digits)).toBe(mbar);
  }
});

test('the two standards differ in the gas constant: density and exponent as printed', () => {
  // ISO 2533 prints 1.225 kg/m³ at sea level and 5.25588 for the exponent; the 1976 standard 1.2250.
  const iso = standardAtmosphere({ geopotentialM: 0 }, 'iso-2533');
  expect(iso.ok && iso.value.densityKgPerM3.toFixed(6)).toBe('1.225000');
  expect(air(0).densityKgPerM3.toFixed(6)).toBe('1.224999');
  expect(barometricExponent('iso-2533').toFixed(5)).toBe('5.25588');
});

test('pressure and temperature go through the layers without a step', () => {
  for (const base of [11_000, 20_000, 32_000, 47_000, 51_000, 71_000]) {
    expect(Math.abs(air(base).pressurePa / air(base - 1e-6).pressurePa - 1)).toBeLessThanOrEqual(1e-9);
    expect(Math.abs(air(base).temperatureK - air(base - 1e-6).temperatureK)).toBeLessThanOrEqual(1e-8);
  }
});

test('pressureAltitude(pressurePa) undoes the pressure, in every layer and below the sea', () => {
  for (const standard of ['us-1976', 'iso-2533'] as const) {
    for (let height = -5_000; height <= 79_000; height += 500) {
      const there = standardAtmosphere({ geopotentialM: height }, standard);
      if (!there.ok) throw new Error(JSON.stringify(there.problem));
      const back = pressureAltitude(there.value.pressurePa, standard);
      expect(back.ok && Math.abs(back.value.geopotentialM - height)).toBeLessThanOrEqual(
        tolerances.atmosphereHeight.absolute,
      );
    }
  }
});

test('geometric and geopotential heights are each other’s inverse and alike near the ground', () => {
  for (const height of [-5_000, 0, 100, 11_019, 79_000]) {
    expect(
      Math.abs(geometricFromGeopotential(geopotentialFromGeometric(height)) - height),
    ).toBeLessThanOrEqual(tolerances.atmosphereHeight.absolute);
  }
  expect(geopotentialFromGeometric(1_000)).toBeCloseTo(999.843, 3);
});

describe('outside the relation there is a problem that names the limit', () => {
  test.each([-5_000.1, 79_000.1, 1e9])('height %d m', (value) => {
    for (const field of ['geopotentialM', 'geometricM'] as const) {
      const height = field === 'geometricM' ? { geometricM: value } : { geopotentialM: value };
      expect(standardAtmosphere(height)).toEqual({
        ok: false,
        problem: { kind: 'out-of-range', field, value, limit: atmosphereHeightLimit },
      });
    }
  });

  test.each([NaN, Infinity])('height %d', (value) => {
    expect(standardAtmosphere({ geometricM: value })).toEqual({
      ok: false,
      problem: { kind: 'not-finite', field: 'geometricM' },
    });
  });

  test.each([0, -1, 0.5, 2e5])('pressure %d Pa', (value) => {
    const result = pressureAltitude(value);
    expect(!result.ok && result.problem).toMatchObject({ kind: 'out-of-range', field: 'pressurePa', value });
  });
});
