import { defaults } from './advisor/priors.ts';
import type { Problem } from './problem.ts';
import type { SessionEvent, SetUp } from './protocol.ts';

/** Fewest and most carburettors that a set can have. */
export const carburettorLimit = { min: 2, max: 8 } as const;
/** Lowest and highest chance at which a set may be called balanced. */
export const confidenceLimit = { min: 0.5, max: 0.999 } as const;

/** The first thing that is wrong with a session, or null. */
export const checkSession = (setUp: SetUp, events: readonly SessionEvent[]): Problem | null =>
  checkSetUp(setUp) ?? firstProblem(events.map((event, k) => () => checkEvent(setUp, event, k)));

export const checkSetUp = (setUp: SetUp): Problem | null => {
  const { carburettors: n, screws, gauge } = setUp;
  if (!Number.isInteger(n) || n < carburettorLimit.min || n > carburettorLimit.max)
    return { kind: 'carburettor-count', value: n, limit: carburettorLimit };
  if (screws.length === 0) return { kind: 'no-screws' };
  return firstProblem([
    ...screws.map((_, j) => () => checkScrew(setUp, j)),
    () => checkNumber('tolerancePa', setUp.tolerancePa, { above: 0 }),
    () => checkNumber('confidence', setUp.confidence ?? defaults.confidence, confidenceLimit),
    () => checkNumber('gauge.resolutionPa', gauge.resolutionPa, { above: 0 }),
    () => checkNumber('gauge.flutterPa', gauge.flutterPa, { min: 0 }),
    () => checkOptional('targetRpm', setUp.targetRpm, { above: 0 }),
    () => checkOptional('ambientPa', setUp.ambientPa, { above: 0 }),
    () => checkOptional('lockShiftTurns', setUp.lockShiftTurns, { min: 0 }),
    () => checkOptional('effectPaPerTurn', setUp.effectPaPerTurn, { above: 0 }),
  ]);
};

const checkScrew = (setUp: SetUp, j: number): Problem | null => {
  const { moves, turnsLeft } = setUp.screws[j]!;
  const field = `screws.${j}`;
  if (moves.length !== setUp.carburettors)
    return {
      kind: 'column-length',
      field: `${field}.moves`,
      value: moves.length,
      limit: { min: setUp.carburettors, max: setUp.carburettors },
    };
  return firstProblem([
    ...moves.map((share, i) => () => checkNumber(`${field}.moves.${i}`, share, {})),
    () => checkOptional(`${field}.turnsLeft.closing`, turnsLeft?.closing, { min: 0 }),
    () => checkOptional(`${field}.turnsLeft.opening`, turnsLeft?.opening, { min: 0 }),
  ]);
};

const checkEvent = (setUp: SetUp, event: SessionEvent, k: number): Problem | null => {
  const field = `events.${k}`;
  const minute = checkOptional(`${field}.minute`, event.minute, {});
  if (minute) return minute;
  if (event.kind === 'turn')
    return (
      checkIndex(`${field}.screw`, event.screw, setUp.screws.length) ??
      checkNumber(`${field}.turns`, event.turns, {})
    );
  return (
    checkIndex(`${field}.carburettor`, event.carburettor, setUp.carburettors) ??
    checkDepression(`${field}.depressionPa`, event.depressionPa, setUp.ambientPa ?? defaults.ambientPa) ??
    checkOptional(`${field}.rpm`, event.rpm, {})
  );
};

/** A depression is 0 or more, and less than the ambient pressure. */
export const checkDepression = (field: string, depressionPa: number, ambientPa: number): Problem | null => {
  if (!Number.isFinite(depressionPa)) return { kind: 'not-finite', field };
  if (depressionPa < 0) return { kind: 'out-of-range', field, value: depressionPa, limit: { min: 0 } };
  if (depressionPa >= ambientPa)
    return { kind: 'depression-beyond-ambient', field, depressionPa, limit: { below: ambientPa } };
  return null;
};

type NumberLimit = { readonly min?: number; readonly max?: number; readonly above?: number };

const checkNumber = (field: string, value: number, limit: NumberLimit): Problem | null => {
  if (!Number.isFinite(value)) return { kind: 'not-finite', field };
  const inside =
    value >= (limit.min ?? -Infinity) &&
    value <= (limit.max ?? Infinity) &&
    value > (limit.above ?? -Infinity);
  return inside ? null : { kind: 'out-of-range', field, value, limit };
};

const checkOptional = (field: string, value: number | undefined, limit: NumberLimit): Problem | null =>
  value === undefined ? null : checkNumber(field, value, limit);

const checkIndex = (field: string, value: number, count: number): Problem | null =>
  Number.isInteger(value) && value >= 1 && value <= count
    ? null
    : { kind: 'index', field, value, limit: { min: 1, max: count } };

const firstProblem = (checks: readonly (() => Problem | null)[]): Problem | null => {
  for (const check of checks) {
    const problem = check();
    if (problem) return problem;
  }
  return null;
};
