import { checkNumber } from './check-number.ts';
import { glycolSolutionDensity } from './glycol-solution-density.ts';
import type { Liquid } from './liquid.ts';
import { mercuryDensity } from './mercury-density.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';
import { waterDensity } from './water-density.ts';

/** The temperature of handbooks, in degrees Celsius. */
export const handbookCelsius = 20;

/** Strength that coolants are mixed to, per cent by volume: common practice. */
export const usualGlycolPercent = 50;

/**
 * Density of a liquid at a temperature, in kg/m³.
 *
 * @param glycolPercent by volume; only a solution of glycol asks for it
 * Problems: `not-finite`; `out-of-range` of `celsius` beyond the liquid's own range, or of `percent`.
 */
export function liquidDensity(
  { density, range }: Liquid,
  celsius: number,
  glycolPercent = usualGlycolPercent,
): Result<number> {
  const problem = checkNumber('celsius', celsius, range);
  if (problem !== undefined) return fail(problem);
  switch (density.kind) {
    case 'water':
      return waterDensity(celsius);
    case 'mercury':
      return mercuryDensity(celsius);
    case 'glycol-solution':
      return glycolSolutionDensity(glycolPercent, celsius);
    case 'expansion':
      return succeed(density.kgPerM3At20 * Math.exp(density.expansionPerK * (handbookCelsius - celsius)));
  }
}
