import { describe, expect, test } from 'vitest';
import {
  firingFrequencyHz,
  firingIntervalDegrees,
  rpmOfFiringFrequency,
  speedOfSoundMPerS,
} from '../../src/calculators/index.ts';
import type { Result } from '../../src/calculators/index.ts';
import { agrees, describeRow, readDataRows } from '../data-rows.ts';
import type { DataRow } from '../data-rows.ts';

/** What an adapter sees of a row: never the expected value. */
type Question = Pick<DataRow, 'input' | 'inputUnit' | 'expectedUnit'>;
type Answer = { readonly kind: 'computed'; readonly value: number };

const computed = (value: number): Answer => ({ kind: 'computed', value });

function valueOf(result: Result<number>): number {
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
}

const plain = ({ input }: Question): number => {
  if (!/^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/iu.test(input.trim()))
    throw new Error(`not a number: “${input}”`);
  return Number(input);
};

/** The number before a word, as in “4 cylinders, 1100 rpm”. */
function named({ input }: Question, word: RegExp): number {
  const part = input.split(',').find((piece) => word.test(piece.trim()));
  if (part === undefined) throw new Error(`no ${word.source} in “${input}”`);
  return plain({ input: part.trim().split(/\s+/u)[0] ?? '', inputUnit: '', expectedUnit: '' });
}

const cylinders = (question: Question) => named(question, /\bcylinders?$/u);
const rpm = (question: Question) => named(question, /\brpm$/u);
const radiansPerTurn = 2 * Math.PI;
const frequency = (question: Question) => valueOf(firingFrequencyHz(rpm(question), cylinders(question)));

const engineSpeedAdapters: Readonly<Record<string, (question: Question) => Answer>> = {
  '4-stroke firing frequency': (question) => computed(frequency(question)),
  'crank angle between firings': (question) => computed(valueOf(firingIntervalDegrees(cylinders(question)))),
  'time between intake strokes of neighbouring cylinders': (question) => computed(1000 / frequency(question)),
  'rpm from firing frequency': (question) =>
    computed(valueOf(rpmOfFiringFrequency(named(question, /\bHz$/u), cylinders(question)))),
  'rpm to Hz': (question) => computed(plain(question) / 60),
  'rpm to rad/s': (question) => computed((plain(question) * radiansPerTurn) / 60),
  'rad/s to rpm': (question) => computed((plain(question) * 60) / radiansPerTurn),
  'speed of sound in dry air (ideal gas)': (question) =>
    computed(valueOf(speedOfSoundMPerS(plain(question)))),
};

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
