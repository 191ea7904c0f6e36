import { describe, expect, it } from 'vitest';
import { airShares } from '../../src/calculators/index.ts';

const ambientPa = 100_000;

describe('airShares(depressions, ambient) gives what each cylinder draws over the mean of all', () => {
  it('is 1 for every cylinder of a level set', () => {
    const shares = airShares([40_000, 40_000, 40_000], ambientPa);
    expect(shares.ok && shares.value).toEqual([1, 1, 1]);
  });

  it('gives the cylinder with the lower depression more', () => {
    // Absolute pressures of 50 and 70 kPa, 60 on average.
    const shares = airShares([50_000, 30_000], ambientPa);
    expect(shares.ok && shares.value[0]).toBeCloseTo(5 / 6, 12);
    expect(shares.ok && shares.value[1]).toBeCloseTo(7 / 6, 12);
  });

  it('has a mean of 1 whatever the readings', () => {
    const shares = airShares([12_000, 33_000, 41_500, 60_250], ambientPa);
    const sum = shares.ok ? shares.value.reduce((total, share) => total + share, 0) : NaN;
    expect(sum / 4).toBeCloseTo(1, 12);
  });

  it.each([
    [[40_000, 100_000], 'depression-beyond-ambient'],
    [[-1, 40_000], 'out-of-range'],
    [[NaN, 40_000], 'not-finite'],
  ] as const)('refuses %j as %s', (depressions, kind) => {
    const shares = airShares([...depressions], ambientPa);
    expect(!shares.ok && shares.problem.kind).toBe(kind);
  });
});
