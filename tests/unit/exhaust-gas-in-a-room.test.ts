import { describe, expect, test } from 'vitest';
import {
  answerExhaustGasInARoom,
  carbonMonoxideLimits,
  computeExhaustGasInARoom,
  exhaustGasInARoomFields,
  formatDuration,
  initialForm,
  mostPpm,
  notKnown,
  parseExhaustGasInARoom,
  runOutdoors,
  sayProblem,
} from '../../src/calculators/index.ts';
import type {
  ExhaustGasGiven,
  ExhaustGasInARoomField as Field,
  ExhaustGasWords,
  Form,
} from '../../src/calculators/index.ts';

const example = initialForm(exhaustGasInARoomFields);
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

function answerTo(part: Partial<Form<Field>> = {}): ExhaustGasWords {
  const answered = answerExhaustGasInARoom({ ...example, ...part });
  if (!answered.ok) throw new Error(JSON.stringify(answered.problems));
  return answered.answer;
}

const figure = (words: ExhaustGasWords, id: string): string | undefined => {
  const line = words.lines.find((each) => each.id === id);
  return line && plain(line.text);
};

function givenBy(part: Partial<Form<Field>> = {}): ExhaustGasGiven {
  const parsed = parseExhaustGasInARoom({ ...example, ...part });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.value;
}

test('the decimal mark of the answer is the one that was typed', () => {
  expect(givenBy().mark).toBe('point');
  expect(givenBy({ airChanges: '0,5' }).mark).toBe('comma');
  expect(givenBy({ length: '6,5 m' }).mark).toBe('comma');
});

describe('the worked example', () => {
  const words = answerTo();

  test('by hand: 225 L/min of air, 0.972 of it exhaust, 5 % of that in 43.2 m³', () => {
    expect(figure(words, 'exhaust')).toBe('219 L/min');
    expect(figure(words, 'source')).toBe('10.9 L/min');
    expect(figure(words, 'room')).toBe('43.2 m³');
    // 10.937 · 1000/43.2 = 253.2 ppm a minute; 30 381 (1 − e^(−1/6)) = 4664.
    expect(figure(words, 'rise')).toBe('253 ppm/min');
    expect(figure(words, 'final')).toBe('4664 ppm');
    expect(figure(words, 'steady')).toBe('30381 ppm');
    expect(figure(words, 'afterwards')).toBe('2829 ppm');
    expect(figure(words, 'mixture')).toBe('0.87');
    expect(figure(words, 'mass')).toBe('5431 mg/m³');
  });

  test('each line says what it is; what is not there has no line', () => {
    expect(words.lines.map(({ label, note = '' }) => [plain(label), note].join(' | '))).toEqual([
      'In the air after 20 min | ',
      'The same by mass | ',
      'Carbon monoxide given off | ',
      'Dry exhaust of the engine | ',
      'Its mixture, λ | air over what the fuel needs',
      'Air in the room | ',
      'First rise | ',
      'Where it would end | if the engine ran on',
      'An hour after the engine stops | nothing opened',
    ]);
    for (const { text, copied } of words.lines) expect(copied).toBe(plain(text));
    const { lines } = answerTo({ sourceAs: 'flow', airChanges: '0' });
    expect(lines.map(({ id }) => id)).toEqual(['final', 'mass', 'source', 'room', 'rise', 'afterwards']);
  });

  test('the pictures are told in words, from the start to the end', () => {
    expect(plain(words.bloodCaption)).toMatch(
      /^Carboxyhaemoglobin by .* Kane, from 0\.80 % at the start\.$/u,
    );
    expect(plain(words.airPlot)).toMatch(
      /^Concentration against time, from 0 ppm at the start to 4664 ppm after 20 min/u,
    );
    expect(plain(words.bloodPlot)).toMatch(
      /^Carboxyhaemoglobin against time: after 20 min 21 % at rest, 46 % at light work/u,
    );
  });

  test('says the end, the danger that it passes on the way, and what no figure permits', () => {
    expect(plain(words.lead)).toBe(
      'After 20 min this sum has 4664 ppm of carbon monoxide in the air of the room. It is past 1200 ppm within 4 min 50 s: immediately dangerous to life or health (NIOSH).',
    );
    expect(words.announcement).toContain(runOutdoors);
    expect(words.announcement).toContain(words.bloodLead);
  });

  test('an average is reached after its air, where the air was clean before; a ceiling has no average', () => {
    const computed = computeExhaustGasInARoom(givenBy());
    const limits = computed.ok ? computed.value.limits : [];
    expect(limits).toHaveLength(carbonMonoxideLimits.length);
    for (const { limit, airMinutes, averageMinutes } of limits)
      if (limit.averagingMinutes === null) expect(averageMinutes, limit.id).toBe(airMinutes);
      else expect(averageMinutes, limit.id).toBeGreaterThan(airMinutes!);
  });

  test('five limits are drawn, each with its figure, its time and its body', () => {
    expect(words.levels.map(({ name, value }) => [plain(name), Math.round(value)])).toEqual([
      ['50 ppm over 8 h, OSHA', 50],
      ['200 ppm at any moment, NIOSH', 200],
      ['1200 ppm at any moment, NIOSH', 1200],
      ['8.6 ppm over 8 h, WHO', 9],
      ['420 ppm over 10 min, US EPA, AEGL-2', 420],
    ]);
  });

  test('a limit says who set it and when, and whether that is from memory', () => {
    expect(words.limits.find(({ id }) => id === 'who-2021')).toMatchObject({
      who: 'WHO, 2021',
      fromMemory: false,
    });
    expect(words.limits.find(({ id }) => id === 'aegl-3-10')?.fromMemory).toBe(true);
  });

  test('every limit has its line, and every line its times', () => {
    expect(words.limits.map(({ id }) => id)).toEqual(carbonMonoxideLimits.map(({ id }) => id));
    for (const { airAfter, averageAfter } of words.limits) {
      expect(airAfter).toMatch(/^\d+:\d\d$/u);
      expect(averageAfter).toMatch(/^\d+:\d\d$/u);
    }
    expect(words.limits.find(({ id }) => id === 'niosh-ceiling')).toMatchObject({
      airAfter: '0:47',
      averageAfter: '0:47',
      fromMemory: false,
    });
    expect(plain(words.alarm)).toContain(
      'may stay silent for 15 min. In this room that is until 16 min 35 s',
    );
  });

  test('the table of the blood ends where the curve does', () => {
    const { percent } = words.answer;
    expect(words.blood).toHaveLength(4);
    expect(words.blood.at(-1)).toEqual({
      after: '20\u00a0min',
      ppm: '4664\u00a0ppm',
      rest: '21\u00a0%',
      lightWork: '46\u00a0%',
    });
    expect(percent.rest[0]).toBeCloseTo(0.8, 12);
    expect(percent['light work'].at(-1)).toBeGreaterThan(percent.rest.at(-1)!);
    expect(answerTo({ activity: 'rest' }).bloodLead).toContain('at rest');
  });
});

