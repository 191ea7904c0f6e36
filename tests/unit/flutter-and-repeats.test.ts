import { describe, expect, test } from 'vitest';
import {
  answerFlutterAndRepeats,
  computeFlutterAndRepeats,
  flutterAndRepeatsFields,
  initialForm,
  parseFlutterAndRepeats,
  sayProblem,
} from '../../src/calculators/index.ts';
import type { FlutterField } from '../../src/calculators/index.ts';

const example = initialForm(flutterAndRepeatsFields);

function described(part: Partial<Record<FlutterField, string>>) {
  const answer = answerFlutterAndRepeats({ ...example, ...part });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.answer;
}

const figures = (part: Partial<Record<FlutterField, string>>) => {
  const { needle, waits, uncertainties, readings } = described(part);
  return Object.fromEntries(
    [...needle, ...waits, ...uncertainties, ...readings].map(({ id, text }) => [id, text]),
  );
};

test('the worked example', () => {
  const answer = described({});
  expect(answer.move).toBe(
    'Leave the tap so: the needle just still moves. Wait 0.50\u00a0s after opening the line, then read.',
  );
  expect(answer.verdict).toBe('3 readings of each are enough for 6\u00a0mmHg.');
  expect(answer.warnings).toEqual([]);
  expect(answer.announcement).toBe(
    'Leave the tap so: the needle just still moves. 3 readings of each are enough for 6\u00a0mmHg.',
  );
  expect(answer.rippleWords).toContain('40\u00a0mmHg either way; damped by 3.3\u00a0mmHg');
  expect(figures({})).toEqual({
    firing: '70.0\u00a0Hz',
    intake: '17.5\u00a0Hz',
    share: '8.3\u00a0%',
    left: '3.3\u00a0mmHg',
    'good-settling': '0.33\u00a0s to 0.67\u00a0s',
    'wait-90': '0.25\u00a0s',
    'wait-99': '0.50\u00a0s',
    'wait-99.9': '0.75\u00a0s',
    'flutter-uncertainty': '1.9\u00a0mmHg',
    'scale-uncertainty': '1.4\u00a0mmHg',
    'reading-uncertainty': '2.4\u00a0mmHg',
    resolved: '5.3\u00a0mmHg',
    needed: '3',
    'needed-to-see': 'none up to 10000',
    finest: '4.0\u00a0mmHg',
  });
  expect(answer.needle[1]?.note).toBe('once in two turns, every 57\u00a0ms');
  expect(answer.needle[4]?.copied).toBe('0.33 s to 0.67 s');
  expect(answer.needle[3]?.copied).toBe('3.3 mmHg');
});

describe('the tap', () => {
  test.each([
    ['the needle stays within a step', { flutter: '2.5' }, 'Leave the tap open', 0],
    ['still', { damping: '2' }, 'Open the tap a little, until the needle just still moves.', 1],
    ['just moving at one step', { damping: '0.66' }, 'Leave the tap so', 0],
    ['just moving at two steps', { damping: '0.335' }, 'Leave the tap so', 0],
    ['lively', { damping: '0.32' }, 'until the needle takes 0.33\u00a0s to 0.67\u00a0s to settle', 0],
  ])('%s', (_, part, words, warnings) => {
    const { move, warnings: said } = described(part);
    expect(move).toContain(words);
    expect(said).toHaveLength(warnings);
  });

  test('without damping there is nothing to wait for, and no settling time to give', () => {
    expect(described({ damping: '0' }).move).not.toContain('Wait');
    expect(figures({ flutter: '1' })).not.toHaveProperty('good-settling');
    // Less than two steps with the tap open: any damping up to one step is good.
    expect(figures({ flutter: '4' })['good-settling']).toBe('up to 0.052\u00a0s');
  });
});

describe('the readings', () => {
  test('too few, forbidden by the step, and more than anybody takes', () => {
    expect(described({ difference: '5' }).verdict).toBe('Take 4 readings of each to tell 5\u00a0mmHg apart.');
    expect(described({ difference: '4' }).verdict).toBe(
      'No number of readings tells 4\u00a0mmHg apart: a step of 5\u00a0mmHg forbids it.',
    );
    const hopeless = { flutter: '700', damping: '0', difference: '5' };
    expect(described(hopeless).verdict).toBe(
      'More than 10000 readings of each would be needed for 5\u00a0mmHg.',
    );
    expect(figures(hopeless)).toMatchObject({ needed: 'none up to 10000' });
    expect(figures({ difference: '10' })).toMatchObject({ needed: '2', 'needed-to-see': '3' });
  });

  test('the needle that never moves has no scatter to count degrees of freedom of', () => {
    const parsed = parseFlutterAndRepeats({ ...example, flutter: '0' });
    const answer = parsed.ok && computeFlutterAndRepeats(parsed.value);
    expect(answer && answer.ok && answer.value.degreesOfFreedom).toBeNull();
    expect(answer && answer.ok && answer.value.tap).toBe('calm');
  });

  test.each([
    ['triangular', '1.4\u00a0mmHg'],
    ['u-shaped', '2.4\u00a0mmHg'],
  ])('a %s swing', (distribution, text) => {
    expect(figures({ distribution })['flutter-uncertainty']).toBe(text);
  });
});

