import {
  absolutePressurePa,
  absoluteUnder,
  depressionPa,
  formatFixed,
  formatPressure,
  inUnit,
  pascalsOf,
  pressureUnit,
  standardAtmospherePa,
  throttleAreaRatio,
} from '../../calculators/index.ts';
import { samplesBetween } from './samples-between.ts';
import { valueOf } from '../value-of.ts';

const kPa = pressureUnit('kPa');
const mmHg = pressureUnit('mmHg');

/** An invented reading, near the middle of what gauges show well above idle. */
const depression = depressionPa(pascalsOf(250, mmHg));
const ambient = absolutePressurePa(standardAtmospherePa);
const lowAmbient = absolutePressurePa(pascalsOf(990, pressureUnit('hPa')));
const inKPa = (pascals: number): string => `${formatFixed(inUnit(pascals, kPa), 1)}\u00a0${kPa.symbol}`;

/** One intake under its three names, and what a day of low pressure makes of it. */
export const states = {
  reading: formatPressure(depression, 'mmHg'),
  ambient: inKPa(ambient),
  depression: inKPa(depression),
  gauge: inKPa(-depression),
  absolute: inKPa(absoluteUnder(ambient, depression)),
  lowAmbient: formatPressure(lowAmbient, 'hPa'),
  lowAbsolute: inKPa(absoluteUnder(lowAmbient, depression)),
  drawn: {
    ambientKPa: inUnit(ambient, kPa),
    intakeKPa: inUnit(absoluteUnder(ambient, depression), kPa),
  },
} as const;

const openingAt = (mmHgOfDepression: number): number =>
  valueOf(throttleAreaRatio(pascalsOf(mmHgOfDepression, mmHg), depression, ambient));

/** Depression against opening: how far a throttle is open, beside one that reads the depression above. */
const lowest = 100;
const highest = 500;
const depressions = samplesBetween(lowest, highest, 80);

export const opening = {
  at: { low: `${lowest}\u00a0${mmHg.symbol}`, high: `${highest}\u00a0${mmHg.symbol}` },
  low: formatFixed(openingAt(lowest), 2),
  high: formatFixed(openingAt(highest), 2),
  /** What the same step of 10 mmHg is worth at both ends. */
  stepAtLow: formatFixed(openingAt(lowest) / openingAt(lowest + 10), 2),
  stepAtHigh: formatFixed(openingAt(highest - 10) / openingAt(highest), 2),
  step: formatPressure(pascalsOf(10, mmHg), 'mmHg'),
  curve: { times: depressions, values: depressions.map(openingAt) },
} as const;
