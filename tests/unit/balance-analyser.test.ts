import { describe, expect, test } from 'vitest';
import { analyseBalance } from '../../src/calculators/balance-analyser.ts';
import { balanceAnalyserFields } from '../../src/calculators/balance-analyser-form.ts';
import type { BalanceAnalysis, BalanceReadings } from '../../src/calculators/balance-analysis.ts';
import { initialForm } from '../../src/calculators/calculator-form.ts';
import { conventionalMercuryDensity, standardGravity } from '../../src/calculators/exact-definitions.ts';
import { generations } from '../../src/calculators/linkage.ts';
import { parseBalanceAnalyser } from '../../src/calculators/parse-balance-analyser.ts';
import { normalCdf } from '../../src/calculators/normal.ts';
import { studentTQuantile } from '../../src/calculators/student-t-quantile.ts';
import { tolerances } from '../tolerances.ts';

const mmHg = (conventionalMercuryDensity * standardGravity) / 1000;
const near = tolerances.pressureSums.absolute;

const analyse = (given: BalanceReadings): BalanceAnalysis => {
  const result = analyseBalance(given);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
};

const problemOf = (given: BalanceReadings) => {
  const result = analyseBalance(given);
  return result.ok ? undefined : result.problem;
};

/** A set read once each, in order. */
const once = (depressions: readonly number[], more: Partial<BalanceReadings> = {}): BalanceReadings => ({
  generation: 'separate-cables',
  carburettors: depressions.length,
  readings: depressions.map((depression, position) => ({
    carburettor: position + 1,
    depressionPa: depression * mmHg,
  })),
  gauge: { resolutionPa: 5 * mmHg, flutterPa: 3 * mmHg },
  tolerancePa: 20 * mmHg,
  ...more,
});

const four = [212, 248, 251, 187] as const;

describe('the worked example', () => {
  const parsed = parseBalanceAnalyser(initialForm(balanceAnalyserFields));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  const analysis = analyse(parsed.value.given);

  test('takes 1 mmHg a reading out, referred to the middle of the round', () => {
    expect((analysis.drift?.perReadingPa ?? NaN) / mmHg).toBeCloseTo(1, 9);
    const means = analysis.carburettors.map(({ meanPa }) => meanPa / mmHg);
    for (const [position, expected] of [213, 250, 251, 186].entries()) {
      expect(means[position]).toBeCloseTo(expected, 9);
    }
  });

  test('is outside: closes 1 and 4, and cannot tell 3 from 2', () => {
    expect(analysis.matchedTo).toEqual({ kind: 'carburettor', carburettor: 2 });
    expect(analysis.screws.map(({ direction, real }) => [direction, real])).toEqual([
      ['close', true],
      ['open', false],
      ['close', true],
    ]);
    expect([analysis.highest, analysis.lowest, analysis.verdict]).toEqual([3, 4, 'outside']);
    expect(analysis.spreadPa / mmHg).toBeCloseTo(65, 9);
  });

  test('is plain JSON', () => {
    expect(JSON.parse(JSON.stringify(analysis))).toEqual(analysis);
  });
});

describe('uncertainty of a mean', () => {
  test('of one reading is √(a²/3 + r²/12), times 1.96', () => {
    const [first] = analyse(once(four)).carburettors;
    const u = Math.sqrt(9 / 3 + 25 / 12) * mmHg;
    expect(Math.abs((first?.standardUncertaintyPa ?? NaN) - u)).toBeLessThanOrEqual(near);
    expect(first?.degreesOfFreedom).toBeNull();
    expect(Math.abs((first?.expandedUncertaintyPa ?? NaN) - 1.959963984540054 * u)).toBeLessThanOrEqual(near);
  });

  test('of several has the scatter in it, and Student’s t of the degrees of freedom that it rests on', () => {
    const readings = [210, 214, 218, 250].map((depression, k) => ({
      carburettor: k < 3 ? 1 : 2,
      depressionPa: depression * mmHg,
    }));
    const [first] = analyse({ ...once([210, 250]), readings }).carburettors;
    const scatter = 16 / 3;
    const variance = scatter + 9 / 3 / 3 + 25 / 12;
    const degreesOfFreedom = variance ** 2 / (scatter ** 2 / 2);
    expect(first?.readings).toBe(3);
    expect(first?.degreesOfFreedom).toBeCloseTo(degreesOfFreedom, 9);
    const expanded = studentTQuantile(0.975, degreesOfFreedom) * Math.sqrt(variance) * mmHg;
    expect(Math.abs((first?.expandedUncertaintyPa ?? NaN) - expanded)).toBeLessThanOrEqual(near);
  });
});

