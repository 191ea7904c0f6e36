import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  convertMeasure,
  densities,
  engineSpeeds,
  fromSi,
  lengths,
  parseMeasure,
  speeds,
  temperatureDifferences,
  temperatures,
  threadPitches,
  torques,
  toSi,
  volumeFlows,
  volumes,
} from '../../src/calculators/index.ts';
import { anyCharacter } from '../any-character.ts';
import { tries } from '../property-runs.ts';
import { tolerances } from '../tolerances.ts';

const proportional = [
  lengths,
  torques,
  temperatureDifferences,
  volumes,
  speeds,
  engineSpeeds,
  densities,
  volumeFlows,
];
const families = [...proportional, temperatures, threadPitches];

describe('convertMeasure(figure, from, to): laws', () => {
  for (const family of families)
    it(`${family.name}: comes back over every pair of units`, () => {
      for (const from of family.units)
        for (const to of family.units)
          fc.assert(
            fc.property(fc.double({ min: 1e-3, max: 1e6, noNaN: true }), (figure) => {
              const back = convertMeasure(convertMeasure(figure, from, to), to, from);
              const slack = family === temperatures ? tolerances.temperature.absolute : 0;
              expect(Math.abs(back - figure)).toBeLessThanOrEqual(
                tolerances.unitRoundTrip.relative * figure + slack,
              );
            }),
            tries(20),
          );
    });

  it('keeps the order, but for threads per inch, which turn it round', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...families.flatMap((family) => family.units.map((from) => ({ family, from })))),
        fc.nat(),
        fc.integer({ min: 1, max: 1_000_000 }),
        fc.integer({ min: 1, max: 1_000_000 }),
        ({ family, from }, index, first, second) => {
          const to = family.units[index % family.units.length] ?? from;
          const turned = (from.scale.kind === 'reciprocal') !== (to.scale.kind === 'reciprocal');
          const [a, b] = [convertMeasure(first, from, to), convertMeasure(second, from, to)];
          expect(turned ? a > b : a < b).toBe(first < second);
        },
      ),
    );
  });

  it('a difference of two temperatures is the same whether it is taken before or after', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(0, 1, 2),
        fc.constantFrom(0, 1, 2),
        fc.double({ min: -400, max: 4000, noNaN: true }),
        fc.double({ min: -400, max: 4000, noNaN: true }),
        (i, j, first, second) => {
          const [from, to] = [temperatures.units[i], temperatures.units[j]];
          const [step, stepTo] = [temperatureDifferences.units[i], temperatureDifferences.units[j]];
          if (!from || !to || !step || !stepTo) throw new Error('no unit');
          const before = convertMeasure(first - second, step, stepTo);
          const after = convertMeasure(first, from, to) - convertMeasure(second, from, to);
          expect(Math.abs(before - after)).toBeLessThan(tolerances.temperature.absolute);
        },
      ),
    );
  });
});

describe('parseMeasure(typed, family, usualUnitId): laws', () => {
  it('reads back every figure with every unit, by symbol and by alias', () => {
    for (const family of families)
      for (const unit of family.units)
        fc.assert(
          fc.property(
            fc.constantFrom(unit.symbol, unit.name, ...unit.aliases),
            fc.integer({ min: 1, max: 99_999 }),
            (spelling, figure) => {
              const parsed = parseMeasure(`${figure} ${spelling}`, family, unit.id);
              if (!parsed.ok) throw new Error(`${figure} ${spelling}: ${parsed.problem.kind}`);
              expect(parsed.value.unit).toBe(unit);
              expect(fromSi(toSi(figure, unit), unit)).toBeCloseTo(figure, 6);
            },
          ),
          tries(20),
        );
  });

  it('answers or refuses, whatever is typed, and never gives what cannot be', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...families),
        fc.oneof(fc.string({ unit: anyCharacter }), fc.double().map(String)),
        (family, typed) => {
          const parsed = parseMeasure(typed, family, family.units[0].id);
          if (!parsed.ok) return;
          expect(Number.isFinite(parsed.value.value)).toBe(true);
          if (family.limit) expect(parsed.value.value).toBeGreaterThanOrEqual(0);
        },
      ),
      tries(1000),
    );
  });
});
