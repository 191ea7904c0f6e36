import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  analyseBalance,
  answerBalanceAnalyser,
  balanceAnalyserFields,
  convertPressure,
  generations,
  initialForm,
  pressureUnit,
  sayProblem,
} from '../../src/calculators/index.ts';
import type {
  BalanceAnalyserField,
  BalanceAnalysis,
  BalanceReadings,
  FormField,
} from '../../src/calculators/index.ts';
import { tries } from '../property-runs.ts';
import { tolerances } from '../tolerances.ts';

const near = tolerances.pressureSums.absolute;
const chanceNear = tolerances.chance.absolute;

const analyse = (given: BalanceReadings): BalanceAnalysis => {
  const result = analyseBalance(given);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
};

/** Two to six carburettors read once to three times, in any order; the first bracketed where it may be. */
const set: fc.Arbitrary<BalanceReadings> = fc.constantFrom(2, 3, 4, 6).chain((carburettors) =>
  fc
    .record({
      generation: fc.constantFrom(...generations),
      depressions: fc.array(fc.double({ min: 20_000, max: 45_000, noNaN: true }), {
        minLength: carburettors,
        maxLength: carburettors,
      }),
      repeats: fc.array(
        fc.record({
          carburettor: fc.integer({ min: 1, max: carburettors }),
          away: fc.double({ min: -800, max: 800, noNaN: true }),
        }),
        { maxLength: 2 * carburettors },
      ),
      fixed: fc.integer({ min: 1, max: carburettors }),
      resolutionPa: fc.double({ min: 100, max: 1500, noNaN: true }),
      flutterPa: fc.double({ min: 0, max: 1500, noNaN: true }),
      tolerancePa: fc.double({ min: 200, max: 5000, noNaN: true }),
      bracketed: fc.boolean(),
    })
    .map(({ generation, depressions, repeats, fixed, resolutionPa, flutterPa, tolerancePa, bracketed }) => {
      const readings = [
        ...depressions.map((depressionPa, position) => ({ carburettor: position + 1, depressionPa })),
        ...repeats.map(({ carburettor, away }) => ({
          carburettor,
          depressionPa: (depressions[carburettor - 1] ?? 30_000) + away,
        })),
      ];
      const again = { carburettor: 1, depressionPa: (depressions[0] ?? 30_000) + 100 };
      return {
        generation,
        carburettors,
        fixed,
        readings: bracketed ? [...readings, again] : readings,
        gauge: { resolutionPa, flutterPa },
        tolerancePa,
        ...(bracketed && { driftReference: 1 }),
      };
    }),
);

/** Whether no other two means are as close as the closest two. */
const closestIsAlone = ({ carburettors }: BalanceAnalysis) => {
  const gaps = carburettors.flatMap(({ meanPa }, i) =>
    carburettors.slice(i + 1).map((other) => Math.abs(other.meanPa - meanPa)),
  );
  const [closest = 0, next = Infinity] = gaps.sort((a, b) => a - b);
  return next - closest > near;
};

const runs = tries(40);

test('the chance lies within 0…1, rises with the tolerance, and gives the verdict', () => {
  fc.assert(
    fc.property(set, fc.double({ min: 1, max: 5, noNaN: true }), (given, times) => {
      const { chanceWithin, verdict, confidence } = analyse(given);
      const wider = analyse({ ...given, tolerancePa: given.tolerancePa * times });
      expect(chanceWithin).toBeGreaterThanOrEqual(0);
      expect(wider.chanceWithin).toBeLessThanOrEqual(1);
      expect(wider.chanceWithin).toBeGreaterThanOrEqual(chanceWithin - chanceNear);
      expect(verdict === 'within').toBe(chanceWithin >= confidence);
      expect(verdict === 'outside').toBe(chanceWithin <= 1 - confidence);
    }),
    runs,
  );
});