describe('a gauge for every carburettor', () => {
  test('adds the uncertainty of its correction to every mean, and no repeat reading takes it out', () => {
    const given = once([250, 250, 250], { offsetUncertaintyPa: 4 * mmHg });
    const [first] = analyse(given).carburettors;
    const u = Math.sqrt(9 / 3 + 25 / 12 + 16) * mmHg;
    expect(Math.abs((first?.standardUncertaintyPa ?? NaN) - u)).toBeLessThanOrEqual(near);
    expect(analyse(given).spread.expandedUncertaintyPa / (1.959963984540054 * Math.SQRT2 * u)).toBeCloseTo(
      1,
      9,
    );
    expect(problemOf({ ...given, offsetUncertaintyPa: -1 })).toMatchObject({ field: 'offsetUncertaintyPa' });
  });
});

describe('the spread as a difference of two', () => {
  test('is highest less lowest, with the uncertainty of both', () => {
    const { spread, spreadPa } = analyse(once(four));
    expect(spread.differencePa).toBeCloseTo(spreadPa, 6);
    expect(spread.real).toBe(true);
    const u = Math.sqrt(2 * (9 / 3 + 25 / 12)) * mmHg;
    expect(Math.abs(spread.expandedUncertaintyPa - 1.959963984540054 * u)).toBeLessThanOrEqual(near);
    const alike = analyse(once([250, 250, 250]));
    expect(alike.spread).toEqual({
      differencePa: 0,
      expandedUncertaintyPa: spread.expandedUncertaintyPa,
      real: false,
    });
    expect([alike.highest, alike.lowest]).toEqual([1, 3]);
  });
});

describe('what would settle it', () => {
  test('nothing where it is settled', () => {
    expect(analyse(once(four)).more).toBeNull();
    expect(analyse(once([250, 251, 249, 250])).more).toBeNull();
  });

  test('a round or more of readings, beginning with the one that may leave at either end', () => {
    // The needle swings by 12, the step is 1: readings help. 250 to 244 is well within 16.
    const given = once([250, 244, 247], {
      gauge: { resolutionPa: mmHg, flutterPa: 12 * mmHg },
      tolerancePa: 16 * mmHg,
    });
    const { verdict, more, chanceWithin } = analyse(given);
    expect(verdict).toBe('cannot-tell');
    expect(more?.rounds).toBe(3);
    expect(more?.carburettor).toBe(3);
    // As foreseen: three more of each decide, two more do not.
    const again = (times: number) =>
      analyse({ ...given, readings: Array.from({ length: times }, () => given.readings).flat() });
    expect(again(3).verdict).toBe('cannot-tell');
    expect(again(4).verdict).toBe('within');
    expect(again(2).chanceWithin).toBeGreaterThan(chanceWithin);
  });

  test('no number of readings where the step is coarse beside the tolerance', () => {
    expect(analyse(once([250, 232])).more).toEqual({ carburettor: 1, rounds: null });
  });

  test('the scatter that was seen stays', () => {
    const scattered = [210, 218, 226, 232, 224, 228].map((depression, k) => ({
      carburettor: k < 3 ? 1 : 2,
      depressionPa: depression * mmHg,
    }));
    const given = { ...once([0, 0]), readings: scattered, gauge: { resolutionPa: mmHg, flutterPa: 0 } };
    const { verdict, more } = analyse(given);
    expect(verdict).toBe('cannot-tell');
    // The first scatters twice as much as the second, so it tells more.
    expect(more?.carburettor).toBe(1);
    expect(more?.rounds).toBeGreaterThan(1);
  });
});

