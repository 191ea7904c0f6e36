import type { SessionEvent, SetUp, TurnsLeft } from '../protocol.ts';
import {
  afterMinutes,
  afterReading,
  afterTurn,
  afterUnknownChange,
  engineOf,
  expectReading,
  startingBelief,
  type Belief,
  type Engine,
} from './belief.ts';
import { margins } from './priors.ts';

/** Everything that the events tell, worked out anew from the first event. Indices count from 0 here. */
export type Account = {
  readonly engine: Engine;
  readonly belief: Belief;
  /** How much wider than told the readings scatter, as a factor on variances, at least 1. */
  readonly widening: number;
  readonly visits: number;
  readonly everRead: readonly boolean[];
  /** A reading that did not fit and waits for a second, one place per carburettor. */
  readonly setAsidePa: readonly (number | null)[];
  readonly readSinceTurn: readonly boolean[];
  readonly lastTurn: { readonly screw: number } | null;
  readonly turnsLeft: readonly (TurnsLeft | null)[];
};

export const accountOf = (setUp: SetUp, events: readonly SessionEvent[]): Account => {
  const engine = engineOf(setUp);
  const n = setUp.carburettors;
  let belief = startingBelief(setUp);
  let clockMinute: number | undefined;
  let squareSum = 0;
  let squareCount = 0;
  let visits = 0;
  let lastTurn: { screw: number } | null = null;
  const everRead = new Array<boolean>(n).fill(false);
  const readSinceTurn = new Array<boolean>(n).fill(false);
  const setAsidePa = new Array<number | null>(n).fill(null);
  const turnsLeft = setUp.screws.map((screw) => screw.turnsLeft ?? null);

  events.forEach((event, index) => {
    const minutes = minutesBefore(event.minute, clockMinute, index);
    clockMinute = event.minute ?? (clockMinute === undefined ? undefined : clockMinute + minutes);
    belief = afterMinutes(engine, belief, minutes);

    if (event.kind === 'turn') {
      const screw = event.screw - 1;
      belief = afterTurn(engine, belief, screw, event.turns);
      turnsLeft[screw] = leftAfter(turnsLeft[screw] ?? null, event.turns);
      readSinceTurn.fill(false);
      lastTurn = { screw };
      return;
    }

    visits++;
    lastTurn = null;
    const i = event.carburettor - 1;
    readSinceTurn[i] = true;
    const first = setAsidePa[i] ?? null;
    const somethingChanged = first !== null && Math.abs(event.depressionPa - first) < margins.agreementPa;
    if (somethingChanged) belief = afterUnknownChange(engine, belief);
    const expected = expectReading(engine, belief, i, event.rpm);
    const normalisedSquare = (event.depressionPa - expected.depressionPa) ** 2 / expected.variancePa2;
    if (everRead[i] && !somethingChanged) {
      if (normalisedSquare > margins.doubtfulNormalisedSquare) {
        setAsidePa[i] = event.depressionPa;
        return;
      }
      squareSum += normalisedSquare;
      squareCount++;
    }
    belief = afterReading(engine, belief, expected, event.depressionPa);
    everRead[i] = true;
    setAsidePa[i] = null;
  });

  const pseudo = margins.wideningPseudoCount;
  const widening = Math.max(1, (pseudo + squareSum) / (pseudo + squareCount));
  return { engine, belief, widening, visits, everRead, setAsidePa, readSinceTurn, lastTurn, turnsLeft };
};

const minutesBefore = (
  minute: number | undefined,
  clockMinute: number | undefined,
  index: number,
): number => {
  if (index === 0) return 0;
  if (minute === undefined || clockMinute === undefined) return margins.minutesBetweenEvents;
  return Math.min(Math.max(0, minute - clockMinute), margins.mostMinutesBetweenEvents);
};

/** A turn past the told thread shows that it was told wrongly: that side's remainder becomes 0. */
const leftAfter = (left: TurnsLeft | null, turns: number): TurnsLeft | null =>
  left && { closing: Math.max(0, left.closing + turns), opening: Math.max(0, left.opening - turns) };
