import { permissibleError } from './accuracy-class.ts';
import { parseReading } from './bench-reading.ts';
import { bracketLength, bracketsOf } from './bracketed-difference.ts';
import { formReader } from './calculator-form.ts';
import type { FormResult } from './calculator-form.ts';
import { checkNumber } from './check-number.ts';
import { standardAtmospherePa } from './exact-definitions.ts';
import type { DecimalMark } from './format-number.ts';
import type { GaugeReadings } from './gauge-offset.ts';
import type { GaugeQuestion } from './gauge-comparison.ts';
import { comparisonWays, gaugeNumbers } from './gauge-comparison-form.ts';
import type { ComparisonWay, GaugeField, GaugeForm } from './gauge-comparison-form.ts';
import { parseChoice } from './parse-choice.ts';
import { parsePressure } from './parse-pressure.ts';
import { parseSpan } from './parse-span.ts';
import { pressureUnit } from './pressure-units.ts';
import type { Limit } from './problem.ts';
import { readingsOfList } from './reading-list.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';
import { parseReadings } from './typed-readings.ts';
import type { TypedReading } from './typed-readings.ts';

export type GaugeTyped = GaugeQuestion & {
  readonly way: ComparisonWay;
  readonly unit: string;
  readonly mark: DecimalMark;
  /** Readings of carburettors, gauge 1 on the first: to be corrected and handed on. Some may have no gauge here. */
  readonly engine: readonly TypedReading[];
};

/** Most readings of one gauge. */
const mostReadings = 64;
export const gaugeConfidence = 0.95;

/**
 * Reads the form. A swap is of two gauges, A and B, whatever number is chosen; a class counts only with its span.
 * Problems: those of `parseReading`, `parsePressure`, `parseSpan` and `parseReadings`; `no-readings`; `too-long`;
 * `unequal-lists`; `bracket-length`; `out-of-range`; `empty` for a class without a span.
 */
export function parseGaugeComparison(form: GaugeForm): FormResult<GaugeTyped, GaugeField> {
  const { problems, take } = formReader<GaugeField>();
  const unit = pressureUnit(form.unit);
  const way = take('way', parseChoice(form.way, comparisonWays, 'way'));
  const isSwap = way === 'abba' || way === 'aba';
  const numbers = gaugeNumbers.slice(0, isSwap ? 2 : Number(form.gauges));

  const readings: GaugeReadings[] = [];
  if (isSwap) {
    const typed = take('swap', readingsIn(form.swap, unit.id));
    const runs = typed && take('swap', bracketsOf(typed, way));
    if (runs)
      for (const side of ['a', 'b'] as const) readings.push(...nonEmpty(runs.map((run) => run[side])));
  } else
    for (const number of numbers) {
      const own = take(`readings${number}`, readingsIn(form[`readings${number}`], unit.id));
      const [first] = readings;
      if (way === 'together' && own && first && own.length !== first.length)
        take(`readings${number}`, unequal(own.length, first.length));
      if (own) readings.push(own);
    }

  const pressure = (field: 'resolution' | 'flutter', limit: Limit): number | undefined => {
    const parsed = take(field, parsePressure(form[field], unit, field));
    return parsed && take(field, within(`${field}Pa`, parsed.pascals, limit));
  };
  const resolutionPa = pressure('resolution', { above: 0, max: standardAtmospherePa });
  const flutterPa = pressure('flutter', { min: 0, max: standardAtmospherePa });
  const reference = form.reference === 'mean' ? null : Number(form.reference);
  const permissiblePa = numbers.map((number) => {
    const accuracyClass = form[`class${number}`];
    if (accuracyClass === 'none') return null;
    const span = parseSpan(form[`span${number}`], unit, `span${number}`);
    return (
      take(`span${number}`, span.ok ? permissibleError(Number(accuracyClass), span.value) : span) ?? null
    );
  });
  const engine = take('engine', parseReadings(form.engine, unit.id, { carburettors: gaugeNumbers.length }));

  if (problems.length > 0) return { ok: false, problems };
  // What has no problem is there.
  return {
    ok: true,
    value: {
      read: way === 'in-turn' ? 'in-turn' : 'in-rounds',
      readings,
      readingsPerRound: numbers.map((_, i) => (isSwap ? readingsInRun(way, i) : 1)),
      gauge: { resolutionPa: resolutionPa!, flutterPa: flutterPa! },
      reference,
      permissiblePa,
      confidence: gaugeConfidence,
      way: way!,
      unit: unit.id,
      mark: Object.values<string>(form).some((typed) => /\d,\d/u.test(typed)) ? 'comma' : 'point',
      engine: engine!,
    },
  };
}

/** A opens and closes a run; B has the rest of it. */
const readingsInRun = (order: 'aba' | 'abba', gauge: number): number =>
  gauge === 0 ? 2 : bracketLength[order] - 2;

function readingsIn(typed: string, unitId: string): Result<GaugeReadings> {
  const listed = readingsOfList(typed);
  if (listed.length > mostReadings)
    return fail({ kind: 'too-long', field: 'readings', value: listed.length, limit: { max: mostReadings } });
  const readings: number[] = [];
  for (const text of listed) {
    const reading = parseReading(text, unitId, {});
    if (!reading.ok) return reading;
    readings.push(reading.value);
  }
  const [own] = nonEmpty(readings);
  return own ? succeed(own) : fail({ kind: 'no-readings' });
}

const nonEmpty = ([first, ...others]: readonly number[]): readonly GaugeReadings[] =>
  first === undefined ? [] : [[first, ...others]];

const unequal = (value: number, expected: number): Result<never> =>
  fail({ kind: 'unequal-lists', field: 'readings', value, expected });

const within = (field: string, value: number, limit: Limit): Result<number> => {
  const problem = checkNumber(field, value, limit);
  return problem ? fail(problem) : succeed(value);
};
