import fc from 'fast-check';
import { expect, test } from 'vitest';
import { studentTQuantile } from '../../src/calculators/student-t-quantile.ts';
import { studentTCdf, studentTCentre, studentTTail } from '../../src/calculators/student-t.ts';
import { tries } from '../property-runs.ts';
import { tolerances } from '../tolerances.ts';

/** From 0.5 to 1e9, evenly in size, and the normal limit. */
const degreesOfFreedom = fc.oneof(
  fc.double({ min: -0.3, max: 9, noNaN: true }).map((power) => 10 ** power),
  fc.constant(Infinity),
);
const probability = fc.double({ min: 1e-12, max: 1 - 1e-12, noNaN: true });
const { relative } = tolerances.statistics;

test('the cdf of the quantile is the probability', () => {
  fc.assert(
    fc.property(probability, degreesOfFreedom, (p, df) => {
      const back = studentTCdf(studentTQuantile(p, df), df);
      expect(Math.abs(back - p)).toBeLessThanOrEqual(relative * Math.max(p, 1 - p));
    }),
    tries(1000),
  );
});

test('the quantile is odd about one half and rises with the probability', () => {
  fc.assert(
    fc.property(probability, probability, degreesOfFreedom, (p, q, df) => {
      const [lower, upper] = p < q ? [p, q] : [q, p];
      const [below, above] = [studentTQuantile(lower, df), studentTQuantile(upper, df)];
      expect(below - above).toBeLessThanOrEqual(relative * Math.abs(above));
      // 1 − p is rounded to 1e-16, which a small p feels.
      const mirrored = -studentTQuantile(1 - p, df);
      expect(Math.abs(studentTCdf(mirrored, df) - p)).toBeLessThanOrEqual(relative);
    }),
  );
});

test('the cdf lies within 0…1, rises with t, and its two sides add up to 1', () => {
  const anyT = fc.double({ noNaN: true });
  fc.assert(
    fc.property(anyT, anyT, degreesOfFreedom, (s, t, df) => {
      const [lower, upper] = s < t ? [s, t] : [t, s];
      const below = studentTCdf(lower, df);
      expect(below).toBeGreaterThanOrEqual(0);
      expect(studentTCdf(upper, df)).toBeLessThanOrEqual(1);
      expect(below).toBeLessThanOrEqual(studentTCdf(upper, df) * (1 + relative));
      expect(Math.abs(studentTCdf(t, df) + studentTTail(t, df) - 1)).toBeLessThanOrEqual(relative);
      expect(Math.abs(studentTCentre(t, df) - (studentTCdf(t, df) - 0.5))).toBeLessThanOrEqual(relative);
    }),
    tries(1000),
  );
});

test('fewer degrees of freedom have heavier tails', () => {
  const t = fc.double({ min: 0.01, max: 30, noNaN: true });
  fc.assert(
    fc.property(t, degreesOfFreedom, fc.double({ min: 1.01, max: 100, noNaN: true }), (at, df, times) => {
      expect(studentTTail(at, df * times)).toBeLessThanOrEqual(studentTTail(at, df) * (1 + relative));
    }),
  );
});
