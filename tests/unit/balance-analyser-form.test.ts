import { describe, expect, test } from 'vitest';
import {
  answerBalanceAnalyser,
  balanceAnalyserFields,
  benchDefaults,
  initialForm,
  parseBalanceAnalyser,
  parseCalculatorLink,
  parseReadings,
  parseSessionLink,
  parseSetUp,
  sayProblem,
  writeCalculatorLink,
} from '../../src/calculators/index.ts';
import type {
  BalanceAnalyserField,
  BalanceAnalyserForm,
  BalanceReadings,
  DescribedBalance,
} from '../../src/calculators/index.ts';
import { mmHg } from '../engine/invented.ts';

const example = initialForm(balanceAnalyserFields);
const form = (changes: Partial<BalanceAnalyserForm>): BalanceAnalyserForm => ({ ...example, ...changes });

const givenBy = (changes: Partial<BalanceAnalyserForm>): BalanceReadings => {
  const parsed = parseBalanceAnalyser(form(changes));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.value.given;
};

/** Figures keep their units by no-break spaces, which no test has to type. */
const withPlainSpaces = <Value>(value: Value): Value =>
  JSON.parse(JSON.stringify(value).replaceAll('\u00a0', ' ')) as Value;

const answerTo = (changes: Partial<BalanceAnalyserForm>): DescribedBalance => {
  const answered = answerBalanceAnalyser(form(changes));
  if (!answered.ok) throw new Error(JSON.stringify(answered.problems));
  return withPlainSpaces(answered.answer);
};

const sentencesOf = (changes: Partial<BalanceAnalyserForm>): readonly (readonly [string, string])[] => {
  const answered = answerBalanceAnalyser(form(changes));
  return answered.ok
    ? []
    : withPlainSpaces(answered.problems.map(sayProblem)).map(
        ({ field, sentence }) => [field, sentence] as const,
      );
};

const inMmHg = (given: BalanceReadings) =>
  given.readings.map(({ depressionPa }) => Number((depressionPa / mmHg).toFixed(6)));

describe('the form', () => {
  test('of the example is the invented set', () => {
    const given = givenBy({});
    expect(inMmHg(given)).toEqual([248, 212, 251, 187, 252]);
    expect(given.readings.map(({ carburettor }) => carburettor)).toEqual([2, 1, 3, 4, 2]);
    expect(given).toMatchObject({
      generation: 'fixed-reference',
      carburettors: 4,
      fixed: 2,
      driftReference: 2,
      gauge: { resolutionPa: 5 * mmHg, flutterPa: 3 * mmHg },
      tolerancePa: 20 * mmHg,
    });
    expect(given).not.toHaveProperty('speed');
    expect(given).not.toHaveProperty('groups');
    expect(given).not.toHaveProperty('offsetUncertaintyPa');
    expect(Number(example.rpm)).toBe(benchDefaults.targetRpm);
  });

  test('takes units of every reading, lines, labels that count on, and speeds', () => {
    const given = givenBy({
      readings: '12,5 cmHg @ 2150\n9 1/2 inHg\n3: 251; 187',
      speedEffect: '-5',
      rpm: '2100',
    });
    expect(inMmHg(given)).toEqual([125, 241.3, 251, 187]);
    expect(given.readings.map(({ rpm }) => rpm)).toEqual([2150, undefined, undefined, undefined]);
    expect(given.speed).toEqual({ targetRpm: 2100, sensitivityPaPerRpm: expect.closeTo(-0.05 * mmHg, 9) });
  });

  test('finds the drift where the first is read again at the end, or where it is told', () => {
    const twice = '1: 212, 2: 248, 3: 251, 4: 187, 1: 214, 3: 250';
    expect(givenBy({ readings: twice }).driftReference).toBeUndefined();
    expect(givenBy({ readings: twice, drift: '3' }).driftReference).toBe(3);
    expect(givenBy({ drift: 'none' })).not.toHaveProperty('driftReference');
    expect(givenBy({ readings: '4: 187, 1: 212, 2: 248, 3: 251, 4: 190', drift: '4' }).driftReference).toBe(
      4,
    );
  });

  test('leaves out what a generation does not have', () => {
    expect(givenBy({ generation: 'separate-cables' })).not.toHaveProperty('fixed');
    expect(givenBy({ generation: 'bypass-screws', fixed: 'none' })).not.toHaveProperty('fixed');
    expect(givenBy({ generation: 'bypass-screws', fixed: '3' }).fixed).toBe(3);
    expect(givenBy({ generation: 'paired-screws' }).groups).toEqual([[1], [4], [3, 4]]);
    expect(givenBy({ generation: 'paired-screws', groups: '1; 2, 3; 4' }).groups).toEqual([[1], [2, 3], [4]]);
  });

  test('takes an ambient pressure without a unit in kilopascals, a certainty with or without its sign', () => {
    expect(givenBy({ ambient: '95', confidence: '90 %' })).toMatchObject({ confidence: 0.9 });
    expect(givenBy({ ambient: '95' }).ambientPa).toBeCloseTo(95_000, 6);
    expect(givenBy({ ambient: '700 mmHg' }).ambientPa).toBeCloseTo(700 * mmHg, 6);
    for (const ambient of ['', '101.325', '101.325 kPa', '1 atm'])
      expect(givenBy({ ambient })).not.toHaveProperty('ambientPa');
    for (const confidence of ['', '95', '95%', ' 95 % '])
      expect(givenBy({ confidence })).not.toHaveProperty('confidence');
  });

  test('takes the ± of a gauge’s correction at 95 %, 1.96 standard uncertainties', () => {
    expect(givenBy({ offsetUncertainty: '4' }).offsetUncertaintyPa).toBeCloseTo((4 * mmHg) / 1.96, 6);
    expect(givenBy({ offsetUncertainty: '0' }).offsetUncertaintyPa).toBe(0);
    expect(givenBy({ offsetUncertainty: ' ', speedEffect: ' ' })).not.toHaveProperty('offsetUncertaintyPa');
  });
});

