import { describe, expect, test } from 'vitest';
import {
  firingFrequencyHz,
  firingIntervalDegrees,
  rpmOfFiringFrequency,
  speedOfSoundMPerS,
} from '../../src/calculators/index.ts';
import { engineSpeedAdapters } from '../../truth/adapters/engine-speed.ts';
import { agrees, describeRow, readDataRows } from '../data-rows.ts';

const rows = readDataRows('8-engine-speed-sound.csv', 36);

test('every row has an adapter and every adapter a row', () => {
  expect(new Set(rows.map(({ quantity }) => quantity))).toEqual(new Set(Object.keys(engineSpeedAdapters)));
});

describe('engine speed and sound', () => {
  test.each(rows.map((row) => [describeRow(row), row] as const))('%s', (_, row) => {
    const answer = engineSpeedAdapters[row.quantity]?.(row);
    expect(answer?.kind).toBe('computed');
    expect(agrees(Number(answer?.value), row), `computed ${answer?.value}`).toBe(true);
  });
});

test.each([0, -1, 2.5])('%s cylinders are out of range', (cylinders) => {
  const problem = { kind: 'out-of-range', field: 'cylinders', value: cylinders, limit: { min: 1 } };
  expect(firingFrequencyHz(900, cylinders)).toEqual({ ok: false, problem });
  expect(rpmOfFiringFrequency(30, cylinders)).toEqual({ ok: false, problem });
  expect(firingIntervalDegrees(cylinders)).toEqual({ ok: false, problem });
});

test('a speed, a frequency and a temperature have their limits', () => {
  expect(firingFrequencyHz(0, 4)).toMatchObject({ problem: { kind: 'out-of-range', field: 'rpm' } });
  expect(rpmOfFiringFrequency(0, 4)).toMatchObject({ problem: { field: 'frequencyHz' } });
  expect(firingIntervalDegrees(NaN)).toMatchObject({ problem: { kind: 'not-finite', field: 'cylinders' } });
  expect(speedOfSoundMPerS(-273.15)).toMatchObject({ problem: { kind: 'out-of-range', field: 'celsius' } });
});