test('the numbers of the carburettors do not matter', () => {
  fc.assert(
    fc.property(set, (given) => {
      // Paired screws know who stands beside whom; every other generation does not.
      fc.pre(given.generation !== 'paired-screws');
      // Two pairs that are equally close are told apart by number.
      fc.pre(given.generation !== 'all-adjustable' || closestIsAlone(analyse(given)));
      const renumbered = (carburettor: number) => given.carburettors + 1 - carburettor;
      const mirrored = analyse({
        ...given,
        fixed: renumbered(given.fixed ?? 1),
        readings: given.readings.map((reading) => ({
          ...reading,
          carburettor: renumbered(reading.carburettor),
        })),
        ...(given.driftReference !== undefined && { driftReference: renumbered(given.driftReference) }),
      });
      const straight = analyse(given);
      expect(Math.abs(mirrored.chanceWithin - straight.chanceWithin)).toBeLessThanOrEqual(chanceNear);
      expect(Math.abs(mirrored.referencePa - straight.referencePa)).toBeLessThanOrEqual(near);
      expect(mirrored.screws.map(({ direction }) => direction).reverse()).toEqual(
        straight.screws.map(({ direction }) => direction),
      );
      for (const [position, { expandedUncertaintyPa }] of straight.carburettors.entries()) {
        const twin = mirrored.carburettors[given.carburettors - 1 - position];
        expect(Math.abs((twin?.expandedUncertaintyPa ?? NaN) - expandedUncertaintyPa)).toBeLessThanOrEqual(
          near,
        );
      }
    }),
    runs,
  );
});

test('the unit of pressure does not matter', () => {
  fc.assert(
    fc.property(set, fc.constantFrom(0.001, 1 / 133.322387415, 1000), (given, unit) => {
      const plain = analyse(given);
      const scaled = analyse({
        ...given,
        readings: given.readings.map((reading) => ({
          ...reading,
          depressionPa: reading.depressionPa * unit,
        })),
        gauge: { resolutionPa: given.gauge.resolutionPa * unit, flutterPa: given.gauge.flutterPa * unit },
        tolerancePa: given.tolerancePa * unit,
        ambientPa: 101_325 * unit,
      });
      expect(Math.abs(scaled.chanceWithin - plain.chanceWithin)).toBeLessThanOrEqual(chanceNear);
      expect(Math.abs(scaled.spreadPa / unit - plain.spreadPa)).toBeLessThanOrEqual(near);
      for (const [position, { areaRatio, deviation }] of plain.carburettors.entries()) {
        const twin = scaled.carburettors[position];
        expect(Math.abs((twin?.areaRatio ?? NaN) - (areaRatio ?? NaN))).toBeLessThanOrEqual(
          tolerances.flow.relative * 10,
        );
        expect(
          Math.abs((twin?.deviation.expandedUncertaintyPa ?? NaN) / unit - deviation.expandedUncertaintyPa),
        ).toBeLessThanOrEqual(near);
      }
    }),
    runs,
  );
});

test('turning every screw by what it has to take out levels the set', () => {
  fc.assert(
    fc.property(set, (given) => {
      const { carburettors, screws } = analyse(given);
      // A higher depression is a smaller opening: after the turns each mean has lost its screws' differences.
      const levelled = carburettors.map(({ meanPa }, i) =>
        screws.reduce((left, { moves, differencePa }) => left - (moves[i] ?? 0) * differencePa, meanPa),
      );
      expect(Math.max(...levelled) - Math.min(...levelled)).toBeLessThanOrEqual(near);
    }),
    runs,
  );
});

test('a finer gauge never has a wider uncertainty', () => {
  fc.assert(
    fc.property(set, fc.double({ min: 0.1, max: 1, noNaN: true }), (given, share) => {
      const { gauge } = given;
      const finer = analyse({
        ...given,
        gauge: { resolutionPa: gauge.resolutionPa * share, flutterPa: gauge.flutterPa * share },
      });
      for (const [position, { standardUncertaintyPa }] of analyse(given).carburettors.entries()) {
        expect(finer.carburettors[position]?.standardUncertaintyPa).toBeLessThanOrEqual(
          standardUncertaintyPa + near,
        );
      }
    }),
    runs,
  );
});

