import { describe, expect, test } from 'vitest';
import {
  formatRunningTime,
  heatOf,
  msInMinutes,
  ranUnwatched,
  recordedMinute,
  reopenTimer,
  runningMinutes,
  seeTimer,
  startTimer,
  stoppedTimer,
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

  test('a timer that stands shows the minutes it was given', () => {
    expect(runningMinutes(stoppedTimer(7.5), minutes(100))).toBe(7.5);
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

describe('seeTimer', () => {
  const started: RunningTimer = { gatheredMs: minutes(2), runningSince: minutes(100) };
  const at = (wall: number, steady: number) => ({ wallMs: minutes(wall), steadyMs: minutes(steady) });

  test('leaves a timer alone while both clocks agree, and one that stands always', () => {
    expect(seeTimer(started, at(103, 3), at(104, 4))).toEqual({ timer: started, unwatchedMs: 0 });
    expect(seeTimer(fresh, at(103, 3), at(300, 200))).toEqual({ timer: fresh, unwatchedMs: 0 });
  });

  test.each([1, 60, 60 * 24])('a clock set back by %d minutes takes nothing away', (back) => {
    const { timer, unwatchedMs } = seeTimer(started, at(103, 3), at(104 - back, 4));
    expect(unwatchedMs).toBe(0);
    expect(runningMinutes(timer, minutes(104 - back))).toBeCloseTo(6, 9);
    expect(runningMinutes(timer, minutes(106 - back))).toBeCloseTo(8, 9);
  });

  test('a clock that is a few seconds slow is left alone', () => {
    expect(seeTimer(started, at(103, 3), at(103 + 50 / 60, 4)).timer).toEqual(started);
  });

  test.each([
    ['the steady clock slept as well', at(143, 3.01)],
    ['the steady clock went on', at(143, 43)],
    ['only the steady clock went on', at(103, 43)],
  ])('forty minutes asleep stop the timer and are asked about: %s', (_, now) => {
    const { timer, unwatchedMs } = seeTimer(started, at(103, 3), now);
    expect(msInMinutes(unwatchedMs)).toBeCloseTo(40, 9);
    expect(timer).toEqual({ gatheredMs: minutes(5), runningSince: null });
    const ran = ranUnwatched(timer, unwatchedMs, minutes(143));
    expect(runningMinutes(ran, minutes(144))).toBeCloseTo(46, 9);
  });

  test('less than five minutes are no gap', () => {
    expect(seeTimer(started, at(103, 3), at(107.9, 3.01)).unwatchedMs).toBe(0);
    expect(seeTimer(started, at(103, 3), at(108, 3.01)).unwatchedMs).toBe(minutes(5));
  });
});

describe('reopenTimer', () => {
  const started: RunningTimer = { gatheredMs: minutes(2), runningSince: minutes(100) };

  test('asks about the time since the last entry, and counts up to that entry', () => {
    expect(reopenTimer(started, [{ minute: 4 }, { minute: 1.5 }, {}], minutes(142))).toEqual({
      timer: { gatheredMs: minutes(4), runningSince: null },
      unwatchedMs: minutes(40),
    });
  });

  test('a short absence is engine time, and an engine that stood stands', () => {
    expect(reopenTimer(started, [{ minute: 4 }, { minute: 1.5 }, {}], minutes(106.9))).toEqual({
      timer: started,
      unwatchedMs: 0,
    });
    const stood = stopTimer(started, minutes(110));
    expect(reopenTimer(stood, [], minutes(999))).toEqual({ timer: stood, unwatchedMs: 0 });
  });
});
