import { defaults } from './advisor/priors.ts';
import type { BalanceAnalyserField, BalanceAnalyserForm } from './balance-analyser-form.ts';
import type { BalanceReadings } from './balance-analysis.ts';
import { defaultAnswers, parseSetUp } from './bench-set-up.ts';
import type { BenchSetUp, SetUpAnswers } from './bench-set-up.ts';
import { formReader } from './calculator-form.ts';
import type { FormResult } from './calculator-form.ts';
import { checkNumber } from './check-number.ts';
import type { DecimalMark } from './format-number.ts';
import { parsePressure } from './parse-pressure.ts';
import type { ParsedPressure } from './parse-pressure.ts';
import { pressureUnit } from './pressure-units.ts';
import type { Problem } from './problem.ts';
import { parseReadings } from './typed-readings.ts';
import type { TypedReading } from './typed-readings.ts';
import { widthAt95 } from './width-at-95.ts';

export type BalanceQuestion = {
  readonly given: BalanceReadings;
  readonly readings: readonly TypedReading[];
  readonly setUp: BenchSetUp;
  readonly unit: string;
  /** The decimal mark that the readings were typed with. */
  readonly mark: DecimalMark;
  /** The same for the set-up of the bench session. */
  readonly answers: SetUpAnswers;
};

/** A correction as uncertain as this is no correction: the depression of an engine that idles, from memory. */
const largestOffsetPa = 50_000;

/**
 * Reads the form. What it shares with the bench session is read as there, within the same limits; an ambient pressure
 * without a unit is in kilopascals. Problems: those of `parseSetUp`, `parseReadings` and `parsePressure`; `fixed-needed`;
 * `no-readings` of one carburettor or of all; `index` and `too-few-readings` of the one that is to show the drift;
 * `empty` for the speed that readings are to be referred to.
 */
export function parseBalanceAnalyser(
  form: BalanceAnalyserForm,
): FormResult<BalanceQuestion, BalanceAnalyserField> {
  const { problems, take, blame } = formReader<BalanceAnalyserField>();
  const answers = answersOfForm(form);
  const parsed = parseSetUp(answers);
  if (!parsed.ok)
    for (const { field, problem } of parsed.problems)
      // Of what the bench asks beyond this form every answer stands at its default, and is right.
      blame(
        field as BalanceAnalyserField,
        field === 'fixed' && problem.kind === 'empty' ? { kind: 'fixed-needed' } : problem,
      );

  const carburettors = Number(form.carburettors);
  const ambientPa = parsed.ok ? parsed.value.setUp.ambientPa : undefined;
  const readings = take('readings', parseReadings(form.readings, form.unit, { carburettors, ambientPa }));
  const missing = readings && missingReading(readings, carburettors);
  if (missing) blame('readings', missing);
  const driftReference = readings && driftReferenceOf(form.drift, readings);
  const wrongDrift = readings && !missing && driftProblem(driftReference, readings, carburettors);
  if (wrongDrift) blame('drift', wrongDrift);

  const optional = (field: 'offsetUncertainty' | 'speedEffect'): number | undefined =>
    form[field].trim() === ''
      ? undefined
      : take(field, parsePressure(form[field], pressureUnit(form.unit), field))?.pascals;
  const offsetPa = optional('offsetUncertainty');
  const wrongOffset =
    offsetPa === undefined ? undefined : checkNumber('offsetPa', offsetPa, { min: 0, max: largestOffsetPa });
  if (wrongOffset) blame('offsetUncertainty', wrongOffset);
  const effectPa = optional('speedEffect');
  if (effectPa !== undefined && form.rpm.trim() === '') blame('rpm', { kind: 'empty', field: 'rpm' });

  if (!parsed.ok || problems.length > 0) return { ok: false, problems };
  // What has no problem is there, and so is the speed that an effect asks for.
  const sound = readings!;
  const { setUp, generation } = parsed.value;
  const { fixed, confidence, targetRpm } = setUp;
  const given: BalanceReadings = {
    generation,
    carburettors,
    readings: sound,
    gauge: setUp.gauge,
    tolerancePa: setUp.tolerancePa,
    ...(generation === 'paired-screws' && { groups: setUp.screws.map(({ moves }) => membersOf(moves)) }),
    ...(fixed !== undefined && { fixed }),
    ...(confidence !== undefined && { confidence }),
    ...(ambientPa !== undefined && { ambientPa }),
    ...(offsetPa !== undefined && { offsetUncertaintyPa: offsetPa / widthAt95(1) }),
    ...(driftReference !== undefined && { driftReference }),
    ...(effectPa !== undefined && {
      speed: { targetRpm: targetRpm!, sensitivityPaPerRpm: effectPa / 100 },
    }),
  };
  return {
    ok: true,
    value: { given, readings: sound, setUp, unit: form.unit, mark: markOf(sound), answers },
  };
}

const membersOf = (moves: readonly number[]): readonly number[] =>
  moves.flatMap((share, i) => (share === 0 ? [] : [i + 1]));

const answersOfForm = (form: BalanceAnalyserForm): SetUpAnswers => {
  const { carburettors, generation, groups, unit, resolution, flutter, tolerance, rpm } = form;
  const ambient = parsePressure(form.ambient, pressureUnit('kPa'));
  const confidence = form.confidence.replace(/%\s*$/u, '').trim();
  return {
    ...defaultAnswers(unit),
    ...{ carburettors, generation, groups, unit, resolution, flutter, tolerance, rpm },
    fixed: form.fixed === 'none' ? '' : form.fixed,
    // What the bench takes by itself needs no word in a link to it.
    ambient: ambientWords(ambient.ok ? ambient.value : null, form.ambient),
    confidence: confidence === usualConfidence ? '' : confidence,
  };
};

const usualConfidence = String(100 * defaults.confidence);

const ambientWords = (ambient: ParsedPressure | null, typed: string): string => {
  if (ambient?.pascals === defaults.ambientPa) return '';
  return ambient === null || ambient.unitTyped ? typed : `${typed} kPa`;
};

const countOf = (readings: readonly TypedReading[], number: number): number =>
  readings.filter(({ carburettor }) => carburettor === number).length;

const missingReading = (readings: readonly TypedReading[], carburettors: number): Problem | undefined => {
  if (readings.length === 0) return { kind: 'no-readings' };
  for (let number = 1; number <= carburettors; number += 1)
    if (countOf(readings, number) === 0) return { kind: 'no-readings', field: `carburettors.${number - 1}` };
  return undefined;
};

/** `ends`: the carburettor that was read first and last, if it is the same. */
const driftReferenceOf = (drift: string, readings: readonly TypedReading[]): number | undefined => {
  if (drift === 'none') return undefined;
  if (drift !== 'ends') return Number(drift);
  const first = readings[0]?.carburettor;
  return first === readings.at(-1)?.carburettor ? first : undefined;
};

const driftProblem = (
  reference: number | undefined,
  readings: readonly TypedReading[],
  carburettors: number,
): Problem | undefined => {
  if (reference === undefined) return undefined;
  if (reference > carburettors)
    return { kind: 'index', field: 'drift', value: reference, limit: { min: 1, max: carburettors } };
  const count = countOf(readings, reference);
  return count < 2
    ? { kind: 'too-few-readings', field: 'drift', value: count, limit: { min: 2 } }
    : undefined;
};

const markOf = (readings: readonly TypedReading[]): DecimalMark =>
  readings.some(({ typed }) => {
    const parsed = parsePressure(typed, pressureUnit('Pa'));
    return parsed.ok && parsed.value.number.mark === 'comma';
  })
    ? 'comma'
    : 'point';
