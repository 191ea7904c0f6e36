import { checkNumber } from './check-number.ts';
import { densities } from './density-units.ts';
import { fahrenheitDegreesPerKelvin, zeroCelsiusFahrenheit } from './exact-definitions.ts';
import { measureUnit, toSi } from './measure-units.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** Ethylene glycol in water, per cent by volume: the columns of the table. */
export const glycolPercents = [0, 10, 20, 30, 40, 50, 60, 70, 80, 90] as const;

/**
 * Pounds per cubic foot, a row for each temperature in °F.
 * Source: ASHRAE Handbook Fundamentals, density of aqueous solutions of ethylene glycol, as reprinted in a design
 * manual (table 5-16); the rows of a workshop.
 */
export const glycolRows: readonly (readonly [fahrenheit: number, ...poundsPerCubicFoot: number[]])[] = [
  [40, 62.42, 63.61, 64.66, 65.66, 66.59, 67.47, 68.31, 69.1, 69.86, 70.59],
  [50, 62.42, 63.52, 64.56, 65.55, 66.47, 67.34, 68.17, 68.95, 69.7, 70.42],
  [60, 62.38, 63.42, 64.45, 65.43, 66.34, 67.2, 68.02, 68.79, 69.53, 70.23],
  [70, 62.31, 63.31, 64.33, 65.3, 66.2, 67.05, 67.86, 68.62, 69.35, 70.04],
  [80, 62.23, 63.19, 64.21, 65.17, 66.05, 66.9, 67.69, 68.44, 69.15, 69.83],
  [90, 62.11, 63.07, 64.07, 65.02, 65.9, 66.73, 67.51, 68.25, 68.95, 69.62],
  [100, 62, 62.93, 63.93, 64.86, 65.73, 66.55, 67.32, 68.05, 68.74, 69.4],
  [110, 61.84, 62.79, 63.77, 64.7, 65.56, 66.37, 67.13, 67.84, 68.52, 69.17],
  [120, 61.73, 62.63, 63.61, 64.52, 65.37, 66.17, 66.92, 67.63, 68.29, 68.92],
];

const toCelsius = (fahrenheit: number): number =>
  (fahrenheit - zeroCelsiusFahrenheit) / fahrenheitDegreesPerKelvin;

const temperaturesC = glycolRows.map(([fahrenheit]) => toCelsius(fahrenheit));

/** Temperatures of the table, in degrees Celsius: 40 °F to 120 °F. */
export const glycolLimit = { min: toCelsius(40), max: toCelsius(120) } as const;
export const glycolPercentLimit = { min: 0, max: 90 } as const;

/**
 * Density of ethylene glycol in water, in kg/m³; between the entries of the table in straight lines, which leaves
 * less than 0.1 kg/m³ more than the rounding of the table (0.08 kg/m³).
 * `percent` by volume 0…90, `celsius` 4.4…48.9; problems: `not-finite`, `out-of-range`.
 */
export function glycolSolutionDensity(percent: number, celsius: number): Result<number> {
  const problem =
    checkNumber('percent', percent, glycolPercentLimit) ?? checkNumber('celsius', celsius, glycolLimit);
  if (problem !== undefined) return fail(problem);
  const columns = glycolRows.map(([, ...entries]) => between(glycolPercents, entries, percent));
  const poundsPerCubicFoot = between(temperaturesC, columns, celsius);
  return succeed(toSi(poundsPerCubicFoot, measureUnit(densities, 'lb/ft3')));
}

/** The value at `x` on the straight lines through the points; `x` must lie within. */
function between(places: readonly number[], values: readonly number[], x: number): number {
  const next = Math.max(
    1,
    places.findIndex((place) => place >= x),
  );
  const [left = NaN, right = NaN] = places.slice(next - 1, next + 1);
  const [from = NaN, to = NaN] = values.slice(next - 1, next + 1);
  const share = (x - left) / (right - left);
  return from * (1 - share) + to * share;
}