test('a time constant is taken as it is; units and a decimal comma are the reader’s own', () => {
  expect(figures({ dampingKind: 'time-constant', damping: '100 ms' })['wait-99']).toBe('0.46\u00a0s');
  const answer = figures({ unit: 'kPa', flutter: '5,5', resolution: '0.5', difference: '1', damping: '0.5' });
  expect(answer).toMatchObject({ left: '0,46\u00a0kPa', firing: '70,0\u00a0Hz', 'wait-99.9': '0,75\u00a0s' });
  expect(figures({ flutter: '40 mbar' })['left']).toBe('2.5\u00a0mmHg');
  expect(figures({ damping: '0,5' })['wait-99']).toBe('0,50\u00a0s');
  expect(figures({ rpm: '2100 rpm' })).toEqual(figures({}));
});

describe('what cannot be read has a sentence beside its field', () => {
  test.each([
    ['rpm', '', 'Give a number'],
    ['rpm', '50', 'Give a number from 100 to 20000; you wrote “50”.'],
    ['flutter', '-1', 'Give a number from 0 to 760.0 mmHg; you wrote “-1”.'],
    ['flutter', '2 bar', 'from 0 to 760'],
    ['flutter', '5 furlong', 'is not a unit that is known here'],
    ['damping', '700', 'Give a number from 0 to 600; you wrote “700”.'],
    ['damping', 'soon', 'Give one number'],
    ['resolution', '0', 'Give a number above 0'],
    ['readings', '1', 'Give a number of readings from 2 to 1000; there is 1.'],
    ['readings', '1001', 'Give a number of readings from 2 to 1000; there are 1001.'],
    ['readings', '2.5', 'Give a whole number; you wrote “2.5”.'],
    ['readings', 'many', 'Give one number'],
    ['difference', '0', 'Give a number above 0'],
    ['difference', '1,234', 'can be read two ways'],
    ['distribution', 'oval', 'Give rectangular, triangular or u-shaped'],
    ['cylinders', '2.5', 'Give a number of at least 1'],
  ] as const)('%s “%s”', (field, typed, words) => {
    const answer = answerFlutterAndRepeats({ ...example, [field]: typed });
    const [problem] = answer.ok ? [] : answer.problems.map(sayProblem);
    expect(problem?.sentence.replaceAll('\u00a0', ' ')).toContain(words);
    expect(problem?.field).toBe(field);
  });

  test('all of them at once', () => {
    const answer = answerFlutterAndRepeats({ ...example, rpm: '', damping: '', difference: '' });
    expect(answer.ok || answer.problems.map(({ field }) => field)).toEqual(['rpm', 'damping', 'difference']);
  });
});

test('a question that the form would not let through is refused by the computation', () => {
  const parsed = parseFlutterAndRepeats(example);
  if (!parsed.ok) throw new Error('the worked example has a problem');
  for (const [part, field] of [
    [{ rpm: 0 }, 'rpm'],
    [{ cylinders: 0 }, 'cylinders'],
    [{ differencePa: 0 }, 'differencePa'],
  ] as const)
    expect(computeFlutterAndRepeats({ ...parsed.value, ...part })).toMatchObject({ problem: { field } });
});

describe('parseFlutterAndRepeats(form)', () => {
  const parse = (part: Partial<Record<FlutterField, string>>) =>
    parseFlutterAndRepeats({ ...example, ...part });

  test.each<[part: Partial<Record<FlutterField, string>>, kind: string]>([
    [{ readings: 'x' }, 'not-a-number'],
    [{ readings: '2.5' }, 'not-whole'],
    [{ readings: '1' }, 'too-few-readings'],
    [{ readings: '1001' }, 'too-few-readings'],
    [{ rpm: 'fast' }, 'not-a-number'],
    [{ rpm: '2100 rpm or so' }, 'not-a-number'],
    [{ rpm: '99' }, 'out-of-range'],
    [{ damping: 'x' }, 'not-a-number'],
    [{ damping: '11 min' }, 'out-of-range'],
    [{ distribution: 'even' }, 'unknown-choice'],
  ])('%o: the problem names its field', (part, kind) => {
    const [field] = Object.keys(part);
    expect(parse(part)).toMatchObject({ ok: false, problems: [{ field, problem: { kind, field } }] });
  });

  test('takes the fewest and the most readings, and a speed with its unit or without', () => {
    for (const readings of ['2', '1000'])
      expect(parse({ readings })).toMatchObject({ value: { readings: Number(readings) } });
    for (const rpm of ['2100', '2100rpm', '2100  r/min', '2100 1/min ', '2100 RPM'])
      expect(parse({ rpm })).toMatchObject({ value: { rpm: 2100 } });
  });
});
