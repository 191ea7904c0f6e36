import { benchDefaults, roundInUnit } from './bench-defaults.ts';
import { carburettorLimit, confidenceLimit } from './check-session.ts';
import { defaults } from './advisor/priors.ts';
import { checkNumber } from './check-number.ts';
import { formatExact } from './format-number.ts';
import { generations, screwsOf, type Generation } from './linkage.ts';
import { parseNumber } from './parse-number.ts';
import { parsePressure } from './parse-pressure.ts';
import type { Limit, Problem } from './problem.ts';
import { pressureUnits } from './pressure-unit-table.ts';
import { findPressureUnit, inUnit, pressureUnit } from './pressure-units.ts';
import type { SetUp, TurnsLeft } from './protocol.ts';
import { fail, succeed, type Result } from './result.ts';

export type OpeningDirection = 'clockwise' | 'anticlockwise' | 'unknown';

/** The protocol's set-up with what only hands need: the carburettor without a screw, and which way opens each screw. */
export type BenchSetUp = SetUp & {
  readonly fixed?: number;
  readonly opens: readonly OpeningDirection[];
};

/** The answers as they were typed or chosen; nothing here is checked. */
export type SetUpAnswers = {
  readonly carburettors: string;
  readonly generation: string;
  readonly fixed: string;
  /** Members of the group that each screw moves, as `1; 4; 3 4`; empty for the usual layout. */
  readonly groups: string;
  readonly opens: OpeningDirection | 'differ';
  readonly opensEach: readonly OpeningDirection[];
  readonly unit: string;
  readonly resolution: string;
  readonly flutter: string;
  readonly tolerance: string;
  readonly rpm: string;
  readonly thread: readonly { readonly closing: string; readonly opening: string }[];
  readonly ambient: string;
  readonly lockShift: string;
  readonly confidence: string;
  /** Effect of a turn learned earlier on this engine, in pascals; empty if there is none. */
  readonly effect: string;
};

export type SetUpField = keyof SetUpAnswers | `thread.${number}.${'closing' | 'opening'}`;

export type FieldProblem = { readonly field: SetUpField; readonly problem: Problem };

export type ParsedSetUp = {
  readonly generation: Generation;
  readonly unit: string;
  readonly setUp: BenchSetUp;
};

/** The answers before anybody has answered, for a gauge in a unit. */
export const defaultAnswers = (unitId: string): SetUpAnswers => ({
  carburettors: '4',
  generation: '',
  fixed: '1',
  groups: '',
  opens: 'unknown',
  opensEach: [],
  unit: unitId,
  resolution: roundInUnit(benchDefaults.resolutionMmHg, unitId),
  flutter: roundInUnit(benchDefaults.flutterMmHg, unitId),
  tolerance: roundInUnit(benchDefaults.tolerancePressureMmHg, unitId),
  rpm: String(benchDefaults.targetRpm),
  thread: [],
  ambient: '',
  lockShift: '',
  confidence: '',
  effect: '',
});

/** Limits that only the form sets, wide enough for every engine and within those of the protocol. */
const limits = {
  rpm: { min: 300, max: 20_000 },
  turns: { min: 0, max: 100 },
  ambientPa: { min: 30_000, max: 120_000 },
  lockShift: { min: 0, max: 1 },
} satisfies Record<string, Limit>;

/**
 * The set-up that the answers describe, or every problem with its field. Pressures are typed in the gauge's unit or with
 * their own; turns as `1 1/2`.
 */
