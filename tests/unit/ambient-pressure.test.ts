import { describe, expect, it, test } from 'vitest';
import {
  absolutePressurePa,
  altimeterSetting,
  ambientPressure,
  ambientPressureFields,
  answerAmbientPressure,
  carryReading,
  computeAmbientPressure,
  depressionPa,
  initialForm,
  parseAmbient,
  parseAmbientPressure,
  sayProblem,
  stationPressure,
} from '../../src/calculators/index.ts';
import type {
  AmbientPressureDescribed,
  AmbientPressureField,
  Form,
  Result,
} from '../../src/calculators/index.ts';

type Part = Partial<Form<AmbientPressureField>>;
const form = (part: Part = {}) => ({ ...initialForm(ambientPressureFields), ...part });
function answer(part: Part = {}): AmbientPressureDescribed {
  const described = answerAmbientPressure(form(part));
  if (!described.ok) throw new Error(JSON.stringify(described.problems));
  return described.answer;
}
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const figures = ({ ambient, place, carried }: AmbientPressureDescribed): Record<string, string> =>
  Object.fromEntries([...ambient, ...place, ...carried].map(({ id, text }) => [id, plain(text)]));
const problems = (part: Part): string[][] => {
  const described = answerAmbientPressure(form(part));
  return described.ok
    ? []
    : described.problems.map(sayProblem).map(({ field, sentence }) => [field, plain(sentence)]);
};
const value = <Value>(result: Result<Value>): Value => {
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
};

describe('the worked example', () => {
  it('500 m: 954.6 hPa, 94.2 %, and 250 mmHg from the sea are 206 to 236 mmHg', () => {
    const described = answer();
    expect(plain(described.verdict)).toBe(
      'The ambient pressure is 954.6 hPa (28.19 inHg): 94.2 % of the standard at sea level.',
    );
    expect(figures(described)).toMatchObject({
      'ambient-kPa': '95.46 kPa',
      'ambient-mmHg': '716.0 mmHg',
      'ambient-psi': '13.85 psi',
      largest: '716.0 mmHg',
      share: '94.2 %',
      'pressure-altitude': '500 m',
      there: '1013 hPa',
      'same-opening': '236 mmHg',
      'same-charge': '206 mmHg',
      ratio: '0.671',
    });
    expect(described.ambient).toHaveLength(16);
    expect(plain(described.carriedWords[0] ?? '')).toBe(
      '250 mmHg there would be about 206 mmHg to 236 mmHg here.',
    );
    expect(described.weather).toContain('standard air of the height');
    expect(described.converterLink).toEqual({ v: '1', typed: '250 mmHg', ambient: '95.461 kPa' });
  });
});

describe('ways to know a place', () => {
  it('by a barometer', () => {
    const described = answer({ from: 'barometer', barometer: '28.4 inHg', altitude: 'nonsense' });
    expect(figures(described)).toMatchObject({ 'ambient-inHg': '28.4 inHg', 'ambient-hPa': '961.7 hPa' });
    expect(described.weather).toContain('what your barometer shows');
  });

  it('by height and setting: a setting of 1013.25 hPa is the standard', () => {
    const standard = answer({ from: 'setting', setting: '1013.25' });
    expect(figures(standard)['ambient-hPa']).toBe(figures(answer())['ambient-hPa']);
    const low = answer({ from: 'setting', setting: '990 hPa' });
    expect(figures(low)).toMatchObject({ 'ambient-hPa': '932.5 hPa', 'pressure-altitude': '695 m' });
    expect(low.weather).toContain('weather of the day is in it');
  });

  it('geopotential and geometric heights; feet', () => {
    expect(figures(answer({ altitude: '5000 m' }))['ambient-Pa']).toBe('54048 Pa');
    expect(figures(answer({ altitude: '5000 m', altitudeIs: 'geopotential' }))['ambient-Pa']).toBe(
      '54020 Pa',
    );
    expect(figures(answer({ altitude: '-100 ft' }))['ambient-hPa']).toBe('1017 hPa');
  });

  it('answers with the reader’s decimal comma', () => {
    expect(figures(answer({ from: 'barometer', barometer: '955,2 hPa' }))['ambient-hPa']).toBe('955,2 hPa');
  });
});

describe('a reading carried here', () => {
  it('none: no lines and no words, and the converter begins with the ambient pressure alone', () => {
    const described = answer({ reading: ' ', otherAltitude: 'nonsense' });
    expect([described.carried, described.carriedWords]).toEqual([[], []]);
    expect(described.converterLink).toEqual({ v: '1', ambient: '95.461 kPa' });
    expect(figures(described).largest).toBe('716.0 mmHg');
  });

  it('from a higher place it grows', () => {
    const described = answer({ altitude: '0 m', otherAltitude: '1000 m', reading: '200 mmHg' });
    expect(plain(described.carriedWords[0] ?? '')).toBe(
      '200 mmHg there would be about 225 mmHg to 286 mmHg here.',
    );
  });

  it('from the same air it stays', () => {
    const described = answer({ otherPlace: 'pressure', otherPressure: '95.461 kPa' });
    expect(plain(described.carriedWords[0] ?? '')).toBe('250 mmHg there would be about 250 mmHg here.');
  });

  it('no depression is left where the engine would need all the air', () => {
    const described = answer({ altitude: '4000 m', reading: '5 inHg' });
    expect(described.carriedWords[0]).toContain('no such depression is left');
    expect(figures(described)['same-charge']).toBeUndefined();
    expect(figures(described)['same-opening']).toBe('3.04 inHg');
  });

  it('choked or not', () => {
    const note = (reading: string) => answer({ reading }).carried.find(({ id }) => id === 'ratio')?.note;
    expect([note('358 mmHg'), note('359 mmHg')]).toEqual([
      'not choked',
      'choked: the throttle passes all it can',
    ]);
  });
});

