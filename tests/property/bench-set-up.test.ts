import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  answersOf,
  defaultAnswers,
  generations,
  nextStep,
  parseSetUp,
  pressureUnits,
  screwsOf,
} from '../../src/calculators/index.ts';
import type { BenchSetUp, Generation, SetUpAnswers } from '../../src/calculators/index.ts';
import { tries } from '../property-runs.ts';
import { tolerances } from '../tolerances.ts';

/** A number that is 0 or can be typed: not below a billionth. */
const between = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((value) => (Math.abs(value) < 1e-9 ? 0 : value));
const turnsLeft = fc.record({ closing: between(0, 100), opening: between(0, 100) });

const bench = fc
  .record({
    generation: fc.constantFrom(...generations),
    carburettors: fc.constantFrom(2, 3, 4, 6),
    fixed: fc.integer({ min: 1, max: 2 }),
    leavesOne: fc.boolean(),
    threads: fc.array(fc.option(turnsLeft), { minLength: 6, maxLength: 6 }),
    opens: fc.array(fc.constantFrom('clockwise', 'anticlockwise', 'unknown'), { minLength: 6, maxLength: 6 }),
    tolerancePa: between(1, 20_000),
    gauge: fc.record({ resolutionPa: between(1, 20_000), flutterPa: between(0, 20_000) }),
    more: fc.record(
      {
        confidence: between(0.5, 0.999),
        targetRpm: between(300, 20_000),
        ambientPa: between(30_001, 119_999),
        lockShiftTurns: between(0, 1),
        effectPaPerTurn: between(1, 1e6),
      },
      { requiredKeys: [] },
    ),
  })
  .map(({ generation, carburettors, fixed, leavesOne, threads, opens, more, ...rest }) => {
    const hasFixed = generation === 'fixed-reference' || (generation === 'bypass-screws' && leavesOne);
    const screws = screwsOf(generation, carburettors, hasFixed ? { fixed } : {});
    if (!screws.ok) throw new Error(screws.problem.kind);
    const setUp: BenchSetUp = {
      carburettors,
      ...rest,
      ...more,
      ...(hasFixed ? { fixed } : {}),
      screws: screws.value.map(({ moves }, j) => {
        const left = threads[j];
        return left ? { moves, turnsLeft: left } : { moves };
      }),
      opens: opens.slice(0, screws.value.length) as BenchSetUp['opens'],
    };
    return { generation, setUp };
  });

/** Equal but for the tails of numbers. */
const expectSame = (one: unknown, other: unknown): void => {
  if (typeof one === 'number' && typeof other === 'number')
    expect(Math.abs(one - other)).toBeLessThanOrEqual(tolerances.linkAndForm.relative * Math.abs(other));
  else if (one !== null && typeof one === 'object' && other !== null && typeof other === 'object') {
    expect(Object.keys(one).sort()).toEqual(Object.keys(other).sort());
    for (const [key, value] of Object.entries(one))
      expectSame(value, (other as Record<string, unknown>)[key]);
  } else expect(one).toBe(other);
};

test('parseSetUp(answersOf(set-up)) is the set-up, in every unit', () => {
  fc.assert(
    fc.property(bench, fc.constantFrom(...pressureUnits), ({ generation, setUp }, unit) => {
      const parsed = parseSetUp(answersOf(generation, unit.id, setUp));
      if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
      expectSame(parsed.value, { generation, unit: unit.id, setUp });
      expect(nextStep(parsed.value.setUp, []).ok).toBe(true);
    }),
    tries(200),
  );
});

test('whatever is typed, parseSetUp gives a set-up or problems with their fields, and keeps to plain numbers', () => {
  const typed = fc.oneof(
    fc.string({ maxLength: 12 }),
    fc.constantFrom('', '4', '1 1/2', '12,5 cmHg', '1e309', 'NaN', '-3', '0', '1,234', '９', '∞', '1/0'),
    fc.double().map(String),
  );
  const answers: fc.Arbitrary<SetUpAnswers> = fc.record({
    carburettors: fc.oneof(fc.constantFrom('2', '4'), typed),
    generation: fc.oneof(fc.constantFrom<Generation>(...generations), typed),
    fixed: typed,
    groups: typed,
    opens: fc.constantFrom('clockwise', 'anticlockwise', 'unknown', 'differ'),
    opensEach: fc.array(fc.constantFrom('clockwise', 'anticlockwise', 'unknown'), { maxLength: 9 }),
    unit: fc.oneof(fc.constantFrom('mmHg', 'kPa'), typed),
    resolution: typed,
    flutter: typed,
    tolerance: typed,
    rpm: typed,
    thread: fc.array(fc.record({ closing: typed, opening: typed }), { maxLength: 9 }),
    ambient: typed,
    lockShift: typed,
    confidence: typed,
    effect: typed,
  });
  fc.assert(
    fc.property(answers, (given) => {
      const parsed = parseSetUp(given);
      if (parsed.ok) {
        expect(JSON.parse(JSON.stringify(parsed.value))).toEqual(parsed.value);
        expect(parsed.value.setUp.opens).toHaveLength(parsed.value.setUp.screws.length);
        expect(nextStep(parsed.value.setUp, []).ok).toBe(true);
        return;
      }
      expect(parsed.problems.length).toBeGreaterThan(0);
      for (const { field } of parsed.problems)
        expect(field.startsWith('thread.') || field in defaultAnswers('mmHg')).toBe(true);
    }),
    tries(400),
  );
});
