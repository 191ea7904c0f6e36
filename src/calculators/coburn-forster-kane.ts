import { cfkDriveMmHg, cfkResistance, checkCfkPerson, checkExposure } from './cfk-person.ts';
import type { CfkPerson } from './cfk-person.ts';
import { checkNumber } from './check-number.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/*
 * Carboxyhaemoglobin of somebody who breathes carbon monoxide.
 * Sources: R. F. Coburn, R. E. Forster, P. B. Kane, Considerations of the physiological variables that determine the
 * blood carboxyhemoglobin concentration in man, Journal of Clinical Investigation 44 (1965), 1899–1910; J. E. Peterson,
 * R. D. Stewart, Absorption and elimination of carbon monoxide by inactive young men, Archives of Environmental Health
 * 21 (1970), 165–171, and Journal of Applied Physiology 39 (1975), 633–638.
 * The water vapour of the lung is taken off the pressure that is breathed in; without it the equation gives too much
 * (P. Tikuisis and others, American Industrial Hygiene Association Journal 48 (1987), 208–213).
 */

/**
 * The linear form: oxyhaemoglobin is held at its full capacity. COHb in per cent after some minutes at one concentration,
 * A [COHb] = drive + (A [COHb]₀ − drive) e^(−t A/(Vb B)) with A = PcO2/(M [O2Hb]).
 * Close for small answers; beyond some 10 % it gives too much, and in the end more than the blood can hold.
 * Problems: `not-finite`, `out-of-range` of the person, `ppm`, `minutes`, `startPercent`.
 */
export function cfkLinearPercent(
  person: CfkPerson,
  ppm: number,
  minutes: number,
  startPercent: number,
): Result<number> {
  const problem = checkCfkPerson(person) ?? checkExposure(ppm, minutes, startPercent);
  if (problem) return fail(problem);
  const capacity = person.oxygenCapacityMlPerMl;
  const back = person.capillaryOxygenMmHg / (person.haldaneRatio * capacity);
  const drive = cfkDriveMmHg(person, ppm);
  const left = Math.exp((-minutes * back) / (person.bloodVolumeMl * cfkResistance(person)));
  const start = (capacity * startPercent) / 100;
  return succeed(((drive + (back * start - drive) * left) / back / capacity) * 100);
}

/** Where the nonlinear form ends at one concentration, in per cent COHb: the balance of Haldane. Problems: as above. */
export function cfkEquilibriumPercent(person: CfkPerson, ppm: number): Result<number> {
  const problem = checkCfkPerson(person) ?? checkNumber('ppm', ppm, { min: 0 });
  if (problem) return fail(problem);
  const drive = cfkDriveMmHg(person, ppm);
  return succeed((100 * drive) / (drive + person.capillaryOxygenMmHg / person.haldaneRatio));
}

/**
 * The concentration in ppm that holds COHb at a percentage: below 0 where the body's own production alone makes more.
 * Problems: those of the person; `out-of-range` of `percent`, from 0 and below 100.
 */
export function cfkEquilibriumPpm(person: CfkPerson, percent: number): Result<number> {
  const problem = checkCfkPerson(person) ?? checkNumber('percent', percent, { min: 0, below: 100 });
  if (problem) return fail(problem);
  const held = (percent / (100 - percent)) * (person.capillaryOxygenMmHg / person.haldaneRatio);
  const inspired = held - cfkResistance(person) * person.endogenousMlPerMin;
  return succeed(inspired / (1e-6 * (person.barometricMmHg - person.vapourMmHg)));
}
