import { describe, expect, test } from 'vitest';
import { accountOf } from '../../src/calculators/advisor/account.ts';
import {
  afterReading,
  afterTurn,
  depressionsOf,
  engineOf,
  expectReading,
  startingBelief,
} from '../../src/calculators/advisor/belief.ts';
import { priors } from '../../src/calculators/advisor/priors.ts';
import { nextStep } from '../../src/calculators/index.ts';
import type { SessionEvent, SetUp } from '../../src/calculators/index.ts';
import { mmHg } from '../engine/invented.ts';
import { tolerances } from '../tolerances.ts';

const setUp: SetUp = {
  carburettors: 2,
  screws: [{ moves: [1, 0] }, { moves: [0, 1] }],
  tolerancePa: 10 * mmHg,
  gauge: { resolutionPa: 5 * mmHg, flutterPa: 3 * mmHg },
};
const engine = engineOf(setUp);
const start = startingBelief(setUp);

describe('afterReading(engine, belief, expected, depressionPa)', () => {
  test('is the weighted mean of prior and reading, by hand', () => {
    const [prior, reading] = [(120 ** 2 + 100 ** 2) * mmHg ** 2, (3 ** 2 / 3 + 5 ** 2 / 12) * mmHg ** 2];
    const { mean, covariance } = afterReading(engine, start, expectReading(engine, start, 0), 200 * mmHg);
    const weight = prior / (prior + reading);
    expect(Math.abs(mean[0]! - (300 - 100 * weight) * mmHg)).toBeLessThanOrEqual(
      tolerances.estimate.absolute,
    );
    expect(Math.abs(covariance[0]![0]! / (weight * reading) - 1)).toBeLessThanOrEqual(
      tolerances.covariance.relative,
    );
    // The common level, variance 100², carries a share of it over to the other.
    const shared = (100 * mmHg) ** 2 / (prior + reading);
    expect(Math.abs(mean[1]! - (300 - 100 * shared) * mmHg)).toBeLessThanOrEqual(
      tolerances.estimate.absolute,
    );
  });

  test('leaves the reading’s own variance, never a negative one, however little was known before', () => {
    const variance = engine.readingVariancePa2;
    for (let power = 8; power <= 22; power++) {
      const covariance = start.covariance.map((row, i) =>
        row.map((value, j) => (i < 2 && j < 2 ? 10 ** power * (i === j ? 1 : 0.9) : value)),
      );
      const belief = { ...start, covariance };
      const after = afterReading(engine, belief, expectReading(engine, belief, 0), 30_000).covariance;
      expect(after[0]![0]! / variance).toBeGreaterThan(0.99);
      expect(after[0]![0]! / variance).toBeLessThanOrEqual(1 + 1e-6);
      expect(after[1]![1]! / 10 ** power / (1 - 0.9 ** 2)).toBeCloseTo(1, 2);
      after.forEach((row, i) => row.forEach((value, j) => expect(value).toBe(after[j]![i])));
    }
  });
});

describe('afterTurn(engine, belief, screw, turns)', () => {
  test('of two carburettors at the same level each goes half the way, one up and one down', () => {
    const after = depressionsOf(engine, afterTurn(engine, start, 0, -0.01));
    // A hundredth of a turn, at 140 mmHg a turn and slope −1: half of 1.4 mmHg.
    expect(Math.abs(after[0]! / mmHg - 300.7)).toBeLessThan(0.001);
    expect(Math.abs(after[1]! / mmHg - 299.3)).toBeLessThan(0.001);
  });

  test('keeps the sum of the depressions to the last digits, also where a double steps by more than 1e-9 Pa', () => {
    const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
    for (const ambientPa of [1e5, 1e7, 1e9, 1e12])
      for (const shares of [
        [0.3, 0.4],
        [0.5, 0.5],
        [0.2, 0.6],
      ])
        for (const share of [0.001, 0.01, -0.01, 0.05, -0.1, 0.1]) {
          const large = engineOf({ ...setUp, ambientPa });
          const mean = [...shares.map((each) => each * ambientPa), ...start.mean.slice(2)];
          // So many turns that the opening changes by this share of itself.
          const turns = (share * large.scale.opening(mean[0]!)) / priors.effectPaPerTurn;
          const after = depressionsOf(large, afterTurn(large, { ...start, mean }, 0, turns));
          expect(Math.abs(sum(after) / sum(mean.slice(0, 2)) - 1)).toBeLessThanOrEqual(
            tolerances.sumKept.relative,
          );
          expect(Math.sign(after[0]! - mean[0]!)).toBe(-Math.sign(share));
        }
  });

  test('adds what locking may shift, the common drift, and 7 % of the change', () => {
    const known = {
      ...start,
      covariance: start.covariance.map((row) => row.map(() => 0)),
    };
    const turns = -0.01;
    const { mean, covariance } = afterTurn(engine, known, 0, turns);
    const change = mean[0]! - known.mean[0]!;
    // Half of 140 mmHg a turn, with the lock shift of 0.02 turn.
    const lock = (70 * mmHg * 0.02) ** 2;
    const drift = (0.5 * mmHg) ** 2;
    expect(Math.abs(covariance[0]![0]! / (lock + drift + (0.07 * change) ** 2) - 1)).toBeLessThan(0.01);
    expect(Math.abs(covariance[0]![1]! / (drift - lock) - 1)).toBeLessThan(0.01);
  });
});

describe('accountOf(setUp, events) on readings of no engine at all', () => {
  const read = (carburettor: number, depressionPa: number): SessionEvent => ({
    kind: 'reading',
    carburettor,
    depressionPa,
  });
  const turn = (screw: number, turns: number): SessionEvent => ({ kind: 'turn', screw, turns });

  test.each<[string, readonly SessionEvent[]]>([
    [
      'a closed screw after which all air is gone',
      [read(2, 0), read(2, 1_000), turn(2, -50), read(1, 100_000)],
    ],
    [
      'fifty turns there and back',
      [
        ...[read(2, 0), read(2, 1_000), turn(1, 50), read(2, 60_000), turn(2, -50)],
        ...[read(1, 100_000), read(1, 30_000)],
      ],
    ],
    [
      'from one end of the scale to the other',
      [
        ...[read(1, 60_000), turn(2, 50), read(1, 60_000), turn(2, 50), turn(2, 1), read(2, 100_000)],
        ...[read(1, 1_000), read(2, 0), turn(1, 0.01), read(2, 0)],
      ],
    ],
  ])('%s: the effect of a turn stays within its reach, and nothing is called done', (_, events) => {
    const { belief } = accountOf(setUp, events);
    expect(Math.abs(belief.mean[2]! - Math.log(priors.effectPaPerTurn))).toBeLessThanOrEqual(
      priors.effectLogReach + 1e-12,
    );
    for (const log of belief.mean.slice(3, 5))
      expect(Math.abs(log)).toBeLessThanOrEqual(priors.unevennessLogReach);
    const next = nextStep(setUp, events);
    expect(next.ok && next.value.step.kind).not.toBe('done');
  });
});