describe('what is wrong is told with its field and limit', () => {
  const problemsOf = (changes: Partial<BalanceAnalyserForm>) => {
    const parsed = parseBalanceAnalyser(form(changes));
    return parsed.ok ? [] : parsed.problems;
  };

  test.each<[Partial<BalanceAnalyserForm>, BalanceAnalyserField, object]>([
    [
      { ambient: '30', readings: '1: 31 kPa' },
      'readings',
      { kind: 'depression-beyond-ambient', limit: { below: 30_000 } },
    ],
    [
      { readings: '1: 212, 2: 248, 3: 251', drift: 'none' },
      'readings',
      { kind: 'no-readings', field: 'carburettors.3' },
    ],
    [{ drift: '5' }, 'drift', { kind: 'index', field: 'drift', value: 5, limit: { min: 1, max: 4 } }],
    [{ drift: '3' }, 'drift', { kind: 'too-few-readings', field: 'drift', value: 1, limit: { min: 2 } }],
    [{ speedEffect: '5', rpm: ' ' }, 'rpm', { kind: 'empty', field: 'rpm' }],
    [{ confidence: '9%5' }, 'confidence', { kind: 'not-a-number' }],
    [{ confidence: '95 %x' }, 'confidence', { kind: 'not-a-number' }],
  ])('%j', (changes, field, problem) => {
    expect(problemsOf(changes)).toMatchObject([{ field, problem }]);
  });
});

