import { checkNumber } from './check-number.ts';
import { criticalPressureRatio } from './compressible-flow.ts';
import { absolutePressurePa, depressionOf, depressionPa } from './quantities.ts';
import type { AbsolutePressurePa, DepressionPa } from './quantities.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

export type ReadingElsewhere = {
  readonly depressionPa: DepressionPa;
  /** Ambient pressure where it was read, and where it is to be compared. */
  readonly thereAmbientPa: AbsolutePressurePa;
  readonly hereAmbientPa: AbsolutePressurePa;
};

export type CarriedReading = {
  /** With the same opening at the same speed. */
  readonly sameOpeningPa: DepressionPa;
  /** With the speed set again by the screw, so that the cylinder draws the same charge; null where no opening gives it. */
  readonly sameChargePa: DepressionPa | null;
  /** Intake pressure over ambient pressure where it was read. */
  readonly pressureRatio: number;
  readonly isChoked: boolean;
};

/**
 * What a depression read elsewhere would be under another ambient pressure, between two plain assumptions.
 *
 * Same opening, same speed: a throttle passes A p₀ ψ(p/p₀) / √(R T₀), a cylinder draws in proportion to p at the same speed,
 * so p/p₀ is the same whether the throttle is choked or not, and a depression goes with the ambient pressure. Our own
 * conclusion from J. B. Heywood, Internal Combustion Engine Fundamentals (1988), eqs. C.8 and C.9.
 *
 * Same charge: an engine that idles needs as much mixture here as there, so the screw is set until the intake pressure p
 * is the same, and the depression falls by the whole difference of the ambient pressures. An army handbook's rule of
 * an inch of mercury for each thousand feet is this one.
 *
 * Problems: `not-finite`, `out-of-range` for ambient pressures not above 0; `depression-beyond-ambient`.
 */
export function carryReading(given: ReadingElsewhere): Result<CarriedReading> {
  const { thereAmbientPa, hereAmbientPa } = given;
  const problem =
    checkNumber('thereAmbientPa', thereAmbientPa, { above: 0 }) ??
    checkNumber('hereAmbientPa', hereAmbientPa, { above: 0 }) ??
    checkNumber('depressionPa', given.depressionPa, { min: 0 });
  if (problem !== undefined) return fail(problem);
  if (given.depressionPa > thereAmbientPa)
    return fail({
      kind: 'depression-beyond-ambient',
      field: 'depressionPa',
      depressionPa: given.depressionPa,
      limit: { min: 0, max: thereAmbientPa },
    });
  const intakePa = absolutePressurePa(thereAmbientPa - given.depressionPa);
  const pressureRatio = intakePa / thereAmbientPa;
  return succeed({
    sameOpeningPa: depressionPa((given.depressionPa * hereAmbientPa) / thereAmbientPa),
    sameChargePa: intakePa < hereAmbientPa ? depressionOf(hereAmbientPa, intakePa) : null,
    pressureRatio,
    isChoked: pressureRatio <= criticalPressureRatio(),
  });
}
