import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convertPressure, pressureUnits } from '../../src/calculators/index.ts';
import { tries } from '../property-runs.ts';
import { tolerances } from '../tolerances.ts';

describe('convertPressure(value, from, to): laws', () => {
  it('comes back over every pair of units', () => {
    let pairs = 0;
    for (const from of pressureUnits)
      for (const to of pressureUnits) {
        pairs += 1;
        fc.assert(
          fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
            const back = convertPressure(convertPressure(value, from, to), to, from);
            expect(Math.abs(back - value)).toBeLessThanOrEqual(
              tolerances.unitRoundTrip.relative * Math.abs(value) + 1e-300,
            );
          }),
          tries(20),
        );
      }
    expect(pairs).toBe(pressureUnits.length ** 2);
  });

  it('keeps the order and the sign', () => {
    const unit = fc.constantFrom(...pressureUnits);
    fc.assert(
      fc.property(unit, unit, fc.integer(), fc.integer(), (from, to, first, second) => {
        const [a, b] = [convertPressure(first, from, to), convertPressure(second, from, to)];
        expect(Math.sign(a)).toBe(Math.sign(first));
        expect(a < b).toBe(first < second);
      }),
    );
  });
});