describe('other questions', () => {
  test('the same room by its volume, the same gas by its flow, in other units', () => {
    const byVolume = answerTo({ roomAs: 'volume', volume: '43200 L', length: 'nonsense' });
    expect(figure(byVolume, 'final')).toBe('4664 ppm');
    const flow = answerTo({ sourceAs: 'flow', flow: '0.3 m3/h', displacement: '' });
    expect(figure(flow, 'source')).toBe('5.00 L/min');
    expect(figure(flow, 'exhaust')).toBeUndefined();
    const twoStroke = answerTo({ cycle: 'two-stroke', displacement: '0.75 L', speed: '1000 rpm' });
    expect(figure(twoStroke, 'final')).toBe('4664 ppm');
    expect(givenBy({ temperature: '68 °F' }).kelvins).toBeCloseTo(293.15, 10);
  });

  test('a sealed room only rises', () => {
    const sealed = answerTo({ airChanges: '0' });
    expect(figure(sealed, 'steady')).toBeUndefined();
    expect(figure(sealed, 'final')).toBe('5063 ppm');
    expect(figure(sealed, 'afterwards')).toBe('5063 ppm');
  });

  test('below every ceiling it says what that does not mean; a dash stands for a limit not passed', () => {
    const small = answerTo({ sourceAs: 'flow', flow: '0.05', airChanges: '5' });
    expect(small.lead).toContain('That is no permission');
    expect(plain(small.alarm)).toBe(
      'In this sum a household alarm to UL 2034 need not sound at all within a day.',
    );
    expect(small.limits.filter(({ airAfter }) => airAfter === '–').length).toBeGreaterThan(10);
    const none = answerTo({ sourceAs: 'flow', flow: '0' });
    expect(plain(none.lead)).toContain('this sum has 0 ppm');
    expect(none.limits.every(({ averageAfter }) => averageAfter === '–')).toBe(true);
  });

  test('air that is bad from the start is past its limits from the start', () => {
    const before = answerTo({ initial: '1500' });
    expect(plain(before.lead)).toContain('It is past 1200 ppm from the start');
    expect(before.limits.find(({ id }) => id === 'niosh-idlh')?.airAfter).toBe('0:00');
  });

  test('what would be passed only later than a day counts as not passed', () => {
    const slow = answerTo({ sourceAs: 'flow', flow: '0.001', airChanges: '0' });
    // 0.023 ppm a minute: 34.7 ppm after 25 hours.
    expect(slow.limits.find(({ id }) => id === 'naaqs-1h')?.airAfter).toBe('–');
    expect(slow.limits.find(({ id }) => id === 'naaqs-8h')?.airAfter).not.toBe('–');
  });

  test('scale and activity are passed on', () => {
    expect(givenBy()).toMatchObject({ scale: 'logarithmic', activity: 'light work' });
    expect(givenBy({ scale: 'linear', activity: 'rest' })).toMatchObject({
      scale: 'linear',
      activity: 'rest',
    });
  });

  test('a decimal comma is answered with one', () => {
    expect(figure(answerTo({ airChanges: '0,5' }), 'source')).toBe('10,9 L/min');
  });
});