describe('chance and verdict', () => {
  test('two read once each: the closed form', () => {
    const { chanceWithin } = analyse(once([250, 240], { tolerancePa: 12 * mmHg }));
    const sigma = Math.sqrt(2 * (9 / 3 + 25 / 12));
    const expected = normalCdf((12 - 10) / sigma) - normalCdf((-12 - 10) / sigma);
    expect(Math.abs(chanceWithin - expected)).toBeLessThanOrEqual(tolerances.chance.absolute);
  });

  test('within, cannot tell and outside', () => {
    expect(analyse(once([250, 251, 249, 250])).verdict).toBe('within');
    expect(analyse(once([250, 268, 249, 250])).verdict).toBe('cannot-tell');
    expect(analyse(once(four)).verdict).toBe('outside');
  });

  test('a lower confidence decides what a higher one cannot', () => {
    const given = once([250, 262, 249, 250]);
    const { chanceWithin } = analyse(given);
    expect(chanceWithin).toBeGreaterThan(0.9);
    expect(chanceWithin).toBeLessThan(0.999);
    expect(analyse({ ...given, confidence: 0.9 }).verdict).toBe('within');
    expect(analyse({ ...given, confidence: 0.999 }).verdict).toBe('cannot-tell');
  });

  test('a spread equal to the tolerance cannot be told', () => {
    const { chanceWithin, verdict } = analyse(once([250, 230]));
    expect(chanceWithin).toBeGreaterThan(0.4);
    expect(chanceWithin).toBeLessThan(0.6);
    expect(verdict).toBe('cannot-tell');
  });
});

describe('what each generation is matched to, and which way its screws go', () => {
  const directions = (more: Partial<BalanceReadings>) => {
    const { matchedTo, referencePa, screws } = analyse(once(four, more));
    return [
      matchedTo.kind,
      Number((referencePa / mmHg).toFixed(9)),
      screws.map(({ direction }) => direction).join(' '),
    ];
  };

  test('separate-cables: the mean', () => {
    expect(directions({ generation: 'separate-cables' })).toEqual(['mean', 224.5, 'close open open close']);
  });

  test('all-adjustable: the two closest', () => {
    expect(directions({ generation: 'all-adjustable' })).toEqual([
      'closest-two',
      249.5,
      'close close open close',
    ]);
  });

  test('fixed-reference: the fixed one', () => {
    expect(directions({ generation: 'fixed-reference', fixed: 1 })).toEqual([
      'carburettor',
      212,
      'open open close',
    ]);
  });

  test('paired-screws: 1 against 2, 4 against 3, pair against pair', () => {
    expect(directions({ generation: 'paired-screws' })).toEqual(['mean', 224.5, 'close close open']);
    const differences = analyse(once(four, { generation: 'paired-screws' })).screws.map(({ differencePa }) =>
      Math.round(differencePa / mmHg),
    );
    expect(differences).toEqual([212 - 248, 187 - 251, 251 - 248]);
  });

  test('bypass-screws: the body left alone, else the mean', () => {
    expect(directions({ generation: 'bypass-screws', fixed: 4 })).toEqual([
      'carburettor',
      187,
      'open open open',
    ]);
    expect(directions({ generation: 'bypass-screws' })).toEqual(['mean', 224.5, 'close open open close']);
  });

  test('a set that reads alike has nothing to turn and nothing real', () => {
    for (const generation of generations) {
      const { screws, carburettors, spreadPa } = analyse(
        once([250, 250, 250, 250], { generation, fixed: 1 }),
      );
      expect(spreadPa).toBe(0);
      expect(screws.length).toBeGreaterThanOrEqual(3);
      expect(carburettors.some(({ deviation }) => deviation.real)).toBe(false);
      for (const { differencePa, real, direction } of screws) {
        expect(direction).toBe('none');
        expect(Math.abs(differencePa)).toBeLessThanOrEqual(near);
        expect(real).toBe(false);
      }
    }
  });
});

