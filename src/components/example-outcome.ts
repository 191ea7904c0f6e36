import { nextStep, type ExampleSession, type NextStep, type SessionEvent } from '../calculators/index.ts';

export type ExampleOutcome = {
  readonly firstPa: readonly number[];
  readonly last: NextStep;
  readonly readings: number;
  readonly turns: number;
};

/** What an example came to: the first reading of each carburettor, and what the advice says after the last event. */
export function outcomeOf({ setUp, events }: ExampleSession): ExampleOutcome {
  const last = nextStep(setUp, events);
  if (!last.ok) throw new Error(`an example that is not legal: ${last.problem.kind}`);
  const readings = events.filter((event) => event.kind === 'reading');
  const firstPa = setUp.screws[0]!.moves.map((_, index) => {
    const first = readings.find(({ carburettor }) => carburettor === index + 1);
    if (first === undefined) throw new Error(`an example without a reading of carburettor ${index + 1}`);
    return first.depressionPa;
  });
  return { firstPa, last: last.value, readings: readings.length, turns: events.length - readings.length };
}

/** The carburettors that the screw of a turn moves, counted from 1. */
export const movedBy = ({ setUp }: ExampleSession, { screw }: SessionEvent & { kind: 'turn' }): number[] =>
  (setUp.screws[screw - 1]?.moves ?? []).flatMap((moves, index) => (moves === 0 ? [] : [index + 1]));
