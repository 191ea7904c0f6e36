import { describe, expect, it } from 'vitest';
import { benchDefaults } from '../../src/calculators/index.ts';
import {
  runningStretches,
  sessionParts,
  sessionTimeLine,
  warmthByMinute,
} from '../../src/drawing/session-time-line.ts';

describe('sessionTimeLine', () => {
  it('has parts without a gap, from cold to closed up', () => {
    expect(sessionParts[0]?.fromMinute).toBe(0);
    for (const [index, { fromMinute, toMinute }] of sessionParts.entries()) {
      expect(toMinute).toBeGreaterThan(fromMinute);
      expect(fromMinute).toBe(sessionParts[index - 1]?.toMinute ?? 0);
    }
  });

  it('warms up for as long as common practice says, and says where each time is from', () => {
    const warmUp = sessionParts.find(({ words }) => words.startsWith('warm up'));
    expect(warmUp!.toMinute - warmUp!.fromMinute).toBeGreaterThanOrEqual(5);
    expect(warmUp!.toMinute - warmUp!.fromMinute).toBeLessThanOrEqual(8);
    for (const { words } of sessionParts) expect(words).toMatch(/from memory|common practice/u);
  });

  it('never runs longer at a time than the session’s reminder, and not while it is prepared', () => {
    for (const { fromMinute, toMinute } of runningStretches)
      expect(toMinute - fromMinute).toBeLessThanOrEqual(benchDefaults.restAfterMinutes);
    expect(runningStretches[0]?.fromMinute).toBe(sessionParts[0]?.toMinute);
  });

  it('is cold at first, warm at the first reading, and cools in every pause', () => {
    const warmth = warmthByMinute();
    expect(warmth.slice(0, 31).every((share) => share === 0)).toBe(true);
    expect(warmth[37]).toBeGreaterThan(0.8);
    for (const [before, after] of [
      [45, 55],
      [70, 75],
      [83, 90],
    ] as const)
      // prettier-ignore
      expect(warmth[after]).toBeLessThan(warmth[before]!);
  });

  it('is drawn inside its frame, titled and lettered', () => {
    const [, , width = 0, height = 0] = sessionTimeLine.viewBox.split(' ').map(Number);
    expect(sessionTimeLine.title.length).toBeGreaterThan(60);
    const letters = sessionTimeLine.callouts.map(({ letter }) => letter);
    expect(new Set(letters).size).toBe(letters.length);
    for (const { x, y } of [...sessionTimeLine.callouts, ...sessionTimeLine.labels]) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThan(width - 6);
      expect(y).toBeLessThanOrEqual(height);
    }
    for (const { d } of sessionTimeLine.paths) expect(d).not.toMatch(/NaN|undefined/u);
  });
});