describe('a difference is real where it exceeds its expanded uncertainty', () => {
  test('two carburettors about their mean', () => {
    // Half the difference; u = √(2 · 5.083)/2 = 1.594 mmHg, expanded 3.125.
    const real = (apart: number) => analyse(once([250, 250 + apart])).screws.map((screw) => screw.real);
    expect(real(6)).toEqual([false, false]);
    expect(real(6.5)).toEqual([true, true]);
  });
});

describe('speed and drift', () => {
  test('readings are referred to the target speed', () => {
    const given = once([250, 245], { speed: { targetRpm: 2000, sensitivityPaPerRpm: -0.05 * mmHg } });
    const [first, second] = given.readings;
    if (first === undefined || second === undefined) throw new Error('two readings are made above');
    const analysis = analyse({ ...given, readings: [first, { ...second, rpm: 2100 }] });
    expect(analysis.carburettors.map(({ meanPa }) => Math.round(meanPa / mmHg))).toEqual([250, 250]);
  });

  test('a drift that is a straight line is taken out wholly', () => {
    const truth = [240, 250, 260];
    const readings = [1, 2, 2, 3, 3, 3, 1].map((carburettor, order) => ({
      carburettor,
      depressionPa: ((truth[carburettor - 1] ?? NaN) + 1.5 * order) * mmHg,
    }));
    const analysis = analyse({ ...once(truth), readings, driftReference: 1 });
    expect((analysis.drift?.perReadingPa ?? NaN) / mmHg).toBeCloseTo(1.5, 9);
    expect(analysis.spreadPa / mmHg).toBeCloseTo(20, 9);
    expect(analyse({ ...once(truth), readings }).spreadPa / mmHg).not.toBeCloseTo(20, 3);
  });

  test('the drift’s own uncertainty widens what lies far from the middle, and the chance knows that it is shared', () => {
    const readings = [1, 2, 3, 1].map((carburettor) => ({ carburettor, depressionPa: 250 * mmHg }));
    const given = { ...once([250, 250, 250]), readings };
    const plain = analyse(given);
    const drifted = analyse({ ...given, driftReference: 1 });
    expect(drifted.drift?.perReadingPa).toBe(0);
    // Orders 0…3 about 1.5; slope variance σ²/4.5; carburettor 2 lies 0.5 away.
    const sigma = Math.sqrt(9 / 3 + 25 / 12) * mmHg;
    const expected = sigma * Math.sqrt(1 + 0.25 / 4.5);
    expect(Math.abs((drifted.carburettors[1]?.standardUncertaintyPa ?? NaN) - expected)).toBeLessThanOrEqual(
      near,
    );
    expect(drifted.chanceWithin).toBeLessThan(plain.chanceWithin);
  });
});

test('the ratio of openings is above 1 where the depression is lower, and null at no depression', () => {
  const { carburettors } = analyse(once(four, { generation: 'fixed-reference', fixed: 2 }));
  const ratios = carburettors.map(({ areaRatio }) => areaRatio ?? NaN);
  expect(ratios[1]).toBe(1);
  expect(ratios[3]).toBeGreaterThan(ratios[0] ?? NaN);
  expect(ratios[0]).toBeGreaterThan(1);
  expect(ratios[2]).toBeLessThan(1);
  expect(analyse(once([0, 250])).carburettors[0]?.areaRatio).toBeNull();
});

