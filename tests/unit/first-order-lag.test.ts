import { expect, test } from 'vitest';
import {
  amplitudeRatio,
  dampedRipple,
  phaseLag,
  shareReached,
  timeConstantOfRatio,
  timeConstantOfWait,
  waitingTimeS,
} from '../../src/calculators/index.ts';

test('a published figure: a time constant of 0.2 s leaves 0.04 of 20 Hz', () => {
  // K. Muralidhar, P. K. Panigrahi, course notes on temporal and frequency response (seen in a copy).
  expect(amplitudeRatio(20, 0.2)).toBeCloseTo(0.04, 3);
});

test('without damping, or without a ripple, nothing is lost and nothing is late', () => {
  expect(amplitudeRatio(0, 5)).toBe(1);
  expect(amplitudeRatio(50, 0)).toBe(1);
  expect(phaseLag(50, 0)).toBe(0);
  expect(shareReached(0, 0)).toBe(1);
  expect(waitingTimeS(0.99, 0)).toBe(0);
});

test('after one time constant 63 %, after 4.6 of them 99 %', () => {
  expect(shareReached(2, 2)).toBeCloseTo(1 - 1 / Math.E, 15);
  expect(waitingTimeS(0.99, 1)).toBeCloseTo(Math.log(100), 14);
  expect(timeConstantOfWait(Math.log(100), 0.99)).toBeCloseTo(1, 14);
});

test('at ωτ = 1 the swing is 1/√2 and an eighth of a turn late', () => {
  const timeConstantS = 1 / (2 * Math.PI * 17);
  expect(amplitudeRatio(17, timeConstantS)).toBeCloseTo(Math.SQRT1_2, 15);
  expect(phaseLag(17, timeConstantS)).toBeCloseTo(Math.PI / 4, 15);
  expect(timeConstantOfRatio(Math.SQRT1_2, 17)).toBeCloseTo(timeConstantS, 15);
  expect(timeConstantOfRatio(1, 17)).toBe(0);
});

test('the drawn ripple begins at its middle and ends after whole periods', () => {
  const samples = dampedRipple(40, 20, 0, 3, 12);
  expect(samples).toHaveLength(13);
  expect(samples[0]).toEqual({ timeS: 0, before: 0, after: 0 });
  expect(samples[1]?.before).toBeCloseTo(40, 12);
  expect(samples[1]?.after).toBeCloseTo(40, 12);
  expect(samples.at(-1)?.timeS).toBeCloseTo(0.15, 15);
});
