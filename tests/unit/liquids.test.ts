import { describe, expect, it, test } from 'vitest';
import {
  findLiquid,
  glycolPercents,
  glycolSolutionDensity,
  isRefused,
  liquidDensity,
  liquidOf,
  liquids,
  mercuryColumnReduced,
  mercuryDensity,
  mercuryDensityOfOlderTables,
  mercuryVolumeByQuadratic,
  mercuryVolumeOfOlderTables,
  normalGravity,
  waterDensity,
  waterDensityJonesHarris,
  waterDensityKell,
  waterDensityOfOlderTables,
  waterDensityTanaka,
} from '../../src/calculators/index.ts';
import { valueOfChecked } from '../../src/calculators/value-of-checked.ts';
import type { Result } from '../../src/calculators/index.ts';
import { sources } from '../../src/content/sources.ts';

const value = <Value>(result: Result<Value>): Value => {
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
};

describe('the table of liquids', () => {
  /** As the handbooks that are named print them at 20 °C, kg/m³. */
  const at20: Record<string, string> = {
    water: '998.2067',
    'glycol-solution': '1075',
    'sae-10w': '870',
    'sae-10w30': '876',
    'sae-30w': '891',
    'sae-50w': '902',
    'light-mineral-oil': '845',
    glycerin: '1260',
    'ethylene-glycol': '1117',
    seawater: '1025',
    mercury: '13545.88',
    ethanol: '789',
    methanol: '791',
    isopropanol: '785.5',
    gasoline: '680',
    kerosene: '804',
    benzene: '881',
    'carbon-tetrachloride': '1590',
  };

  it('holds these and no others', () => {
    expect(liquids.map(({ id }) => id)).toEqual(Object.keys(at20));
  });

  test.each(liquids.map((liquid) => [liquid.id, liquid] as const))('%s', (id, liquid) => {
    const expected = at20[id] ?? '';
    const decimals = expected.split('.')[1]?.length ?? 0;
    expect(value(liquidDensity(liquid, 20)).toFixed(decimals)).toBe(expected);
    expect(liquidOf(id)).toBe(liquid);
    for (const name of [liquid.name, ...liquid.aliases]) expect(findLiquid(name.toUpperCase())).toBe(liquid);
    expect(liquid.hazardWords).toMatch(/\.$/);
    expect(Object.keys(sources)).toContain(liquid.sourceId);
    if (liquid.density.kind === 'expansion')
      expect(Object.keys(sources)).toContain(liquid.density.expansionSourceId);
    const { min, max } = liquid.range;
    expect(value(liquidDensity(liquid, max))).toBeLessThan(value(liquidDensity(liquid, 20)));
    for (const celsius of [min - 0.1, max + 0.1])
      expect(liquidDensity(liquid, celsius)).toEqual({
        ok: false,
        problem: { kind: 'out-of-range', field: 'celsius', value: celsius, limit: liquid.range },
      });
  });

  /** As people call them, and what they do to people by vapour or drink, or take fire at the temperature of a workshop. */
  test.each<[id: string, hazards: string, names: readonly string[]]>([
    ['water', '', ['water', 'Pure water', 'distilled  water', 'H2O']],
    [
      'glycol-solution',
      'poisonous',
      ['coolant (ethylene glycol in water)', 'ethylene-glycol solution', 'coolant', 'Antifreeze'],
    ],
    ['sae-10w', '', ['SAE 10W oil', 'sae 10w']],
    ['sae-10w30', '', ['SAE 10W30 oil', 'SAE 10W-30']],
    ['sae-30w', '', ['SAE 30W oil', 'SAE 30W', 'sae30', 'SAE 30 oil']],
    ['sae-50w', '', ['SAE 50W oil', 'SAE 50W', 'sae50', 'SAE 50 oil']],
    ['light-mineral-oil', '', ['light mineral oil', 'mineral oil']],
    ['glycerin', '', ['glycerin', 'glycerine', 'glycerol']],
    ['ethylene-glycol', 'poisonous', ['ethylene glycol, neat', 'ethylene glycol']],
    ['seawater', '', ['sea water', 'salt water', 'sea water 30 per mille']],
    ['mercury', 'mercury poisonous', ['mercury', 'quicksilver', 'Hg']],
    ['ethanol', 'flammable', ['ethanol', 'ethyl alcohol', 'alcohol']],
    ['methanol', 'flammable poisonous', ['methanol', 'methyl alcohol']],
    ['isopropanol', 'flammable', ['isopropanol', 'isopropyl alcohol', '2-propanol', 'propan-2-ol', 'IPA']],
    ['gasoline', 'flammable', ['petrol', 'gasoline']],
    ['kerosene', 'flammable', ['kerosene', 'kerosine', 'lamp oil', 'paraffin oil']],
    ['benzene', 'flammable poisonous', ['benzene']],
    ['carbon-tetrachloride', 'poisonous', ['carbon tetrachloride', 'tetrachloromethane', 'CCl4']],
  ])('%s is found by its names, and what it does is known', (id, hazards, names) => {
    const liquid = liquidOf(id);
    for (const name of names) expect(findLiquid(name)?.id, name).toBe(id);
    expect(names).toContain(liquid.name);
    expect(liquid.aliases.length).toBeLessThan(names.length);
    expect(liquid.hazards.join(' ')).toBe(hazards);
  });

  it('refuses what burns, what is mercury, and what poisons by its vapour', () => {
    const refused = liquids.filter(isRefused);
    expect(refused.map(({ id }) => id)).toEqual(
      'mercury ethanol methanol isopropanol gasoline kerosene benzene carbon-tetrachloride'.split(' '),
    );
    expect(liquids.filter(({ hazards }) => hazards.includes('flammable')).every(isRefused)).toBe(true);
  });

  it('knows no treacle', () => {
    expect(findLiquid('treacle')).toBeNull();
    expect(() => liquidOf('treacle')).toThrow('no liquid “treacle”');
  });

  it('takes the strength of a coolant', () => {
    expect(value(liquidDensity(liquidOf('glycol-solution'), 21.111, 0))).toBeCloseTo(62.31 * 16.018463, 2);
  });

  it('lets oil grow by 0.7 per cent in 10 °C', () => {
    const oil = liquidOf('sae-10w');
    expect(value(liquidDensity(oil, 20)) / value(liquidDensity(oil, 30))).toBeCloseTo(1.0072, 4);
  });
});

