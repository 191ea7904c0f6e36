import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  answerLiquidColumn,
  computeLiquidColumn,
  initialForm,
  liquidColumnFields,
  liquidDensity,
  liquids,
  manometerPressurePa,
  manometerReadingM,
  sayProblem,
} from '../../src/calculators/index.ts';
import type { ColumnQuestion, Manometer } from '../../src/calculators/index.ts';
import { tolerances } from '../tolerances.ts';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const manometer: fc.Arbitrary<Manometer> = fc.oneof(
  fc.constant({ kind: 'u-tube' as const }),
  fc.record({
    kind: fc.constant('well' as const),
    boreM: within(0.002, 0.009),
    wellBoreM: within(0.01, 0.5),
    angleRad: within(0.09, Math.PI / 2),
  }),
);
const question: fc.Arbitrary<ColumnQuestion> = fc.record({
  kgPerM3: within(500, 15_000),
  manometer,
  boreM: within(0.002, 0.025),
  sides: fc.constantFrom('difference' as const, 'depression' as const),
  differencePa: within(1, 1e5),
  depressionPa: within(1, 1e5),
  readingM: fc.option(within(0, 20)),
});

test('a reading gives its pressure, and the pressure gives the reading back', () => {
  fc.assert(
    fc.property(within(500, 15_000), within(1e-4, 20), manometer, (density, reading, column) => {
      const back = manometerReadingM(density, manometerPressurePa(density, reading, column), column);
      expect(Math.abs(back / reading - 1)).toBeLessThanOrEqual(tolerances.unitRoundTrip.relative);
    }),
  );
});

test('nothing reaches the engine: a pot holds all liquid and more, and a heavier liquid needs less tube', () => {
  fc.assert(
    fc.property(question, within(1.01, 3), (given, heavier) => {
      const answer = computeLiquidColumn(given);
      expect(answer.catchM3).toBeGreaterThanOrEqual(2 * answer.liquidM3 * (1 - 1e-12));
      const filledM3 = (Math.PI / 4) * given.boreM ** 2 * answer.legM;
      expect(answer.liquidM3).toBeGreaterThan(filledM3);
      expect(answer.legM).toBeGreaterThan(answer.scaleM);
      expect(answer.tubeM).toBeGreaterThan(answer.legM);
      const denser = computeLiquidColumn({ ...given, kgPerM3: given.kgPerM3 * heavier });
      expect(denser.tubeM).toBeLessThan(answer.tubeM);
      expect(denser.catchM3).toBeLessThan(answer.catchM3);
    }),
  );
});

test('every liquid grows lighter as it warms, water above 4 °C', () => {
  fc.assert(
    fc.property(fc.constantFrom(...liquids), within(0, 1), within(0.01, 1), (liquid, from, further) => {
      const { min, max } = liquid.range;
      const low = Math.max(min, liquid.id === 'water' ? 4 : min, liquid.id === 'glycol-solution' ? 10 : min);
      const cool = low + (max - low) * from;
      const warm = cool + (max - cool) * further;
      fc.pre(warm - cool > 1e-3);
      const [first, second] = [liquidDensity(liquid, cool), liquidDensity(liquid, warm)];
      if (!first.ok || !second.ok) throw new Error(liquid.id);
      expect(second.value).toBeLessThan(first.value);
    }),
  );
});

test('whatever is typed, there is an answer or a problem with a sentence', () => {
  const anything = fc.oneof(
    fc.string(),
    fc.constantFrom('6 mm', '20 °C', '30 mmHg', '1e400', '0', '-1 in', '½ in'),
  );
  const first = initialForm(liquidColumnFields);
  const fields = Object.keys(first) as (keyof typeof first)[];
  fc.assert(
    fc.property(
      fc.constantFrom(...fields),
      anything,
      fc.constantFrom('u-tube', 'well', 'inclined'),
      (field, typed, kind) => {
        const answer = answerLiquidColumn({ ...first, kind, [field]: typed });
        if (answer.ok) expect(JSON.stringify(answer.answer)).not.toMatch(/NaN|Infinity|null/);
        else for (const { sentence } of answer.problems.map(sayProblem)) expect(sentence).toMatch(/\.$/);
      },
    ),
  );
});
