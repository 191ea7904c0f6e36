import {
  finestDifference,
  flutterConfidence,
  formatChance,
  formatFixed,
  formatPressure,
  formatSignificant,
  inUnit,
  pascalsOf,
  pressureUnit,
  readingsNeeded,
  resolvableDifference,
  standardUncertaintyOf,
} from '../../calculators/index.ts';
import { valueOf } from '../value-of.ts';

const mmHg = pressureUnit('mmHg');
const pascals = (figure: number): number => pascalsOf(figure, mmHg);
const text = (pressurePa: number, digits = 2): string => formatPressure(pressurePa, 'mmHg', digits);

/** Invented: a damped needle, and a scale that can be read to half a division. */
const swingPa = pascals(5);
const stepPa = pascals(2);
const scatter = { scatterPa: standardUncertaintyOf('rectangular', swingPa), resolutionPa: stepPa };
const confidence = flutterConfidence;
const differencePa = pascals(5);
const counts = [2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20];
const resolvedBy = (count: number): number => resolvableDifference(scatter, count, { confidence });
const finest = finestDifference(stepPa, { confidence });

export const repeats = {
  swing: text(swingPa),
  step: text(stepPa),
  confidence: formatChance(confidence),
  byTwo: text(resolvedBy(2)),
  byThree: text(resolvedBy(3)),
  byFive: text(resolvedBy(5)),
  byTwenty: text(resolvedBy(20)),
  finest: text(finest),
  difference: text(differencePa),
  needed: formatFixed(valueOf(readingsNeeded(scatter, differencePa, { confidence })), 0),
  curve: { times: counts, values: counts.map((count) => inUnit(resolvedBy(count), mmHg)) },
  floor: {
    name: `never less than ${formatSignificant(inUnit(finest, mmHg), 2)}`,
    value: inUnit(finest, mmHg),
  },
} as const;
