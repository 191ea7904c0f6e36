import { describe, expect, test } from 'vitest';
import {
  areaOverThroat,
  chokedFlowFunction,
  densityOverTotal,
  engineAirFlowKgPerS,
  incompressibleOverCompressible,
  isentropicFlowFunction,
  motoringFrictionPa,
  pressureOverTotal,
  throttleAreaRatio,
  throttleMassFlowKgPerS,
  throttlePlateOpenAreaM2,
} from '../../src/calculators/index.ts';
import { tolerances } from '../tolerances.ts';

test('isentropicFlowFunction(1) is 0, and near 1 it is the incompressible one', () => {
  expect(isentropicFlowFunction(1)).toBe(0);
  const small = 1e-6;
  expect(Math.abs(isentropicFlowFunction(1 - small) / Math.sqrt(2 * small) - 1)).toBeLessThanOrEqual(small);
});

test.each([-0.1, 1.1, NaN])('isentropicFlowFunction(%d) is our own mistake', (ratio) => {
  expect(() => isentropicFlowFunction(ratio)).toThrow(RangeError);
});

describe('throttleAreaRatio(depressionPa, referenceDepressionPa, ambientPa)', () => {
  const ambientPa = 101_325;
  const ratio = (one: number, other: number) => {
    const result = throttleAreaRatio(one, other, ambientPa);
    return result.ok ? result.value : NaN;
  };

  test('is 1 for equal depressions, more for the lower one, and its own reciprocal', () => {
    expect(ratio(30_000, 30_000)).toBe(1);
    expect(ratio(25_000, 33_000)).toBeGreaterThan(1);
    expect(ratio(25_000, 33_000) * ratio(33_000, 25_000)).toBeCloseTo(1, 14);
  });

  test('is the ratio of absolute pressures where both throttles are choked', () => {
    expect(Math.abs(ratio(60_000, 70_000) - 41_325 / 31_325)).toBeLessThanOrEqual(
      tolerances.flow.relative * 2,
    );
  });

  test('is the root of the ratio of depressions where both are small', () => {
    // Incompressible flow at equal density; 1 and 4 Pa of 101,325 leave 3e-5.
    expect(Math.abs(ratio(1, 4) - 2)).toBeLessThanOrEqual(1e-4);
  });

  test('names what is wrong', () => {
    expect(throttleAreaRatio(0, 100, ambientPa)).toEqual({
      ok: false,
      problem: { kind: 'out-of-range', field: 'depressionPa', value: 0, limit: { above: 0 } },
    });
    expect(throttleAreaRatio(100, ambientPa, ambientPa)).toMatchObject({
      problem: { kind: 'depression-beyond-ambient', field: 'referenceDepressionPa' },
    });
    expect(throttleAreaRatio(100, NaN, ambientPa)).toMatchObject({ problem: { kind: 'not-finite' } });
    expect(throttleAreaRatio(100, 100, 0)).toMatchObject({ problem: { field: 'ambientPa' } });
  });
});

describe('isentropic relations', () => {
  test('air at rest is at its total state; a supersonic flow needs more area than its throat', () => {
    expect([pressureOverTotal(0), densityOverTotal(0)]).toEqual([
      { ok: true, value: 1 },
      { ok: true, value: 1 },
    ]);
    // NACA Report 1135, table II, M = 2: p/pt 0.1278, ρ/ρt 0.2300, A/A* 1.688.
    const at2 = [pressureOverTotal(2), densityOverTotal(2), areaOverThroat(2)];
    expect(at2.map((each) => (each.ok ? each.value : NaN))).toEqual([
      expect.closeTo(0.1278, 4),
      expect.closeTo(0.23, 4),
      expect.closeTo(1.6875, 4),
    ]);
  });

  test.each([
    [areaOverThroat(0), 'mach'],
    [areaOverThroat(-1), 'mach'],
    [pressureOverTotal(-0.1), 'mach'],
    [densityOverTotal(NaN), 'mach'],
    [pressureOverTotal(1, 1), 'gamma'],
  ])('names what is wrong: %j', (result, field) => {
    expect(result).toMatchObject({ ok: false, problem: { field } });
  });
});

describe('throttle and engine', () => {
  const flow = { areaM2: 1e-6, dischargeCoefficient: 1, upstreamPa: 1e5, upstreamK: 290, pressureRatio: 0.5 };
  const plate = { boreM: 0.03, closedRadians: 0.1, plateRadians: 0.2 };
  const breath = {
    displacementM3: 1e-3,
    rpm: 1000,
    intakePa: 35e3,
    intakeK: 313,
    volumetricEfficiency: 0.75,
  };

  test('no opening, no flow; a shut plate has none, one along the bore leaves all but its edge', () => {
    expect(throttleMassFlowKgPerS({ ...flow, areaM2: 0 })).toEqual({ ok: true, value: 0 });
    expect(throttlePlateOpenAreaM2({ ...plate, plateRadians: 0.1 })).toEqual({ ok: true, value: 0 });
    const open = throttlePlateOpenAreaM2({ ...plate, plateRadians: Math.PI / 2 });
    expect(open.ok && open.value / (Math.PI * 0.015 ** 2)).toBeCloseTo(1, 12);
    expect(engineAirFlowKgPerS({ ...breath, rpm: 0 })).toEqual({ ok: true, value: 0 });
    expect(incompressibleOverCompressible(1)).toEqual({ ok: true, value: 1 });
    expect(motoringFrictionPa(0)).toEqual({ ok: true, value: 97_000 });
  });

  test.each([
    [throttleMassFlowKgPerS({ ...flow, areaM2: -1 }), 'areaM2'],
    [throttleMassFlowKgPerS({ ...flow, dischargeCoefficient: -1 }), 'dischargeCoefficient'],
    [throttleMassFlowKgPerS({ ...flow, upstreamPa: 0 }), 'upstreamPa'],
    [throttleMassFlowKgPerS({ ...flow, upstreamK: 0 }), 'upstreamK'],
    [throttleMassFlowKgPerS({ ...flow, pressureRatio: 1.1 }), 'pressureRatio'],
    [throttlePlateOpenAreaM2({ ...plate, boreM: 0 }), 'boreM'],
    [throttlePlateOpenAreaM2({ ...plate, closedRadians: -0.1 }), 'closedRadians'],
    [throttlePlateOpenAreaM2({ ...plate, closedRadians: Math.PI / 2 }), 'closedRadians'],
    [throttlePlateOpenAreaM2({ ...plate, plateRadians: 0.05 }), 'plateRadians'],
    [throttlePlateOpenAreaM2({ ...plate, plateRadians: 1.6 }), 'plateRadians'],
    [engineAirFlowKgPerS({ ...breath, displacementM3: 0 }), 'displacementM3'],
    [engineAirFlowKgPerS({ ...breath, rpm: -1 }), 'rpm'],
    [engineAirFlowKgPerS({ ...breath, intakePa: -1 }), 'intakePa'],
    [engineAirFlowKgPerS({ ...breath, intakeK: 0 }), 'intakeK'],
    [engineAirFlowKgPerS({ ...breath, volumetricEfficiency: -1 }), 'volumetricEfficiency'],
    [incompressibleOverCompressible(-0.1), 'pressureRatio'],
    [incompressibleOverCompressible(0.5, 1), 'gamma'],
    [chokedFlowFunction(1), 'gamma'],
    [motoringFrictionPa(-1), 'rpm'],
  ])('names what is wrong: %j', (result, field) => {
    expect(result).toMatchObject({ ok: false, problem: { field } });
  });
});
