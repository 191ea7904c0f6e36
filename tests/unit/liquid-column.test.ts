import { describe, expect, it, test } from 'vitest';
import {
  answerLiquidColumn,
  columnHeightM,
  computeLiquidColumn,
  initialForm,
  liquidColumnFields,
  liquids,
  manometerPressurePa,
  manometerReadingM,
  parseLiquidColumn,
  sayProblem,
  uprightPerReading,
} from '../../src/calculators/index.ts';
import type { Form, LiquidColumnDescribed, LiquidColumnField } from '../../src/calculators/index.ts';

type Part = Partial<Form<LiquidColumnField>>;
const form = (part: Part = {}): Form<LiquidColumnField> => ({ ...initialForm(liquidColumnFields), ...part });

function answer(part: Part = {}): LiquidColumnDescribed {
  const described = answerLiquidColumn(form(part));
  if (!described.ok) throw new Error(JSON.stringify(described.problems));
  return described.answer;
}
const figures = ({ levels, build, read }: LiquidColumnDescribed): Record<string, string> =>
  Object.fromEntries(
    [...levels, ...build, ...read].map(({ id, text }) => [id, text.replaceAll('\u00a0', ' ')]),
  );
const problems = (part: Part): string[][] => {
  const described = answerLiquidColumn(form(part));
  return described.ok
    ? []
    : described.problems
        .map(sayProblem)
        .map(({ field, sentence }) => [field, sentence.replaceAll('\u00a0', ' ')]);
};

describe('the worked example', () => {
  it('30 mmHg between two carburettors: 409 mm of water, legs of 511 mm, pots of 35 mL', () => {
    const described = answer();
    expect(described.verdict.replaceAll('\u00a0', ' ')).toBe(
      '30 mmHg between two carburettors stands 409 mm high in water. Make each leg 511 mm long, and put a catch pot in each line to the engine.',
    );
    expect(figures(described)).toEqual({
      level: '409 mm',
      'per-unit': '13.62 mm',
      'per-millimetre': '0.0734 mmHg',
      'open-side': '3.40 m',
      density: '998.2 kg/m³',
      leg: '511 mm',
      tube: '1.12 m',
      liquid: '17 mL',
      catch: '35 mL',
    });
    expect(described.announcement).toContain('409');
    expect(described.worstCase.replaceAll('\u00a0', ' ')).toContain('would stand 3.40 m high');
    expect(described.levels[0]?.copied).toBe('409 mm');
  });
});

describe('each line of the answer says what it is', () => {
  const lines = (part: Part): string[] => {
    const { levels, build } = answer(part);
    return [...levels, ...build].map(({ label, text, note = '' }) =>
      [label, text, note].join(' | ').replaceAll('\u00a0', ' '),
    );
  };

  it('two legs of water between two carburettors', () => {
    // 30 × 13.595 08 / 0.998 207 = 408.6 mm, or 16.1 in; 17.35 mL of it weigh as many grams.
    expect(lines({})).toEqual([
      '30 mmHg between two carburettors | 409 mm | 16.1 in; between the levels',
      '1 mmHg | 13.62 mm | of reading',
      '1 mm of reading | 0.0734 mmHg | ',
      '250 mmHg against the open air | 3.40 m | 134 in; upright, for comparison',
      'Density | 998.2 kg/m³ | at 20 °C',
      'Each leg, bottom to top | 511 mm | 20.1 in; a quarter more than the level',
      'Tube, all of it | 1.12 m | 44.2 in; with the bend',
      'Liquid, to half of each leg | 17 mL | 17 g',
      'Each of two catch pots holds | 35 mL | one in each line, in and out at the top',
    ]);
  });

  it('a leaning tube out of a well, a liquid of one’s own, one carburettor', () => {
    // 3 × 13.595 1 = 40.8 mm upright, over sin 20° + (6/60)² = 0.352: 115.9 mm.
    const part: Part = { kind: 'inclined', sides: 'depression', depression: '3 mmHg', liquid: 'own' };
    expect(lines(part)).toEqual([
      '3 mmHg against the open air | 116 mm | 4.56 in; along the tube',
      '1 mmHg | 38.62 mm | of reading',
      '1 mm of reading | 0.0259 mmHg | ',
      'Density | 1000 kg/m³ | as you gave it',
      'Tube out of the well | 145 mm | 5.70 in; a quarter more than the level',
      'Tube, all of it | 245 mm | 9.64 in; with what dips into the well',
      'Liquid in the well | 14 mL | 14 g',
      'The catch pot holds | 28 mL | in and out at the top',
    ]);
    const described = answer(part);
    expect(described.levelWords.replaceAll('\u00a0', ' ')).toBe('L is 116 mm, h is 40.8 mm.');
    expect(described.verdict).toMatch(/a catch pot in the line to the engine\.$/u);
  });

  it('oil to three figures, at the temperature that was given', () => {
    const { levels } = answer({ liquid: 'sae-30w', temperature: '21.115 °C' });
    const density = levels.find(({ id }) => id === 'density');
    expect([density?.text, density?.note].map((text) => text?.replaceAll('\u00a0', ' '))).toEqual([
      '890 kg/m³',
      'at 21.12 °C',
    ]);
  });
});

