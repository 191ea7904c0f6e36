import { expect, test } from 'vitest';
import { measurementPracticeAdapters } from '../../truth/measurement-practice.ts';
import {
  slowBracketDifference,
  slowDeviation,
  slowMean,
  slowPermissibleError,
  slowRootSumOfSquares,
  slowStandardUncertainty,
  slowStudentT,
} from '../second-formula/measurement-practice.ts';
import { seededRandom } from '../seeded-random.ts';
import { tolerances } from '../tolerances.ts';

const times = 50;
const random = seededRandom(70_059);
const between = (low: number, high: number) => low + (high - low) * random();
const decimal = (low: number, high: number, digits = 4) => between(low, high).toFixed(digits);

function ask(quantity: string, input: string, inputUnit = '-', expectedUnit = 'same'): number {
  const value = measurementPracticeAdapters[quantity]?.({ input, inputUnit, expectedUnit }).values[0];
  if (value === undefined) throw new Error(`no answer to “${quantity}”`);
  return value;
}

const agree = (fast: number, slow: number, relative: number) =>
  expect(Math.abs(fast - slow), `${fast}, second formula ${slow}`).toBeLessThanOrEqual(
    relative * Math.abs(slow),
  );
const exactly = tolerances.wholeNumbers.relative;
const distributions = [
  ['rectangular half-width to standard uncertainty', 'rectangular'],
  ['rectangular, published example', 'rectangular'],
  ['triangular half-width to standard uncertainty', 'triangular'],
  ['U-shaped half-width to standard uncertainty', 'u-shaped'],
] as const;

test.each(distributions)(`%s, ${times} half-widths`, (quantity, distribution) => {
  for (let k = 0; k < times; k += 1) {
    const typed = decimal(0.001, 50);
    const slow = slowStandardUncertainty(distribution, Number(typed));
    agree(ask(quantity, typed, 'a'), slow, tolerances.averagedShares.relative);
  }
});

test.each(['digital resolution to standard uncertainty', 'GUM resolution factor (printed)'])(
  `%s, ${times} steps`,
  (quantity) => {
    for (let k = 0; k < times; k += 1) {
      const typed = decimal(0.001, 50);
      const slow = slowStandardUncertainty('rectangular', Number(typed) / 2);
      agree(ask(quantity, typed, 'step'), slow, tolerances.averagedShares.relative);
    }
  },
);

test.each(['permissible error from class and span', 'permissible error, published example'])(
  `%s, ${times} classes, spans and forms`,
  (quantity) => {
    const toUnit = { bar: 'bar', kPa: 'Pa', mmHg: 'cmHg' } as const;
    const factor = { bar: 1, kPa: 1000, mmHg: 0.1 } as const;
    for (let k = 0; k < times; k += 1) {
      const unit = (['bar', 'kPa', 'mmHg'] as const)[k % 3] ?? 'bar';
      const accuracyClass = decimal(0.05, 6, 2);
      const span = decimal(0.5, 900, 3);
      const input =
        [
          `span ${span} ${unit} (some words), class ${accuracyClass}`,
          `class ${accuracyClass}, 0..${span} ${unit}`,
          `-${span}..0 ${unit}, class ${accuracyClass} %`,
        ][Math.floor(between(0, 3))] ?? '';
      const fast = ask(quantity, input, '-', toUnit[unit]);
      agree(fast, slowPermissibleError(accuracyClass, span) * factor[unit], exactly);
    }
  },
);

test(`root-sum-square combination, ${times} lists`, () => {
  for (let k = 0; k < times; k += 1) {
    const parts = Array.from({ length: 1 + (k % 5) }, () => ({
      top: decimal(0.0001, 2, 6),
      rootOf: BigInt(Math.floor(between(1, 13))),
    }));
    const input = parts.map(({ top, rootOf }) => `${top}/sqrt${rootOf}`).join(', ');
    agree(ask('root-sum-square combination', input), slowRootSumOfSquares(parts), exactly);
  }
});

test.each([
  ['A-B-A difference B-A', [0, 1, 0], ''],
  ['A-B-B-A difference B-A', [0, 1, 1, 0], ''],
  ['A-B-B-A with linear drift recovers true difference', [0, 1, 1, 0], 'constructed: '],
] as const)(`%s, ${times} runs`, (quantity, isB, words) => {
  for (let k = 0; k < times; k += 1) {
    const typed = isB.map(() => decimal(150, 300));
    const slow = slowBracketDifference(typed.map(Number), isB);
    const off = Math.abs(ask(quantity, `${words}${typed.join(', ')}`) - slow);
    expect(off).toBeLessThanOrEqual(tolerances.smallFit.absolute);
  }
});

test.each([68.27, 90, 95, 95.45, 99, 99.73])(
  `Student t, two-sided %s per cent, ${times} degrees of freedom`,
  (percent) => {
    for (let k = 0; k < times; k += 1) {
      const typed = k % 2 === 0 ? String(1 + Math.floor(between(0, 60))) : decimal(1, 200, 2);
      const fast = ask(`Student t, two-sided ${percent} %`, typed, 'degrees of freedom');
      agree(fast, slowStudentT(percent / 100, Number(typed)), tolerances.quadratureQuantile.relative);
    }
  },
);

test(`the published table of Student t, ${times} degrees of freedom`, () => {
  for (let k = 1; k <= times; k += 1) {
    const fast = ask('Student t table, two-sided 95 % (published)', String(k), 'degrees of freedom');
    agree(fast, slowStudentT(0.95, k), tolerances.quadratureQuantile.relative);
  }
});

test(`means and standard deviations of ${times} lists of readings`, () => {
  for (let k = 0; k < times; k += 1) {
    const start = between(100, 1e6);
    const typed = Array.from({ length: 2 + (k % 40) }, () => (start + between(-5, 5)).toFixed(5));
    const input = typed.join(k % 2 === 0 ? ', ' : '; ');
    agree(ask('NIST StRD certified mean', input), slowMean(typed), exactly);
    const deviation = ask('NIST StRD certified standard deviation (n-1)', input);
    agree(deviation, slowDeviation(typed), tolerances.deviationBesideMillions.relative);
  }
});
