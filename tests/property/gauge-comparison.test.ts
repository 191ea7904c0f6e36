import oracleQuantile from '@stdlib/stats-base-dists-t-quantile';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  answerGaugeComparison,
  bracketsOf,
  compareGauges,
  gaugeComparisonFields,
  initialForm,
  inUnit,
  pressureUnits,
  sayProblem,
} from '../../src/calculators/index.ts';
import type { GaugeComparison, GaugeQuestion, GaugeReadings } from '../../src/calculators/index.ts';
import { tries } from '../property-runs.ts';
import { tolerances } from '../tolerances.ts';

const depression = fc.double({ min: 5000, max: 60_000, noNaN: true });
const { absolute } = tolerances.pressureSums;

/** Two to eight gauges with so many figures each. */
const questions: fc.Arbitrary<GaugeQuestion> = fc
  .record({ gauges: fc.integer({ min: 2, max: 8 }), rounds: fc.integer({ min: 1, max: 6 }) })
  .chain(({ gauges, rounds }) =>
    fc.record({
      read: fc.constantFrom('in-turn', 'in-rounds'),
      readings: fc.array(
        fc
          .array(depression, { minLength: rounds, maxLength: rounds })
          .map(([first = 0, ...others]): GaugeReadings => [first, ...others]),
        { minLength: gauges, maxLength: gauges },
      ),
      readingsPerRound: fc.constant(Array.from({ length: gauges }, () => 1)),
      gauge: fc.record({
        resolutionPa: fc.double({ min: 1, max: 1000, noNaN: true }),
        flutterPa: fc.double({ min: 0, max: 1000, noNaN: true }),
      }),
      reference: fc.oneof(fc.constant(null), fc.integer({ min: 1, max: gauges })),
      permissiblePa: fc.array(fc.oneof(fc.constant(null), fc.double({ min: 10, max: 5000, noNaN: true })), {
        minLength: gauges,
        maxLength: gauges,
      }),
      confidence: fc.constant(0.95),
    }),
  );

function compared(question: GaugeQuestion): GaugeComparison {
  const result = compareGauges(question);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
}

const close = (one: number, other: number) =>
  expect(Math.abs(one - other)).toBeLessThanOrEqual(absolute + 1e-9 * Math.abs(other));

test('offsets from the mean add up to nothing; the reference has none', () => {
  fc.assert(
    fc.property(questions, (question) => {
      const { gauges, reference } = compared(question);
      if (reference === null)
        close(
          gauges.reduce((sum, { differencePa }) => sum + differencePa, 0),
          0,
        );
      else
        expect(gauges[reference - 1]).toMatchObject({
          differencePa: 0,
          expandedUncertaintyPa: 0,
          real: false,
        });
    }),
  );
});

test('gauges in another order have the same offsets', () => {
  fc.assert(
    fc.property(questions, (question) => {
      const turned = <Item>(items: readonly Item[]): Item[] => [...items].reverse();
      const { reference, readings } = question;
      const other = compared({
        ...question,
        readings: turned(readings),
        permissiblePa: turned(question.permissiblePa),
        reference: reference === null ? null : readings.length + 1 - reference,
      });
      const same = turned(other.gauges);
      for (const [i, gauge] of compared(question).gauges.entries()) {
        close(same[i]?.differencePa ?? NaN, gauge.differencePa);
        close(same[i]?.expandedUncertaintyPa ?? NaN, gauge.expandedUncertaintyPa);
        close(same[i]?.allowedPa ?? -1, gauge.allowedPa ?? -1);
      }
    }),
  );
});

test('what all gauges share, and in rounds what a whole round shares, changes no offset', () => {
  fc.assert(
    fc.property(questions, fc.array(depression, { minLength: 6, maxLength: 6 }), (question, shifts) => {
      const inRounds: GaugeQuestion = { ...question, read: 'in-rounds' };
      const shifted = question.readings.map((own): GaugeReadings => {
        const [first = 0, ...others] = own.map((value, round) => value + (shifts[round] ?? 0));
        return [first, ...others];
      });
      const [before, after] = [compared(inRounds), compared({ ...inRounds, readings: shifted })];
      for (const [i, gauge] of before.gauges.entries()) {
        close(after.gauges[i]?.differencePa ?? NaN, gauge.differencePa);
        close(after.gauges[i]?.expandedUncertaintyPa ?? NaN, gauge.expandedUncertaintyPa);
      }
    }),
  );
});

