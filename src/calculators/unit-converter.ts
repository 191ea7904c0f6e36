import type { ParsedPressure } from './parse-pressure.ts';
import type { PressureUnit } from './pressure-unit.ts';
import { absolutePressurePa, absoluteUnder, depressionOf, depressionPa } from './quantities.ts';
import type { AbsolutePressurePa } from './quantities.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';
import { convertedValue } from './unit-converter-digits.ts';
import type { ConvertedValue } from './unit-converter-digits.ts';

/** What a pressure reading is counted from. A difference is between two readings; no ambient comes into it. */
export const pressureKinds = ['depression', 'gauge', 'absolute', 'difference'] as const;
export type PressureKind = (typeof pressureKinds)[number];

export type ConversionQuestion = {
  readonly pressure: ParsedPressure;
  readonly kind: PressureKind;
  readonly ambientPa: AbsolutePressurePa;
};

export type Conversions = ConversionQuestion & {
  /** The kind asked for first, then the other names of the same state. */
  readonly kinds: readonly [PressureKind, ...PressureKind[]];
  /** Null where there is none: a depression above the ambient pressure. */
  readonly valueIn: (unit: PressureUnit, kind: PressureKind) => ConvertedValue | null;
};

/**
 * The same pressure in every unit, and, unless it is a difference, the same state under its other names:
 * gauge = −depression, absolute = ambient − depression.
 *
 * Digits: one more significant digit than was typed, at least four, so that what was typed comes back from any
 * line; the unit that was typed repeats what was typed. A state that is counted from somewhere else takes the
 * decimals of the line, but no more than the ambient pressure has.
 *
 * Problems, all with field `typed`: negative-depression, depression-beyond-ambient, gauge-below-vacuum,
 * absolute-below-zero.
 */
export function computeConversions(question: ConversionQuestion): Result<Conversions> {
  const { pressure, kind, ambientPa } = question;
  const { pascals } = pressure;
  if (kind === 'depression' && pascals < 0)
    return fail({ kind: 'negative-depression', field: 'typed', depressionPa: pascals });
  if (kind === 'depression' && pascals > ambientPa)
    return fail({
      kind: 'depression-beyond-ambient',
      field: 'typed',
      depressionPa: pascals,
      limit: { min: 0, max: ambientPa },
    });
  if (kind === 'gauge' && pascals < -ambientPa)
    return fail({ kind: 'gauge-below-vacuum', field: 'typed', gaugePa: pascals, limit: { min: -ambientPa } });
  if (kind === 'absolute' && pascals < 0)
    return fail({ kind: 'absolute-below-zero', field: 'typed', absolutePa: pascals });

  const states = statesOf(question);
  const kinds: Conversions['kinds'] = [
    kind,
    ...pressureKinds.filter((other) => other !== kind && other in states),
  ];
  const valueIn = (unit: PressureUnit, shown: PressureKind) => {
    const state = states[shown];
    return state === undefined || state === null ? null : convertedValue(question, unit, shown, state);
  };
  return succeed({ ...question, kinds, valueIn });
}

/** The state under each of its names, in pascals; no entry where the name does not apply. */
function statesOf({
  pressure,
  kind,
  ambientPa,
}: ConversionQuestion): Partial<Record<PressureKind, number | null>> {
  const { pascals } = pressure;
  if (kind === 'difference') return { difference: pascals };
  const absolute =
    kind === 'absolute'
      ? absolutePressurePa(pascals)
      : absoluteUnder(ambientPa, depressionPa(kind === 'gauge' ? -pascals : pascals));
  // The kind that was typed keeps its own figure: ambient − (ambient − d) would leave a tail.
  const depression =
    kind === 'absolute' ? depressionOf(ambientPa, absolute) : kind === 'gauge' ? -pascals : pascals;
  return { depression: depression < 0 ? null : depression, gauge: 0 - depression, absolute };
}