describe('bad input is answered in words, beside its field', () => {
  test.each<[Part, string, string]>([
    [{ from: 'guess' }, 'from', 'Give altitude, setting or barometer; you wrote “guess”.'],
    [{ altitude: '' }, 'altitude', 'nothing is written here'],
    [{ altitude: '10 km' }, 'altitude', 'Give one from −500 m to 9000 m; you wrote “10 km”.'],
    [{ altitude: '500 hPa' }, 'altitude', '“hPa” is not a unit that is known here.'],
    [{ from: 'setting', setting: '30 kPa' }, 'setting', 'Give a number from 850 hPa to 1100 hPa; you wrote “30 kPa”.'],
    [{ from: 'barometer', barometer: '1 bar gauge' }, 'barometer', '“bar gauge” is not a unit'],
    [{ from: 'barometer', barometer: '0' }, 'barometer', 'Give a number from 200 hPa to 1200 hPa; you wrote “0”.'],
    [{ reading: '-250' }, 'reading', 'Give a number above 0; you wrote “-250”.'],
    [{ reading: 'NaN' }, 'reading', 'you wrote “NaN”'],
    [{ reading: '800 mmHg' }, 'reading', 'give one from 0 to 760.0 mmHg; you gave 800 mmHg'],
    [{ otherPlace: 'moon' }, 'otherPlace', 'Give altitude or pressure; you wrote “moon”.'],
    [{ otherAltitude: '1e99 m' }, 'otherAltitude', 'Give one from −500 m to 9000 m'],
    [{ otherPlace: 'pressure', otherPressure: '5 bar' }, 'otherPressure', 'from 200 hPa to 1200 hPa'],
  ])('%j', (part, field, sentence) => {
    const found = problems(part);
    expect(found.map(([name]) => name)).toEqual([field]);
    expect(found[0]?.[1]).toContain(sentence);
  }); // prettier-ignore

  it('an unknown kind of height is named once for each height', () => {
    expect(problems({ altitudeIs: 'radar' }).map(([field]) => field)).toContain('altitudeIs');
  });
});

describe('stationPressure(setting, height) and altimeterSetting(station, height)', () => {
  // By the closed form of the lowest layer: p^n = q^n − (L p₀^n/T₀) H, n = R L/g₀.
  const n = 1 / 5.2558761132785;
  const closed = (setting: number, height: number): number =>
    (setting ** n - (0.0065 / 288.15) * 101_325 ** n * height) ** (1 / n);

  test.each([
    [101_325, 0],
    [99_000, 500],
    [103_000, 2000],
    [95_000, 4500],
    [104_000, -400],
  ])('%d Pa at %d m', (setting, geopotentialM) => {
    const station = value(stationPressure(setting, { geopotentialM }));
    expect(station / closed(setting, geopotentialM)).toBeCloseTo(1, 9);
    expect(value(altimeterSetting(station, { geopotentialM })) / setting).toBeCloseTo(1, 9);
  });

  it('takes ISO 2533 and geometric heights', () => {
    const [us, iso] = [undefined, 'iso-2533' as const].map((standard) =>
      value(stationPressure(100_000, { geometricM: 3000 }, standard)),
    );
    expect(us).not.toBe(iso);
    expect((us ?? 0) / (iso ?? 1)).toBeCloseTo(1, 5);
    expect(value(altimeterSetting(iso ?? 0, { geometricM: 3000 }, 'iso-2533'))).toBeCloseTo(100_000, 4);
  });

  it('says what is wrong', () => {
    expect(stationPressure(-1, { geopotentialM: 0 })).toMatchObject({ ok: false, problem: { field: 'pressurePa' } });
    expect(stationPressure(101_325, { geopotentialM: 1e6 })).toMatchObject({ ok: false, problem: { field: 'geopotentialM' } });
    expect(altimeterSetting(0, { geopotentialM: 0 }).ok).toBe(false);
    expect(altimeterSetting(101_325, { geopotentialM: 1e6 }).ok).toBe(false);
  }); // prettier-ignore
});

