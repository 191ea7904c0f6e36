import type { BenchSetUp } from '../bench-set-up.ts';
import { computeBench } from '../bench-session.ts';
import type { Bench } from '../bench-session.ts';
import type { Result } from '../result.ts';
import type { PracticeEngine } from './engine.ts';
import { setUpOf } from './operator.ts';
import { sessionEventsOf } from './run.ts';
import type { PracticeRun } from './run.ts';

/** The set-up of the bench session for a practice engine. Every screw of it opens anticlockwise. */
export const benchSetUpOf = (engine: PracticeEngine): BenchSetUp => ({
  ...setUpOf(engine),
  ...(engine.fixed === null ? {} : { fixed: engine.fixed }),
  opens: engine.screws.map(() => 'anticlockwise' as const),
});

/**
 * What the bench session says to what the person wrote down so far. `roundFrom` is the number of events at which the
 * sign-off round began, or null. Problems: those of `nextStep`.
 */
export const adviceOf = (run: PracticeRun, roundFrom: number | null): Result<Bench> =>
  computeBench(benchSetUpOf(run.engine), sessionEventsOf(run), roundFrom);
