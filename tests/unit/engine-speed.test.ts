import { expect, test } from 'vitest';
import {
  firingFrequencyHz,
  firingIntervalDegrees,
  firingIntervalS,
  intakeFrequencyHz,
  rpmOfFiringFrequency,
  speedOfSoundMPerS,
} from '../../src/calculators/index.ts';

test.each([0, -1, 2.5])('%s cylinders are out of range', (cylinders) => {
  const problem = { kind: 'out-of-range', field: 'cylinders', value: cylinders, limit: { min: 1 } };
  expect(firingFrequencyHz(900, cylinders)).toEqual({ ok: false, problem });
  expect(rpmOfFiringFrequency(30, cylinders)).toEqual({ ok: false, problem });
  expect(firingIntervalDegrees(cylinders)).toEqual({ ok: false, problem });
  expect(firingIntervalS(900, cylinders)).toEqual({ ok: false, problem });
});

test('a speed, a frequency and a temperature have their limits', () => {
  expect(firingFrequencyHz(0, 4)).toMatchObject({ problem: { kind: 'out-of-range', field: 'rpm' } });
  expect(rpmOfFiringFrequency(0, 4)).toMatchObject({ problem: { field: 'frequencyHz' } });
  expect(firingIntervalDegrees(NaN)).toMatchObject({ problem: { kind: 'not-finite', field: 'cylinders' } });
  expect(speedOfSoundMPerS(-273.15)).toMatchObject({ problem: { kind: 'out-of-range', field: 'celsius' } });
});

test('one take-off is pulled once in two turns, whatever the number of cylinders', () => {
  expect(intakeFrequencyHz(1200)).toEqual({ ok: true, value: 10 });
  expect(intakeFrequencyHz(0)).toMatchObject({ problem: { field: 'rpm' } });
});
