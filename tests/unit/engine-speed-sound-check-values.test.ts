import { describe, expect, test } from 'vitest';
import { checkRow } from '../../truth/check-row.ts';
import { describeRow, readDataRows } from '../../truth/data-rows.ts';
import { engineSpeedSoundAdapters } from '../../truth/engine-speed-sound.ts';

const rows = readDataRows('8-engine-speed-sound.csv', 36);

test('every row has an adapter and every adapter a row', () => {
  expect(new Set(rows.map(({ quantity }) => quantity))).toEqual(
    new Set(Object.keys(engineSpeedSoundAdapters)),
  );
});

describe('engine speed and sound', () => {
  test.each(rows.map((row) => [describeRow(row), row] as const))('%s', (_, row) => {
    const { outcome, kind, got } = checkRow(row, engineSpeedSoundAdapters);
    expect(outcome, `got ${got}`).toBe('passed');
    expect(kind).toBe('computed');
  });
});

const answer = (quantity: string, input: string, inputUnit: string, expectedUnit: string) =>
  engineSpeedSoundAdapters[quantity]?.({ input, inputUnit, expectedUnit }).values[0];

test.each([
  ['4-stroke firing frequency', '900 rpm, 4 cylinders', '-', 'Hz', 30],
  ['4-stroke firing frequency', '1 cylinder, 900 r/min', '-', 'Hz', 7.5],
  ['crank angle between firings', '4 cylinders', '-', 'rad', Math.PI],
  ['time between intake strokes of neighbouring cylinders', '4 cylinders, 15 Hz', '-', 's', 1 / 30],
  ['rpm from firing frequency', '30 Hz, 3 cylinders', '-', 'rpm', 1200],
  ['rpm to Hz', '60', 'rpm', 'Hz', 1],
  ['rad/s to rpm', '100 rad/s', '-', 'Hz', 50 / Math.PI],
  ['speed of sound in dry air (ideal gas)', '288.15 K', '-', 'm/s', 340.294],
  ['speed of sound in dry air (ideal gas)', '59', 'degF', 'm/s', 340.294],
] as const)('%s of “%s” %s in %s is %s', (quantity, input, inputUnit, unit, expected) => {
  expect(answer(quantity, input, inputUnit, unit)).toBeCloseTo(expected, 3);
});

test.each([
  ['4-stroke firing frequency', '900 rpm', '-', 'Hz'],
  ['4-stroke firing frequency', '4 cylinders', '-', 'Hz'],
  ['crank angle between firings', '4 cylinders', '-', 'm'],
  ['rpm to Hz', '60', 'km', 'Hz'],
  ['speed of sound in dry air (ideal gas)', 'warm', 'degC', 'm/s'],
])('%s of “%s” %s in %s is refused, not guessed', (quantity, input, inputUnit, unit) => {
  expect(() => answer(quantity, input, inputUnit, unit)).toThrow();
});
