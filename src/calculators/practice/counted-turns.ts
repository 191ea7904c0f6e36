import type { TurnsLeft } from '../protocol.ts';
import type { PracticeRun } from './run.ts';

/** Turns that the person has given each screw so far; positive opens. What a nut dragged is not in it: nobody sees that. */
export const countedTurns = ({ engine, entries }: PracticeRun): readonly number[] =>
  engine.screws.map((_, j) =>
    entries.reduce(
      (sum, entry) =>
        entry.kind === 'action' && entry.action.kind === 'turn' && entry.action.screw === j + 1
          ? sum + entry.happened.turns
          : sum,
      0,
    ),
  );

/** Thread left on each screw by that count, in turns: it was measured before the engine started. */
export const countedThread = (run: PracticeRun): readonly TurnsLeft[] => {
  const turned = countedTurns(run);
  return run.engine.screws.map(({ thread }, j) => leftAfter(thread, turned[j]!));
};

/** The same of the idle-speed screw, which no nut drags. */
export const idleThread = ({ engine, state }: PracticeRun): TurnsLeft =>
  leftAfter(engine.idleScrew.thread, state.controls.idleTurns);

const leftAfter = ({ closing, opening }: TurnsLeft, turned: number): TurnsLeft => ({
  closing: Math.max(0, closing + turned),
  opening: Math.max(0, opening - turned),
});