test('the uncertainty of gauges of their own widens every ± and never sharpens a verdict of equal means', () => {
  fc.assert(
    fc.property(set, fc.double({ min: 1, max: 3000, noNaN: true }), (given, offsetUncertaintyPa) => {
      const [plain, wider] = [analyse(given), analyse({ ...given, offsetUncertaintyPa })];
      for (const [position, { standardUncertaintyPa, meanPa }] of plain.carburettors.entries()) {
        const own = wider.carburettors[position];
        expect(own?.meanPa).toBe(meanPa);
        const expected = Math.hypot(standardUncertaintyPa, offsetUncertaintyPa);
        expect(Math.abs((own?.standardUncertaintyPa ?? NaN) - expected)).toBeLessThanOrEqual(near);
      }
    }),
    runs,
  );
});

test('what would settle it names a carburettor, and only where nothing is settled', () => {
  fc.assert(
    fc.property(set, (given) => {
      const { verdict, more } = analyse(given);
      expect(more === null).toBe(verdict !== 'cannot-tell');
      if (more === null) return;
      expect(more.carburettor).toBeGreaterThanOrEqual(1);
      expect(more.carburettor).toBeLessThanOrEqual(given.carburettors);
      if (more.rounds !== null) expect(more.rounds).toBeGreaterThanOrEqual(1);
    }),
    runs,
  );
});

const typedReading = fc.oneof(
  fc.integer({ min: 100, max: 400 }).map(String),
  fc.integer({ min: 1000, max: 4000 }).map((tenths) => String(tenths / 10).replace('.', ',')),
  fc.integer({ min: 4, max: 15 }).map((inches) => `${inches} 1/2 inHg`),
);

test('whatever is typed is answered or refused in words, and never throws', () => {
  const fields = Object.keys(balanceAnalyserFields) as BalanceAnalyserField[];
  const changes = fc.array(
    fc.tuple(fc.constantFrom(...fields), fc.oneof(fc.string({ maxLength: 12 }), typedReading)),
    { maxLength: 3 },
  );
  fc.assert(
    fc.property(changes, (pairs) => {
      const form = { ...initialForm(balanceAnalyserFields), ...Object.fromEntries(pairs) };
      // A choice comes from a list, or from a link that was checked against it.
      for (const [name, field] of Object.entries<FormField>(balanceAnalyserFields))
        if (field.kind === 'choice' && !field.choices.includes(form[name as BalanceAnalyserField])) return;
      const answered = answerBalanceAnalyser(form);
      if (answered.ok) expect(answered.answer.announcement).not.toMatch(/NaN|undefined|Infinity/u);
      else
        for (const { sentence, field } of answered.problems.map(sayProblem)) {
          expect(sentence.length).toBeGreaterThan(10);
          expect(fields).toContain(field);
        }
    }),
    tries(300),
  );
});

test('the same readings in another unit have the same verdict, directions and chance', () => {
  const typed = fc.array(fc.integer({ min: 1500, max: 3000 }), { minLength: 4, maxLength: 4 });
  fc.assert(
    fc.property(typed, fc.constantFrom('kPa', 'inHg', 'mbar', 'psi', 'cmH2O'), (tenths, unitId) => {
      const unit = pressureUnit(unitId);
      const inOther = (value: number) => String(convertPressure(value, pressureUnit('mmHg'), unit));
      const typedIn = (write: (value: number) => string) => ({
        ...initialForm(balanceAnalyserFields),
        readings: tenths.map((tenth, i) => `${i + 1}: ${write(tenth / 10)}`).join('; '),
        tolerance: write(20),
        resolution: write(5),
        flutter: write(3),
      });
      const [one, other] = [
        answerBalanceAnalyser(typedIn(String)),
        answerBalanceAnalyser({ ...typedIn(inOther), unit: unitId }),
      ];
      if (!one.ok || !other.ok) throw new Error(JSON.stringify([one, other]));
      expect(other.answer.verdict).toBe(one.answer.verdict);
      expect(other.answer.advice).toBe(one.answer.advice);
      expect(other.answer.screws.map(({ text }) => text)).toEqual(one.answer.screws.map(({ text }) => text));
      expect(other.answer.sentence.split(' ').at(-1)).toBe(one.answer.sentence.split(' ').at(-1));
    }),
    tries(60),
  );
});