describe('what the column is good for', () => {
  it('one carburettor against the air does not stand on a bench: the difference is recommended', () => {
    const described = answer({ sides: 'depression' });
    expect(described.verdict).toContain('does not stand on a bench. Join the column to two carburettors');
    expect(figures(described)).toMatchObject({ level: '3.40 m', leg: '4.26 m', catch: '246 mL' });
    expect(figures(described)['open-side']).toBeUndefined();
    expect(described.build.find(({ id }) => id === 'catch')?.label).toBe('The catch pot holds');
  });

  it('a difference that is too large: balance more closely first', () => {
    expect(answer({ difference: '200 mmHg' }).verdict).toContain('Balance more closely with a gauge first');
  });

  it('a level too small to be read', () => {
    const described = answer({ difference: '1 mmHg' });
    expect(described.verdict).toContain('too little to read well');
    expect(figures(described).level).toBe('13.6 mm');
  });

  it('a leaning tube reads more, a well a little less', () => {
    expect(figures(answer({ kind: 'well' })).level).toBe('405 mm');
    const leaning = answer({ kind: 'inclined' });
    expect(figures(leaning).level).toBe('1.16 m');
    expect(leaning.levelWords.replaceAll('\u00a0', ' ')).toBe('L is 1.16 m, h is 409 mm.');
    expect(leaning.verdict).toContain('along the tube in water');
    expect(answer({ kind: 'well' }).verdict).toContain('Make the tube');
  });

  it('what was read, in the units of gauges; none where nothing was read', () => {
    expect(answer().read).toEqual([]);
    expect(figures(answer({ reading: '4 3/4 in' }))).toMatchObject({
      'read-mmHg': '8.859 mmHg',
      'read-kPa': '1.181 kPa',
      'read-mmH2O': '120.4 mmH₂O',
    });
  });

  it('answers with the reader’s decimal comma', () => {
    expect(figures(answer({ bore: '6,5 mm' }))).toMatchObject({
      'per-unit': '13,62 mm',
      density: '998,2 kg/m³',
    });
    expect(figures(answer({ kind: 'inclined', angle: '22,5°' })).tube).toBe('1,40 m');
  });

  it('takes the unit of the figure that was asked for', () => {
    expect(figures(answer({ difference: '1.2 inHg' }))).toMatchObject({ 'per-unit': '345.9 mm' });
    expect(figures(answer({ sides: 'depression', depression: '5 kPa' }))).toMatchObject({
      'per-unit': '102.2 mm',
      level: '511 mm',
    });
  });
});

