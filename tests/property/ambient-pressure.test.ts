import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  absolutePressurePa,
  altimeterSetting,
  ambientPressureFields,
  answerAmbientPressure,
  carryReading,
  depressionPa,
  initialForm,
  isentropicFlowFunction,
  sayProblem,
  stationPressure,
} from '../../src/calculators/index.ts';
import { tolerances } from '../tolerances.ts';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const ambient = within(30_000, 110_000);

const carry = (depression: number, there: number, here: number) => {
  const carried = carryReading({
    depressionPa: depressionPa(depression),
    thereAmbientPa: absolutePressurePa(there),
    hereAmbientPa: absolutePressurePa(here),
  });
  if (!carried.ok) throw new Error(JSON.stringify(carried.problem));
  return carried.value;
};

test('a setting gives the pressure of a place, and that gives the setting back', () => {
  fc.assert(
    fc.property(within(85_000, 110_000), within(-500, 9000), (setting, geometricM) => {
      const station = stationPressure(setting, { geometricM });
      if (!station.ok) throw new Error(JSON.stringify(station.problem));
      const back = altimeterSetting(station.value, { geometricM });
      expect(Math.abs((back.ok ? back.value : NaN) / setting - 1)).toBeLessThanOrEqual(
        tolerances.atmosphereIntegral.relative,
      );
    }),
  );
});

test('carried there and back, a reading is what it was', () => {
  fc.assert(
    fc.property(ambient, ambient, within(0.001, 0.999), (there, here, share) => {
      const { sameOpeningPa, sameChargePa } = carry(share * there, there, here);
      expect(carry(sameOpeningPa, here, there).sameOpeningPa / (share * there)).toBeCloseTo(1, 10);
      if (sameChargePa !== null)
        expect(
          Math.abs((carry(sameChargePa, here, there).sameChargePa ?? NaN) - share * there),
        ).toBeLessThanOrEqual(tolerances.differenceOfPressures.absolute);
    }),
  );
});

test('the same opening at the same speed: what passes the throttle is what the cylinder draws', () => {
  fc.assert(
    fc.property(ambient, ambient, within(0.01, 0.99), (there, here, share) => {
      // Opening in proportion to drawn over passed, p/(p₀ ψ(p/p₀)): it must be one and the same.
      const opening = (depression: number, air: number) =>
        (air - depression) / (air * isentropicFlowFunction((air - depression) / air));
      const { sameOpeningPa } = carry(share * there, there, here);
      expect(opening(sameOpeningPa, here) / opening(share * there, there)).toBeCloseTo(1, 9);
    }),
  );
});

test('no depression exceeds the ambient pressure of its place; thinner air never shows more', () => {
  fc.assert(
    fc.property(ambient, ambient, within(0, 1), (there, here, share) => {
      const { sameOpeningPa, sameChargePa } = carry(share * there, there, here);
      expect(sameOpeningPa).toBeLessThanOrEqual(here);
      if (here < there && sameChargePa !== null)
        expect(sameChargePa).toBeLessThanOrEqual(sameOpeningPa + 1e-9);
    }),
  );
});

test('whatever is typed, there is an answer or a problem with a sentence', () => {
  const anything = fc.oneof(
    fc.string(),
    fc.constantFrom('500 m', '1013 hPa', '250 mmHg', '1e400', '0', '-1 ft', '½ bar'),
  );
  const first = initialForm(ambientPressureFields);
  const fields = Object.keys(first) as (keyof typeof first)[];
  const ways = fc.constantFrom('altitude', 'setting', 'barometer');
  fc.assert(
    fc.property(fc.constantFrom(...fields), anything, ways, (field, typed, from) => {
      const answer = answerAmbientPressure({ ...first, from, [field]: typed });
      if (answer.ok) expect(JSON.stringify(answer.answer)).not.toMatch(/NaN|Infinity|null/);
      else for (const { sentence } of answer.problems.map(sayProblem)) expect(sentence).toMatch(/\.$/);
    }),
  );
});