describe('water', () => {
  it('waterDensity(celsius) goes over from Tanaka to Kell at 40 °C without a step above 0.001 kg/m³', () => {
    expect(waterDensity(40)).toEqual(waterDensityTanaka(40));
    expect(waterDensity(40.001)).toEqual(waterDensityKell(40.001));
    expect(Math.abs(value(waterDensityTanaka(40)) - value(waterDensityKell(40)))).toBeLessThan(0.001);
    expect(value(waterDensity(100))).toBeCloseTo(958.364, 2);
  });

  test.each([
    ['waterDensity', waterDensity, 0, 100],
    ['waterDensityTanaka', waterDensityTanaka, 0, 40],
    ['waterDensityKell', waterDensityKell, 0, 150],
    ['waterDensityJonesHarris', waterDensityJonesHarris, 5, 40],
    ['waterDensityOfOlderTables', waterDensityOfOlderTables, 0, 150],
    ['mercuryDensity', mercuryDensity, -38, 350],
    ['mercuryVolumeOfOlderTables', mercuryVolumeOfOlderTables, -38, 350],
    ['mercuryVolumeByQuadratic', mercuryVolumeByQuadratic, -38, 350],
    ['mercuryDensityOfOlderTables', mercuryDensityOfOlderTables, -38, 350],
  ])('%s names its limit', (_, density, min, max) => {
    for (const celsius of [min - 0.1, max + 0.1, 1e9])
      expect(density(celsius)).toEqual({
        ok: false,
        problem: { kind: 'out-of-range', field: 'celsius', value: celsius, limit: { min, max } },
      });
    expect(density(NaN)).toEqual({ ok: false, problem: { kind: 'not-finite', field: 'celsius' } });
    expect([density(min).ok, density(max).ok]).toEqual([true, true]);
  });
});

