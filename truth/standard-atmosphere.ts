import {
  barometricExponent,
  convertMeasure,
  findMeasureUnit,
  findPressureUnit,
  inUnit,
  lengths,
  measureUnit,
  pascalsOf,
  pressureAltitude,
  standardAtmosphere,
} from '../src/calculators/index.ts';
import type {
  AirAtHeight,
  AtmosphereStandard,
  Height,
  MeasureUnit,
  PressureUnit,
} from '../src/calculators/index.ts';
import { computed } from './adapter.ts';
import type { Adapter, Adapters, Question } from './adapter.ts';
import { plainNumber, valueOf } from './parse-input.ts';
import { densityIn, temperatureIn } from './quantity-in.ts';

const remark = /\((geopotential|geometric)\)/iu;

function lengthUnit(text: string): MeasureUnit {
  const unit = findMeasureUnit(text.replace(remark, ''), lengths);
  if (unit === null) throw new Error(`no unit of length “${text}”`);
  return unit;
}

function pressureUnitOf(text: string): PressureUnit {
  const unit = findPressureUnit(text);
  if (unit === null) throw new Error(`no unit of pressure “${text}”`);
  return unit;
}

/** The height that a row gives; tables without a word on it are of pressure altitude, so geopotential. */
function heightOf({ input, inputUnit }: Question): Height {
  const metres = convertMeasure(plainNumber(input), lengthUnit(inputUnit), measureUnit(lengths, 'm'));
  return remark.exec(inputUnit)?.[1]?.toLowerCase() === 'geometric'
    ? { geometricM: metres }
    : { geopotentialM: metres };
}

const air = (question: Question, standard?: AtmosphereStandard): AirAtHeight =>
  valueOf(standardAtmosphere(heightOf(question), standard));

const pressure =
  (standard: AtmosphereStandard = 'us-1976'): Adapter =>
  (question) =>
    computed(inUnit(air(question, standard).pressurePa, pressureUnitOf(question.expectedUnit)));

const temperature: Adapter = (question) =>
  computed(temperatureIn(air(question).temperatureK, question.expectedUnit));

const density: Adapter = (question) =>
  computed(densityIn(air(question).densityKgPerM3, question.expectedUnit));

const densityRatio: Adapter = (question) =>
  computed(air(question).densityKgPerM3 / valueOf(standardAtmosphere({ geopotentialM: 0 })).densityKgPerM3);

const heightIn = (metres: number, { expectedUnit }: Question) =>
  computed(convertMeasure(metres, measureUnit(lengths, 'm'), lengthUnit(expectedUnit)));

const heightOfPressure: Adapter = (question) => {
  const pascals = pascalsOf(plainNumber(question.input), pressureUnitOf(question.inputUnit));
  const found = valueOf(pressureAltitude(pascals));
  const wanted = remark.exec(question.expectedUnit)?.[1]?.toLowerCase();
  return heightIn(wanted === 'geometric' ? found.geometricM : found.geopotentialM, question);
};

export const standardAtmosphereAdapters: Adapters = {
  'temperature, geopotential altitude H': temperature,
  'density, geopotential altitude H': density,
  'pressure, geopotential altitude H': pressure(),
  'temperature, geometric altitude Z': temperature,
  'density, geometric altitude Z': density,
  'pressure, geometric altitude Z': pressure(),
  'pressure, ISO 2533 / ICAO constants, geopotential': pressure('iso-2533'),
  'barometric exponent g0/(R L), US76': () => computed(barometricExponent('us-1976')),
  'pressure altitude (inverse)': heightOfPressure,
  'pressure in mercury units': pressure(),
  'air density ratio': densityRatio,
  'handbook table, temperature': temperature,
  'handbook table, density': density,
  'handbook table, pressure': pressure(),
  'handbook table, geopotential height': (question) => heightIn(air(question).geopotentialM, question),
  'published ISA table, density ratio': densityRatio,
  'published ISA table, pressure': pressure(),
  'published height of pressure level': heightOfPressure,
  'published altitude table, pressure': pressure(),
  'second implementation, pressure at geopotential H': pressure(),
  'second implementation, pressure at geometric Z': pressure(),
};
