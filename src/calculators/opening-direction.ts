import type { BenchSetUp, OpeningDirection } from './bench-set-up.ts';
import type { SessionEvent } from './protocol.ts';
import { answerToTurn } from './wrong-way.ts';

/** The direction that a screw is taken to open in until its first small turn has shown it; any would do. */
export const assumedDirection = 'anticlockwise' satisfies OpeningDirection;

/** The way that the hand turns a screw, seen from the screwdriver; positive turns open. */
export const handDirection = (opens: OpeningDirection, turns: number): 'clockwise' | 'anticlockwise' => {
  const opening = opens === 'unknown' ? assumedDirection : opens;
  return turns > 0 ? opening : opposite(opening);
};

/** Turns as the hand makes them, positive clockwise. */
export const clockwiseTurns = (opens: OpeningDirection, turns: number): number =>
  handDirection(opens, turns) === 'clockwise' ? Math.abs(turns) : -Math.abs(turns);

export const opposite = (direction: 'clockwise' | 'anticlockwise'): 'clockwise' | 'anticlockwise' =>
  direction === 'clockwise' ? 'anticlockwise' : 'clockwise';

/** The same turn made the other way. */
export const reversedTurn = <Turn extends { readonly turns: number }>(turn: Turn): Turn => ({
  ...turn,
  turns: -turn.turns,
});

export type SettledDirection = {
  readonly screw: number;
  readonly opens: 'clockwise' | 'anticlockwise';
  /** The set-up with that direction. */
  readonly setUp: BenchSetUp;
  /** Index of the turn that showed it, and whether its sign has to be put right. */
  readonly turnEvent: number;
  readonly reversed: boolean;
};

/** What the last reading shows of a screw whose direction was not known; null if it shows nothing yet. */
export const settleDirection = (
  setUp: BenchSetUp,
  events: readonly SessionEvent[],
): SettledDirection | null => {
  const turnEvent = events.findLastIndex((event) => event.kind === 'turn');
  const turn = events[turnEvent];
  if (turn?.kind !== 'turn' || setUp.opens[turn.screw - 1] !== 'unknown') return null;
  const answer = answerToTurn(setUp, events).kind;
  if (answer !== 'as-expected' && answer !== 'wrong-way') return null;
  const reversed = answer === 'wrong-way';
  const opens = reversed ? opposite(assumedDirection) : assumedDirection;
  return {
    screw: turn.screw,
    opens,
    turnEvent,
    reversed,
    setUp: {
      ...setUp,
      opens: setUp.opens.map((direction, j) => (j === turn.screw - 1 ? opens : direction)),
    },
  };
};
