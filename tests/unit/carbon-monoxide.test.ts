import { describe, expect, test } from 'vitest';
import {
  alarmPoints,
  carbonMonoxideGPerMol,
  carbonMonoxideLimits,
  cfkConstants,
  engineCarbonMonoxide,
  findLimits,
  limitPpm,
  mgPerM3FromPpm,
  molarGasConstant,
  overWords,
  ppmFromMgPerM3,
  richestShare,
  richExhaust,
  valueWords,
} from '../../src/calculators/index.ts';
import type { RunningEngine } from '../../src/calculators/index.ts';
import { sources } from '../../src/content/sources.ts';

const air = { kelvins: 298.15, pascals: 101_325 };

describe('ppm and mg/m³', () => {
  test('the constants', () => {
    expect(molarGasConstant).toBeCloseTo(8.314462618, 9);
    expect(carbonMonoxideGPerMol).toBeCloseTo(28.0101, 10);
  });

  test.each([
    ['ppm', -1, air],
    ['kelvins', 1, { ...air, kelvins: 0 }],
    ['pascals', 1, { ...air, pascals: -1 }],
  ] as const)('a wrong %s is refused', (field, amount, state) => {
    expect(mgPerM3FromPpm(amount, state)).toMatchObject({ ok: false, problem: { field } });
    expect(ppmFromMgPerM3(amount, state)).toMatchObject({
      ok: false,
      problem: { field: field === 'ppm' ? 'mgPerM3' : field },
    });
  });
});

describe('limits', () => {
  test('each has its own id, a source of the bibliography that was seen as it says, and a use', () => {
    expect(new Set(carbonMonoxideLimits.map(({ id }) => id)).size).toBe(carbonMonoxideLimits.length);
    for (const { sourceId, seen, meaning, value } of carbonMonoxideLimits) {
      expect(sources[sourceId].seen).toBe(seen);
      expect(meaning).not.toBe('');
      expect(value).toBeGreaterThan(0);
    }
    for (const { sourceId, seen, value } of Object.values(cfkConstants)) {
      expect(sources).toHaveProperty(sourceId);
      expect(value).toBeGreaterThan(0);
      // What was not seen in a source cannot have been seen in it here.
      if (sources[sourceId].seen === 'memory') expect(seen).toBe('memory');
    }
  });

  /** Body, minutes and ppm or mg/m³ of each, as the bodies print them. */
  test.each([
    ['osha-pel', 'OSHA', 480, 50],
    ['niosh-rel', 'NIOSH', 480, 35],
    ['niosh-ceiling', 'NIOSH', null, 200],
    ['niosh-idlh', 'NIOSH', null, 1200],
    ['eh40-15', 'HSE', 15, 100],
    ['eh40-480', 'HSE', 480, 20],
    ['eu-15', 'European Union', 15, 100],
    ['eu-480', 'European Union', 480, 20],
    ['naaqs-1h', 'US EPA', 60, 35],
    ['naaqs-8h', 'US EPA', 480, 9],
    ['who-2000-15', 'WHO', 15, 100],
    ['who-2000-30', 'WHO', 30, 60],
    ['who-2000-60', 'WHO', 60, 30],
    ['who-2000-480', 'WHO', 480, 10],
    ['who-2010-15', 'WHO', 15, 100],
    ['who-2010-60', 'WHO', 60, 35],
    ['who-2010-480', 'WHO', 480, 10],
    ['who-2010-1440', 'WHO', 1440, 7],
    ['who-2021', 'WHO', 1440, 4],
    ['aegl-2-10', 'US EPA, AEGL-2', 10, 420],
    ['aegl-2-480', 'US EPA, AEGL-2', 480, 27],
    ['aegl-3-10', 'US EPA, AEGL-3', 10, 1700],
    ['aegl-3-480', 'US EPA, AEGL-3', 480, 130],
  ])('%s: %s, over %s minutes, %s', (id, body, averagingMinutes, value) =>
    expect(carbonMonoxideLimits.find((limit) => limit.id === id)).toMatchObject({
      body,
      averagingMinutes,
      value,
    }),
  );

  test('the third acute level is worse than the second; no name is empty', () => {
    const meaningOf = (name: string) => findLimits(name)[0]?.meaning;
    expect(meaningOf('AEGL-2 for CO')).toMatch(/unable to escape/u);
    expect(meaningOf('AEGL-3 for CO')).toMatch(/death/u);
    for (const { name } of carbonMonoxideLimits) expect(name).toMatch(/^\p{Lu}/u);
  });

  test('within a set, a longer time allows no more', () => {
    for (const name of new Set(carbonMonoxideLimits.map((limit) => limit.name))) {
      const set = findLimits(name).toSorted((a, b) => a.averagingMinutes! - b.averagingMinutes!);
      const values = set.map(({ value }) => value);
      expect(values).toEqual(values.toSorted((a, b) => b - a));
    }
  });

  test('both units that a body prints agree within its rounding', () => {
    const both = carbonMonoxideLimits.filter(({ inOtherUnit }) => inOtherUnit !== undefined);
    expect(both.length).toBeGreaterThan(3);
    for (const { value, inOtherUnit } of both) expect(inOtherUnit! / value / 1.145).toBeCloseTo(1, 1);
  });

  test('limitPpm takes parts per million as they are, and mass by its factor', () => {
    const [ceiling] = findLimits('NIOSH ceiling');
    const [who] = findLimits('WHO 2000 guideline', 15);
    expect(limitPpm(ceiling!, 1.145)).toBe(200);
    expect(limitPpm(who!, 1.25)).toBe(80);
    expect(findLimits('WHO 2000 guideline', 7)).toEqual([]);
  });

  test('in words', () => {
    const words = carbonMonoxideLimits.map((limit) => `${valueWords(limit, 'x')} ${overWords(limit)}`);
    expect(words.map((each) => each.replaceAll('\u00a0', ' '))).toEqual(
      expect.arrayContaining(['200 ppm at any moment', '50 ppm over 8 h', '100 mg/m³, x over 15 min']),
    );
  });

  test('an alarm sounds the sooner the more there is', () => {
    const latest = alarmPoints.map(({ latestMinutes }) => latestMinutes);
    expect(latest).toEqual(latest.toSorted((a, b) => b - a));
    for (const { earliestMinutes, latestMinutes } of alarmPoints)
      expect(earliestMinutes).toBeLessThan(latestMinutes);
  });
});