describe('bad input is answered beside its field', () => {
  const cases: readonly (readonly [Partial<BalanceAnalyserForm>, BalanceAnalyserField, string])[] = [
    [{ readings: '' }, 'readings', 'Give at least one reading; there is none.'],
    [
      { readings: '1: 212, 2: 248, 4: 187' },
      'readings',
      'Give at least one reading of carburettor 3; there is none.',
    ],
    [{ readings: '2: 248, 1: many' }, 'readings', 'you wrote “many”'],
    [{ readings: '1: NaN' }, 'readings', 'you wrote “NaN”'],
    [{ readings: '1: 1e309' }, 'readings', 'you wrote “1e309”'],
    [{ readings: '1: -5' }, 'readings', 'cannot be below 0; you gave −5 mmHg'],
    [{ readings: '1: 30 inHg' }, 'readings', 'give one below 760.0 mmHg; you gave 762 mmHg'],
    [{ readings: '1: 9 furlong' }, 'readings', '“furlong” is not a unit that is known here'],
    [{ readings: '1: 1,234' }, 'readings', 'can be read two ways'],
    [{ readings: '5: 212' }, 'readings', 'There is no number 5 here: give a whole number from 1 to 4.'],
    [{ readings: '1: 212 @ 9' }, 'readings', 'Give a number from 100 to 20000; you gave 9.'],
    [{ readings: '1: 1; '.repeat(65) }, 'readings', 'Give at most 64 readings; there are 65.'],
    [{ tolerance: '0' }, 'tolerance', 'Give a number above 0; you wrote “0”.'],
    [{ tolerance: '800' }, 'tolerance', 'give one below 760.0 mmHg'],
    [{ tolerance: '' }, 'tolerance', 'nothing is written here'],
    [{ resolution: '0' }, 'resolution', 'Give a number above 0; you wrote “0”.'],
    [{ flutter: '-1' }, 'flutter', 'Give a number of at least 0; you wrote “-1”.'],
    [{ offsetUncertainty: '-1' }, 'offsetUncertainty', 'Give a number from 0 to 375.0 mmHg; you wrote “-1”.'],
    [
      { offsetUncertainty: '400' },
      'offsetUncertainty',
      'Give a number from 0 to 375.0 mmHg; you wrote “400”.',
    ],
    [{ offsetUncertainty: 'x' }, 'offsetUncertainty', 'you wrote “x”'],
    [{ speedEffect: 'x' }, 'speedEffect', 'you wrote “x”'],
    [
      { readings: '1: 212 @ 3000; 2; 3; 4', speedEffect: '50' },
      'speedEffect',
      'a reading of carburettor 1 would be −238 mmHg: no depression is below 0 or reaches the ambient pressure',
    ],
    [{ readings: '1: 212 @ 3000; 2; 3; 4', speedEffect: '-1e300' }, 'speedEffect', 'would be'],
    [{ speedEffect: '-5', rpm: ' ' }, 'rpm', 'nothing is written here'],
    [{ rpm: '50' }, 'rpm', 'Give a number from 300 to 20000; you wrote “50”.'],
    [{ ambient: '10 kPa' }, 'ambient', 'Give a number from 30 kPa to 120 kPa; you wrote “10 kPa”.'],
    [{ ambient: 'high' }, 'ambient', 'you wrote “high”'],
    [{ confidence: '99.95' }, 'confidence', 'Give a number from 50 to 99.9; you wrote “99.95”.'],
    [{ fixed: 'none' }, 'fixed', 'Say which carburettor has no adjuster.'],
    [{ fixed: '6' }, 'fixed', 'There is no number 6 here: give a whole number from 1 to 4.'],
    [{ generation: 'paired-screws', groups: '1; 9' }, 'groups', 'There is no number 9 here'],
    [{ drift: '3' }, 'drift', 'Give a number of readings of at least 2; there is 1.'],
    [{ drift: '7' }, 'drift', 'There is no number 7 here: give a whole number from 1 to 4.'],
  ];
  test.each(cases)('%j', (changes, field, words) => {
    const found = sentencesOf(changes);
    expect(found.map(([where]) => where)).toEqual([field]);
    expect(found[0]?.[1]).toContain(words);
  });

  test('five carburettors in pairs need their groups', () => {
    const changes = { generation: 'paired-screws', carburettors: '5', readings: '1; 2; 3; 4; 5' };
    expect(sentencesOf(changes)).toEqual([
      ['groups', 'Say which carburettors each screw moves: there is no usual layout for 5.'],
    ]);
  });

  test('all at once', () => {
    const found = sentencesOf({ readings: '', tolerance: '', confidence: '3', ambient: '1', drift: '8' });
    expect(found.map(([field]) => field).sort()).toEqual(['ambient', 'confidence', 'readings', 'tolerance']);
  });
});

