import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import {
  doAdvisedStep,
  firstState,
  generations,
  inventEngine,
  practiceGrades,
  trueSpreadPa,
  warmUp,
} from '../src/calculators/index.ts';
import type { Exercise, Result, SessionEvent } from '../src/calculators/index.ts';
import { warmK } from '../src/calculators/practice/constants.ts';
import { mmHg } from '../tests/engine/invented.ts';
import { quantile } from './summary.ts';

/**
 * The advice on the practice engine, which is another engine than that of the study: 200 exercises, each done from
 * cold by a careful person who follows the advice to its end. `--write` a file with the date `--date` in it.
 */
const { values } = parseArgs({
  options: {
    each: { type: 'string', default: '10' },
    write: { type: 'string' },
    date: { type: 'string', default: '' },
  },
});
const each = Number(values.each);
const carburettorCounts = [2, 3, 4, 6] as const;

const valueOf = <Value>(result: Result<Value>): Value => {
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
};

/** One exercise, from cold to where the advice stops. */
function workOn(exercise: Exercise) {
  const engine = valueOf(inventEngine(exercise));
  let state = warmUp(engine, firstState(engine, exercise.seed), warmK);
  let events: readonly SessionEvent[] = [];
  for (;;) {
    const { asked, ...after } = valueOf(doAdvisedStep(engine, state, events));
    if (asked.step.kind === 'done' || asked.step.kind === 'stop')
      return {
        called: asked.step.kind === 'done' ? 'done' : asked.step.reason,
        visits: events.filter(({ kind }) => kind === 'reading').length,
        minutes: state.seconds / 60,
        spreadPa: trueSpreadPa(engine, state.controls),
        within: trueSpreadPa(engine, state.controls) <= engine.tolerancePa,
      };
    ({ state, events } = after);
  }
}

const medianAnd95 = (numbers: readonly number[]) => ({
  median: quantile(numbers, 0.5),
  most95: quantile(numbers, 0.95),
});

const grades = practiceGrades.map((grade) => {
  const runs = generations.flatMap((generation) =>
    Array.from({ length: each }, (_, k) =>
      workOn({
        generation,
        carburettors: carburettorCounts[k % carburettorCounts.length] ?? 2,
        grade,
        seed: 5000 + k,
        fault: null,
      }),
    ),
  );
  const done = runs.filter(({ called }) => called === 'done');
  const summary = {
    grade,
    exercises: runs.length,
    visits: medianAnd95(runs.map(({ visits }) => visits)),
    minutes: medianAnd95(runs.map(({ minutes }) => minutes)),
    trueSpreadPa: medianAnd95(done.map(({ spreadPa }) => spreadPa)),
    calledDone: done.length,
    wronglyCalledDone: done.filter(({ within }) => !within).length,
    stopped: runs.length - done.length,
  };
  console.log(
    `grade ${grade}: ${summary.exercises} exercises, visits ${summary.visits.median} / ${summary.visits.most95}, ` +
      `true spread ${(summary.trueSpreadPa.median / mmHg).toFixed(1)} / ${(summary.trueSpreadPa.most95 / mmHg).toFixed(1)} mmHg, ` +
      `${summary.wronglyCalledDone} of ${summary.calledDone} wrongly called done, ${summary.stopped} stopped`,
  );
  return summary;
});

if (values.write !== undefined) {
  const command = `npm run study:practice -- --each ${each}`;
  writeFileSync(values.write, `${JSON.stringify({ date: values.date, command, grades }, null, 2)}\n`);
}
