import { checkNumber } from './check-number.ts';
import { heatCapacityRatioOfAir, isoGasConstantOfAir } from './dry-air.ts';
import { zeroCelsiusKelvins } from './exact-definitions.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/**
 * Speed of sound in dry air as an ideal gas: a = √(γ R T), in m/s.
 * `celsius` is above absolute zero. Problems: `not-finite`, `out-of-range`.
 * Source: ISO 2533:1975, Standard atmosphere, clause 2.
 */
export function speedOfSoundMPerS(celsius: number): Result<number> {
  const problem = checkNumber('celsius', celsius, { above: -zeroCelsiusKelvins });
  return problem
    ? fail(problem)
    : succeed(Math.sqrt(heatCapacityRatioOfAir * isoGasConstantOfAir * (celsius + zeroCelsiusKelvins)));
}
