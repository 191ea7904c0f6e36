import { checkNumber } from './check-number.ts';
import { heatCapacityRatioOfAir } from './compressible-flow.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** Specific gas constant of dry air, J/(kg·K). Source: ISO 2533:1975, table 1. */
const gasConstantOfAir = 287.05287;
const zeroCelsiusK = 273.15;

/**
 * Speed of sound in dry air as an ideal gas: a = √(γ R T), in m/s.
 * `celsius` is above absolute zero. Problems: `not-finite`, `out-of-range`.
 * Source: ISO 2533:1975, Standard atmosphere, clause 2.
 */
export function speedOfSoundMPerS(celsius: number): Result<number> {
  const problem = checkNumber('celsius', celsius, { above: -zeroCelsiusK });
  return problem
    ? fail(problem)
    : succeed(Math.sqrt(heatCapacityRatioOfAir * gasConstantOfAir * (celsius + zeroCelsiusK)));
}
