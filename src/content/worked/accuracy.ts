import {
  exampleSessions,
  formatExact,
  formatPressure,
  formatSignificant,
  inUnit,
  permissibleError,
  pressureUnit,
  readingStandardUncertaintyPa,
  resolutionUncertainty,
  rootSumOfSquares,
  standardUncertaintyOf,
} from '../../calculators/index.ts';
import { valueOf } from '../value-of.ts';

const mmHg = pressureUnit('mmHg');
const { gauge } = exampleSessions['all-adjustable'].setUp;

/** Invented: a dial of a usual class on a usual scale, with the swing and the step of the example session. */
const accuracyClass = 1.6;
const spanPa = pressureUnit('bar').pascals;
const errorPa = valueOf(permissibleError(accuracyClass, spanPa));
const classPa = standardUncertaintyOf('rectangular', errorPa);
const readingPa = readingStandardUncertaintyPa(gauge);

const text = (pascals: number, digits = 2): string => formatPressure(pascals, 'mmHg', digits);
const bar = (name: string, halfWidthPa: number) => ({
  name,
  halfWidth: inUnit(halfWidthPa, mmHg),
  label: `± ${formatSignificant(inUnit(halfWidthPa, mmHg), 2)}`,
});

export const accuracy = {
  unit: mmHg.symbol,
  accuracyClass: formatExact(accuracyClass),
  span: formatPressure(spanPa, 'bar'),
  error: text(errorPa),
  errorKPa: formatPressure(errorPa, 'kPa', 2),
  classUncertainty: text(classPa),
  swing: text(gauge.flutterPa, 1),
  step: text(gauge.resolutionPa, 1),
  swingUncertainty: text(standardUncertaintyOf('rectangular', gauge.flutterPa)),
  stepUncertainty: text(resolutionUncertainty(gauge.resolutionPa)),
  reading: text(readingPa),
  /** Of a difference: one gauge, whose error falls out; and two, each with its own. */
  oneGauge: text(rootSumOfSquares([readingPa, readingPa])),
  twoGauges: text(rootSumOfSquares([readingPa, readingPa, classPa, classPa])),
  drawn: [
    bar(`class ${formatExact(accuracyClass)}, scale of ${formatPressure(spanPa, 'bar')}`, errorPa),
    bar('swing of the damped needle', gauge.flutterPa),
    bar('half a step of the scale', gauge.resolutionPa / 2),
  ],
} as const;
