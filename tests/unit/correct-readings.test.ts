import { expect, test } from 'vitest';
import { atTargetSpeed, carburettorMeans, driftOf } from '../../src/calculators/correct-readings.ts';
import { readingStandardUncertaintyPa } from '../../src/calculators/reading-uncertainty.ts';
import { tolerances } from '../tolerances.ts';

const gauge = { resolutionPa: 600, flutterPa: 300 };
const speed = { targetRpm: 2000, sensitivityPaPerRpm: -6 };
const near = tolerances.pressureSums.absolute;

test('atTargetSpeed(readings, speed) refers a reading with a speed, and no other, to the target', () => {
  const readings = [
    { carburettor: 1, depressionPa: 30_000, rpm: 2100 },
    { carburettor: 2, depressionPa: 30_000 },
  ];
  expect(atTargetSpeed(readings, speed).map(({ depressionPa }) => depressionPa)).toEqual([30_600, 30_000]);
  expect(atTargetSpeed(readings, undefined).map(({ depressionPa }) => depressionPa)).toEqual([
    30_000, 30_000,
  ]);
  expect(atTargetSpeed(readings, speed).map(({ order }) => order)).toEqual([0, 1]);
});

test('driftOf(two readings, gauge) shares their difference out, and is as uncertain as two readings', () => {
  const drift = driftOf(
    [
      { carburettor: 1, order: 0, depressionPa: 30_000 },
      { carburettor: 1, order: 4, depressionPa: 30_400 },
    ],
    gauge,
  );
  expect(drift.perReadingPa).toBe(100);
  expect(drift.middle).toBe(2);
  const expected = (Math.SQRT2 * readingStandardUncertaintyPa(gauge)) / 4;
  expect(Math.abs(drift.standardUncertaintyPa - expected)).toBeLessThanOrEqual(near);
});

test('driftOf(three readings, gauge) adds what lies off the line', () => {
  const bracket = (middlePa: number) =>
    [30_000, middlePa, 30_200].map((depressionPa, order) => ({ carburettor: 1, order, depressionPa }));
  expect(driftOf(bracket(30_100), gauge).perReadingPa).toBe(100);
  // 300 Pa off the middle leave residuals −100, 200, −100: 60,000 Pa² with one degree of freedom, over Σ = 2.
  const off = driftOf(bracket(30_400), gauge);
  const on = driftOf(bracket(30_100), gauge);
  expect(
    Math.abs(off.standardUncertaintyPa ** 2 - on.standardUncertaintyPa ** 2 - 30_000),
  ).toBeLessThanOrEqual(near);
});

test('four readings of the reference by hand: the line, what lies off it, and its two degrees of freedom', () => {
  // Orders 0, 2, 4, 6 about 3, readings about 253: slope (9 − 1 − 1 + 9)/20, squares off the line 0.36 + 3.24 + 3.24 + 0.36.
  const readings = [250, 254, 252, 256].map((depressionPa, k) => ({
    carburettor: 1,
    order: 2 * k,
    depressionPa,
  }));
  const steady = { resolutionPa: 6, flutterPa: 0 };
  const { perReadingPa, standardUncertaintyPa } = driftOf(readings, steady);
  expect(perReadingPa).toBeCloseTo(0.8, 12);
  expect(standardUncertaintyPa).toBeCloseTo(Math.sqrt((3 + 7.2 / 2) / 20), 12);
  const { means } = carburettorMeans(
    [
      ...readings,
      { carburettor: 2, order: 1, depressionPa: 250 },
      { carburettor: 2, order: 3, depressionPa: 253.6 },
    ],
    2,
    steady,
    1,
  );
  expect(means[0]?.meanPa).toBeCloseTo(253, 12);
  expect(means[0]?.scatter?.standardDeviationPa).toBeCloseTo(Math.sqrt(7.2 / 2), 12);
  expect(means[0]?.scatter?.degreesOfFreedom).toBe(2);
  // 250 + 0.8 · 2 and 253.6 are 2 apart: another carburettor has all its degrees of freedom.
  expect(means[1]?.scatter?.standardDeviationPa).toBeCloseTo(Math.SQRT2, 12);
  expect(means[1]?.scatter?.degreesOfFreedom).toBe(1);
});

test('a carburettor that was read once shows no scatter, nor a reference that was read twice', () => {
  const readings = [250, 200, 254].map((depressionPa, order) => ({
    carburettor: order === 1 ? 2 : 1,
    order,
    depressionPa,
  }));
  const { means } = carburettorMeans(readings, 2, gauge, 1);
  expect(means.map(({ scatter }) => scatter)).toEqual([undefined, undefined]);
});

test('carburettorMeans(…) leaves the reference’s own mean alone and counts its line as one more degree of freedom', () => {
  const readings = [30_000, 31_000, 30_120, 30_180].map((depressionPa, order) => ({
    carburettor: order === 1 ? 2 : 1,
    order,
    depressionPa,
  }));
  const { means, drift } = carburettorMeans(readings, 2, gauge, 1);
  const [reference, other] = means;
  expect(reference?.meanPa).toBeCloseTo(30_100, 9);
  expect(reference?.driftLoadingPa).toBeCloseTo(0, 12);
  // Three readings on a line through orders 0, 2, 3 are exactly 60 Pa apart a reading: no scatter is left.
  expect(drift?.perReadingPa).toBeCloseTo(60, 9);
  expect(reference?.standardUncertaintyPa).toBeCloseTo(Math.sqrt(300 ** 2 / 9 + 600 ** 2 / 12), 6);
  // Read at 1, the middle is at 5/3.
  expect(other?.meanPa).toBeCloseTo(31_000 + (60 * 2) / 3, 9);
  expect(other?.driftLoadingPa).toBeCloseTo((-2 / 3) * (drift?.standardUncertaintyPa ?? NaN), 9);
});

test('carburettorMeans(…) without a reference leaves the readings alone', () => {
  const readings = [1, 2].map((carburettor, order) => ({
    carburettor,
    order,
    depressionPa: 100 * carburettor,
  }));
  const { means, drift } = carburettorMeans(readings, 2, gauge, undefined);
  expect(drift).toBeNull();
  expect(means.map(({ meanPa, driftLoadingPa, count }) => [meanPa, driftLoadingPa, count])).toEqual([
    [100, 0, 1],
    [200, 0, 1],
  ]);
});
