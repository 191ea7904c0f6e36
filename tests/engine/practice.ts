import { act, inventEngine, practiceEngineExample, rpmOf } from '../../src/calculators/index.ts';
import type {
  EngineState,
  Exercise,
  PracticeAction,
  PracticeEngine,
  Result,
} from '../../src/calculators/index.ts';

/** What a test knows to be without a problem. */
export const valueOf = <Value>(result: Result<Value>): Value => {
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
};

/** The engine of the example exercise, or of one that differs from it. */
export const engineOf = (changes: Partial<Exercise> = {}): PracticeEngine =>
  valueOf(inventEngine({ ...practiceEngineExample, ...changes }));

export const does = (engine: PracticeEngine, state: EngineState, ...actions: PracticeAction[]): EngineState =>
  actions.reduce((before, action) => act(engine, before, action).state, state);

export const rpm = (engine: PracticeEngine, state: EngineState): number => rpmOf(engine, state.kineticJ);