export const parseSetUp = (
  answers: SetUpAnswers,
):
  | { readonly ok: true; readonly value: ParsedSetUp }
  | { readonly ok: false; readonly problems: readonly FieldProblem[] } => {
  const problems: FieldProblem[] = [];
  const take = <Value>(field: SetUpField, result: Result<Value>): Value | undefined => {
    if (result.ok) return result.value;
    problems.push({ field, problem: result.problem });
    return undefined;
  };

  const unit = findPressureUnit(answers.unit) ?? pressureUnit('mmHg');
  if (!findPressureUnit(answers.unit))
    problems.push({
      field: 'unit',
      problem: {
        kind: 'unknown-unit',
        field: 'unit',
        typed: answers.unit,
        unit: answers.unit,
        known: pressureUnits.filter(({ rare }) => !rare).map(({ symbol }) => symbol),
      },
    });
  const pressure = (field: SetUpField & keyof SetUpAnswers, limit: Limit): number | undefined =>
    take(field, withinLimit(`${field}Pa`, pascalsOfTyped(String(answers[field]), unit.id), limit));
  const number = (field: SetUpField, typed: string, limit: Limit): number | undefined =>
    take(field, withinLimit(field, valueOfTyped(typed), limit));
  const optional = (
    field: SetUpField & keyof SetUpAnswers,
    read: () => number | undefined,
  ): number | undefined => (String(answers[field]).trim() === '' ? undefined : read());

  const carburettors = take('carburettors', countOfTyped(answers.carburettors));
  const generation = take('generation', generationOfTyped(answers.generation));
  const tolerancePa = pressure('tolerance', { above: 0 });
  const resolutionPa = pressure('resolution', { above: 0 });
  const flutterPa = pressure('flutter', { min: 0 });
  const targetRpm = optional('rpm', () => number('rpm', answers.rpm, limits.rpm));
  const ambientPa = optional('ambient', () => pressure('ambient', limits.ambientPa));
  const lockShiftTurns = optional('lockShift', () =>
    number('lockShift', answers.lockShift, limits.lockShift),
  );
  const effectPaPerTurn = optional('effect', () => number('effect', answers.effect, { above: 0 }));
  const confidencePercent = optional('confidence', () =>
    number('confidence', answers.confidence, {
      min: confidenceLimit.min * 100,
      max: confidenceLimit.max * 100,
    }),
  );

  const thread = answers.thread.map(({ closing, opening }, j): TurnsLeft | null => {
    if (closing.trim() === '' && opening.trim() === '') return null;
    const left = number(`thread.${j}.closing`, closing, limits.turns);
    const right = number(`thread.${j}.opening`, opening, limits.turns);
    return left === undefined || right === undefined ? null : { closing: left, opening: right };
  });

  if (carburettors === undefined || generation === undefined) return { ok: false, problems };
  const needsFixed =
    generation === 'fixed-reference' || (generation === 'bypass-screws' && answers.fixed !== '');
  const fixed = needsFixed ? take('fixed', valueOfTyped(answers.fixed)) : undefined;
  if (needsFixed && fixed === undefined) return { ok: false, problems };
  const groups = generation === 'paired-screws' ? groupsOfTyped(answers.groups) : undefined;
  const bare = screwsOf(generation, carburettors, {
    ...(fixed === undefined ? {} : { fixed }),
    ...(groups === undefined ? {} : { groups }),
  });
  const screws = take(generation === 'paired-screws' ? 'groups' : 'fixed', bare);
  if (
    problems.length > 0 ||
    screws === undefined ||
    tolerancePa === undefined ||
    resolutionPa === undefined ||
    flutterPa === undefined
  )
    return { ok: false, problems };

  const setUp: BenchSetUp = {
    carburettors,
    screws: screws.map((screw, j) => {
      const turnsLeft = thread[j] ?? null;
      return turnsLeft ? { moves: screw.moves, turnsLeft } : { moves: screw.moves };
    }),
    tolerancePa,
    gauge: { resolutionPa, flutterPa },
    ...(confidencePercent === undefined ? {} : { confidence: shareOf(confidencePercent) }),
    ...(targetRpm === undefined ? {} : { targetRpm }),
    ...(ambientPa === undefined ? {} : { ambientPa }),
    ...(lockShiftTurns === undefined ? {} : { lockShiftTurns }),
    ...(effectPaPerTurn === undefined ? {} : { effectPaPerTurn }),
    ...(fixed === undefined ? {} : { fixed }),
    opens: screws.map((_, j) =>
      answers.opens === 'differ' ? (answers.opensEach[j] ?? 'unknown') : answers.opens,
    ),
  };
  const tooLarge = checkAgainstAmbient(setUp);
  if (tooLarge.length > 0) return { ok: false, problems: tooLarge };
  return { ok: true, value: { generation, unit: unit.id, setUp } };
};

/** 99.9 % must not pass its limit by the tail of a binary fraction. */
const shareOf = (percent: number): number => Math.min(percent / 100, confidenceLimit.max);

/** A tolerance, a step or a swing as large as the ambient pressure means nothing. */
const checkAgainstAmbient = (setUp: SetUp): readonly FieldProblem[] => {
  const ambientPa = setUp.ambientPa ?? defaults.ambientPa;
  const { resolutionPa, flutterPa } = setUp.gauge;
  const given = { tolerance: setUp.tolerancePa, resolution: resolutionPa, flutter: flutterPa };
  return (['tolerance', 'resolution', 'flutter'] as const).flatMap((field) =>
    given[field] < ambientPa
      ? []
      : {
          field,
          problem: {
            kind: 'depression-beyond-ambient',
            field: `${field}Pa`,
            depressionPa: given[field],
            limit: { below: ambientPa },
          } as const,
        },
  );
};

