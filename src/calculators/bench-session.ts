import { accountOf, type Account } from './advisor/account.ts';
import { afterTurn, depressionsOf, expectReading } from './advisor/belief.ts';
import { defaults, margins } from './advisor/priors.ts';
import { benchDefaults } from './bench-defaults.ts';
import type { BenchSetUp } from './bench-set-up.ts';
import { nextStep } from './next-step.ts';
import type { NextStep, ReadReason, SessionEvent, SetUp, Step } from './protocol.ts';
import { succeed, type Result } from './result.ts';
import { signOffRound, type SignOffRound } from './sign-off-round.ts';
import { answerToTurn, type WrongWay } from './wrong-way.ts';

/** A step at the bench: those of the advice, and those of the sign-off round. */
export type BenchStep =
  | {
      readonly kind: 'read';
      readonly carburettor: number;
      readonly reason: ReadReason | 'sign-off' | 'sign-off-again';
    }
  | (Extract<Step, { kind: 'turn' }> & {
      /** A first small turn of a screw whose direction is not known. */
      readonly trial: boolean;
    })
  | { readonly kind: 'done' }
  | { readonly kind: 'sign-off' }
  | Extract<Step, { kind: 'stop' }>;

export type Bench = {
  readonly step: BenchStep;
  readonly estimate: NextStep['estimate'];
  /** Where every carburettor stood before the last turn. */
  readonly beforeTurnPa: readonly number[] | null;
  /** A reading that waits for a second, and what was expected instead. */
  readonly doubtful: { readonly readPa: number; readonly expectedPa: number } | null;
  readonly wrongWay: WrongWay | null;
  readonly round: SignOffRound | null;
  /** The readings of the next carburettor that go with everything known; another is asked for again. */
  readonly believable: {
    readonly carburettor: number;
    readonly lowestPa: number;
    readonly highestPa: number;
  } | null;
  /** The chance at which the set counts as balanced. */
  readonly confidence: number;
};

/**
 * Everything that the bench shows after these events: the next step, the estimates, what does not fit, and how far the
 * sign-off round has come. `fromEvent` is where that round began, or null. Problems: those of `nextStep`.
 */
export const computeBench = (
  setUp: BenchSetUp,
  events: readonly SessionEvent[],
  fromEvent: number | null,
): Result<Bench> => {
  const next = nextStep(setUp, events);
  if (!next.ok) return next;
  const { step, estimate } = next.value;
  const lastTurn = events.findLastIndex((event) => event.kind === 'turn');
  const before = lastTurn < 0 ? null : accountOf(setUp, events.slice(0, lastTurn));
  const account = accountOf(setUp, events);
  const answer = answerToTurn(setUp, events);
  const round = fromEvent === null ? null : signOffRound(setUp, events, fromEvent);
  const asked = withRound(withTrial(setUp, account, step), round);
  return succeed({
    step: asked,
    estimate,
    beforeTurnPa: before && depressionsOf(before.engine, before.belief),
    doubtful: step.kind === 'read' && step.reason === 'doubtful' ? doubtOf(account, step.carburettor) : null,
    wrongWay: answer.kind === 'wrong-way' ? answer.wrongWay : null,
    round,
    believable: believableOf(account, asked),
    confidence: setUp.confidence ?? defaults.confidence,
  });
};

const believableOf = ({ engine, belief, everRead }: Account, step: BenchStep): Bench['believable'] => {
  if (step.kind !== 'read' && step.kind !== 'turn') return null;
  const carburettor = step.kind === 'turn' ? step.read : step.carburettor;
  if (!everRead[carburettor - 1]) return null;
  const then = step.kind === 'turn' ? afterTurn(engine, belief, step.screw - 1, step.turns) : belief;
  const expected = expectReading(engine, then, carburettor - 1);
  const reach = Math.sqrt(margins.doubtfulNormalisedSquare * expected.variancePa2);
  return {
    carburettor,
    lowestPa: Math.max(0, expected.depressionPa - reach),
    highestPa: expected.depressionPa + reach,
  };
};

/** What every carburettor is expected to show after an amount that the person chose; as `nextStep` for its own. */
export const expectedAfterTurn = (
  setUp: SetUp,
  events: readonly SessionEvent[],
  screw: number,
  turns: number,
): readonly number[] => {
  const { engine, belief } = accountOf(setUp, events);
  return depressionsOf(engine, afterTurn(engine, belief, screw - 1, turns));
};

const doubtOf = (account: Account, carburettor: number): Bench['doubtful'] => {
  const readPa = account.setAsidePa[carburettor - 1]!;
  const expectedPa = depressionsOf(account.engine, account.belief)[carburettor - 1]!;
  return { readPa, expectedPa };
};

/** A screw whose direction is not known is first turned a little. */
const withTrial = (setUp: BenchSetUp, { engine, belief }: Account, step: Step): BenchStep => {
  if (step.kind !== 'turn') return step;
  if (setUp.opens[step.screw - 1] !== 'unknown') return { ...step, trial: false };
  const most = benchDefaults.trialTurns;
  const turns = Math.min(Math.max(step.turns, -most), most);
  return {
    ...step,
    turns,
    expectedDepressionPa: depressionsOf(engine, afterTurn(engine, belief, step.screw - 1, turns)),
    trial: true,
  };
};

/** In a sign-off round the advice waits until every carburettor has been read; a doubtful reading goes first. */
const withRound = (step: BenchStep, round: SignOffRound | null): BenchStep => {
  if (!round || round.kind === 'broken' || (step.kind === 'read' && step.reason === 'doubtful')) return step;
  if (round.kind === 'under-way') return { kind: 'read', carburettor: round.carburettor, reason: 'sign-off' };
  if (step.kind !== 'done') return step;
  return round.within
    ? { kind: 'sign-off' }
    : { kind: 'read', carburettor: round.furthest, reason: 'sign-off-again' };
};
