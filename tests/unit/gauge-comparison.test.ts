import { describe, expect, test } from 'vitest';
import {
  answerBalanceAnalyser,
  answerGaugeComparison,
  balanceAnalyserFields,
  compareGauges,
  gaugeComparisonFields,
  initialForm,
  parseCalculatorLink,
  parseGaugeComparison,
  sayProblem,
  studentTQuantile,
} from '../../src/calculators/index.ts';
import type { GaugeField, GaugeQuestion } from '../../src/calculators/index.ts';

const example = initialForm(gaugeComparisonFields);
const unknownClasses = Object.fromEntries([1, 2, 3, 4].map((gauge) => [`class${gauge}`, 'none']));

function described(part: Partial<Record<GaugeField, string>>) {
  const answer = answerGaugeComparison({ ...example, ...part });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.answer;
}

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const offsets = (part: Partial<Record<GaugeField, string>>) =>
  described(part).offsets.map(({ text }) => plain(text));

describe('the worked example', () => {
  const answer = described({});

  test('offsets, what is real, and the sentence', () => {
    expect(answer.lead).toBe('Gauge 4 reads 20.4\u00a0mmHg high against the mean of all.');
    expect(offsets({})).toEqual([
      '−4.6 ± 3.5 mmHg',
      '−12.9 ± 3.5 mmHg',
      '−2.9 ± 3.5 mmHg',
      '+20.4 ± 3.5 mmHg',
    ]);
    expect(answer.offsets.map(({ note }) => plain(note ?? ''))).toEqual([
      'mean 251.7 mmHg of 3; real',
      'mean 243.3 mmHg of 3; real',
      'mean 253.3 mmHg of 3; may be chance',
      'mean 276.7 mmHg of 3; real',
    ]);
    expect(answer.offsets[0]?.copied).toBe('-4.6 ± 3.5 mmHg');
    expect(answer.announcement).toContain('3 of 4 offsets are real.');
    expect(answer.marks[3]).toMatchObject({ gauge: 4, label: '+20.4 ± 3.5' });
    expect(answer.marks[3]?.offset).toBeCloseTo(20.4167, 4);
  });

  test('classes and corrections', () => {
    expect(plain(answer.classes[3]?.text ?? '')).toBe('± 19.0 mmHg');
    expect(plain(answer.classes[3]?.note ?? '')).toBe(
      'the offset is within what the classes allow, ± 28.5 mmHg',
    );
    expect(answer.corrected.map(({ text }) => plain(text))).toEqual([
      '216.6 mmHg',
      '260.9 mmHg',
      '253.9 mmHg',
      '166.6 mmHg',
    ]);
    expect(answer.corrected[0]).toMatchObject({ label: 'Carburettor 1', note: 'read as 212' });
  });

  test('the balance analyser reads the link that it hands over', () => {
    const link = parseCalculatorLink(balanceAnalyserFields, answer.analyserKeys ?? {});
    if (!link.ok) throw new Error('the link is refused');
    expect(link.value.problems).toEqual([]);
    expect(link.value.unknownKeys).toEqual([]);
    expect(link.value.form).toMatchObject({
      readings: '1: 216.6, 2: 260.9, 3: 253.9, 4: 166.6',
      unit: 'mmHg',
      carburettors: '4',
      resolution: '5',
      flutter: '3',
      offsetUncertainty: '3.5',
    });
    expect(answerBalanceAnalyser(link.value.form).ok).toBe(true);
  });
});

