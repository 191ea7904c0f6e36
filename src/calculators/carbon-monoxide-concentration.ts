import { checkNumber } from './check-number.ts';
import { molarGasConstant } from './molar-gas-constant.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** Molar mass of carbon monoxide in g/mol: C 12.0107 and O 15.9994, standard atomic weights of 2001 to 2007. */
export const carbonMonoxideGPerMol = 12.0107 + 15.9994;

/** Air at a temperature and an absolute pressure, both above 0. */
export type AirState = { readonly kelvins: number; readonly pascals: number };

/**
 * Milligrams of carbon monoxide in a cubic metre at one part per million by volume: M p/(R T), an ideal gas.
 * Within 0.1 % of a real one at room conditions. Problems: `not-finite`, `out-of-range` of `kelvins`, `pascals`.
 */
export function mgPerM3PerPpm({ kelvins, pascals }: AirState): Result<number> {
  const problem =
    checkNumber('kelvins', kelvins, { above: 0 }) ?? checkNumber('pascals', pascals, { above: 0 });
  // Grams per mole and parts per million make milligrams with a thousandth.
  return problem
    ? fail(problem)
    : succeed((carbonMonoxideGPerMol * pascals) / (molarGasConstant * kelvins) / 1000);
}

/** A volume share in parts per million as milligrams per cubic metre; `ppm` from 0. Problems: as above, `ppm`. */
export function mgPerM3FromPpm(ppm: number, air: AirState): Result<number> {
  const problem = checkNumber('ppm', ppm, { min: 0 });
  if (problem) return fail(problem);
  const factor = mgPerM3PerPpm(air);
  return factor.ok ? succeed(ppm * factor.value) : factor;
}

/** Milligrams per cubic metre as a volume share in parts per million. Problems: as above, `mgPerM3`. */
export function ppmFromMgPerM3(mgPerM3: number, air: AirState): Result<number> {
  const problem = checkNumber('mgPerM3', mgPerM3, { min: 0 });
  if (problem) return fail(problem);
  const factor = mgPerM3PerPpm(air);
  return factor.ok ? succeed(mgPerM3 / factor.value) : factor;
}
