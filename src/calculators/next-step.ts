import { accountOf, type Account } from './advisor/account.ts';
import {
  afterReading,
  afterTurn,
  depressionCovarianceOf,
  depressionsOf,
  effectAt,
  effectOf,
  expectReading,
  type Belief,
} from './advisor/belief.ts';
import { chanceOf, isBetter, type Chance } from './advisor/chance.ts';
import { deviationSd } from './advisor/deviation.ts';
import { cutToThread, planOf, type Plan } from './advisor/plan.ts';
import { defaults, margins } from './advisor/priors.ts';
import { checkSession } from './check-session.ts';
import { mostMovedCarburettor } from './most-moved-carburettor.ts';
import type { Estimate, NextStep, SessionEvent, SetUp, Step, TurnsLeft } from './protocol.ts';
import { succeed, type Result } from './result.ts';

/**
 * What to do next at the bench: read a carburettor, turn a screw, stop because the set is balanced, or stop because it
 * cannot be. A pure function of the set-up and of everything that was done; the same events give the same step.
 * Problems: see `checkSession`. Method: the page "Method".
 */
export const nextStep = (setUp: SetUp, events: readonly SessionEvent[]): Result<NextStep> => {
  const problem = checkSession(setUp, events);
  if (problem) return { ok: false, problem };
  const account = accountOf(setUp, events);
  const chance = chanceIn(account, account.belief, setUp.tolerancePa);
  return succeed({ step: stepOf(setUp, account, chance), estimate: estimateOf(account, chance) });
};

const chanceIn = ({ engine, widening }: Account, belief: Belief, tolerancePa: number): Chance =>
  chanceOf(depressionsOf(engine, belief), depressionCovarianceOf(engine, belief), widening, tolerancePa);

const estimateOf = (account: Account, chance: Chance): Estimate => ({
  depressionPa: depressionsOf(account.engine, account.belief),
  standardUncertaintyPa: standardUncertainties(account),
  spreadPa: chance.spreadPa,
  chanceWithin: chance.within,
  effectPaPerTurn: Math.exp(account.belief.mean[effectAt(account.engine)]!),
  turnsLeft: account.turnsLeft,
  visits: account.visits,
});

const standardUncertainties = ({ engine, belief, widening }: Account): number[] =>
  depressionCovarianceOf(engine, belief).map((row, i) => Math.sqrt(Math.max(0, widening * row[i]!)));

/** The rules, in the order of their authority. */
const stepOf = (setUp: SetUp, account: Account, chance: Chance): Step => {
  const unread = account.everRead.indexOf(false);
  if (unread >= 0) return { kind: 'read', carburettor: unread + 1, reason: 'first' };
  const doubtful = account.setAsidePa.findIndex((setAside) => setAside !== null);
  if (doubtful >= 0) return { kind: 'read', carburettor: doubtful + 1, reason: 'doubtful' };

  if (chance.within >= (setUp.confidence ?? defaults.confidence)) return { kind: 'done' };
  if (account.visits >= margins.visitsPerCarburettor * setUp.carburettors)
    return { kind: 'stop', reason: 'visits' };

  if (account.lastTurn) {
    const moved = mostMovedCarburettor(setUp, account.lastTurn.screw + 1);
    if (deviationSd(account, moved - 1) > margins.readAfterTurnSdPa)
      return { kind: 'read', carburettor: moved, reason: 'after-turn' };
  }

  const plan = planOf(account.engine, account.belief, account.turnsLeft);
  if (cannotBeLevelled(setUp, account, plan)) return { kind: 'stop', reason: 'thread' };

  const bestReading = bestReadingOf(setUp, account);
  const turn = largestTurn(account, plan);
  if (turn) {
    const after = afterTurn(account.engine, account.belief, turn.screw, turn.turns);
    const large = turn.effectPa > setUp.tolerancePa / 2;
    if (large || !isBetter(bestReading.chance, chanceIn(account, after, setUp.tolerancePa)))
      return {
        kind: 'turn',
        screw: turn.screw + 1,
        turns: turn.turns,
        expectedDepressionPa: depressionsOf(account.engine, after),
        read: mostMovedCarburettor(setUp, turn.screw + 1),
      };
  }
  if (!turn && isCut(plan)) {
    const stale = account.readSinceTurn.indexOf(false);
    if (stale < 0) return { kind: 'stop', reason: 'thread' };
    return { kind: 'read', carburettor: stale + 1, reason: 'least-certain' };
  }
  const carburettor = isBetter(bestReading.chance, chance)
    ? bestReading.carburettor
    : mostTellingReadingOf(account);
  return { kind: 'read', carburettor: carburettor + 1, reason: 'least-certain' };
};