describe('ways to read', () => {
  test('in turn, every gauge has its own scatter', () => {
    // s² = 25/3 mmHg² and the told parts, 3²/(3·3) + 5²/12, of each; 9/16 and 3/16 of it.
    const s2 = 25 / 3;
    const u2 = s2 / 3 + 1 + 25 / 12;
    const variance = (9 / 16 + 3 / 16) * u2;
    const degreesOfFreedom = variance ** 2 / (((9 / 16) ** 2 + 3 * (1 / 16) ** 2) * ((s2 / 3) ** 2 / 2));
    const half = studentTQuantile(0.975, degreesOfFreedom) * Math.sqrt(variance);
    expect(offsets({ way: 'in-turn' })[0]).toBe(`−4.6 ± ${half.toFixed(1)} mmHg`);
  });

  test('together, what all share falls out of every round', () => {
    const shaken = {
      readings1: '200; 300; 250',
      readings2: '210; 310; 260',
      gauges: '2',
      engine: '',
    };
    expect(offsets({ ...shaken, way: 'together' })).toEqual(['−5.0 ± 2.4 mmHg', '+5.0 ± 2.4 mmHg']);
    expect(offsets({ ...shaken, way: 'in-turn' })[0]).toMatch(/ ± \d{2,}/u);
  });

  test('exchanged, an even drift falls out, and A is gauge 1', () => {
    const swap = { way: 'abba', swap: '100; 102; 103; 103', reference: '1', engine: '' };
    expect(offsets(swap)).toEqual(['reference', '+1.0 ± 5.2 mmHg']);
    expect(described(swap).offsets[1]?.label).toBe('Gauge 2 (B)');
    expect(described(swap).offsets[1]?.note).toContain('of 2; may be chance');
    expect(described(swap).marks[0]?.label).toBe('reference');
    const once = { way: 'aba', swap: '180; 171; 183', reference: '2', engine: '', resolution: '0.1', flutter: '0' };
    expect(offsets(once)).toEqual(['+10.500 ± 0.080 mmHg', 'reference']);
    expect(described(once).lead).toBe('Gauge 1 (A) reads 10.500\u00a0mmHg high beside gauge 2 (B).');
    expect(described({ ...once, swap: '181; 191; 181; 180; 190.2; 180' }).lead).toContain('low beside gauge 2');
  }); // prettier-ignore

  test('no real offset is said to be none', () => {
    const same = { readings1: '250', readings2: '251', gauges: '2', way: 'in-turn', engine: '' };
    expect(described(same).lead).toBe(
      'No gauge differs from the mean of all by more than its ± at 95\u00a0%. A correction would be chance.',
    );
    expect(offsets({ ...same, readings2: '250' })[0]).toMatch(/^0\.0 ± /u);
  });
});

describe('what the class allows', () => {
  const pair = { gauges: '2', way: 'in-turn', readings1: '250', readings2: '280', reference: '1', resolution: '1', flutter: '1', engine: '' }; // prettier-ignore
  const note = (part: Partial<Record<GaugeField, string>>) =>
    plain(described({ ...pair, ...part }).classes.at(-1)?.note ?? 'none');

  test.each([
    [{ class1: '2.5', class2: '2.5' }, 'the offset is within what the classes allow, ± 38.0 mmHg'],
    [{ class1: '1', class2: '1' }, 'the offset is beyond what the classes allow, ± 15.2 mmHg'],
    [{ class1: '1.6', class2: '2.5', span2: '0..720' }, 'the readings cannot tell whether the classes allow the offset, ± 30.2 mmHg'],
    // A reference of unknown class is taken as right.
    [{ class1: 'none', class2: '2.5' }, 'the offset is beyond what the classes allow, ± 19.0 mmHg'],
    [{ class1: '2.5', class2: 'none' }, 'none'],
    // Against the mean, every class has to be known.
    [{ class1: 'none', class2: '2.5', reference: 'mean' }, 'none'],
  ])('%j', (part, words) => {
    expect(note(part)).toBe(words);
  }); // prettier-ignore

  test('without a class nothing is said of it', () => {
    expect(described({ ...unknownClasses }).classes).toEqual([]);
  });
});

describe('handing over', () => {
  test('speeds go along; the mark of the link is the point', () => {
    const answer = described({
      gauges: '2',
      readings1: '25,0; 25,5',
      readings2: '24; 24',
      unit: 'cmHg',
      resolution: '0,5',
      flutter: '0,3',
      engine: '1: 21,2 @ 2150; 2: 25',
      ...unknownClasses,
    });
    expect(answer.analyserKeys).toMatchObject({ readings: '1: 20.58 @ 2150, 2: 25.63', unit: 'cmHg' });
    expect(plain(answer.corrected[0]?.text ?? '')).toBe('20,58 cmHg');
    expect(answer.mark).toBe('comma');
  });

  test.each([
    ['', 'Give readings of the carburettors'],
    ['1: 212', 'a reading of each carburettor'],
    ['1: 212, 2: 200, 3: 201, 4: 202, 5: 203', 'of no other'],
  ])('nothing is handed on of “%s”', (engine, words) => {
    const answer = described({ engine });
    expect(answer.analyserKeys).toBeNull();
    expect(answer.handOver).toContain(words);
  });

  test('a carburettor without one of these gauges stays as it was read', () => {
    expect(described({ engine: '5: 203' }).corrected[0]).toMatchObject({ text: 'no gauge compared' });
  });
});

