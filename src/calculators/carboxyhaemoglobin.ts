import { cfkDriveMmHg, cfkResistance, checkCfkPerson, checkExposure } from './cfk-person.ts';
import type { CfkPerson } from './cfk-person.ts';
import { solveOde } from './ode.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** In millilitres per millilitre, of which 0.2 is 100 %: errors of 1e-9 % and of a billionth. */
const control = { absoluteError: 2e-12, relativeError: 1e-9, mostSteps: 100_000 } as const;

/**
 * COHb in per cent at each of some times (minutes from 0, rising) of somebody who breathes a concentration that may change
 * with time. The nonlinear form, in which carboxyhaemoglobin takes its place from oxyhaemoglobin:
 * d[COHb]/dt = (B Vco + PIco − [COHb] PcO2/(M [O2Hb]))/(Vb B), with [O2Hb] = capacity − [COHb].
 * Solved by `solveOde`. Source: Peterson and Stewart (1975); see `coburn-forster-kane.ts`.
 *
 * @param ppmAt concentration at a time, in ppm from 0
 * Problems: `not-finite`, `out-of-range` of the person, `ppm`, `minutes`, `startPercent`; no-solution.
 */
export function carboxyhaemoglobinPercent(
  person: CfkPerson,
  ppmAt: (minutes: number) => number,
  startPercent: number,
  times: readonly number[],
): Result<readonly number[]> {
  const problem =
    checkCfkPerson(person) ??
    times.map((minutes) => checkExposure(ppmAt(minutes), minutes, startPercent)).find(Boolean);
  if (problem) return fail(problem);
  const capacity = person.oxygenCapacityMlPerMl;
  const resisted = person.bloodVolumeMl * cfkResistance(person);
  const back = person.capillaryOxygenMmHg / person.haldaneRatio;
  const slope = (minutes: number, held: number): number =>
    (cfkDriveMmHg(person, ppmAt(minutes)) - (back * held) / (capacity - held)) / resisted;
  const start = { time: 0, value: (capacity * startPercent) / 100 };
  const solved = solveOde(slope, start, times, control);
  return solved.ok ? succeed(solved.value.map((held) => (held / capacity) * 100)) : solved;
}

/** The same at one concentration and one time. */
export function cfkPercent(
  person: CfkPerson,
  ppm: number,
  minutes: number,
  startPercent: number,
): Result<number> {
  const solved = carboxyhaemoglobinPercent(person, () => ppm, startPercent, [minutes]);
  return solved.ok ? succeed(solved.value[0]!) : solved;
}