describe('the answer in words', () => {
  const noteOf = (lines: DescribedBalance['set'], id: string) => lines.find((each) => each.id === id)?.note;

  test('of the example', () => {
    const answer = answerTo({});
    expect(answer.verdict).toBe('outside');
    expect(answer.sentence).toBe('Outside 20 mmHg: the chance that all four are within is 0 %.');
    expect(answer.advice).toBe('Close the screw of carburettor 4 first.');
    expect(answer.announcement).toBe(`${answer.sentence} ${answer.advice}`);
    expect(answer.confidence).toBe('95 %');
    expect(answer.set.map(({ label, text }) => `${label}: ${text}`)).toEqual([
      'Spread: 65 ± 6 mmHg',
      'Matched to carburettor 2: 250 mmHg',
      'Drift a reading: 1.0 ± 1.6 mmHg',
    ]);
    expect(answer.screws.map(({ label, text, note }) => [label, text, note])).toEqual([
      ['Screw of carburettor 1', 'close', '37 ± 6 mmHg lower than carburettor 2'],
      [
        'Screw of carburettor 3',
        'leave',
        '1 ± 6 mmHg higher than carburettor 2, which may be chance; if anything, open',
      ],
      ['Screw of carburettor 4', 'close', '64 ± 6 mmHg lower than carburettor 2'],
    ]);
    expect(answer.carburettors.map(({ text, note }) => [text, note])).toEqual([
      ['213 ± 5 mmHg', '1.12 times as open'],
      ['250 ± 4 mmHg', 'mean of 2; the others are matched to it'],
      ['251 ± 4 mmHg', '0.997 times as open'],
      ['186 ± 5 mmHg', '1.22 times as open'],
    ]);
    expect(answer.screws[0]?.copied).toBe('Screw of carburettor 1: close');
    expect(answer.carburettors[0]?.copied).toBe('213 ± 5 mmHg');
    expect(answer.plotWords).toContain('carburettor 3, 251 ± 4 mmHg; carburettor 4');
    expect(answer.plot).toMatchObject({ reference: 2, unit: 'mmHg', decimals: 0, mark: 'point' });
    expect(answer.warnings).toEqual([]);
  });

  test('within: the screws are left, and the closer way is told', () => {
    const answer = answerTo({ readings: '212; 224; 213; 218', generation: 'all-adjustable' });
    expect(answer.sentence).toBe('Within 20 mmHg: the chance that all four are is 99 %.');
    expect(answer.advice).toBe('Leave the screws alone.');
    expect(answer.screws.map(({ text }) => text)).toEqual(['leave', 'leave', 'leave', 'leave']);
    expect(noteOf(answer.screws, 'screw-2')).toBe(
      '12 ± 5 mmHg higher than the mean of 1 and 3, to bring it closer, open',
    );
    expect(noteOf(answer.set, 'reference')).toBe('the two that read closest');
  });

  test('cannot tell: what to read, and how often', () => {
    const calm = { resolution: '1', flutter: '12', tolerance: '16' };
    const answer = answerTo({
      ...calm,
      readings: '250; 244; 247',
      carburettors: '3',
      generation: 'separate-cables',
    });
    expect(answer.sentence).toBe('Cannot tell: the chance that all three are within 16 mmHg is 71 %.');
    expect(answer.advice).toBe(
      'Read carburettor 3 again first. If the readings go on as they began, three more of each will decide.',
    );
    const coarse = answerTo({ readings: '250; 232', carburettors: '2', generation: 'separate-cables' });
    expect(coarse.sentence).toMatch(/^Cannot tell: the chance that both are within 20 mmHg is \d+ %\.$/u);
    expect(coarse.advice).toContain('With this gauge even many more readings would hardly decide');
  });

  test('paired screws: pairs come first, and each carburettor has its deviation', () => {
    const answer = answerTo({ readings: '212; 224; 213; 240', generation: 'paired-screws', tolerance: '5' });
    expect(answer.advice).toBe('Close the screw of carburettor 1 first.');
    expect(answer.screws.map(({ label, text }) => `${label}: ${text}`)).toEqual([
      'Screw of carburettor 1: close',
      'Screw of carburettor 4: open',
      'Screw that moves 3 and 4: close',
    ]);
    expect(noteOf(answer.screws, 'screw-2')).toBe('27 ± 6 mmHg higher than what it is matched to');
    expect(noteOf(answer.carburettors, 'carburettor-4')).toMatch(
      /^18 ± 4 mmHg higher than the mean of all; 0\.\d+ times as open$/u,
    );
  });

  test('a difference that rounds to nothing is level', () => {
    const answer = answerTo({ readings: '212; 212; 212; 212', generation: 'separate-cables' });
    expect(noteOf(answer.screws, 'screw-1')).toBe(
      'level with the mean of all, ± 4 mmHg, which may be chance',
    );
    expect(answer.screws[0]?.text).toBe('leave');
    expect(noteOf(answer.set, 'spread')).toBeUndefined();
    expect(answer.set[0]?.text).toBe('0 ± 6 mmHg');
  });

  test('the decimal mark, the unit and the step of the gauge are kept', () => {
    const answer = answerTo({
      readings: '1: 27,5; 2: 33',
      carburettors: '2',
      unit: 'kPa',
      resolution: '0,5',
      flutter: '0,2',
      tolerance: '2,5',
      generation: 'separate-cables',
      offsetUncertainty: '0,1',
    });
    expect(answer.sentence).toMatch(/^Outside 2,5 kPa/u);
    expect(answer.carburettors[0]?.text).toBe('27,5 ± 0,4 kPa');
    expect(answer.set[0]?.text).toBe('5,5 ± 0,5 kPa');
  });

  test('a ± finer than the step keeps a digit', () => {
    const answer = answerTo({ resolution: '1', flutter: '0', confidence: '50', drift: 'none' });
    expect(answer.carburettors[0]?.text).toBe('212.0 ± 0.2 mmHg');
  });

  test('a chance beside the limit is not rounded onto it', () => {
    const verdictAt = (apart: number): string => {
      const answer = answerTo({
        readings: `250; ${(250 - apart).toFixed(2)}`,
        carburettors: '2',
        generation: 'separate-cables',
        tolerance: '12',
      });
      const percent = Number(/is ([\d.]+) %/u.exec(answer.sentence)?.[1]);
      if (answer.verdict === 'within') expect(percent).toBeGreaterThanOrEqual(95);
      else expect(percent).toBeLessThan(95);
      return answer.verdict;
    };
    const quarters = Array.from({ length: 48 }, (_, k) => k / 4);
    const verdicts = quarters.map(verdictAt);
    expect(new Set(verdicts)).toEqual(new Set(['within', 'cannot-tell']));
    // The limit lies within the quarter after the last that is within; there in steps of the readings.
    const last = quarters[verdicts.lastIndexOf('within')]!;
    for (let step = 0; step <= 25; step += 1) verdictAt(last + step / 100);
  });

  test('speeds that differ and are not corrected are a warning; corrected they are told', () => {
    const readings = '212 @ 2150; 248 @ 2100; 251; 187';
    expect(answerTo({ readings }).warnings).toEqual([expect.stringContaining('from 2100 to 2150 rpm')]);
    const corrected = answerTo({ readings, speedEffect: '-5' });
    expect(corrected.warnings).toEqual([]);
    expect(corrected.set.at(-1)).toMatchObject({ label: 'Referred to 2100 rpm', copied: '-5 mmHg' });
    expect(answerTo({ readings: '212 @ 2150; 248 @ 2150; 251; 187' }).warnings).toEqual([]);
  });

  test('no depression is asked about and has no ratio', () => {
    const answer = answerTo({ readings: '212; 0; 251; 187', fixed: '1' });
    expect(answer.warnings).toEqual([
      'Carburettor 2 shows 0 mmHg. Is its line open, and does its cylinder draw at all?',
    ]);
    expect(noteOf(answer.carburettors, 'carburettor-2')).toBe('no ratio of openings without a depression');
  });

  test('outside without a single real difference: read again', () => {
    const answer = answerTo({
      readings: '250; 248.5; 247; 245.5',
      generation: 'separate-cables',
      resolution: '4',
      flutter: '1',
      tolerance: '0.5',
    });
    expect(answer.verdict).toBe('outside');
    expect(answer.advice).toMatch(/^(?:No single difference|Close|Open)/u);
  });
});

