import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { describeTurns, formatChance, formatFixed, formatSignificant } from '../../src/calculators/index.ts';
import { tries } from '../property-runs.ts';

/** Not so small or large that a power of ten is written. */
const plain = fc.double({ min: -1e9, max: 1e9, noNaN: true });

describe('formatFixed(value, decimals): laws', () => {
  it('stays within half a unit of the last decimal, and prints exactly so many', () => {
    fc.assert(
      fc.property(plain, fc.integer({ min: 0, max: 5 }), (value, decimals) => {
        const text = formatFixed(value, decimals, { minus: 'hyphen' });
        // A double near 1e9 is itself spaced by 1.2e-7; fifteen digits of it are 1e-6.
        expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-6);
        expect(text).toMatch(decimals === 0 ? /^-?\d+$/u : new RegExp(`^-?\\d+\\.\\d{${decimals}}$`, 'u'));
      }),
    );
  });

  it('is odd: a minus sign changes nothing else', () => {
    fc.assert(
      fc.property(plain, fc.integer({ min: 0, max: 5 }), (value, decimals) => {
        const size = formatFixed(Math.abs(value), decimals);
        expect(formatFixed(-Math.abs(value), decimals)).toBe(Number(size) === 0 ? size : `−${size}`);
      }),
    );
  });

  it('never falls while the value rises', () => {
    fc.assert(
      fc.property(plain, plain, (first, second) => {
        const [low, high] = [Math.min(first, second), Math.max(first, second)].map((value) =>
          Number(formatFixed(value, 2, { minus: 'hyphen' })),
        );
        expect(low).toBeLessThanOrEqual(high ?? Number.NaN);
      }),
    );
  });
});

describe('formatSignificant(value, digits): laws', () => {
  it('prints no more digits than asked for after the whole part', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e9, noNaN: true }), (value) => {
        const text = formatSignificant(value, 4);
        const [whole = '', decimals = ''] = text.split('.');
        const digits = `${whole}${decimals}`.replace(/^0+/u, '');
        expect(decimals === '' ? 4 : digits.length).toBe(4);
        expect(Math.abs(Number(text) / value - 1)).toBeLessThanOrEqual(5.1e-4);
      }),
    );
  });
});

describe('formatChance(chance): laws', () => {
  it('is 0 % only below a half per cent and 100 % only from 99.5 up', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (chance) => {
        const text = formatChance(chance).replace('\u00a0%', '');
        // Fifteen digits are read, so a chance closer than that to a half is taken as the half.
        if (Math.abs(chance - 0.005) > 1e-15) expect(text === '0').toBe(chance < 0.005);
        if (Math.abs(chance - 0.995) > 1e-14) expect(text === '100').toBe(chance >= 0.995);
      }),
      tries(2000),
    );
  });
});

describe('describeTurns(turns): laws', () => {
  it('names every whole number of sixtieths so that it can be read back', () => {
    for (let sixtieths = 0; sixtieths <= 600; sixtieths += 1) {
      const words = describeTurns(sixtieths / 60);
      const total = words
        .split(' ')
        .map((part) => part.split('/').map(Number))
        .reduce((sum, [top = 0, bottom = 1]) => sum + top / bottom, 0);
      expect(total, words).toBeCloseTo(sixtieths / 60, 12);
      const denominator = Number(/\/(\d+)/u.exec(words)?.[1] ?? 1);
      expect([1, 2, 3, 4, 5, 6, 10, 12, 15, 20, 30, 60]).toContain(denominator);
    }
  });
});
