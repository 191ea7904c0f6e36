import { describe, expect, test } from 'vitest';
import { threadTables } from '../../src/calculators/index.ts';
import { screwThreadAdapters } from '../../truth/screw-threads.ts';
import {
  slowAdvance,
  slowBaDiameter,
  slowBaPitch,
  slowMinorDiameter,
  slowNumberedSize,
  slowPitchDiameter,
  slowPitchOfCount,
  slowRootDiameter,
  slowStressArea,
} from '../second-formula/screw-threads.ts';
import { seededRandom } from '../seeded-random.ts';
import { tolerances } from '../tolerances.ts';

const perturbed = 50;

const fast = (quantity: string, input: string, inputUnit: string, expectedUnit: string): number => {
  const [value, ...others] = screwThreadAdapters[quantity]?.({ input, inputUnit, expectedUnit }).values ?? [];
  expect(others).toEqual([]);
  return value ?? NaN;
};

type Sample = readonly [input: string, inputUnit: string, expectedUnit: string, slow: number];

const inEvery = (
  quantity: string,
  sample: (random: () => number, index: number) => Sample,
  relative: number = tolerances.secondThreadFormula.relative,
) =>
  test(`${quantity}: ${perturbed} perturbed inputs`, () => {
    const random = seededRandom(quantity.length * 977);
    for (let index = 0; index < perturbed; index += 1) {
      const [input, inputUnit, expectedUnit, slow] = sample(random, index);
      const got = fast(quantity, input, inputUnit, expectedUnit);
      expect(Math.abs(got - slow), `${input} → ${got}, slowly ${slow}`).toBeLessThanOrEqual(
        relative * Math.abs(slow),
      );
    }
  });

/** A metric size and pitch of no table. */
const metric = (random: () => number): readonly [string, number, number] => {
  const diameter = Number((1 + 35 * random()).toFixed(2));
  const pitch = Number((diameter * (0.05 + 0.2 * random())).toFixed(3));
  return [`M${diameter} x ${pitch}`, diameter, pitch];
};

const pick = <Item>(items: readonly Item[], random: () => number): Item => {
  const item = items[Math.floor(random() * items.length)];
  if (item === undefined) throw new Error('nothing to pick from');
  return item;
};
const seriesOf = (system: 'unc' | 'unf') =>
  threadTables.find((table) => table.system === system)?.threads ?? [];

describe('the metric profile', () => {
  for (const [quantity, slow] of [
    ['ISO 724 pitch diameter d2', slowPitchDiameter],
    ['ISO 724 minor diameter d1 = D1', slowMinorDiameter],
    ['published pitch diameter', slowPitchDiameter],
    ['published nut minor diameter D1', slowMinorDiameter],
    ['published screw root diameter d3 = d - 1.22687 P', slowRootDiameter],
    ['published fine thread pitch diameter', slowPitchDiameter],
    ['published fine thread minor diameter', slowMinorDiameter],
  ] as const)
    inEvery(quantity, (random, index) => {
      const [input, diameter, pitch] = metric(random);
      const inInches = index % 2 === 1;
      return [input, 'mm', inInches ? 'in' : 'mm', slow(diameter, pitch) / (inInches ? 25.4 : 1)];
    });

  inEvery('tensile stress area', (random) => {
    const [input, diameter, pitch] = metric(random);
    return [input, 'mm', 'mm2', slowStressArea(diameter, pitch)];
  });
});

describe('threads that are counted to the inch', () => {
  inEvery('pitch from threads per inch', (random, index) => {
    const hundredths = 400 + Math.floor(8000 * random());
    const count = hundredths / 100;
    const input = index % 3 === 0 ? `${count}` : index % 3 === 1 ? `${count} tpi` : `#6 UNF (${count} tpi)`;
    return [input, '1/in', 'mm', slowPitchOfCount(hundredths)];
  });

  for (const series of ['unc', 'unf'] as const)
    inEvery(`${series.toUpperCase()} basic pitch diameter`, (random) => {
      const { name, threadsPerInch = NaN } = pick(seriesOf(series), random);
      const size = name.replace(/ .*/u, '');
      const [over = '', under = '1'] = size.split('/');
      const diameter = size.startsWith('#')
        ? slowNumberedSize(Number(size.slice(1)))
        : Number(over) / Number(under);
      return [size, 'size', 'in', slowPitchDiameter(diameter, slowPitchOfCount(100 * threadsPerInch) / 25.4)];
    });
});

describe('British Association', () => {
  inEvery('BA design rule p = 0.9^n', (_, index) => [`${index}`, 'BA number', 'mm', slowBaPitch(index)]);
  inEvery('BA design rule D = 6 p^1.2', (_, index) => [`${index}`, 'BA number', 'mm', slowBaDiameter(index)]);
  const sizes = tolerances.twoSignificantFigures.relative;
  inEvery('BA pitch', (_, index) => [`${index % 17}BA`, 'size', 'mm', slowBaPitch(index % 17)], sizes);
  inEvery(
    'BA major diameter',
    (_, index) => [`${index % 17} BA`, 'size', 'mm', slowBaDiameter(index % 17)],
    sizes,
  );
  inEvery(
    'BA threads per inch',
    (_, index) => [`${index % 17}BA`, 'size', '1/in', 25.4 / slowBaPitch(index % 17)],
    sizes,
  );
});

describe('how far a screw goes', () => {
  inEvery('screw advance per turn fraction', (random, index) => {
    const pitch = Number((0.2 + 2 * random()).toFixed(3));
    const degrees = Math.floor(1440 * random()) + 1;
    const sixteenths = Math.floor(64 * random()) + 1;
    return index % 2 === 0
      ? [`${degrees} deg of ${pitch} mm pitch`, 'deg', 'mm', slowAdvance(pitch, degrees / 360)]
      : [`${sixteenths}/16 turn of M40 x ${pitch}`, 'turn', 'mm', slowAdvance(pitch, sixteenths / 16)];
  });
});