describe('liquids', () => {
  test.each(liquids.map(({ id, hazards }) => [id, hazards] as const))('%s', (liquid, hazards) => {
    const { verdict, warnings, build } = answer({ liquid });
    const refused =
      hazards.includes('flammable') || liquid === 'mercury' || liquid === 'carbon-tetrachloride';
    expect(verdict.startsWith('Do not fill a column with')).toBe(refused);
    expect(build).toHaveLength(refused ? 0 : 4);
    expect(warnings.at(-1)).toMatch(/^A liquid cannot be compressed/);
    expect(warnings.length).toBeGreaterThanOrEqual(2);
    expect(warnings.join(' ').includes('hot pipes and sparks')).toBe(hazards.includes('flammable'));
    expect(warnings.join(' ').includes('Minamata')).toBe(liquid === 'mercury');
  });

  it('the danger is named before anything else', () => {
    expect(answer({ liquid: 'gasoline' }).warnings[0]).toMatch(/^Petrol: its vapour takes fire at −43 °C/);
    expect(answer({ liquid: 'carbon-tetrachloride' }).warnings[0]).toMatch(/It is refused here\.$/);
  });

  it('a temperature in Fahrenheit; the strength of a coolant; a density of the reader’s own', () => {
    expect(figures(answer({ temperature: '212 °F' })).density).toBe('958.4 kg/m³');
    expect(figures(answer({ temperature: '32 °F' })).density).toBe('999.8 kg/m³');
    expect(figures(answer({ liquid: 'glycol-solution', strength: '33 %' })).density).toBe('1051 kg/m³');
    const own = answer({ liquid: 'own', density: '0.95 g/cm³', temperature: 'nonsense' });
    expect(figures(own).density).toBe('950 kg/m³');
    expect(own.warnings[0]).toContain('does not know what the liquid is');
    expect(own.verdict).toContain('in this liquid');
  });
});

describe('bad input is answered in words, beside its field', () => {
  test.each<[Part, string, string]>([
    [{ kind: 'siphon' }, 'kind', 'Give u-tube, well or inclined; you wrote “siphon”.'],
    [{ sides: 'three' }, 'sides', 'Give difference or depression; you wrote “three”.'],
    [{ difference: '' }, 'difference', 'Give a number, such as 212 or 9 1/2; nothing is written here.'],
    [{ difference: '0' }, 'difference', 'Give a number above 0 and at most 760.0 mmHg; you wrote “0”.'],
    [{ difference: '1e9 bar' }, 'difference', 'Give a number above 0 and at most 760.0 mmHg; you wrote “1e9 bar”.'],
    [{ depression: '-5 kPa' }, 'depression', 'Give a number above 0 and at most 760.0 mmHg; you wrote “-5 kPa”.'],
    [{ depression: '9 furlongs' }, 'depression', '“furlongs” is not a unit that is known here.'],
    [{ bore: '1 mm' }, 'bore', 'Give one from 2 mm to 25 mm; you wrote “1 mm”.'],
    [{ bore: '2 in' }, 'bore', 'Give one from 2 mm to 25 mm; you wrote “2 in”.'],
    [{ bore: 'wide' }, 'bore', 'Give one number, such as 212, 12.5 or 9 1/2; you wrote “wide”.'],
    [{ kind: 'well', wellBore: '1 m' }, 'wellBore', 'Give one from 10 mm to 500 mm; you wrote “1 m”.'],
    [{ kind: 'well', bore: '20 mm', wellBore: '20 mm' }, 'wellBore', 'Give a well that is wider than the tube; you wrote “20 mm”.'],
    [{ kind: 'inclined', angle: '4' }, 'angle', 'Give a number from 5 to 90; you wrote “4”.'],
    [{ kind: 'inclined', angle: '°' }, 'angle', 'Give one number, such as 212, 12.5 or 9 1/2; you wrote “°”.'],
    [{ temperature: '-1' }, 'temperature', 'Give one from 0 to 100 °C; you wrote “-1”.'],
    [{ temperature: '-300' }, 'temperature', 'Nothing is colder than absolute zero'],
    [{ liquid: 'sae-10w', temperature: '90' }, 'temperature', 'Give one from 0 to 60 °C; you wrote “90”.'],
    [{ liquid: 'treacle' }, 'liquid', 'Give water,'],
    [{ liquid: 'own', density: '1' }, 'density', 'Give one from 500 kg/m³ to 15000 kg/m³; you wrote “1”.'],
    [{ liquid: 'glycol-solution', strength: '95 %' }, 'strength', 'Give a number from 0 to 90; you wrote “95 %”.'],
    [{ reading: '-1 mm' }, 'reading', 'Give one from 0 to 20 m; you wrote “-1 mm”.'],
    [{ reading: '12 psi' }, 'reading', '“psi” is not a unit that is known here.'],
  ])('%j', (part, field, sentence) => {
    const found = problems(part);
    expect(found.map(([name]) => name)).toEqual([field]);
    expect(found[0]?.[1]).toContain(sentence);
  }); // prettier-ignore

  it('all at once', () => {
    expect(problems({ temperature: 'hot', bore: '', depression: '9' }).map(([field]) => field)).toEqual([
      'temperature',
      'bore',
    ]);
  });

  it('what does not apply may hold anything', () => {
    const nonsense = 'nonsense';
    expect(problems({ strength: nonsense, density: nonsense, wellBore: nonsense, angle: nonsense })).toEqual(
      [],
    );
    expect(problems({ sides: 'depression', difference: nonsense })).toEqual([]);
  });
});