describe('mercury', () => {
  test.each([
    [-10, 0.0734205],
    [0, 0.073554],
    [10, 0.0736877],
    [20, 0.0738215],
    [30, 0.0739552],
    [40, 0.0740891],
    [90, 0.0747594],
    [140, 0.0754334],
    [190, 0.0761128],
    [240, 0.0767996],
    [290, 0.0774958],
    [340, 0.0782033],
  ])('%d °C: the printed table of volumes, and its quadratic within 1 in 17,000', (celsius, printed) => {
    expect(Math.abs(value(mercuryVolumeOfOlderTables(celsius)) - printed)).toBeLessThanOrEqual(3e-7);
    expect(Math.abs(value(mercuryVolumeByQuadratic(celsius)) / printed - 1)).toBeLessThanOrEqual(6e-5);
  });

  it('mercuryColumnReduced(height, celsius): 760 mm at 20 °C are 757.25 mm at 0 °C', () => {
    expect(value(mercuryColumnReduced(760, 20)).toFixed(2)).toBe('757.25');
    expect(mercuryColumnReduced(760, 400).ok).toBe(false);
  });
});

describe('glycolSolutionDensity(percent, celsius)', () => {
  it('is that of water where there is none, at every row of the table', () => {
    for (let fahrenheit = 40; fahrenheit <= 120; fahrenheit += 10) {
      const celsius = (fahrenheit - 32) / 1.8;
      const none = value(glycolSolutionDensity(0, Math.min(48.888, Math.max(4.445, celsius))));
      expect(Math.abs(none - value(waterDensity(celsius))), `${fahrenheit} °F`).toBeLessThan(0.5);
    }
  });

  it('gives the printed column heads at 70 °F', () => {
    expect(
      glycolPercents.map((percent) =>
        (value(glycolSolutionDensity(percent, 190 / 9)) / 16.01846337).toFixed(2),
      ),
    ).toEqual('62.31 63.31 64.33 65.30 66.20 67.05 67.86 68.62 69.35 70.04'.split(' '));
  });

  it('gives the corners of the table, and the mean between four entries', () => {
    const low = 40 / 9; // 40 °F
    const high = 440 / 9; // 120 °F
    const pounds = (percent: number, celsius: number) =>
      value(glycolSolutionDensity(percent, celsius)) / 16.01846337;
    expect(
      [pounds(0, low), pounds(90, low), pounds(0, high), pounds(90, high)].map((x) => x.toFixed(2)),
    ).toEqual(['62.42', '70.59', '61.73', '68.92']);
    expect(pounds(45, 165 / 9)).toBeCloseTo((66.34 + 67.2 + 66.2 + 67.05) / 4, 6);
  });

  test.each([
    [-1, 20, 'percent', { min: 0, max: 90 }],
    [91, 20, 'percent', { min: 0, max: 90 }],
    [50, 4, 'celsius', { min: 40 / 9, max: 440 / 9 }],
    [50, 49, 'celsius', { min: 40 / 9, max: 440 / 9 }],
  ])('%d %% at %d °C is out of range', (percent, celsius, field, limit) => {
    expect(glycolSolutionDensity(percent, celsius)).toMatchObject({
      ok: false,
      problem: { kind: 'out-of-range', field, limit },
    });
  });
});

describe('normalGravity(latitude, height)', () => {
  it('is that of the Geodetic Reference System 1980, rounded to five decimals', () => {
    // Moritz (1980): 9.7803267715 at the equator, 9.8061992 at 45°, 9.8321863685 at the pole.
    expect([0, 45, 90].map((latitude) => value(normalGravity(latitude)).toFixed(4))).toEqual([
      '9.7803',
      '9.8062',
      '9.8322',
    ]);
    expect(normalGravity(-30)).toEqual(normalGravity(30));
  });

  it('falls by 0.0031 m/s² for each kilometre', () => {
    expect(value(normalGravity(45)) - value(normalGravity(45, 1000))).toBeCloseTo(0.003086, 9);
  });

  test.each([
    [90.1, 0, 'latitudeDegrees'],
    [-90.1, 0, 'latitudeDegrees'],
    [0, 10_001, 'heightM'],
    [0, -501, 'heightM'],
  ])('latitude %d, height %d is refused', (latitude, height, field) => {
    expect(normalGravity(latitude, height)).toMatchObject({
      ok: false,
      problem: { kind: 'out-of-range', field },
    });
  });
});

describe('valueOfChecked(result)', () => {
  it('throws where a problem slipped through the checks', () => {
    expect(valueOfChecked(waterDensity(20))).toBeCloseTo(998.2067, 4);
    expect(() => valueOfChecked(waterDensity(200))).toThrow('a problem after all checks');
  });
});
