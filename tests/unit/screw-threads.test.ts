import { describe, expect, test } from 'vitest';
import { metricThreads } from '../../src/calculators/screw-threads.ts';
import { agrees, describeRow, expectedNumber, readDataRows } from '../data-rows.ts';

const rows = readDataRows('4-screw-threads.csv', 137);
const coarse = rows.filter(({ quantity }) => quantity === 'ISO coarse pitch');
const fine = rows.filter(({ quantity }) => quantity === 'ISO fine pitch option');

const threadOf = (input: string) => metricThreads.find(({ size }) => size === input.replace(' fine', ''));

describe('metricThreads against charts of ISO 261', () => {
  test('5 coarse and 6 fine rows of tests/data/4-screw-threads.csv', () => {
    expect([coarse.length, fine.length]).toEqual([5, 6]);
  });

  test.each(coarse.map((row) => [describeRow(row), row] as const))('%s', (_, row) => {
    expect(agrees(threadOf(row.input)?.coarsePitchMm ?? NaN, row)).toBe(true);
  });

  test.each(fine.map((row) => [describeRow(row), row] as const))('%s', (_, row) => {
    expect(threadOf(row.input)?.finePitchesMm).toContain(expectedNumber(row));
  });
});

test.each(metricThreads.map((thread) => [thread.size, thread] as const))(
  '%s is a sound entry',
  (size, thread) => {
    expect(size).toBe(`M${thread.diameterMm}`);
    const pitches = [thread.coarsePitchMm, ...thread.finePitchesMm];
    expect(pitches.length).toBeGreaterThan(1);
    expect([...pitches].sort((a, b) => b - a)).toEqual(pitches);
    expect(Math.min(...pitches) / thread.diameterMm).toBeGreaterThan(0.07);
    expect(Math.max(...pitches) / thread.diameterMm).toBeLessThanOrEqual(0.2);
  },
);