describe('parseGaugeComparison(form)', () => {
  const parsed = (part: Partial<Record<GaugeField, string>>) => parseGaugeComparison({ ...example, ...part });

  test.each([
    ['together', 'in-rounds', [1, 1, 1, 1]],
    ['in-turn', 'in-turn', [1, 1, 1, 1]],
    ['abba', 'in-rounds', [2, 2]],
    ['aba', 'in-rounds', [2, 1]],
  ])('%s is read %s, so many of each gauge a round: %j', (way, read, readingsPerRound) => {
    const swap = way === 'aba' ? '250; 262; 253' : example.swap;
    expect(parsed({ way, swap })).toMatchObject({
      value: { way, read, readingsPerRound, mark: 'point', confidence: 0.95 },
    });
  });

  test('in turn each gauge may be read as often as one likes', () => {
    expect(parsed({ way: 'in-turn', readings2: '245; 240' }).ok).toBe(true);
    expect(parsed({ readings1: Array.from({ length: 64 }, () => '1').join('; '), way: 'in-turn' }).ok).toBe(
      true,
    );
  });

  test.each<[Partial<Record<GaugeField, string>>, GaugeField, object]>([
    [{ way: 'sideways' }, 'way', { kind: 'unknown-choice', field: 'way' }],
    [{ resolution: '0' }, 'resolution', { kind: 'out-of-range', field: 'resolutionPa' }],
    [{ span2: 'x' }, 'span2', { kind: 'not-a-number', field: 'span2' }],
    [
      { readings1: '1; '.repeat(65), way: 'in-turn' },
      'readings1',
      { kind: 'too-long', field: 'readings', value: 65, limit: { max: 64 } },
    ],
    [{ readings3: '1' }, 'readings3', { kind: 'unequal-lists', field: 'readings', value: 1, expected: 3 }],
  ])('%j is told with its field', (part, field, problem) => {
    expect(parsed(part)).toMatchObject({ ok: false, problems: [{ field, problem }] });
  });
});

describe('what cannot be read has a sentence beside its field', () => {
  test.each([
    [{ readings2: '' }, 'readings2', 'Give at least one reading'],
    [{ readings2: 'x' }, 'readings2', 'Give one number'],
    [{ readings2: '-5' }, 'readings2', 'cannot be below 0'],
    [{ readings2: '250' }, 'readings2', 'give 3, as for gauge 1; there are 1.'],
    [{ readings1: Array.from({ length: 65 }, () => '1').join(';') }, 'readings1', 'at most 64'],
    [{ way: 'abba', swap: '1; 2; 3' }, 'swap', 'in the order A, B, B, A: four, or eight'],
    [{ way: 'aba', swap: '1; 2' }, 'swap', 'in the order A, B, A: three'],
    [{ way: 'aba', swap: '' }, 'swap', 'Give at least one reading'],
    [{ way: 'sideways' }, 'way', 'Give in-turn, together, abba or aba'],
    [{ reference: '5' }, 'reference', 'a whole number from 1 to 4'],
    [{ way: 'abba', reference: '3' }, 'reference', 'a whole number from 1 to 2'],
    [{ resolution: '0' }, 'resolution', 'Give a number above 0'],
    [{ resolution: '' }, 'resolution', 'Give a number'],
    [{ flutter: '-1' }, 'flutter', 'Give a number from 0'],
    [{ flutter: 'some' }, 'flutter', 'Give one number'],
    [{ span3: '' }, 'span3', 'Give a number'],
    [{ span3: '0..0' }, 'span3', 'Give a number above 0'],
    [{ engine: '1: 212, 9: 5' }, 'engine', 'There is no number 9 here'],
    [{ engine: '1: two' }, 'engine', 'Give one number'],
  ] as const)('%j', (part, field, words) => {
    const answer = answerGaugeComparison({ ...example, ...part });
    const [problem] = answer.ok ? [] : answer.problems.map(sayProblem);
    expect(problem?.field).toBe(field);
    expect(problem?.sentence).toContain(words);
  });

  test('all of them at once', () => {
    const answer = answerGaugeComparison({ ...example, readings1: '', span2: 'x', flutter: '' });
    expect(answer.ok || answer.problems.map(({ field }) => field)).toEqual(['readings1', 'flutter', 'span2']);
  });
});

test('a question that the form would not let through is refused by the computation', () => {
  const parsed = parseGaugeComparison(example);
  if (!parsed.ok) throw new Error('the worked example has a problem');
  const ask = (part: Partial<GaugeQuestion>) => compareGauges({ ...parsed.value, ...part });
  expect(ask({ reference: 5 })).toMatchObject({ problem: { kind: 'index' } });
  expect(ask({ gauge: { resolutionPa: -1, flutterPa: 0 } })).toMatchObject({
    problem: { field: 'gauge.resolutionPa' },
  });
  expect(ask({ gauge: { resolutionPa: 1, flutterPa: NaN } })).toMatchObject({
    problem: { field: 'gauge.flutterPa' },
  });
});
