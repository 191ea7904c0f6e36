import { accountOf, type Account } from './advisor/account.ts';
import { depressionsOf, effectAt, effectOf, unevennessAt } from './advisor/belief.ts';
import { deviationSd } from './advisor/deviation.ts';
import { checkSession } from './check-session.ts';
import { mean } from './mean.ts';
import type { SessionEvent, SetUp } from './protocol.ts';
import { succeed, type Result } from './result.ts';
import { widthAt95 } from './width-at-95.ts';

/**
 * What the advice says of its doubt is too small by so much where single figures are compared: on 150 invented engines the
 * depressions found and left were 1.16 and 1.20 of their standard deviations away from the truth (root mean square).
 */
export const comparedWidening = 1.2;

/** What was set up and done: a session as far as it is compared. */
export type ComparedSession = { readonly setUp: SetUp; readonly events: readonly SessionEvent[] };

/** The effect of a turn with the range that holds it with 95 %. */
export type EffectRange = {
  readonly paPerTurn: number;
  readonly lowestPa: number;
  readonly highestPa: number;
};

/** A change, half the width of its 95 % range, and whether it is larger than that. */
export type ComparedChange = { readonly pa: number; readonly widthPa: number; readonly real: boolean };

export type ComparedCarburettor = {
  /** Above the mean of all, before the first turn and at the end; null where not all had been read. */
  readonly foundThenPa: number | null;
  readonly leftThenPa: number | null;
  readonly foundNowPa: number | null;
  readonly leftNowPa: number | null;
  /** From the end of the first session to the beginning of the second. */
  readonly moved: ComparedChange | null;
};

export type ComparedScrew = {
  /** All turns together; positive opens. */
  readonly turnsThen: number;
  readonly turnsNow: number;
  /** Null where the screw was never turned and read after. */
  readonly effectThen: EffectRange | null;
  readonly effectNow: EffectRange | null;
};

export type SessionComparison = {
  readonly carburettors: readonly ComparedCarburettor[];
  readonly screws: readonly ComparedScrew[];
  /** Of all screws together; null where one of the sessions turned none. */
  readonly effect: {
    readonly then: EffectRange;
    readonly now: EffectRange;
    readonly changed: boolean;
  } | null;
};

/** Whether two sessions can be of one engine: as many carburettors, moved alike by as many screws. */
export const isSameLinkage = (one: SetUp, other: SetUp): boolean =>
  one.carburettors === other.carburettors &&
  one.screws.length === other.screws.length &&
  one.screws.every(({ moves }, j) => moves.every((share, i) => share === other.screws[j]!.moves[i]));

/**
 * Two sessions of one engine, the earlier first: how the set was found and left, what moved between them, and what a turn
 * did. Each is worked out from its own readings alone, without the effect that it was told of an earlier session.
 * Both have to have the same linkage. Problems: those of `checkSession`.
 */
export const compareSessions = (then: ComparedSession, now: ComparedSession): Result<SessionComparison> => {
  const problem = checkSession(then.setUp, then.events) ?? checkSession(now.setUp, now.events);
  if (problem) return { ok: false, problem };
  const [first, second] = [courseOf(then), courseOf(now)];
  return succeed({
    carburettors: Array.from({ length: now.setUp.carburettors }, (_, i) => ({
      foundThenPa: first.found?.[i]?.pa ?? null,
      leftThenPa: first.left?.[i]?.pa ?? null,
      foundNowPa: second.found?.[i]?.pa ?? null,
      leftNowPa: second.left?.[i]?.pa ?? null,
      moved: changeBetween(first.left?.[i], second.found?.[i]),
    })),
    screws: now.setUp.screws.map((_, j) => ({
      turnsThen: turnsOf(then, j + 1),
      turnsNow: turnsOf(now, j + 1),
      effectThen: wasMeasured(then, j + 1) ? rangeOf(screwEffectOf(first.account, j)) : null,
      effectNow: wasMeasured(now, j + 1) ? rangeOf(screwEffectOf(second.account, j)) : null,
    })),
    effect: wasMeasured(then) && wasMeasured(now) ? changeOfEffect(first.account, second.account) : null,
  });
};

type Deviation = { readonly pa: number; readonly sdPa: number };
type Course = {
  readonly account: Account;
  readonly found: readonly Deviation[] | null;
  readonly left: readonly Deviation[] | null;
};

const courseOf = ({ setUp, events }: ComparedSession): Course => {
  const { effectPaPerTurn: _, ...alone } = setUp;
  const firstTurn = events.findIndex(({ kind }) => kind === 'turn');
  const account = accountOf(alone, events);
  const before = firstTurn < 0 ? account : accountOf(alone, events.slice(0, firstTurn));
  return { account, found: deviationsOf(before), left: deviationsOf(account) };
};

const deviationsOf = (account: Account): readonly Deviation[] | null => {
  if (!account.everRead.every(Boolean)) return null;
  const depressions = depressionsOf(account.engine, account.belief);
  const middle = mean(depressions as [number, ...number[]]);
  return depressions.map((pa, i) => ({ pa: pa - middle, sdPa: comparedWidening * deviationSd(account, i) }));
};

const changeBetween = (then: Deviation | undefined, now: Deviation | undefined): ComparedChange | null => {
  if (!then || !now) return null;
  const pa = now.pa - then.pa;
  const widthPa = widthAt95(Math.hypot(then.sdPa, now.sdPa));
  return { pa, widthPa, real: Math.abs(pa) > widthPa };
};

const turnsOf = ({ events }: ComparedSession, screw: number): number =>
  events.reduce(
    (sum, event) => (event.kind === 'turn' && event.screw === screw ? sum + event.turns : sum),
    0,
  );

/** Whether anything was read after a turn of a screw, or of any. */
const wasMeasured = ({ events }: ComparedSession, screw?: number): boolean => {
  const turn = events.findIndex(
    (event) => event.kind === 'turn' && (screw === undefined || event.screw === screw),
  );
  return turn >= 0 && events.slice(turn).some(({ kind }) => kind === 'reading');
};

/** An effect as the belief holds it: on a logarithmic scale. */
type LogEffect = { readonly paPerTurn: number; readonly logSd: number };

const screwEffectOf = ({ engine, belief, widening }: Account, screw: number): LogEffect => {
  const [e, u] = [effectAt(engine), unevennessAt(engine, screw)];
  const { covariance } = belief;
  const variance = covariance[e]![e]! + 2 * covariance[e]![u]! + covariance[u]![u]!;
  return { paPerTurn: effectOf(engine, belief, screw), logSd: logSdOf(widening * variance) };
};

const logSdOf = (variance: number): number => comparedWidening * Math.sqrt(Math.max(0, variance));

const effectOfAll = ({ engine, belief, widening }: Account): LogEffect => {
  const e = effectAt(engine);
  return {
    paPerTurn: Math.exp(belief.mean[e]!),
    logSd: logSdOf(widening * belief.covariance[e]![e]!),
  };
};

const rangeOf = ({ paPerTurn, logSd }: LogEffect): EffectRange => {
  const factor = Math.exp(widthAt95(logSd));
  return { paPerTurn, lowestPa: paPerTurn / factor, highestPa: paPerTurn * factor };
};

const changeOfEffect = (first: Account, second: Account): SessionComparison['effect'] => {
  const [then, now] = [effectOfAll(first), effectOfAll(second)];
  const changed =
    Math.abs(Math.log(now.paPerTurn / then.paPerTurn)) > widthAt95(Math.hypot(then.logSd, now.logSd));
  return { then: rangeOf(then), now: rangeOf(now), changed };
};
