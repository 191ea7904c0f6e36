import { describe, expect, test } from 'vitest';
import {
  averagePpm,
  concentrationPpm,
  exposurePpmMin,
  minutesToAverage,
  minutesToReach,
  mixedAir,
  steadyPpm,
} from '../../src/calculators/index.ts';
import type { MixedAir, MixedRoom } from '../../src/calculators/index.ts';

const garage: MixedRoom = { volumeM3: 60, airChangesPerHour: 0.5, sourceLPerMin: 20, initialPpm: 0 };

const air = (part: Partial<MixedRoom> = {}): MixedAir => {
  const mixed = mixedAir({ ...garage, ...part });
  if (!mixed.ok) throw new Error(JSON.stringify(mixed.problem));
  return mixed.value;
};

describe('mixedAir(room)', () => {
  test.each([
    ['volumeM3', 0],
    ['volumeM3', NaN],
    ['airChangesPerHour', -1],
    ['sourceLPerMin', -0.1],
    ['initialPpm', -5],
    ['initialPpm', Infinity],
  ] as const)('refuses %s of %d', (field, value) => {
    expect(mixedAir({ ...garage, [field]: value })).toMatchObject({ ok: false, problem: { field } });
  });

  test('a litre in a cubic metre is a thousand parts per million', () => {
    expect(air({ volumeM3: 1, sourceLPerMin: 1 }).ratePpmPerMin).toBe(1000);
  });
});

describe('steadyPpm(air)', () => {
  test('source over outside air, or none in a sealed room with a source', () => {
    expect(steadyPpm(air())).toBeCloseTo(40_000, 6);
    expect(steadyPpm(air({ airChangesPerHour: 0 }))).toBeNull();
    expect(steadyPpm(air({ airChangesPerHour: 0, sourceLPerMin: 0, initialPpm: 7 }))).toBe(7);
    expect(steadyPpm(air({ sourceLPerMin: 0, initialPpm: 7 }))).toBe(0);
  });
});

describe('minutesToReach(air, level)', () => {
  test('0 where it is there already, null where it never is', () => {
    expect(minutesToReach(air({ initialPpm: 50 }), 50)).toBe(0);
    expect(minutesToReach(air(), 40_000)).toBeNull();
    expect(minutesToReach(air(), 50_000)).toBeNull();
    expect(minutesToReach(air({ sourceLPerMin: 0, initialPpm: 10 }), 20)).toBeNull();
    expect(minutesToReach(air({ airChangesPerHour: 0, sourceLPerMin: 0 }), 20)).toBeNull();
  });

  test('in a sealed room the rise is straight', () => {
    expect(minutesToReach(air({ airChangesPerHour: 0 }), 1000)).toBe(3);
    expect(concentrationPpm(air({ airChangesPerHour: 0, initialPpm: 10 }), 3)).toBe(1010);
  });

  test('a draught that can hardly be told from none changes hardly anything', () => {
    expect(minutesToReach(air({ airChangesPerHour: 1e-300 }), 1000)).toBeCloseTo(3, 12);
  });
});

describe('averagePpm(air, window, minutes)', () => {
  test('a few minutes count as a part of the window; a full window is its mean', () => {
    const sealed = air({ airChangesPerHour: 0 });
    expect(averagePpm(sealed, 480, 6)).toBeCloseTo(((6 ** 2 / 2) * (1000 / 3)) / 480, 9);
    expect(averagePpm(sealed, 10, 30)).toBeCloseTo((25 * 1000) / 3, 9);
  });

  test('in the end it is what the air holds in the end', () => {
    expect(averagePpm(air(), 15, 1e5)).toBeCloseTo(40_000, 6);
  });
});

describe('minutesToAverage(air, window, level)', () => {
  test('within the first window, after it, and never', () => {
    for (const [window, level] of [
      [480, 50],
      [15, 87],
      [5, 20_000],
      [60, 39_999],
    ] as const) {
      const minutes = minutesToAverage(air(), window, level)!;
      expect(averagePpm(air(), window, minutes)).toBeCloseTo(level, 6);
      expect(averagePpm(air(), window, minutes * 0.999)).toBeLessThan(level);
    }
    expect(minutesToAverage(air(), 5, 20_000)).toBeGreaterThan(5);
    expect(minutesToAverage(air(), 480, 50)).toBeLessThan(480);
    expect(minutesToAverage(air(), 60, 40_000)).toBeNull();
  });

  test('of air that only clears, the first window decides', () => {
    const clearing = air({ sourceLPerMin: 0, initialPpm: 1200 });
    const most = exposurePpmMin(clearing, 60) / 60;
    expect(minutesToAverage(clearing, 60, most * 0.9)).toBeLessThan(60);
    expect(minutesToAverage(clearing, 60, most * 1.1)).toBeNull();
  });
});
