import { describe, expect, it } from 'vitest';
import { airShares, throttleAreaRatio, worthOfADifference } from '../../src/calculators/index.ts';

describe('worthOfADifference(difference, depression, ambient)', () => {
  it('is the share of absolute pressure, and of throttle area', () => {
    const worth = worthOfADifference(1000, 40_000, 100_000);
    const ratio = throttleAreaRatio(39_000, 40_000, 100_000);
    expect(worth.ok && worth.value.moreAir).toBeCloseTo(1 / 60, 12);
    expect(worth.ok && ratio.ok && worth.value.moreOpening).toBeCloseTo(ratio.ok ? ratio.value - 1 : NaN, 12);
  });

  it('says what the shares of the two say', () => {
    const worth = worthOfADifference(2000, 30_000, 101_325);
    const shares = airShares([28_000, 30_000], 101_325);
    const [low, high] = shares.ok ? shares.value : [];
    expect(worth.ok && worth.value.moreAir).toBeCloseTo(low! / high! - 1, 12);
  });

  it('nothing is worth nothing, and the rest is refused', () => {
    expect(worthOfADifference(0, 30_000, 100_000)).toEqual({
      ok: true,
      value: { moreAir: 0, moreOpening: 0 },
    });
    expect(worthOfADifference(40_000, 30_000, 100_000).ok).toBe(false);
    expect(worthOfADifference(10, 100_000, 100_000).ok).toBe(false);
  });
});
