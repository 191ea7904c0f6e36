import { defaults } from './advisor/priors.ts';
import { checkIndex, checkNumber, checkOptionalNumber } from './check-number.ts';
import type { Problem } from './problem.ts';
import type { SessionEvent, SetUp } from './protocol.ts';

/** Fewest and most carburettors that a set can have. */
export const carburettorLimit = { min: 2, max: 8 } as const;
/** Lowest and highest chance at which a set may be called balanced. */
export const confidenceLimit = { min: 0.5, max: 0.999 } as const;

/** The first thing that is wrong with a session, or undefined. */
export const checkSession = (setUp: SetUp, events: readonly SessionEvent[]): Problem | undefined =>
  checkSetUp(setUp) ?? firstProblem(events.map((event, k) => () => checkEvent(setUp, event, k)));

export const checkSetUp = (setUp: SetUp): Problem | undefined => {
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
    () => checkOptionalNumber('targetRpm', setUp.targetRpm, { above: 0 }),
    () => checkOptionalNumber('ambientPa', setUp.ambientPa, { above: 0 }),
    () => checkOptionalNumber('lockShiftTurns', setUp.lockShiftTurns, { min: 0 }),
    () => checkOptionalNumber('effectPaPerTurn', setUp.effectPaPerTurn, { above: 0 }),
  ]);
};

const checkScrew = (setUp: SetUp, j: number): Problem | undefined => {
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
    () => checkOptionalNumber(`${field}.turnsLeft.closing`, turnsLeft?.closing, { min: 0 }),
    () => checkOptionalNumber(`${field}.turnsLeft.opening`, turnsLeft?.opening, { min: 0 }),
  ]);
};

const checkEvent = (setUp: SetUp, event: SessionEvent, k: number): Problem | undefined => {
  const field = `events.${k}`;
  const minute = checkOptionalNumber(`${field}.minute`, event.minute, {});
  if (minute) return minute;
  if (event.kind === 'turn')
    return (
      checkIndex(`${field}.screw`, event.screw, setUp.screws.length) ??
      checkNumber(`${field}.turns`, event.turns, {})
    );
  return (
    checkIndex(`${field}.carburettor`, event.carburettor, setUp.carburettors) ??
    checkDepression(`${field}.depressionPa`, event.depressionPa, setUp.ambientPa ?? defaults.ambientPa) ??
    checkOptionalNumber(`${field}.rpm`, event.rpm, {})
  );
};

/** A depression is 0 or more, and less than the ambient pressure. */
export const checkDepression = (
  field: string,
  depressionPa: number,
  ambientPa: number,
): Problem | undefined =>
  checkNumber(field, depressionPa, { min: 0 }) ??
  (depressionPa < ambientPa
    ? undefined
    : { kind: 'depression-beyond-ambient', field, depressionPa, limit: { below: ambientPa } });

const firstProblem = (checks: readonly (() => Problem | undefined)[]): Problem | undefined => {
  for (const check of checks) {
    const problem = check();
    if (problem) return problem;
  }
  return undefined;
};
