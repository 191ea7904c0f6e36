import type { TurnsLeft } from '../protocol.ts';
import { depressionsOf, effectOf, type Belief, type Engine } from './belief.ts';
import { leastSquares, zeros } from './matrix.ts';
import { margins } from './priors.ts';

export type Plan = {
  /** Turns of every screw that level the estimates, whatever the thread. */
  readonly turns: readonly number[];
  /** The same, cut to the thread left less the spare. */
  readonly cutTurns: readonly number[];
};

/** Turns that level the estimated openings: B (g t) + level = −opening, with g the effect of each screw. */
export const planOf = (engine: Engine, belief: Belief, turnsLeft: readonly (TurnsLeft | null)[]): Plan => {
  const openings = depressionsOf(engine, belief).map(engine.scale.opening);
  const effects = engine.screws.map((_, j) => effectOf(engine, belief, j));
  const own = ownCarburettors(engine);
  const turns = own
    ? levelWithOwnScrews(engine, openings, effects, own, turnsLeft)
    : levelByLeastSquares(engine, openings, effects);
  return { turns, cutTurns: turns.map((amount, j) => cutToThread(amount, turnsLeft[j] ?? null)) };
};

/** A turn cut to the thread left, less the spare. */
export const cutToThread = (turns: number, left: TurnsLeft | null): number => {
  if (!left) return turns;
  return Math.min(
    Math.max(turns, -Math.max(0, left.closing - margins.spareTurns)),
    Math.max(0, left.opening - margins.spareTurns),
  );
};

/** For each screw the one carburettor that it moves, where every carburettor has a screw of its own; else null. */
const ownCarburettors = (engine: Engine): readonly number[] | null => {
  if (engine.screws.length !== engine.carburettors) return null;
  const own = engine.screws.map(({ moves }) => {
    const moved = moves.flatMap((share, i) => (share === 0 ? [] : [i]));
    return moved.length === 1 ? moved[0]! : -1;
  });
  return new Set(own).size === own.length && !own.includes(-1) ? own : null;
};

const levelWithOwnScrews = (
  engine: Engine,
  openings: readonly number[],
  effects: readonly number[],
  own: readonly number[],
  turnsLeft: readonly (TurnsLeft | null)[],
): readonly number[] => {
  const perTurn = effects.map((effect, j) => effect * engine.screws[j]!.moves[own[j]!]!);
  const turnsTo = (level: number): number[] => own.map((i, j) => (level - openings[i]!) / perTurn[j]!);
  const fits = (turns: readonly number[]): boolean =>
    turns.every((amount, j) => cutToThread(amount, turnsLeft[j] ?? null) === amount);

  const sorted = [...openings].sort((a, b) => a - b);
  const middles = [sorted[Math.ceil(sorted.length / 2) - 1]!, sorted[Math.floor(sorted.length / 2)]!];
  for (const level of middles) if (fits(turnsTo(level))) return turnsTo(level);

  const leastLeft = (level: number): number =>
    Math.min(
      ...turnsTo(level).flatMap((amount, j) => {
        const left = turnsLeft[j];
        return left ? [left.opening - amount, left.closing + amount] : [];
      }),
    );
  let best = middles[0]!;
  for (const level of levelsWhereTwoSidesMeet(openings, perTurn, own, turnsLeft))
    if (leastLeft(level) > leastLeft(best)) best = level;
  return turnsTo(best);
};

/**
 * The least of what is left is a concave function of the level, made of straight lines, two for each screw with a known
 * thread: its best level is where a rising line meets a falling one.
 */
const levelsWhereTwoSidesMeet = (
  openings: readonly number[],
  perTurn: readonly number[],
  own: readonly number[],
  turnsLeft: readonly (TurnsLeft | null)[],
): readonly number[] => {
  const lines = own.flatMap((i, j) => {
    const left = turnsLeft[j];
    if (!left) return [];
    const slope = 1 / perTurn[j]!;
    const turnsAtZero = -openings[i]! * slope;
    return [
      { slope: -slope, height: left.opening - turnsAtZero },
      { slope, height: left.closing + turnsAtZero },
    ];
  });
  return lines.flatMap((a) =>
    lines.flatMap((b) => (a.slope < 0 && b.slope > 0 ? [(a.height - b.height) / (b.slope - a.slope)] : [])),
  );
};

/** The common level is the throttle hand's, so both sides are compared without their mean. */
const levelByLeastSquares = (
  engine: Engine,
  openings: readonly number[],
  effects: readonly number[],
): readonly number[] => {
  const n = engine.carburettors;
  const system = zeros(n, engine.screws.length);
  engine.screws.forEach(({ moves }, j) => {
    const mean = moves.reduce((sum, share) => sum + share, 0) / n;
    moves.forEach((share, i) => (system[i]![j] = (share - mean) * effects[j]!));
  });
  const mean = openings.reduce((sum, opening) => sum + opening, 0) / n;
  return leastSquares(
    system,
    openings.map((opening) => mean - opening),
  );
};