describe('what is wrong is named', () => {
  test.each([1, 9, 2.5])('%d carburettors', (carburettors) => {
    expect(problemOf({ ...once(four), carburettors })).toMatchObject({
      kind: 'carburettor-count',
      value: carburettors,
    });
  });

  test('no reading of one, no readings at all', () => {
    const given = once(four);
    expect(problemOf({ ...given, readings: given.readings.slice(0, 3) })).toEqual({
      kind: 'no-readings',
      field: 'carburettors.3',
    });
    expect(problemOf({ ...given, readings: [] })).toEqual({ kind: 'no-readings', field: 'carburettors.0' });
  });

  test('linkage', () => {
    expect(problemOf(once(four, { generation: 'fixed-reference' }))).toEqual({ kind: 'fixed-needed' });
    expect(problemOf(once(four, { generation: 'fixed-reference', fixed: 5 }))).toMatchObject({
      kind: 'index',
    });
    expect(problemOf(once([1, 2, 3, 4, 5], { generation: 'paired-screws' }))).toMatchObject({
      kind: 'groups-needed',
    });
  });

  test('readings', () => {
    const [, ...rest] = once(four).readings;
    const withFirst = (carburettor: number, depressionPa: number, rpm = 2000) =>
      problemOf({ ...once(four), readings: [{ carburettor, depressionPa, rpm }, ...rest] });
    expect(withFirst(5, 100)).toMatchObject({ kind: 'index', field: 'readings.0.carburettor', value: 5 });
    expect(withFirst(1, -1)).toMatchObject({ kind: 'out-of-range', field: 'readings.0.depressionPa' });
    expect(withFirst(1, 101_325)).toMatchObject({ kind: 'depression-beyond-ambient' });
    expect(withFirst(1, NaN)).toMatchObject({ kind: 'not-finite', field: 'readings.0.depressionPa' });
    expect(withFirst(1, 100, -1)).toMatchObject({ kind: 'out-of-range', field: 'readings.0.rpm' });
    expect(withFirst(1, 0)).toBeUndefined();
  });

  test('gauge, tolerance, confidence, ambient pressure and speed', () => {
    const gauge = { resolutionPa: 1, flutterPa: 1 };
    const cases: readonly (readonly [string, Partial<BalanceReadings>])[] = [
      ['gauge.resolutionPa', { gauge: { ...gauge, resolutionPa: 0 } }],
      ['gauge.flutterPa', { gauge: { ...gauge, flutterPa: -1 } }],
      ['tolerancePa', { tolerancePa: 0 }],
      ['confidence', { confidence: 0.4999 }],
      ['confidence', { confidence: 0.9991 }],
      ['ambientPa', { ambientPa: -1 }],
      ['speed.targetRpm', { speed: { targetRpm: 0, sensitivityPaPerRpm: 1 } }],
    ];
    for (const [field, more] of cases) {
      expect(problemOf(once(four, more))).toMatchObject({ kind: 'out-of-range', field });
    }
    expect(problemOf(once(four, { tolerancePa: Infinity }))).toEqual({
      kind: 'not-finite',
      field: 'tolerancePa',
    });
    expect(problemOf(once(four, { speed: { targetRpm: 1, sensitivityPaPerRpm: NaN } }))).toEqual({
      kind: 'not-finite',
      field: 'speed.sensitivityPaPerRpm',
    });
  });

  test('a correction for speed that leaves no depression', () => {
    const [, ...rest] = once(four).readings;
    const speed = { targetRpm: 2000, sensitivityPaPerRpm: 100 };
    const readings = [{ carburettor: 1, depressionPa: 10_000, rpm: 2200 }, ...rest];
    expect(problemOf({ ...once(four), readings, speed })).toEqual({
      kind: 'impossible-correction',
      field: 'speed',
      carburettor: 1,
      depressionPa: -10_000,
    });
    const up = { ...speed, sensitivityPaPerRpm: -1000 };
    expect(problemOf({ ...once(four), readings, speed: up })).toMatchObject({ depressionPa: 210_000 });
  });

  test('drift reference', () => {
    expect(problemOf(once(four, { driftReference: 2 }))).toEqual({
      kind: 'too-few-readings',
      field: 'driftReference',
      value: 1,
      limit: { min: 2 },
    });
    expect(problemOf(once(four, { driftReference: 7 }))).toMatchObject({
      kind: 'index',
      field: 'driftReference',
    });
  });
});