test('two gauges against the first: the ± of Welch’s test with the told parts, by another t', () => {
  fc.assert(
    fc.property(questions, (whole) => {
      const [first, second] = whole.readings;
      if (first === undefined || second === undefined) throw new Error('two gauges at least');
      const question: GaugeQuestion = {
        ...whole,
        read: 'in-turn',
        readings: [first, second],
        reference: 1,
      };
      const { resolutionPa, flutterPa } = question.gauge;
      const parts = [first, second].flatMap((own) => {
        const n = own.length;
        const centre = own.reduce((sum, value) => sum + value, 0) / n;
        const s2 = own.reduce((sum, value) => sum + (value - centre) ** 2, 0) / (n - 1 || 1);
        const variance = s2 / n + flutterPa ** 2 / (3 * n) + resolutionPa ** 2 / 12;
        // `combine` carries the degrees of freedom of a whole mean.
        const degrees = n > 1 ? (variance ** 2 / (s2 / n) ** 2) * (n - 1) : Infinity;
        return [{ variance, degrees }];
      });
      const variance = parts.reduce((sum, part) => sum + part.variance, 0);
      const fourth = parts.reduce((sum, part) => sum + part.variance ** 2 / part.degrees, 0);
      const degrees = fourth > 0 ? variance ** 2 / fourth : Infinity;
      const t = degrees > 1e12 ? 1.959963984540054 : oracleQuantile(0.975, degrees);
      close(compared(question).gauges[1]?.expandedUncertaintyPa ?? NaN, t * Math.sqrt(variance));
    }),
  );
});

test('a drift that grows evenly falls out of a swap, whatever its size', () => {
  fc.assert(
    fc.property(
      depression,
      fc.double({ min: -2000, max: 2000, noNaN: true }),
      fc.double({ min: -500, max: 500, noNaN: true }),
      fc.constantFrom('aba', 'abba'),
      fc.integer({ min: 1, max: 5 }),
      (level, difference, drift, order, runs) => {
        const pattern = Array.from({ length: runs }, () => [...order]).flat();
        const readings = pattern.map((gauge, k) => level + drift * k + (gauge === 'b' ? difference : 0));
        const brackets = bracketsOf(readings, order);
        if (!brackets.ok) throw new Error(JSON.stringify(brackets.problem));
        expect(brackets.value).toHaveLength(runs);
        for (const { a, b } of brackets.value) close(b - a, difference);
      },
    ),
  );
});

test('within the classes: a gauge that is right, never one that is off by more than all together', () => {
  fc.assert(
    fc.property(questions, (question) => {
      for (const { keepsToClass, allowedPa, differencePa, expandedUncertaintyPa } of compared(question).gauges) {
        if (keepsToClass === 'yes') expect(Math.abs(differencePa)).toBeLessThanOrEqual(allowedPa ?? 0);
        if (keepsToClass === 'no') expect(Math.abs(differencePa)).toBeGreaterThan(allowedPa ?? Infinity);
        if (keepsToClass === 'cannot-tell') expect(expandedUncertaintyPa).toBeGreaterThan(0);
      }
    }),
  );
}); // prettier-ignore

test('the same readings in another unit have the same offsets', () => {
  const usual = pressureUnits.filter(({ rare }) => !rare);
  const form = initialForm(gaugeComparisonFields);
  const pascals = { readings1: [30000, 30500], readings2: [31000, 31200] } as const;
  const offset = (unitId: string) => {
    const unit = usual.find(({ id }) => id === unitId) ?? usual[0];
    if (unit === undefined) throw new Error('no units');
    const list = (values: readonly number[]) => values.map((value) => inUnit(value, unit)).join('; ');
    const answer = answerGaugeComparison({
      ...form,
      gauges: '2',
      unit: unit.id,
      readings1: list(pascals.readings1),
      readings2: list(pascals.readings2),
      resolution: String(inUnit(500, unit)),
      flutter: String(inUnit(300, unit)),
      engine: '',
      class1: 'none',
      class2: 'none',
    });
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    return (answer.answer.marks[1]?.offset ?? NaN) * unit.pascals;
  };
  for (const { id } of usual) close(offset(id), 425);
});

test('any text in any field is answered in words or with a sentence', () => {
  const form = initialForm(gaugeComparisonFields);
  const fields = ['readings1', 'swap', 'resolution', 'flutter', 'span1', 'engine'] as const;
  const typed = fc.oneof(fc.string(), fc.double().map(String), fc.constantFrom('1; 2; 3; 4', '½', '1e9'));
  fc.assert(
    fc.property(
      fc.constantFrom('in-turn', 'together', 'abba', 'aba'),
      fc.constantFrom(...fields),
      typed,
      (way, field, text) => {
        const answer = answerGaugeComparison({ ...form, way, [field]: text });
        if (answer.ok) expect(JSON.stringify(answer.answer)).not.toMatch(/NaN|undefined/u);
        else for (const { sentence } of answer.problems.map(sayProblem)) expect(sentence).toMatch(/\.$/u);
      },
    ),
    tries(500),
  );
});
