import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  criticalPressureRatio,
  isentropicFlowFunction,
  throttleAreaRatio,
} from '../../src/calculators/compressible-flow.ts';
import { tolerances } from '../tolerances.ts';

const ratio = fc.double({ min: 0, max: 1, noNaN: true });
const gamma = fc.double({ min: 1.1, max: 5 / 3, noNaN: true });
const { relative } = tolerances.flow;

test('the flow never falls as the pressure behind the throttle falls, and is choked below the critical ratio', () => {
  fc.assert(
    fc.property(ratio, ratio, gamma, (one, other, g) => {
      const [lower, upper] = one < other ? [one, other] : [other, one];
      expect(isentropicFlowFunction(lower, g)).toBeGreaterThanOrEqual(
        isentropicFlowFunction(upper, g) * (1 - relative),
      );
      const choked = isentropicFlowFunction(criticalPressureRatio(g), g);
      expect(isentropicFlowFunction(lower * criticalPressureRatio(g), g)).toBe(choked);
      // The greatest flow: √γ (2/(γ + 1))^((γ + 1)/(2(γ − 1))).
      const greatest = Math.sqrt(g) * (2 / (g + 1)) ** ((g + 1) / (2 * (g - 1)));
      expect(Math.abs(choked / greatest - 1)).toBeLessThanOrEqual(relative);
    }),
  );
});

const ambientPa = fc.double({ min: 3e4, max: 1.1e5, noNaN: true });
const share = fc.double({ min: 1e-4, max: 0.9999, noNaN: true });

test('of two throttles the one with the lower depression is further open; the ratio chains and has no unit', () => {
  fc.assert(
    fc.property(
      ambientPa,
      share,
      share,
      share,
      fc.double({ min: 0.1, max: 10, noNaN: true }),
      (ambient, a, b, c, unit) => {
        const between = (one: number, other: number, scale = 1) => {
          const result = throttleAreaRatio(one * ambient * scale, other * ambient * scale, ambient * scale);
          return result.ok ? result.value : NaN;
        };
        if (a < b) expect(between(a, b)).toBeGreaterThanOrEqual(1 - relative);
        expect(Math.abs((between(a, b) * between(b, c)) / between(a, c) - 1)).toBeLessThanOrEqual(relative);
        expect(Math.abs(between(a, b, unit) / between(a, b) - 1)).toBeLessThanOrEqual(relative);
      },
    ),
  );
});