describe('richExhaust(share)', () => {
  test('no carbon monoxide is the mixture that just burns, with the water condensed', () => {
    const burnt = richExhaust(0);
    if (!burnt.ok) throw new Error('refused');
    expect(burnt.value.airRatio).toBe(1);
    // CH1.85 takes 1.4625 O2, which bring 3.773 times as much N2: 1 CO2 and the nitrogen are left.
    expect(burnt.value.dryPerAir).toBeCloseTo((1 + 3.773 * 1.4625) / (4.773 * 1.4625), 12);
  });

  test.each([0.005, 0.02, 0.05, 0.1, 0.15])('atoms and the water–gas balance close at %d', (share) => {
    const burnt = richExhaust(share);
    if (!burnt.ok) throw new Error('refused');
    const { airRatio, dryPerAir } = burnt.value;
    const oxygen = airRatio * (1 + 1.85 / 4);
    const dry = dryPerAir * oxygen * 4.773;
    const monoxide = share * dry;
    const dioxide = 1 - monoxide;
    const water = 2 * oxygen - monoxide - 2 * dioxide;
    const hydrogen = 1.85 / 2 - water;
    expect(monoxide + dioxide + hydrogen + 3.773 * oxygen).toBeCloseTo(dry, 9);
    expect((monoxide * water) / (dioxide * hydrogen)).toBeCloseTo(3.5, 6);
  });

  test('refuses more than a rich mixture gives', () => {
    expect(richestShare).toBeGreaterThan(0.14);
    for (const share of [-0.01, richestShare * 1.001, NaN])
      expect(richExhaust(share)).toMatchObject({ ok: false, problem: { field: 'carbonMonoxideShare' } });
  });
});

describe('engineCarbonMonoxide(engine)', () => {
  const engine: RunningEngine = {
    displacementM3: 0.75e-3,
    rpm: 2000,
    turnsPerFilling: 2,
    volumetricEfficiency: 0.3,
    carbonMonoxideShare: 0.05,
  };

  test('three quarters of a litre, 1000 fillings a minute, a third full: 225 litres of air', () => {
    const gas = engineCarbonMonoxide(engine);
    if (!gas.ok) throw new Error('refused');
    expect(gas.value.airLPerMin).toBeCloseTo(225, 9);
    expect(gas.value.carbonMonoxideLPerMin).toBeCloseTo(0.05 * gas.value.exhaustLPerMin, 12);
    expect(gas.value.airRatio).toBeCloseTo(0.866, 3);
    const twoStroke = engineCarbonMonoxide({ ...engine, turnsPerFilling: 1 });
    expect(twoStroke.ok && twoStroke.value.airLPerMin).toBeCloseTo(450, 9);
  });

  test.each([
    ['displacementM3', 0],
    ['rpm', 0],
    ['volumetricEfficiency', -0.1],
    ['carbonMonoxideShare', 0.5],
  ] as const)('refuses %s of %d', (field, value) => {
    expect(engineCarbonMonoxide({ ...engine, [field]: value })).toMatchObject({
      ok: false,
      problem: { field },
    });
  });
});
