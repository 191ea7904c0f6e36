import { describe, expect, test } from 'vitest';
import { openingScale } from '../../src/calculators/advisor/opening-scale.ts';
import { agrees, describeRow, expectedNumber, readDataRows, toNumber } from '../../truth/data-rows.ts';
import { tolerances } from '../tolerances.ts';

const ambientPa = 101_325;
const unitSlopePa = 40_000;
const scale = openingScale(ambientPa, unitSlopePa);

const relativeDifference = (computed: number, expected: number): number => Math.abs(computed / expected - 1);

/** From nearly no flow to nearly no air. */
const depressionsPa = Array.from({ length: 97 }, (_, k) => (0.006 + 0.01 * k) * ambientPa);

describe('openingScale(ambientPa, unitSlopeDepressionPa)', () => {
  test('has the slope −1 at the depression asked for, at any ambient pressure', () => {
    for (const ambient of [60_000, 101_325, 110_000])
      for (const share of [0.05, 0.3, 0.47, 0.48, 0.9]) {
        const { slope } = openingScale(ambient, share * ambient);
        expect(relativeDifference(slope(share * ambient), -1)).toBeLessThanOrEqual(
          tolerances.openingScale.relative,
        );
      }
  });

  test('depression(opening(d)) is d', () => {
    expect(depressionsPa).toHaveLength(97);
    for (const depressionPa of depressionsPa)
      expect(
        relativeDifference(scale.depression(scale.opening(depressionPa)), depressionPa),
      ).toBeLessThanOrEqual(tolerances.openingScale.relative);
  });

  test('opening(d) falls as the depression rises', () => {
    depressionsPa.slice(1).forEach((depressionPa, k) => {
      expect(scale.opening(depressionPa)).toBeLessThan(scale.opening(depressionsPa[k]!));
      expect(scale.slope(depressionPa)).toBeLessThan(0);
    });
  });

  test('slope(d) is the central difference of opening(d)', () => {
    for (const depressionPa of depressionsPa) {
      // Half a pascal either side crosses the critical ratio nowhere: it lies at 47,793 Pa.
      const difference = scale.opening(depressionPa + 0.5) - scale.opening(depressionPa - 0.5);
      expect(relativeDifference(scale.slope(depressionPa), difference)).toBeLessThanOrEqual(
        tolerances.openingSlope.relative,
      );
    }
  });

  test('keeps to its ends: 0.5 % of the ambient pressure, and 98 %', () => {
    expect(scale.opening(0)).toBeCloseTo(scale.opening(0.005 * ambientPa), 6);
    expect(scale.opening(-5_000)).toBe(scale.opening(0));
    expect(scale.opening(ambientPa)).toBeCloseTo(scale.opening(0.98 * ambientPa), 6);
    expect(scale.depression(1e12) / ambientPa).toBeCloseTo(0.005, 12);
    expect(scale.depression(-1e12) / ambientPa).toBeCloseTo(0.98, 12);
    expect(Number.isFinite(scale.slope(0))).toBe(true);
  });
});

describe('opening(d) against published flow: opening × ψ(x) is the same share of x everywhere', () => {
  const rows = readDataRows('5-compressible-flow.csv', 69);
  const flowRows = rows.filter(({ quantity }) => quantity.startsWith('mass-flow function psi'));
  const flowOver = (ratio: number): number => ratio / scale.opening(ambientPa * (1 - ratio));
  const [choked] = flowRows.filter(({ input }) => input === '0.4');

  test('eight rows', () => {
    expect(flowRows).toHaveLength(8);
    expect(choked).toBeDefined();
  });

  test.each(flowRows.map((row) => [describeRow(row), row] as const))('%s', (_, row) => {
    // The scale’s own unit drops out against the choked row.
    const computed =
      (flowOver(toNumber(row.input, row.input)) / flowOver(0.3)) * expectedNumber(choked ?? row);
    expect(agrees(computed, row), `computed ${computed}`).toBe(true);
  });

  test('below the published critical ratio the opening is in proportion to the pressure behind it', () => {
    const [critical] = rows.filter(
      ({ quantity, input }) => quantity === 'critical pressure ratio' && input === '1.4',
    );
    const ratio = expectedNumber(critical!);
    const slopeAt = (x: number): number => scale.slope(ambientPa * (1 - x));
    expect(slopeAt(0.1)).toBe(slopeAt(ratio - 1e-6));
    expect(relativeDifference(slopeAt(0.6), slopeAt(0.1))).toBeGreaterThan(0.01);
  });
});
