import { expect, test } from 'vitest';
import { engineSpeedSoundAdapters } from '../../truth/engine-speed-sound.ts';
import {
  slowFiringDegrees,
  slowFiringHz,
  slowFiringIntervalS,
  slowRadPerS,
  slowRpm,
  slowSoundMPerS,
} from '../second-formula/engine-speed-sound.ts';
import { seededRandom } from '../seeded-random.ts';
import { tolerances } from '../tolerances.ts';

const times = 50;
const random = seededRandom(80_036);
const decimal = (low: number, high: number, digits: number) =>
  (low + (high - low) * random()).toFixed(digits);

type Asked = { readonly input: string; readonly inputUnit: string; readonly slow: number };

const cases: Readonly<
  Record<string, { readonly unit: string; readonly relative: number; readonly ask: () => Asked }>
> = {
  '4-stroke firing frequency': {
    unit: 'Hz',
    relative: tolerances.wholeNumbers.relative,
    ask: () => {
      const cylinders = decimal(0.6, 8.4, 0);
      const rpm = decimal(300, 12_000, 1);
      const input = `${cylinders} cylinders, ${rpm} rpm`;
      return { input, inputUnit: '-', slow: slowFiringHz(Number(cylinders), Number(rpm)) };
    },
  },
  'crank angle between firings': {
    unit: 'deg',
    relative: tolerances.manyShares.relative,
    ask: () => {
      const cylinders = decimal(0.6, 16.4, 0);
      return { input: `${cylinders} cylinders`, inputUnit: '-', slow: slowFiringDegrees(Number(cylinders)) };
    },
  },
  'time between intake strokes of neighbouring cylinders': {
    unit: 'ms',
    relative: tolerances.wholeNumbers.relative,
    ask: () => {
      const cylinders = decimal(0.6, 8.4, 0);
      const rpm = decimal(300, 12_000, 1);
      const slow = slowFiringIntervalS(Number(cylinders), Number(rpm)) * 1000;
      return { input: `${rpm} rpm, ${cylinders} cylinders`, inputUnit: '-', slow };
    },
  },
  'rpm from firing frequency': {
    unit: 'rpm',
    relative: tolerances.wholeNumbers.relative,
    ask: () => {
      const cylinders = decimal(0.6, 8.4, 0);
      const hertz = decimal(2, 400, 3);
      const input = `${cylinders} cylinders, ${hertz} Hz`;
      return { input, inputUnit: '-', slow: slowRpm(Number(cylinders), Number(hertz)) };
    },
  },
  'rpm to Hz': {
    unit: 'Hz',
    relative: tolerances.wholeNumbers.relative,
    ask: () => {
      const rpm = decimal(300, 12_000, 2);
      return { input: rpm, inputUnit: 'rpm', slow: slowFiringHz(2, Number(rpm)) };
    },
  },
  'rpm to rad/s': {
    unit: 'rad/s',
    relative: tolerances.polygon.relative,
    ask: () => {
      const rpm = decimal(300, 12_000, 2);
      return { input: rpm, inputUnit: 'rpm', slow: slowRadPerS(Number(rpm)) };
    },
  },
  'rad/s to rpm': {
    unit: 'rpm',
    relative: tolerances.polygon.relative,
    ask: () => {
      const radPerS = decimal(10, 1300, 3);
      return { input: radPerS, inputUnit: 'rad/s', slow: Number(radPerS) / slowRadPerS(1) };
    },
  },
  'speed of sound in dry air (ideal gas)': {
    unit: 'm/s',
    relative: tolerances.molarGasConstant.relative,
    ask: () => {
      const celsius = decimal(-60, 120, 2);
      return { input: celsius, inputUnit: 'degC', slow: slowSoundMPerS(Number(celsius)) };
    },
  },
};

test('every quantity has a second formula', () => {
  expect(Object.keys(cases).sort()).toEqual(Object.keys(engineSpeedSoundAdapters).sort());
});

test.each(Object.entries(cases))(`%s, ${times} inputs`, (quantity, { unit, relative, ask }) => {
  for (let k = 0; k < times; k += 1) {
    const { input, inputUnit, slow } = ask();
    const fast = engineSpeedSoundAdapters[quantity]?.({ input, inputUnit, expectedUnit: unit }).values[0];
    const share = Math.abs((fast ?? NaN) / slow - 1);
    expect(share, `${input}: ${fast}, second formula ${slow}`).toBeLessThanOrEqual(relative);
  }
});
