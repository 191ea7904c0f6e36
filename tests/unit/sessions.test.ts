import { describe, expect, test } from 'vitest';
import { generations, screwsOf } from '../../src/calculators/index.ts';
import type { Generation, SetUp } from '../../src/calculators/index.ts';
import { inventedEngine, mmHg } from '../engine/invented.ts';
import { randomFrom } from '../engine/random.ts';
import { runSession, type Outcome } from '../engine/session.ts';
import { tolerances } from '../tolerances.ts';

const sessionsPerGeneration = 30;
/** Numbers with a usual layout of the screws. */
const counts: Readonly<Record<Generation, readonly number[]>> = {
  'separate-cables': [2, 3, 4, 5, 6],
  'all-adjustable': [2, 3, 4, 5, 6],
  'fixed-reference': [2, 3, 4, 5, 6],
  'paired-screws': [2, 3, 4, 6],
  'bypass-screws': [2, 3, 4, 5, 6],
};
/** Turns that are kept on each screw. */
const spareTurns = 0.1;

type Session = { readonly name: string; readonly setUp: SetUp; readonly outcome: Outcome };

/**
 * One whole session on an engine of its own: effect of a turn × 0.5–2, screws ± 20 %, flutter ± 3 and resolution 5 mmHg,
 * lock shift 0.015 turn. Every other one has a thread that may be too short.
 */
const sessionOf = (generation: Generation, seed: number): Session => {
  const random = randomFrom(seed);
  const carburettors = random.pick(counts[generation]);
  const hasFixed = generation === 'fixed-reference' || (generation === 'bypass-screws' && seed % 4 < 2);
  const screwCount = generation === 'paired-screws' || hasFixed ? carburettors - 1 : carburettors;
  const thread = Array.from({ length: screwCount }, () =>
    seed % 2 === 0 ? null : { closing: random.uniform(0.6, 2.4), opening: random.uniform(0.6, 2.4) },
  );
  const screws = screwsOf(generation, carburettors, {
    ...(hasFixed ? { fixed: random.integer(1, carburettors) } : {}),
    thread,
  });
  if (!screws.ok) throw new Error(screws.problem.kind);
  const linkage = screws.value.map(({ moves }) => moves);
  const engine = inventedEngine(
    { linkage, effectFactor: [0.5, 2], screwSpread: 0.2, changes: { thread } },
    random,
  );
  const setUp: SetUp = {
    carburettors,
    screws: screws.value,
    tolerancePa: 10 * mmHg,
    gauge: { resolutionPa: 5 * mmHg, flutterPa: 3 * mmHg },
    targetRpm: engine.description.targetRpm,
  };
  return {
    name: `${generation}, ${carburettors} carburettors, seed ${seed}`,
    setUp,
    // Throws where a session does not end.
    outcome: runSession(setUp, engine, { withRpm: seed % 3 === 0 }),
  };
};

const all = generations.flatMap((generation, g) =>
  Array.from({ length: sessionsPerGeneration }, (_, k) => sessionOf(generation, 1000 * (g + 1) + k)),
);
const done = all.filter(({ outcome }) => outcome.called === 'done');
const describeSpread = ({ name, outcome }: Session): string =>
  `${name}: ${outcome.called}, true spread ${(outcome.trueSpreadPa / mmHg).toFixed(1)} mmHg, ${outcome.visits} visits`;

describe('nextStep, whole sessions on engines that share no code with it', () => {
  test('all of them end: 30 for each of the five generations', () => {
    expect(all).toHaveLength(150);
    for (const generation of generations)
      expect(all.filter(({ name }) => name.startsWith(generation))).toHaveLength(sessionsPerGeneration);
  });

  test('of those called done at least the share that was promised is truly within, but for the luck of a draw', () => {
    const wrong = done.filter(({ outcome, setUp }) => outcome.trueSpreadPa > setUp.tolerancePa);
    const { share, standardErrors } = tolerances.calledDone;
    const luck = standardErrors * Math.sqrt((share * (1 - share)) / done.length);
    expect(done.length).toBeGreaterThan(100);
    expect(1 - wrong.length / done.length, wrong.map(describeSpread).join('\n')).toBeGreaterThanOrEqual(
      share - luck,
    );
  });

  test('and none of them is far outside', () => {
    const far = done.filter(
      ({ outcome, setUp }) => outcome.trueSpreadPa > setUp.tolerancePa * tolerances.calledDone.factor,
    );
    expect(far.map(describeSpread)).toEqual([]);
  });

  test('without a told thread nearly all are called done, and none stops for thread', () => {
    const free = all.filter(({ setUp }) => setUp.screws.every(({ turnsLeft }) => turnsLeft === undefined));
    const gaveUp = free.filter(({ outcome }) => outcome.called !== 'done');
    expect(free).toHaveLength(75);
    expect(gaveUp.length, gaveUp.map(describeSpread).join('\n')).toBeLessThanOrEqual(0.03 * free.length);
    expect(gaveUp.filter(({ outcome }) => outcome.called === 'thread')).toEqual([]);
  });

  test('no screw is ever turned past the told thread less its spare', () => {
    let checked = 0;
    for (const { name, setUp, outcome } of all) {
      const turned = setUp.screws.map(() => 0);
      for (const event of outcome.events) {
        if (event.kind !== 'turn') continue;
        turned[event.screw - 1]! += event.turns;
        const left = setUp.screws[event.screw - 1]!.turnsLeft;
        if (!left) continue;
        checked++;
        expect(turned[event.screw - 1]!, name).toBeLessThanOrEqual(left.opening - spareTurns + 1e-9);
        expect(turned[event.screw - 1]!, name).toBeGreaterThanOrEqual(spareTurns - left.closing - 1e-9);
      }
    }
    expect(checked).toBeGreaterThan(300);
  });

  test('sets whose thread is too short are given up, not turned for ever', () => {
    const stopped = all.filter(({ outcome }) => outcome.called === 'thread');
    expect(stopped.length).toBeGreaterThan(5);
    for (const { name, setUp, outcome } of stopped)
      expect(outcome.visits, name).toBeLessThan(12 * setUp.carburettors);
  });

  test('six carburettors that 0.4 turn each way cannot level are given up in three visits each, not twelve', () => {
    const sessions = Array.from({ length: 9 }, (_, k) => {
      const random = randomFrom(7000 + k);
      const thread = Array.from({ length: 5 }, () => ({ closing: 0.4, opening: 0.4 }));
      const screws = screwsOf('fixed-reference', 6, { fixed: 1, thread });
      if (!screws.ok) throw new Error(screws.problem.kind);
      const linkage = screws.value.map(({ moves }) => moves);
      const engine = inventedEngine({ linkage, effectFactor: [1, 1], changes: { thread } }, random);
      const setUp: SetUp = {
        carburettors: 6,
        screws: screws.value,
        tolerancePa: 10 * mmHg,
        gauge: { resolutionPa: 5 * mmHg, flutterPa: 3 * mmHg },
      };
      return { name: `seed ${7000 + k}`, setUp, outcome: runSession(setUp, engine) };
    });
    const visits = sessions.map(({ outcome }) => outcome.visits).sort((a, b) => a - b);
    const words = sessions.map(describeSpread).join('\n');
    expect(
      sessions.filter(({ outcome }) => outcome.called === 'thread').length,
      words,
    ).toBeGreaterThanOrEqual(8);
    expect(visits[4], words).toBeLessThanOrEqual(3 * 6);
  });
});
