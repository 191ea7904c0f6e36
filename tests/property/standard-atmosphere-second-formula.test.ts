/** Fifty perturbed inputs of each computed family: the adapter against the hydrostatic equation. */
import { expect, test } from 'vitest';
import { standardAtmosphereAdapters } from '../../truth/standard-atmosphere.ts';
import {
  density,
  geopotential,
  heightOfPressure,
  pressure,
  temperature,
} from '../second-formula/standard-atmosphere.ts';
import { seededRandom } from '../seeded-random.ts';
import { tolerances } from '../tolerances.ts';

const random = seededRandom(19_760_000);
const between = (low: number, high: number): number => Number((low + (high - low) * random()).toFixed(3));
const fifty = (low: number, high: number): number[] => Array.from({ length: 50 }, () => between(low, high));

const ask = (quantity: string, input: number, inputUnit: string, expectedUnit: string): number =>
  standardAtmosphereAdapters[quantity]!({ input: String(input), inputUnit, expectedUnit }).values[0]!;

const inHgPa = 13_595.1 * 9.80665 * 0.0254;
const foot = 0.3048;
const seaLevelDensity = density(0);
const same = (height: number): number => height;
const iso = (height: number): number => pressure(height, 'iso');
const ratio = (height: number): number => density(height) / seaLevelDensity;

type Family = [
  quantity: string,
  inputUnit: string,
  expectedUnit: string,
  height: (input: number) => number,
  secondFormula: (geopotentialM: number) => number,
  low?: number,
  high?: number,
];
const H = 'm (geopotential)';
const Z = 'm (geometric)';
const families: Family[] = [
  ['temperature, geopotential altitude H', H, 'K', same, temperature],
  ['density, geopotential altitude H', H, 'kg/m3', same, density],
  ['pressure, geopotential altitude H', H, 'Pa', same, pressure],
  ['temperature, geometric altitude Z', Z, 'K', geopotential, temperature],
  ['density, geometric altitude Z', Z, 'kg/m3', geopotential, density],
  ['pressure, geometric altitude Z', Z, 'Pa', geopotential, pressure],
  ['pressure, ISO 2533 / ICAO constants, geopotential', H, 'Pa', same, iso],
  ['pressure in mercury units', H, 'inHg', same, (height) => pressure(height) / inHgPa],
  ['pressure in mercury units', H, 'mmHg', same, (height) => (pressure(height) / inHgPa) * 25.4],
  ['air density ratio', H, '1', same, ratio],
  ['handbook table, temperature', Z, 'K', geopotential, temperature],
  ['handbook table, density', Z, 'kg/m3', geopotential, density],
  ['handbook table, pressure', Z, 'bar', geopotential, (height) => pressure(height) / 1e5],
  ['handbook table, geopotential height', Z, H, geopotential, same],
  ['published ISA table, density ratio', Z, '1', geopotential, ratio],
  ['published ISA table, pressure', Z, 'bar', geopotential, (height) => pressure(height) / 1e5],
  ['published altitude table, pressure', 'ft', 'inHg', (feet) => feet * foot, (height) => pressure(height) / inHgPa, -3000, 60_000],
  ['second implementation, pressure at geopotential H', H, 'Pa', same, pressure],
  ['second implementation, pressure at geometric Z', Z, 'Pa', geopotential, pressure],
]; // prettier-ignore

test.each(families)('%s, in %s', (quantity, inputUnit, expectedUnit, height, secondFormula, ...range) => {
  for (const input of fifty(range[0] ?? -1000, range[1] ?? 30_000)) {
    const wanted = secondFormula(height(input));
    const got = ask(quantity, input, inputUnit, expectedUnit);
    expect(Math.abs(got - wanted), `${input} ${inputUnit}`).toBeLessThanOrEqual(
      tolerances.atmosphereIntegral.relative * Math.abs(wanted),
    );
  }
});

test.each(['pressure altitude (inverse)', 'published height of pressure level'])(
  '%s, by halving',
  (quantity) => {
    for (const hectopascals of fifty(10, 1100))
      expect(
        Math.abs(ask(quantity, hectopascals, 'hPa', H) - heightOfPressure(hectopascals * 100)),
      ).toBeLessThanOrEqual(tolerances.atmosphereHeight.absolute);
  },
);

test('the barometric exponent is d ln p / d ln T of the lowest layer', () => {
  const slope = Math.log(pressure(10_000) / pressure(0)) / Math.log(temperature(10_000) / temperature(0));
  const got = standardAtmosphereAdapters['barometric exponent g0/(R L), US76']!({
    input: '-',
    inputUnit: '-',
    expectedUnit: '1',
  }).values[0]!;
  expect(Math.abs(got / slope - 1)).toBeLessThanOrEqual(tolerances.atmosphereIntegral.relative);
});
