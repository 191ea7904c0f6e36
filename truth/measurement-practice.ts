import {
  bracketsOf,
  classLimitPercent,
  convertPressure,
  findPressureUnit,
  mean,
  permissibleError,
  resolutionUncertainty,
  rootSumOfSquares,
  sampleStandardDeviation,
  standardUncertaintyOf,
  studentTQuantile,
} from '../src/calculators/index.ts';
import type { AtLeastTwo, BracketOrder, Distribution } from '../src/calculators/index.ts';
import { computed, quoted } from './adapter.ts';
import type { Adapter, Adapters } from './adapter.ts';
import { certifiedDataSet } from './certified-data-sets.ts';
import { plainNumber, valueOf } from './parse-input.ts';

const digits = String.raw`[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?`;

/** `class 1.6`, `1.6`, `cl. 1.6` or `1.6 %`. */
function accuracyClass(text: string): number {
  const found = new RegExp(`^(?:(?:accuracy\\s+)?(?:class|cl\\.?|kl\\.?)\\s*)?(${digits})\\s*%?$`, 'iu').exec(
    text.trim(),
  );
  if (found === null) throw new Error(`no accuracy class in “${text}”`);
  return Number(found[1]);
}

type Span = { readonly size: number; readonly unit: string };

/** `span 1 bar (-1..0 vacuum gauge)`, `span 760 mmHg`, `0..10 bar`: the words in brackets only explain. */
function spanOf(text: string): Span {
  const plain = text
    .replace(/\(.*?\)/gu, ' ')
    .replace(/^\s*(?:span|range|scale)\b/iu, ' ')
    .trim();
  const range = new RegExp(`^(${digits}?)\\s*(?:\\.\\.+|…|to|–|-)\\s*(${digits})\\s*(.*)$`, 'iu').exec(plain);
  if (range !== null && range[1] !== '')
    return { size: Math.abs(Number(range[2]) - Number(range[1])), unit: (range[3] ?? '').trim() };
  const single = new RegExp(`^(${digits})\\s*(.*)$`, 'iu').exec(plain);
  if (single === null) throw new Error(`no span in “${text}”`);
  return { size: Number(single[1]), unit: (single[2] ?? '').trim() };
}

/** “span 30 inHg, class 4”, in either order. */
const errorOfClass: Adapter = ({ input, inputUnit, expectedUnit }) => {
  const parts = input.replace(/\([^)]*\)/gu, '').split(/[,;]/u);
  const classPart = parts.find((part) => /class|cl\b|%/iu.test(part));
  const spanPart = parts.find((part) => part !== classPart);
  if (classPart === undefined || spanPart === undefined)
    throw new Error(`not a span and a class: “${input}”`);
  const span = spanOf(spanPart);
  const error = valueOf(permissibleError(accuracyClass(classPart), span.size));
  const from = findPressureUnit(span.unit === '' ? inputUnit : span.unit);
  const to = findPressureUnit(expectedUnit);
  if (from === null || to === null) throw new Error(`not pressures: “${span.unit}”, “${expectedUnit}”`);
  return computed(convertPressure(error, from, to));
};

const halfWidth =
  (distribution: Distribution): Adapter =>
  ({ input }) =>
    computed(standardUncertaintyOf(distribution, plainNumber(input)));

const step: Adapter = ({ input }) => computed(resolutionUncertainty(plainNumber(input)));

/** `0.016/sqrt3`, `0.016/sqrt(3)`, `0.016/√3`, `0.03/2` or `0.005`. */
function contribution(text: string): number {
  const [top = '', ...bottoms] = text.trim().split('/');
  return bottoms.reduce((value, bottom) => {
    const [, root, inner = ''] = /^\s*(sqrt|√)?\s*\(?\s*([^()]*)\)?\s*$/iu.exec(bottom) ?? [];
    const divisor = plainNumber(inner);
    return value / (root === undefined ? divisor : Math.sqrt(divisor));
  }, plainNumber(top));
}

/** Readings after a colon, if there is one, parted by commas or semicolons. */
const listed = (input: string): number[] =>
  (input.split(':').at(-1) ?? '').split(/[,;]/u).map((part) => plainNumber(part));

const bracketed =
  (order: BracketOrder): Adapter =>
  ({ input }) =>
    computed(differenceOfRuns(listed(input), order));

function differenceOfRuns(readings: readonly number[], order: BracketOrder): number {
  const [first, ...others] = valueOf(bracketsOf(readings, order)).map(({ a, b }) => b - a);
  if (first === undefined) throw new Error('no run of a list that has one');
  return mean([first, ...others]);
}

/** The constructed readings stand behind the colon; where they do not, they follow from difference, drift and start. */
const drifting: Adapter = ({ input }) => {
  if (input.includes(':')) return computed(differenceOfRuns(listed(input), 'abba'));
  const named = (name: string): number => {
    const found = new RegExp(`${name}\\s*=?\\s*(${digits})`, 'iu').exec(input);
    if (found === null) throw new Error(`no ${name} in “${input}”`);
    return Number(found[1]);
  };
  const difference = named('difference');
  const readings = [0, 1, 1, 0].map((isB, order) => named('A0') + isB * difference + order * named('drift'));
  return computed(differenceOfRuns(readings, 'abba'));
};

const twoSided =
  (percent: number): Adapter =>
  ({ input }) => {
    const typed = input.trim();
    const degreesOfFreedom = /^(?:inf(?:inity|inite)?|∞)$/iu.test(typed) ? Infinity : plainNumber(typed);
    return computed(studentTQuantile((1 + percent / 100) / 2, degreesOfFreedom));
  };

/** A certified set by its name, or any list of readings. */
function sample(input: string): AtLeastTwo {
  const [first, second, ...others] = certifiedDataSet(input.trim()) ?? listed(input);
  if (first === undefined || second === undefined) throw new Error(`fewer than two readings: “${input}”`);
  return [first, second, ...others];
}

export const measurementPracticeAdapters: Adapters = {
  'EN 837-1 accuracy class limit': ({ input }) => {
    const limit = classLimitPercent(accuracyClass(input));
    if (limit === null) throw new Error(`the standard has no class “${input}”`);
    return quoted(limit);
  },
  'permissible error from class and span': errorOfClass,
  'permissible error, published example': errorOfClass,
  'rectangular half-width to standard uncertainty': halfWidth('rectangular'),
  'rectangular, published example': halfWidth('rectangular'),
  'triangular half-width to standard uncertainty': halfWidth('triangular'),
  'U-shaped half-width to standard uncertainty': halfWidth('u-shaped'),
  'digital resolution to standard uncertainty': step,
  'GUM resolution factor (printed)': step,
  'root-sum-square combination': ({ input }) =>
    computed(rootSumOfSquares(input.split(/[,;]/u).map(contribution))),
  'A-B-A difference B-A': bracketed('aba'),
  'A-B-B-A difference B-A': bracketed('abba'),
  'A-B-B-A with linear drift recovers true difference': drifting,
  ...Object.fromEntries(
    [68.27, 90, 95, 95.45, 99, 99.73].map((percent) => [
      `Student t, two-sided ${percent} %`,
      twoSided(percent),
    ]),
  ),
  'Student t table, two-sided 95 % (published)': twoSided(95),
  'NIST StRD certified mean': ({ input }) => computed(mean(sample(input))),
  'NIST StRD certified standard deviation (n-1)': ({ input }) =>
    computed(sampleStandardDeviation(sample(input))),
};
