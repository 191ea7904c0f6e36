import oracleCdf from '@stdlib/stats-base-dists-t-cdf';
import oracleQuantile from '@stdlib/stats-base-dists-t-quantile';
import { describe, expect, test } from 'vitest';
import { studentTQuantile } from '../../src/calculators/student-t-quantile.ts';
import {
  studentTCdf,
  studentTCentre,
  studentTDensity,
  studentTTail,
} from '../../src/calculators/student-t.ts';
import { tolerances } from '../tolerances.ts';

const { relative } = tolerances.statistics;
const apart = (one: number, other: number) => (one === other ? 0 : Math.abs(one / other - 1));

const degrees = [0.3, 1, 1.5, 2, 2.5, 3, 4, 5, 7.3, 10, 22.8, 30, 100, 1234.5, 1e5, 1e8];

describe('studentTCdf(t, degreesOfFreedom) against an independent library', () => {
  test.each(degrees)('%d degrees of freedom, t from −40 to 40', (degreesOfFreedom) => {
    let count = 0;
    for (let t = -40; t <= 40; t += 0.37) {
      const expected = oracleCdf(t, degreesOfFreedom);
      // Rarer things than 1e-80 do not decide a balance.
      if (expected < 1e-80) continue;
      count += 1;
      expect(apart(studentTCdf(t, degreesOfFreedom), expected), `t ${t}`).toBeLessThanOrEqual(relative);
    }
    expect(count).toBeGreaterThan(150);
  });
});

describe('studentTQuantile(p, degreesOfFreedom) against an independent library', () => {
  const probabilities = [1e-12, 1e-6, 0.001, 0.025, 0.1, 0.3, 0.45, 0.55, 0.6, 0.9, 0.975, 0.995, 0.9999];
  test.each(degrees)('%d degrees of freedom', (degreesOfFreedom) => {
    for (const p of probabilities) {
      const expected = oracleQuantile(p, degreesOfFreedom);
      expect(apart(studentTQuantile(p, degreesOfFreedom), expected), `p ${p}`).toBeLessThanOrEqual(relative);
    }
  });
});

test('studentTQuantile(p, 1) is the tangent and studentTQuantile(p, 2) a square root', () => {
  for (const p of [1e-9, 0.01, 0.2, 0.49, 0.51, 0.7, 0.975, 0.9999]) {
    const tangent = p < 0.25 ? -1 / Math.tan(Math.PI * p) : Math.tan(Math.PI * (p - 0.5));
    expect(apart(studentTQuantile(p, 1), tangent)).toBeLessThanOrEqual(relative);
    const root = (2 * (p - 0.5)) / Math.sqrt(2 * p * (1 - p));
    expect(apart(studentTQuantile(p, 2), root)).toBeLessThanOrEqual(relative);
  }
});

test('studentTQuantile(p, degreesOfFreedom) as tables print it, and between whole degrees', () => {
  // Student t, two-sided 95 %: JCGM 100:2008, table G.2.
  const printed = { 1: '12.71', 2: '4.30', 5: '2.57', 10: '2.23', 20: '2.09', 50: '2.01', 100: '1.984' };
  for (const [degreesOfFreedom, text] of Object.entries(printed)) {
    const digits = text.split('.')[1]?.length ?? 0;
    expect(studentTQuantile(0.975, Number(degreesOfFreedom)).toFixed(digits)).toBe(text);
  }
  // By an independent library of another language.
  expect(apart(studentTQuantile(0.975, 4), 2.7764451051977934)).toBeLessThanOrEqual(relative);
  expect(apart(studentTQuantile(0.975, 2.5), 3.5746548420036817)).toBeLessThanOrEqual(relative);
});

test('a quantile beyond the largest double is infinite', () => {
  // With 0.3 degrees of freedom the tail falls as t^−0.3: at 1e-300 t is about 1e1000.
  expect(studentTQuantile(1e-300, 0.3)).toBe(-Infinity);
});

test('without a limit of degrees of freedom it is the normal distribution', () => {
  expect(studentTQuantile(0.975, Infinity)).toBeCloseTo(1.959963984540054, 14);
  expect(studentTCdf(1, Infinity)).toBeCloseTo(0.8413447460685429, 15);
  expect(studentTDensity(0, Infinity)).toBeCloseTo(1 / Math.sqrt(2 * Math.PI), 15);
});

test('the two ways of computing agree where one takes over from the other', () => {
  for (const t of [0.2, 0.99, 1.01, 2, 4, 8, 12]) {
    const step = studentTTail(t, 1e4) / studentTTail(t, 1e4 - 1e-7) - 1;
    expect(Math.abs(step)).toBeLessThanOrEqual(1e-11);
    const fromCentre = 0.5 - studentTCentre(t, 1e4);
    expect(Math.abs(fromCentre - studentTTail(t, 1e4))).toBeLessThanOrEqual(1e-15);
  }
});

test('studentTDensity(t, degreesOfFreedom) is the slope of the cdf', () => {
  for (const degreesOfFreedom of [1, 2.5, 10, 1e5]) {
    for (const t of [-3, -0.5, 0, 1, 4]) {
      const h = 1e-4;
      const slope = (studentTCdf(t + h, degreesOfFreedom) - studentTCdf(t - h, degreesOfFreedom)) / (2 * h);
      expect(Math.abs(slope - studentTDensity(t, degreesOfFreedom))).toBeLessThanOrEqual(1e-8);
    }
  }
});

test('the ends: nothing lies beyond infinity, half below 0', () => {
  expect(studentTCdf(Infinity, 3)).toBe(1);
  expect(studentTCdf(-Infinity, 3)).toBe(0);
  expect(studentTCentre(Infinity, 3)).toBe(0.5);
  expect(studentTCdf(0, 3)).toBe(0.5);
  expect(studentTQuantile(0.5, 3)).toBe(0);
  expect(studentTTail(Infinity, 3)).toBe(0);
  expect(studentTTail(Infinity, 1e5)).toBe(0);
  for (const degreesOfFreedom of [3, 1e5, Infinity]) expect(studentTCdf(NaN, degreesOfFreedom)).toBeNaN();
});

test('close to the middle a quantile is the distance over the density there', () => {
  for (const degreesOfFreedom of [1, 2.5, 10, 1e5])
    for (const p of [0.5 + 1e-9, 0.5 - 1e-9]) {
      const expected = (p - 0.5) / studentTDensity(0, degreesOfFreedom);
      expect(apart(studentTQuantile(p, degreesOfFreedom), expected)).toBeLessThanOrEqual(relative);
    }
});

test('far out one degree of freedom leaves 1/(π t), also where t² would overflow', () => {
  for (const t of [1e9, 1e100, 1e200])
    expect(apart(studentTTail(t, 1), 1 / (Math.PI * t))).toBeLessThanOrEqual(relative);
});

test.each([0, -1, NaN])('%d degrees of freedom is our own mistake', (degreesOfFreedom) => {
  const mistake = new RangeError(`degrees of freedom ${degreesOfFreedom}`);
  for (const of of [studentTCdf, studentTTail, studentTCentre, studentTDensity])
    expect(() => of(1, degreesOfFreedom)).toThrow(mistake);
  for (const p of [0.5, 0.9]) expect(() => studentTQuantile(p, degreesOfFreedom)).toThrow(mistake);
});

test.each([0, 1, -0.1, NaN])('a quantile of the probability %d is our own mistake', (p) => {
  expect(() => studentTQuantile(p, 3)).toThrow(new RangeError(`probability ${p}`));
});