const isCut = (plan: Plan): boolean => plan.turns.some((amount, j) => plan.cutTurns[j] !== amount);

/** Whether the effect of a turn is known, the thread cuts the plan, and what remains is surely too wide. */
const cannotBeLevelled = (setUp: SetUp, account: Account, plan: Plan): boolean => {
  const { engine, belief } = account;
  const at = effectAt(engine);
  if (Math.sqrt(belief.covariance[at]![at]!) >= margins.knownEffectLogSd) return false;
  const cutEffect = (j: number): number =>
    Math.abs(plan.turns[j]! - plan.cutTurns[j]!) * effectOf(engine, belief, j) * largestShare(account, j);
  if (!plan.turns.some((_, j) => cutEffect(j) > margins.negligiblePa)) return false;
  const after = plan.cutTurns.reduce(
    (then, turns, j) => (turns === 0 ? then : afterTurn(engine, then, j, turns)),
    belief,
  );
  const depressions = depressionsOf(engine, after);
  const spread = Math.max(...depressions) - Math.min(...depressions);
  return spread > setUp.tolerancePa + 3 * Math.max(...standardUncertainties(account));
};

const largestShare = ({ engine }: Account, screw: number): number =>
  Math.max(...engine.screws[screw]!.moves.map(Math.abs));

/** The planned turn with the largest effect that is worth making and that the thread allows, rounded to the clock's minute. */
const largestTurn = (
  account: Account,
  plan: Plan,
): { screw: number; turns: number; effectPa: number } | null => {
  const { engine, belief } = account;
  const at = effectAt(engine);
  const careful = Math.sqrt(belief.covariance[at]![at]!) > margins.carefulEffectLogSd;
  const most = careful ? margins.carefulTurns : margins.largestTurns;
  let best: { screw: number; turns: number; effectPa: number } | null = null;
  plan.turns.forEach((planned, screw) => {
    const perTurn = effectOf(engine, belief, screw) * largestShare(account, screw);
    const effectPa = Math.abs(planned) * perTurn;
    if (effectPa <= margins.negligiblePa || (best && effectPa <= best.effectPa)) return;
    const wanted = Math.min(Math.max(planned, -most), most);
    const turns = roundedTurns(wanted, account.turnsLeft[screw] ?? null);
    if (turns !== 0) best = { screw, turns, effectPa };
  });
  return best;
};

/** To the nearest minute of a clock face, or the last whole minute that the thread allows. */
const roundedTurns = (wanted: number, left: TurnsLeft | null): number => {
  const minutesPerTurn = Math.round(1 / margins.turnStep);
  const nearest = Math.round(wanted * minutesPerTurn) / minutesPerTurn;
  const allowed = cutToThread(nearest, left);
  if (allowed === nearest) return nearest;
  return Math.trunc(allowed * minutesPerTurn) / minutesPerTurn;
};

/**
 * The carburettor whose reading tells most about the distance of the highest from the lowest: for a set that seems just
 * too wide no reading that says what is expected raises the chance, and only one that may say otherwise helps.
 */
const mostTellingReadingOf = ({ engine, belief }: Account): number => {
  const depressions = depressionsOf(engine, belief);
  const highest = depressions.indexOf(Math.max(...depressions));
  const lowest = depressions.indexOf(Math.min(...depressions));
  const removedVariances = depressions.map((_, i) => {
    const { column, variancePa2 } = expectReading(engine, belief, i);
    return (column[highest]! - column[lowest]!) ** 2 / variancePa2;
  });
  return removedVariances.indexOf(Math.max(...removedVariances));
};

/** The carburettor whose reading promises the best chance; the lowest number among equals. */
const bestReadingOf = (setUp: SetUp, account: Account): { carburettor: number; chance: Chance } => {
  const { engine, belief } = account;
  let best: { carburettor: number; chance: Chance } | null = null;
  for (let carburettor = 0; carburettor < setUp.carburettors; carburettor++) {
    const expected = expectReading(engine, belief, carburettor);
    const chance = chanceIn(
      account,
      afterReading(engine, belief, expected, expected.depressionPa),
      setUp.tolerancePa,
    );
    if (!best || isBetter(chance, best.chance)) best = { carburettor, chance };
  }
  return best!;
};