describe('computeLiquidColumn(question)', () => {
  it('by hand: mercury, 100 mm, a tube of 8 mm out of a well of 40 mm', () => {
    const manometer = { kind: 'well', boreM: 0.008, wellBoreM: 0.04, angleRad: Math.PI / 2 } as const;
    const pascals = 13_595.1 * 9.80665 * 0.1;
    const given = { kgPerM3: 13_595.1, manometer, boreM: 0.008, readingM: 0.1 } as const;
    const found = computeLiquidColumn({
      ...given,
      sides: 'depression',
      differencePa: 0,
      depressionPa: pascals,
    });
    expect(found.uprightM).toBeCloseTo(0.1, 12);
    expect(found.scaleM).toBeCloseTo(0.1 / 1.04, 12);
    expect(found.legM).toBeCloseTo(0.125 / 1.04, 12);
    expect(found.tubeM).toBeCloseTo(0.125 / 1.04 + 0.1, 12);
    expect(found.liquidM3).toBeCloseTo(2 * Math.PI * 0.004 ** 2 * (0.125 / 1.04 + 0.1), 12);
    expect(found.catchM3).toBeCloseTo(2 * found.liquidM3, 12);
    expect(found.catchPots).toBe(1);
    expect(found.readPa).toBeCloseTo(pascals * 1.04, 6);
  });

  it('parseLiquidColumn(form) gives SI', () => {
    const parsed = parseLiquidColumn(form({ kind: 'inclined', angle: ' 30 ° ', bore: '1/4 in' }));
    expect(parsed.ok && parsed.value.boreM).toBeCloseTo(0.00635, 12);
    expect(parsed.ok && uprightPerReading(parsed.value.manometer)).toBeCloseTo(0.5 + (6.35 / 60) ** 2, 12);
    expect(parsed).toMatchObject({
      value: { kind: 'inclined', manometer: { kind: 'well' }, readingM: null },
    });
    expect(parseLiquidColumn(form({ reading: ' ' }))).toMatchObject({ value: { readingM: null } });
  });

  it.each(['sides', 'liquid', 'kind'] as const)('%s that is none of the choices is told', (field) => {
    const problem = { kind: 'unknown-choice', field, typed: 'moon' };
    expect(parseLiquidColumn(form({ [field]: 'moon' }))).toMatchObject({
      ok: false,
      problems: [{ field, problem }],
    });
  });

  it('a well as narrow as its tube is told beside the well', () => {
    for (const wellBore of ['12 mm', '11 mm'])
      expect(parseLiquidColumn(form({ kind: 'well', bore: '12 mm', wellBore }))).toEqual({
        ok: false,
        problems: [
          { field: 'wellBore', problem: { kind: 'well-too-narrow', field: 'wellBore', typed: wellBore } },
        ],
      });
    expect(parseLiquidColumn(form({ kind: 'well', wellBore: 'x' }))).toMatchObject({
      problems: [{ field: 'wellBore', problem: { field: 'wellBore' } }],
    });
  });

  it('a reading and its pressure undo each other; a U-tube is meant if none is named', () => {
    expect(manometerReadingM(1000, manometerPressurePa(1000, 0.3))).toBeCloseTo(0.3, 12);
    expect(columnHeightM(1000, 9806.65)).toBe(1);
  });
});