describe('what is wrong is said beside its field', () => {
  test.each([
    ['length', '', 'nothing is written here'],
    ['length', '400 m', 'from 0.5 to 200; you wrote “400 m”'],
    ['width', '3 furlongs', '“furlongs” is not a unit'],
    ['height', '100 mm', 'from 500 to 200000; you wrote “100 mm”'],
    ['airChanges', '-1', 'from 0 to 100; you wrote “-1”'],
    ['airChanges', 'NaN', 'you wrote “NaN”'],
    ['displacement', '1e309', 'Give a number of a size'],
    ['displacement', '5 cm3', 'from 10 to 30000; you wrote “5 cm3”'],
    ['speed', '0', 'from 60 to 18000'],
    ['filling', '200', 'from 1 to 120'],
    ['carbonMonoxide', '20', 'from 0 to 15'],
    ['temperature', '-300 °C', 'absolute zero'],
    ['temperature', '200 °F', 'from −40 to 140'],
    ['running', '500', 'from 0.1 to 480'],
    ['initial', '1e5', 'from 0 to 10000'],
    ['carbonMonoxide', '1,234', 'can be read two ways'],
  ] as const)('%s “%s”', (field, typed, words) => {
    const answered = answerExhaustGasInARoom({ ...example, [field]: typed });
    expect(answered).toMatchObject({ ok: false, problems: [{ field }] });
    expect(!answered.ok && answered.problems.map(sayProblem)[0]?.sentence).toContain(words);
  });

  test.each([
    ['volume', 'roomAs', 'volume', '0.1'],
    ['flow', 'sourceAs', 'flow', '-1'],
  ] as const)('%s only where it is asked for', (field, choice, chosen, typed) => {
    expect(answerExhaustGasInARoom({ ...example, [field]: typed }).ok).toBe(true);
    const asked = answerExhaustGasInARoom({ ...example, [choice]: chosen, [field]: typed });
    expect(asked).toMatchObject({ ok: false, problems: [{ field }] });
  });

  test('several problems are all named', () => {
    const answered = answerExhaustGasInARoom({ ...example, length: '', speed: 'fast', running: '0' });
    expect(!answered.ok && answered.problems.map(({ field }) => field)).toEqual([
      'length',
      'speed',
      'running',
    ]);
  });

  test('more gas than the sum is made for', () => {
    const tight = { roomAs: 'volume', volume: '1', running: '480' } as const;
    const words = 'more than 100000 ppm of carbon monoxide into the room';
    for (const part of [tight, { ...tight, sourceAs: 'flow' }] as const) {
      const answered = answerExhaustGasInARoom({ ...example, ...part });
      expect(answered).toMatchObject({ ok: false, problems: [{ field: 'running' }] });
      expect(!answered.ok && answered.problems.map(sayProblem)[0]?.sentence).toContain(words);
    }
    expect(mostPpm).toBe(100_000);
  });

  test('the sum itself refuses what no form gives it', () => {
    const given = givenBy();
    const wrong = [
      { volumeM3: 0 },
      { kelvins: 0 },
      { runningMinutes: -1 },
      { runningMinutes: NaN },
      { source: { kind: 'engine', engine: { ...engineOf(given), rpm: 0 } } },
    ] as const;
    for (const part of wrong) expect(computeExhaustGasInARoom({ ...given, ...part }).ok).toBe(false);
  });
});

function engineOf({ source }: ExhaustGasGiven) {
  if (source.kind !== 'engine') throw new Error('no engine');
  return source.engine;
}

describe('words that must not be said', () => {
  test('nothing is called safe, harmless or allowed, and nobody is given time', () => {
    for (const part of [{}, { sourceAs: 'flow', flow: '0' }, { airChanges: '100' }] as const) {
      const said = JSON.stringify({ ...answerTo(part), answer: undefined, notKnown });
      expect(said).not.toMatch(
        /\bsafe(ly)?\b|harmless|no danger|you (still )?have|allowed|may stay in|acceptable/iu,
      );
    }
  });

  test('each part says what it does not know', () => {
    for (const lines of Object.values(notKnown)) expect(lines.length).toBeGreaterThan(1);
    const all = Object.values(notKnown).flat().join(' ');
    for (const word of ['mixes', 'head', 'alarm', 'health', 'Pregnancy', 'children', 'Height', 'Other gases'])
      expect(all).toContain(word);
  });
});

test.each([
  [0, 'at once'],
  [0.01, 'under 1 s'],
  [0.6, '36 s'],
  [0.9999, '59 s'],
  [1, '1 min'],
  [9.1, '9 min 6 s'],
  [59.999, '59 min 59 s'],
  [60, '1 h'],
  [125.9, '2 h 5 min'],
  [1440, '24 h'],
])('formatDuration(%d) is %s', (minutes, words) => {
  expect(plain(formatDuration(minutes))).toBe(words);
});