describe('links', () => {
  test('the example needs no key but the version, and any form comes back', () => {
    expect(writeCalculatorLink(balanceAnalyserFields, example)).toEqual({ v: '1' });
    const changed = form({ readings: '1: 212 @ 2150, 2: 9 1/2 inHg', carburettors: '2', fixed: 'none' });
    const link = parseCalculatorLink(
      balanceAnalyserFields,
      writeCalculatorLink(balanceAnalyserFields, changed),
    );
    expect(link).toMatchObject({ ok: true, value: { form: changed, unknownKeys: [], problems: [] } });
  });

  test.each([
    [{}],
    [{ generation: 'paired-screws', groups: '1; 4; 3, 4' }],
    [{ generation: 'bypass-screws', fixed: 'none', ambient: '95', confidence: '90 %', rpm: '' }],
    [
      {
        readings: '1: 12,5 cmHg @ 2150\n2: 9 1/2 inHg\n1: 13 cmHg',
        carburettors: '2',
        generation: 'separate-cables',
      },
    ],
  ] as const)('the bench session is handed everything: %j', (changes) => {
    const parsed = parseBalanceAnalyser(form(changes));
    const link = parseSessionLink(answerTo(changes).bench);
    if (!parsed.ok || !link.ok) throw new Error('both are read');
    expect(link.value.unknownKeys).toEqual([]);
    const setUp = parseSetUp(link.value.answers);
    if (!setUp.ok) throw new Error(JSON.stringify(setUp.problems));
    const { opens, ...handed } = setUp.value.setUp;
    const { opens: _, ...own } = parsed.value.setUp;
    expect(opens.every((each) => each === 'unknown')).toBe(true);
    for (const [key, value] of Object.entries(own))
      expect(handed[key as keyof typeof handed], key).toEqual(
        typeof value === 'number' ? expect.closeTo(value, 6) : value,
      );
    const readings = parseReadings(link.value.readings, setUp.value.unit, setUp.value.setUp);
    if (!readings.ok) throw new Error(JSON.stringify(readings.problem));
    expect(readings.value.map(({ typed: _typed, ...each }) => each)).toEqual(
      parsed.value.readings.map(({ typed: _typed, ...each }) => ({
        ...each,
        depressionPa: expect.closeTo(each.depressionPa, 6),
      })),
    );
  });
});
