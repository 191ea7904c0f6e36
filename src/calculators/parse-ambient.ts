import { standardAtmospherePa } from './exact-definitions.ts';
import { parsePressure } from './parse-pressure.ts';
import { pressureUnit } from './pressure-units.ts';
import { absolutePressurePa } from './quantities.ts';
import type { AbsolutePressurePa } from './quantities.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/**
 * Ambient pressures that are believed, in pascals. Wider than any place on the ground: about 33 kPa on the
 * highest mountain, about 108 kPa in the highest high-pressure area (both from memory).
 */
export const ambientLimit = { min: 20_000, max: 120_000 } as const;

/**
 * Reads an ambient pressure: without a unit in kilopascals; left empty, the standard atmosphere.
 * Problems: those of `parsePressure`, with field `ambient`; out-of-range of `ambientPa`.
 */
export function parseAmbient(typed: string): Result<AbsolutePressurePa> {
  if (typed.trim() === '') return succeed(absolutePressurePa(standardAtmospherePa));
  const parsed = parsePressure(typed, pressureUnit('kPa'), 'ambient');
  if (!parsed.ok) return parsed;
  const { pascals } = parsed.value;
  return pascals >= ambientLimit.min && pascals <= ambientLimit.max
    ? succeed(absolutePressurePa(pascals))
    : fail({ kind: 'out-of-range', field: 'ambientPa', value: pascals, limit: ambientLimit });
}
