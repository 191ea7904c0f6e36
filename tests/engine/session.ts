import { nextStep } from '../../src/calculators/next-step.ts';
import type { NextStep, SessionEvent, SetUp } from '../../src/calculators/protocol.ts';
import type { TestEngine } from './engine.ts';

export type Outcome = {
  readonly called: 'done' | 'thread' | 'visits';
  readonly trueSpreadPa: number;
  readonly visits: number;
  readonly moves: number;
  readonly turns: number;
  readonly events: readonly SessionEvent[];
  /** Every stated chance with whether the set was truly within at that moment. */
  readonly claims: readonly { readonly chance: number; readonly within: boolean }[];
};

/** Does what the advice says on an engine until it says stop. */
export const runSession = (
  setUp: SetUp,
  engine: TestEngine,
  options: { readonly withRpm?: boolean; readonly minutesPerEvent?: number } = {},
): Outcome => {
  const events: SessionEvent[] = [];
  const claims: { chance: number; within: boolean }[] = [];
  let turns = 0;
  for (let guard = 0; guard < 1000; guard++) {
    const next = stepOf(setUp, events);
    claims.push({ chance: next.estimate.chanceWithin, within: engine.spreadPa <= setUp.tolerancePa });
    const { step } = next;
    if (step.kind === 'done' || step.kind === 'stop')
      return {
        called: step.kind === 'done' ? 'done' : step.reason,
        trueSpreadPa: engine.spreadPa,
        visits: next.estimate.visits,
        moves: events.filter((event) => event.kind === 'turn').length,
        turns,
        events,
        claims,
      };
    engine.wait(options.minutesPerEvent ?? 0.4);
    if (step.kind === 'turn') {
      turns += Math.abs(step.turns);
      engine.turn(step.screw, step.turns);
      events.push({ kind: 'turn', screw: step.screw, turns: step.turns });
    } else {
      const { depressionPa, rpm } = engine.read(step.carburettor);
      const reading = { kind: 'reading', carburettor: step.carburettor, depressionPa } as const;
      events.push(options.withRpm ? { ...reading, rpm } : reading);
    }
  }
  throw new Error('The session did not end');
};

export const stepOf = (setUp: SetUp, events: readonly SessionEvent[]): NextStep => {
  const result = nextStep(setUp, events);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
};