/** How many screws a set has, for the table of threads; 0 while the answers do not say. */
export const screwsOfAnswers = (answers: SetUpAnswers): readonly (readonly number[])[] => {
  const carburettors = countOfTyped(answers.carburettors);
  const generation = generationOfTyped(answers.generation);
  if (!carburettors.ok || !generation.ok) return [];
  const fixed = valueOfTyped(answers.fixed);
  const groups = generation.value === 'paired-screws' ? groupsOfTyped(answers.groups) : undefined;
  const screws = screwsOf(generation.value, carburettors.value, {
    ...(fixed.ok ? { fixed: fixed.value } : {}),
    ...(groups === undefined ? {} : { groups }),
  });
  return screws.ok ? screws.value.map(({ moves }) => moves) : [];
};

const countOfTyped = (typed: string): Result<number> => {
  const parsed = valueOfTyped(typed);
  if (!parsed.ok) return parsed;
  const { value } = parsed;
  return Number.isInteger(value) && value >= carburettorLimit.min && value <= carburettorLimit.max
    ? parsed
    : fail({ kind: 'carburettor-count', value, limit: carburettorLimit });
};

const generationOfTyped = (typed: string): Result<Generation> => {
  const found = generations.find((generation) => generation === typed);
  if (found) return succeed(found);
  return typed === ''
    ? fail({ kind: 'empty', field: 'generation' })
    : fail({ kind: 'unknown-choice', field: 'generation', typed, known: generations });
};

const groupsOfTyped = (typed: string): readonly (readonly number[])[] | undefined =>
  typed.trim() === '' ? undefined : typed.split(';').map((group) => (group.match(/\d+/gu) ?? []).map(Number));

const valueOfTyped = (typed: string): Result<number> => {
  const parsed = parseNumber(typed);
  return parsed.ok ? succeed(parsed.value.value) : parsed;
};

const pascalsOfTyped = (typed: string, unitId: string): Result<number> => {
  const parsed = parsePressure(typed, pressureUnit(unitId));
  return parsed.ok ? succeed(parsed.value.pascals) : parsed;
};

const withinLimit = (field: string, result: Result<number>, limit: Limit): Result<number> => {
  const problem = result.ok ? checkNumber(field, result.value, limit) : undefined;
  return problem ? fail(problem) : result;
};

/** The answers that give this set-up again, for the next session on the same engine. */
export const answersOf = (generation: Generation, unitId: string, setUp: BenchSetUp): SetUpAnswers => {
  const unit = pressureUnit(unitId);
  const typedPressure = (pascals: number): string => formatExact(inUnit(pascals, unit), { minus: 'hyphen' });
  const typed = (value: number | undefined): string =>
    value === undefined ? '' : formatExact(value, { minus: 'hyphen' });
  const first = setUp.opens[0]!;
  const alike = setUp.opens.every((direction) => direction === first);
  return {
    carburettors: String(setUp.carburettors),
    generation,
    fixed: typed(setUp.fixed),
    groups:
      generation === 'paired-screws'
        ? setUp.screws
            .map(({ moves }) => moves.flatMap((share, i) => (share === 0 ? [] : [i + 1])).join(' '))
            .join('; ')
        : '',
    opens: alike ? first : 'differ',
    opensEach: setUp.opens,
    unit: unitId,
    resolution: typedPressure(setUp.gauge.resolutionPa),
    flutter: typedPressure(setUp.gauge.flutterPa),
    tolerance: typedPressure(setUp.tolerancePa),
    rpm: typed(setUp.targetRpm),
    thread: setUp.screws.map(({ turnsLeft }) => ({
      closing: typed(turnsLeft?.closing),
      opening: typed(turnsLeft?.opening),
    })),
    ambient: setUp.ambientPa === undefined ? '' : typedPressure(setUp.ambientPa),
    lockShift: typed(setUp.lockShiftTurns),
    confidence: setUp.confidence === undefined ? '' : typed(setUp.confidence * 100),
    effect: typed(setUp.effectPaPerTurn),
  };
};

/** The carburettors of the answers, counted from 1; none while their number is not one that a set can have. */
export const carburettorNumbers = (answers: SetUpAnswers): readonly number[] => {
  const count = countOfTyped(answers.carburettors);
  return count.ok ? Array.from({ length: count.value }, (_, i) => i + 1) : [];
};

/** What was typed into a field, or undefined for one that is chosen. */
export const typedIn = (answers: SetUpAnswers, field: SetUpField): string | undefined => {
  const [name, screw, side] = field.split('.');
  if (name === 'thread' && screw !== undefined)
    return answers.thread[Number(screw)]?.[side === 'closing' ? 'closing' : 'opening'];
  const answer = answers[field as keyof SetUpAnswers];
  return typeof answer === 'string' ? answer : undefined;
};