describe('computeAmbientPressure(question) and carryReading(reading)', () => {
  const far = { from: 'altitude', height: { geopotentialM: 1e6 } } as const;
  const here = { from: 'barometer', stationPa: 90_000 } as const;

  it('passes every problem on', () => {
    const tooFar = { ok: false, problem: { kind: 'out-of-range' } };
    expect(ambientPressure(far)).toMatchObject(tooFar);
    expect(computeAmbientPressure({ place: far, reading: null })).toMatchObject(tooFar);
    expect(computeAmbientPressure({ place: { ...here, stationPa: -1 }, reading: null })).toMatchObject({
      ok: false,
      problem: { field: 'pressurePa' },
    });
    expect(computeAmbientPressure({ place: here, reading: { depressionPa: 1, place: far } })).toMatchObject(
      tooFar,
    );
    expect(computeAmbientPressure({ place: here, reading: { depressionPa: -1, place: here } })).toMatchObject(
      {
        ok: false,
        problem: { field: 'depressionPa' },
      },
    );
  });

  const carry = (depression: number, there: number, to: number) =>
    carryReading({
      depressionPa: depressionPa(depression),
      thereAmbientPa: absolutePressurePa(there),
      hereAmbientPa: absolutePressurePa(to),
    });

  test.each([
    [1, 0, 90_000, { kind: 'out-of-range', field: 'thereAmbientPa' }],
    [1, 90_000, -1, { kind: 'out-of-range', field: 'hereAmbientPa' }],
    [NaN, 90_000, 90_000, { kind: 'not-finite', field: 'depressionPa' }],
    [90_001, 90_000, 90_000, { kind: 'depression-beyond-ambient', limit: { min: 0, max: 90_000 } }],
  ])('carryReading: %d Pa of %d Pa to %d Pa has a problem', (depression, there, to, problem) => {
    expect(carry(depression, there, to)).toMatchObject({ ok: false, problem });
  });

  it('the whole ambient pressure stays the whole', () => {
    expect(carry(90_000, 90_000, 80_000)).toMatchObject({
      ok: true,
      value: { sameOpeningPa: 80_000, sameChargePa: 80_000, pressureRatio: 0, isChoked: true },
    });
  });
});

describe('parseAmbientPressure(form)', () => {
  const parsed = (part: Part) => parseAmbientPressure(form(part));

  it('gives the place, and the reading with the place where it was taken', () => {
    expect(parsed({ reading: ' ' })).toEqual({
      ok: true,
      value: {
        place: { from: 'altitude', height: { geometricM: 500 } },
        reading: null,
        unit: null,
        mark: 'point',
      },
    });
    expect(parsed({ altitudeIs: 'geopotential', reading: '30 kPa' })).toMatchObject({
      value: {
        place: { from: 'altitude', height: { geopotentialM: 500 } },
        reading: { depressionPa: 30_000, place: { from: 'altitude', height: { geopotentialM: 0 } } },
        unit: { id: 'kPa' },
      },
    });
  });

  it('takes a reading of all the air that there was, and none beyond', () => {
    const there = { otherPlace: 'pressure', otherPressure: '1000 hPa' };
    expect(parsed({ ...there, reading: '1000 hPa' })).toMatchObject({
      value: { reading: { depressionPa: 100_000, place: { from: 'barometer', stationPa: 100_000 } } },
    });
    expect(parsed({ ...there, reading: '1000.1 hPa' })).toMatchObject({
      problems: [
        { field: 'reading', problem: { kind: 'depression-beyond-ambient', limit: { min: 0, max: 100_000 } } },
      ],
    });
  });

  it.each([
    ['from', {}],
    ['altitudeIs', {}],
    ['altitudeIs', { from: 'setting', reading: '' }],
    ['otherPlace', {}],
  ] as const)('%s that is none of the choices is told, and nothing is answered', (field, part) => {
    const { ok, ...rest } = parsed({ ...part, [field]: 'moon' });
    expect(ok).toBe(false);
    expect(rest).toHaveProperty('problems.0', {
      field,
      problem: expect.objectContaining({ kind: 'unknown-choice', field, typed: 'moon' }) as object,
    });
  });

  it.each([
    ['altitude', {}],
    ['setting', { from: 'setting' }],
    ['barometer', { from: 'barometer' }],
    ['reading', {}],
    ['otherAltitude', {}],
    ['otherPressure', { otherPlace: 'pressure' }],
  ] as const)('%s that is no number is the one problem', (field, part) => {
    expect(parsed({ ...part, [field]: 'x' })).toMatchObject({
      ok: false,
      problems: [{ field, problem: { kind: 'not-a-number' } }],
    });
  });
});

describe('parseAmbient(typed)', () => {
  it.each([
    ['', 101_325],
    [' ', 101_325],
    ['20', 20_000],
    ['1200 hPa', 120_000],
  ])('“%s” is %d Pa', (typed, value) => expect(parseAmbient(typed)).toEqual({ ok: true, value }));

  it('a problem names its field', () => {
    expect(parseAmbient('x')).toMatchObject({ problem: { kind: 'not-a-number', field: 'ambient' } });
  });

  it.each(['19.9', '120.1'])('%s kPa is believed nowhere', (typed) =>
    expect(parseAmbient(typed)).toMatchObject({ problem: { kind: 'out-of-range', field: 'ambientPa' } }),
  );
});
