import {
  ambientPressureFields,
  answerAmbientPressure,
  barometricExponent,
  computeAmbientPressure,
  formatFixed,
  formatPressure,
  formatSignificant,
  initialForm,
  inUnit,
  pressureUnit,
  standardAtmosphere,
  standardAtmospherePa,
} from '../../calculators/index.ts';
import { samplesBetween } from './samples-between.ts';
import { valueOf } from '../value-of.ts';

const mmHg = pressureUnit('mmHg');

/** Invented: a reading from the sea, carried to a pass in the mountains. */
const form = { ...initialForm(ambientPressureFields), altitude: '1500 m', reading: '300 mmHg' };
const answered = answerAmbientPressure(form);
if (!answered.ok) throw new Error('the example of the altitude has a problem');
const { ambient, place, carried } = answered.answer;
const figure = (id: string): string => {
  const line = [...ambient, ...place, ...carried].find((each) => each.id === id);
  if (line === undefined) throw new Error(`no figure “${id}”`);
  return line.text;
};

const air = (geopotentialM: number) => valueOf(standardAtmosphere({ geopotentialM }));
const limitAt = (geopotentialM: number): number =>
  inUnit(
    valueOf(computeAmbientPressure({ place: { from: 'altitude', height: { geopotentialM } }, reading: null }))
      .largestDepressionPa,
    mmHg,
  );
const heights = samplesBetween(0, 5000, 50);

export const altitude = {
  height: form.altitude,
  reading: form.reading,
  air: figure('ambient-hPa'),
  share: figure('share'),
  largest: figure('largest'),
  sameOpening: figure('same-opening'),
  sameCharge: figure('same-charge'),
  sea: formatPressure(standardAtmospherePa, 'hPa', 6),
  seaLimit: formatPressure(standardAtmospherePa, 'mmHg'),
  seaTemperature: `${formatFixed(air(0).temperatureK, 2)}\u00a0K`,
  temperature: `${formatFixed(air(1500).temperatureK, 2)}\u00a0K`,
  exponent: formatSignificant(barometricExponent(), 5),
  curve: { times: heights, values: heights.map(limitAt) },
  drawn: {
    low: `${formatFixed(limitAt(0), 0)}\u00a0${mmHg.symbol}`,
    high: `${formatFixed(limitAt(5000), 0)}\u00a0${mmHg.symbol}`,
    highest: '5000\u00a0m',
  },
} as const;
