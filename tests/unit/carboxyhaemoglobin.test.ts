import { describe, expect, test } from 'vitest';
import {
  carboxyhaemoglobinPercent,
  cfkConstants,
  cfkEquilibriumPercent,
  cfkEquilibriumPpm,
  cfkLinearPercent,
  cfkPeople,
  cfkPercent,
  restingPersonOfOpenCode,
  standardDryMl,
} from '../../src/calculators/index.ts';
import type { CfkPerson, Result } from '../../src/calculators/index.ts';

const valueOf = (result: Result<number>): number => {
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
};
const { rest } = cfkPeople;

describe('the form that a state uses', () => {
  // CO = 1316 (0.0046 C − 0.007 B + (0.007 B − 2.3 D) e^(−2.3 t/(5500 B)))/(1 − e^(…)), without the water vapour.
  test('0.0046 and 2.3 are made of the constants', () => {
    const { capillaryOxygen, haldaneRatio, oxygenCapacity } = cfkConstants;
    expect(capillaryOxygen.value / (100 * haldaneRatio.value)).toBeCloseTo(0.0046, 4);
    expect(capillaryOxygen.value / (haldaneRatio.value * oxygenCapacity.value)).toBeCloseTo(2.3, 1);
  });
});

describe.each([
  ['linear', cfkLinearPercent],
  ['nonlinear', cfkPercent],
] as const)('the %s form', (_, solve) => {
  test('stays where it starts at no time', () => {
    expect(valueOf(solve(rest, 400, 0, 0.8))).toBeCloseTo(0.8, 12);
  });

  test.each([
    ['ppm', -1, 60, 0.8],
    ['minutes', 50, -1, 0.8],
    ['minutes', 50, NaN, 0.8],
    ['startPercent', 50, 60, 100],
    ['startPercent', 50, 60, -0.1],
  ] as const)('refuses a wrong %s', (field, ppm, minutes, start) => {
    expect(solve(rest, ppm, minutes, start)).toMatchObject({ ok: false, problem: { field } });
  });

  test.each([
    ['bloodVolumeMl', 0],
    ['haldaneRatio', -218],
    ['capillaryOxygenMmHg', NaN],
    ['ventilationMlPerMin', 0],
    ['endogenousMlPerMin', -1],
    ['vapourMmHg', 760],
  ] as const)('refuses a person with %s of %d', (field, value) => {
    const person: CfkPerson = { ...rest, [field]: value };
    expect(solve(person, 50, 60, 0.8)).toMatchObject({ ok: false, problem: { field } });
  });
});

describe('equilibrium', () => {
  test('there and back', () => {
    for (const percent of [1, 5, 20, 60, 95])
      expect(valueOf(cfkEquilibriumPercent(rest, valueOf(cfkEquilibriumPpm(rest, percent))))).toBeCloseTo(
        percent,
        10,
      );
  });

  test('the body alone holds less than half a per cent; to hold less takes less than clean air', () => {
    expect(valueOf(cfkEquilibriumPercent(rest, 0))).toBeCloseTo(0.23, 2);
    expect(valueOf(cfkEquilibriumPpm(rest, 0))).toBeLessThan(0);
  });

  test('refuses what cannot be', () => {
    expect(cfkEquilibriumPercent(rest, -1)).toMatchObject({ problem: { field: 'ppm' } });
    expect(cfkEquilibriumPercent({ ...rest, haldaneRatio: 0 }, 1)).toMatchObject({ ok: false });
    expect(cfkEquilibriumPpm(rest, 100)).toMatchObject({ problem: { field: 'percent' } });
    expect(cfkEquilibriumPpm({ ...rest, haldaneRatio: 0 }, 5)).toMatchObject({ ok: false });
  });

  test('the person of the open code: standard volumes, oxygen from the barometer', () => {
    // A litre at 37 °C, moist, is 0.826 L at 0 °C, dry, at sea level.
    expect(standardDryMl(1000, 760, 47)).toBeCloseTo(826.2, 1);
    expect(restingPersonOfOpenCode.capillaryOxygenMmHg).toBeCloseTo(100.73, 10);
  });
});

describe('carboxyhaemoglobinPercent(person, ppmAt, start, times)', () => {
  test('a concentration that changes is followed: two halves are the whole', () => {
    const ppmAt = (minutes: number) => (minutes < 30 ? 400 : 100);
    const whole = carboxyhaemoglobinPercent(rest, ppmAt, 0.8, [30, 60]);
    const first = valueOf(cfkPercent(rest, 400, 30, 0.8));
    if (!whole.ok) throw new Error('no solution');
    expect(whole.value[0]).toBeCloseTo(first, 6);
    expect(whole.value[1]).toBeCloseTo(valueOf(cfkPercent(rest, 100, 30, first)), 6);
  });

  test('says where it has no solution', () => {
    const spike = (minutes: number) => (minutes > 0 && minutes < 10 ? Infinity : 1);
    expect(carboxyhaemoglobinPercent(rest, spike, 0.8, [0, 10])).toMatchObject({
      problem: { kind: 'no-solution' },
    });
  });
});
