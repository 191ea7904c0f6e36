import { describe, expect, test } from 'vitest';
import {
  formatRunningTime,
  heatOf,
  recordedMinute,
  runningMinutes,
  startTimer,
  stopTimer,
  type RunningTimer,
} from '../../src/calculators/index.ts';

const fresh: RunningTimer = { gatheredMs: 0, runningSince: null };
const minutes = (count: number): number => count * 60_000;

describe('startTimer, stopTimer, runningMinutes', () => {
  test('an engine that stands gathers nothing', () => {
    expect(runningMinutes(fresh, minutes(100))).toBe(0);
    expect(stopTimer(fresh, minutes(100))).toEqual(fresh);
  });

  test('runs of the engine add up, rests between them do not', () => {
    const first = startTimer(fresh, minutes(10));
    expect(runningMinutes(first, minutes(14))).toBe(4);
    const rested = stopTimer(first, minutes(15));
    expect(rested).toEqual({ gatheredMs: minutes(5), runningSince: null });
    expect(runningMinutes(rested, minutes(60))).toBe(5);
    const second = startTimer(rested, minutes(60));
    expect(runningMinutes(second, minutes(62.5))).toBe(7.5);
  });

  test('started twice it keeps its first start', () => {
    const started = startTimer(fresh, minutes(1));
    expect(startTimer(started, minutes(5))).toBe(started);
    expect(runningMinutes(started, minutes(6))).toBe(5);
  });

  test('a clock that was set back adds nothing, and takes nothing', () => {
    const started = startTimer({ gatheredMs: minutes(3), runningSince: null }, minutes(60));
    expect(runningMinutes(started, minutes(0))).toBe(3);
    expect(stopTimer(started, minutes(0))).toEqual({ gatheredMs: minutes(3), runningSince: null });
  });
});

test.each([
  [0, 'cool'],
  [12.99, 'cool'],
  [13, 'soon'],
  [14.99, 'soon'],
  [15, 'rest'],
  [90, 'rest'],
])('heatOf(%d) is %s', (running, heat) => {
  expect(heatOf(running)).toBe(heat);
});

test.each([
  [0, 0],
  [0.4, 0.4],
  [1.234, 1.23],
  [1.236, 1.24],
  [61.999, 62],
])('recordedMinute(%d) is %d', (running, recorded) => {
  expect(recordedMinute(running)).toBe(recorded);
});

test.each([
  [0, '0:00'],
  [0.5, '0:30'],
  [9.1, '9:06'],
  [0.9999, '0:59'],
  [15, '15:00'],
  [75.25, '75:15'],
  [-3, '0:00'],
])('formatRunningTime(%d) is %s', (running, text) => {
  expect(formatRunningTime(running)).toBe(text);
});

test.each([NaN, Infinity])('formatRunningTime(%d) is our own mistake', (running) => {
  expect(() => formatRunningTime(running)).toThrow(RangeError);
});
