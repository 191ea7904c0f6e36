import { expect, test } from 'vitest';
import {
  differenceUncertainty,
  describeProblem,
  finestDifference,
  formatPressure,
  mostReadingsNeeded,
  readingsNeeded,
  resolvableDifference,
  studentTQuantile,
} from '../../src/calculators/index.ts';

const at95 = { confidence: 0.95 } as const;

test('two means of three readings: √(2s²/3), with four degrees of freedom', () => {
  const scatter = { scatterPa: 3, resolutionPa: 0 };
  expect(differenceUncertainty(scatter, 3)).toEqual({
    standardUncertaintyPa: Math.sqrt(6),
    degreesOfFreedom: 4,
  });
  expect(resolvableDifference(scatter, 3, at95)).toBeCloseTo(studentTQuantile(0.975, 4) * Math.sqrt(6), 13);
  const power = studentTQuantile(0.9, 4);
  expect(resolvableDifference(scatter, 3, { ...at95, power: 0.9 })).toBeCloseTo(
    (studentTQuantile(0.975, 4) + power) * Math.sqrt(6),
    13,
  );
});

test('the count that Student’s t asks for, where the normal distribution would say less', () => {
  // s = 1, difference 1.5: 2 (1.96/1.5)² = 3.4, so 4 by the normal distribution; Student asks for 5.
  expect(readingsNeeded({ scatterPa: 1, resolutionPa: 0 }, 1.5, at95)).toEqual({ ok: true, value: 5 });
});

test('nothing scatters: two readings are the fewest, and the step still forbids', () => {
  expect(readingsNeeded({ scatterPa: 0, resolutionPa: 0 }, 1e-9, at95)).toEqual({ ok: true, value: 2 });
  const finest = finestDifference(500, at95);
  expect(finest).toBeCloseTo(1.959963984540054 * Math.sqrt(500 ** 2 / 6), 9);
  expect(readingsNeeded({ scatterPa: 0, resolutionPa: 500 }, finest, at95)).toEqual({ ok: true, value: 2 });
  expect(readingsNeeded({ scatterPa: 0, resolutionPa: 500 }, 0.999 * finest, at95)).toMatchObject({
    problem: { kind: 'below-the-step', field: 'differencePa', limit: { min: finest } },
  });
  expect(resolvableDifference({ scatterPa: 0, resolutionPa: 0 }, 2, { ...at95, power: 0.9 })).toBe(0);
});

test('more readings than anybody takes are no answer', () => {
  const scatter = { scatterPa: 1000, resolutionPa: 0 };
  const most = resolvableDifference(scatter, mostReadingsNeeded, at95);
  expect(readingsNeeded(scatter, most, at95)).toEqual({ ok: true, value: mostReadingsNeeded });
  expect(readingsNeeded(scatter, most * 0.9999, at95)).toMatchObject({ problem: { kind: 'below-the-step' } });
});

test.each([
  [-1, 1, 1, 'scatterPa'],
  [1, -1, 1, 'resolutionPa'],
  [1, 1, 0, 'differencePa'],
  [NaN, 1, 1, 'scatterPa'],
])('scatter %s, step %s, difference %s is refused', (scatterPa, resolutionPa, differencePa, field) => {
  expect(readingsNeeded({ scatterPa, resolutionPa }, differencePa, at95)).toMatchObject({
    ok: false,
    problem: { field },
  });
});

test('a difference of nothing is refused with its limit', () => {
  expect(readingsNeeded({ scatterPa: 1, resolutionPa: 1 }, 0, at95)).toMatchObject({
    problem: { kind: 'out-of-range', limit: { above: 0 } },
  });
});

test('a difference below the step has a sentence that names what can be told apart', () => {
  const answer = readingsNeeded({ scatterPa: 0, resolutionPa: 500 }, 300, at95);
  const words = { formatPressure: (pascals: number) => formatPressure(pascals, 'Pa') };
  expect(answer.ok || describeProblem(answer.problem, words).replaceAll('\u00a0', ' ')).toBe(
    'No number of readings tells 300 Pa apart on this scale: give a difference of at least 400.1 Pa.',
  );
});
