import { expect, test } from 'vitest';
import { pressureUnit, pressureUnits } from '../../src/calculators/index.ts';
import { needleTransform, practiceDial } from '../../src/drawing/practice-dial.ts';
import { mmHg } from '../engine/invented.ts';

const full = 700 * mmHg;
const marks = (path: string) => path.split('M').length - 1;

test('700 mmHg: figures each hundred, marks each fifty and each ten', () => {
  const dial = practiceDial(full, 'mmHg', 'point');
  expect(dial.labels.map(({ text }) => text)).toEqual('0 100 200 300 400 500 600 700'.split(' '));
  expect([marks(dial.long), marks(dial.middle), marks(dial.short)]).toEqual([8, 15, 71]);
  expect(dial.unit.text).toBe('mmHg');
});

test('the same in kilopascals and in inches, with the reader’s mark', () => {
  expect(practiceDial(full, 'kPa', 'point').labels.map(({ text }) => text)).toEqual([
    '0',
    '20',
    '40',
    '60',
    '80',
  ]);
  const inches = practiceDial(full, 'inHg', 'point');
  expect(inches.labels.map(({ text }) => text)).toEqual(['0', '5', '10', '15', '20', '25']);
  expect([marks(inches.middle), marks(inches.short)]).toEqual([28, 56]); // each inch, and each half
  expect(practiceDial(full, 'bar', 'comma').labels[1]!.text).toBe('0,2');
});

test.each([
  [0, -90],
  [175, -45],
  [350, 0],
  [700, 90],
  [-5, -91.29],
  [-900, -92],
  [900, 92],
])('%d mmHg turns the needle to %d degrees', (depression, degrees) => {
  expect(needleTransform(practiceDial(full, 'mmHg', 'point'), depression * mmHg)).toBe(`rotate(${degrees})`);
});

test.each(pressureUnits.map(({ id }) => id))('a dial in %s: marks within the scale, figures apart', (id) => {
  const dial = practiceDial(full, id, 'point');
  expect(dial.labels.length).toBeGreaterThan(3);
  expect(dial.labels.length).toBeLessThan(16);
  expect(marks(dial.short)).toBeGreaterThan(marks(dial.long));
  expect(marks(dial.short)).toBeLessThan(120);
  const numbers = `${dial.arc}${dial.long}${dial.middle}${dial.short}`.match(/-?\d+(\.\d+)?/gu)!.map(Number);
  for (const number of numbers) expect(Math.abs(number)).toBeLessThanOrEqual(160);
  expect(dial.unit.text).toBe(pressureUnit(id).symbol);
});
