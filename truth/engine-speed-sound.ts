import {
  convertMeasure,
  engineSpeeds,
  findMeasureUnit,
  firingFrequencyHz,
  firingIntervalDegrees,
  firingIntervalS,
  rpmOfFiringFrequency,
  speedOfSoundMPerS,
  speeds,
  temperatures,
} from '../src/calculators/index.ts';
import type { MeasureFamily, MeasureUnit } from '../src/calculators/index.ts';
import { computed } from './adapter.ts';
import type { Adapter, Adapters, Question } from './adapter.ts';
import { parseInputs, valueOf } from './parse-input.ts';

function unitOf(family: MeasureFamily, typed: string): MeasureUnit {
  const unit = findMeasureUnit(typed, family);
  if (unit === null) throw new Error(`no unit of ${family.name} “${typed}”`);
  return unit;
}

/** `4 cylinders` of “4 cylinders, 1100 rpm”. */
function cylinders({ input }: Question): number {
  const found = parseInputs(input).find(({ name, unit }) => /^cyl/iu.test(unit || name));
  if (found === undefined) throw new Error(`no number of cylinders in “${input}”`);
  return found.value;
}

/** The speed or frequency of a row, in another unit: `1100 rpm`, `30 Hz`, or a bare `800` beside its unit. */
function speedIn(unitId: string, { input, inputUnit }: Question): number {
  const [found] = parseInputs(input).flatMap(({ value, unit: typed }) => {
    const unit = findMeasureUnit(typed === '' ? inputUnit : typed, engineSpeeds);
    return unit === null || !Number.isFinite(value) ? [] : [{ value, unit }];
  });
  if (found === undefined) throw new Error(`no engine speed in “${input}”`);
  return convertMeasure(found.value, found.unit, unitOf(engineSpeeds, unitId));
}

/** A speed in the unit that the row expects. */
const inExpected = (value: number, unitId: string, family: MeasureFamily, { expectedUnit }: Question) =>
  computed(convertMeasure(value, unitOf(family, unitId), unitOf(family, expectedUnit)));

const secondsIn: Readonly<Record<string, number>> = { s: 1, ms: 1e-3, us: 1e-6, µs: 1e-6, min: 60 };
const degreesIn: Readonly<Record<string, number>> = {
  deg: 1,
  '°': 1,
  rad: 180 / Math.PI,
  rev: 360,
  turn: 360,
};

function perUnit(units: Readonly<Record<string, number>>, { expectedUnit }: Question): number {
  const size = Object.hasOwn(units, expectedUnit) ? units[expectedUnit] : undefined;
  if (size === undefined) throw new Error(`no unit “${expectedUnit}” here`);
  return size;
}

const between: Adapter = (question) => {
  const unit = unitOf(engineSpeeds, question.expectedUnit);
  return computed(speedIn(unit.id, question));
};

export const engineSpeedSoundAdapters: Adapters = {
  '4-stroke firing frequency': (question) =>
    inExpected(
      valueOf(firingFrequencyHz(speedIn('rpm', question), cylinders(question))),
      'Hz',
      engineSpeeds,
      question,
    ),
  'crank angle between firings': (question) =>
    computed(valueOf(firingIntervalDegrees(cylinders(question))) / perUnit(degreesIn, question)),
  'time between intake strokes of neighbouring cylinders': (question) =>
    computed(
      valueOf(firingIntervalS(speedIn('rpm', question), cylinders(question))) / perUnit(secondsIn, question),
    ),
  'rpm from firing frequency': (question) =>
    inExpected(
      valueOf(rpmOfFiringFrequency(speedIn('Hz', question), cylinders(question))),
      'rpm',
      engineSpeeds,
      question,
    ),
  'rpm to Hz': between,
  'rpm to rad/s': between,
  'rad/s to rpm': between,
  'speed of sound in dry air (ideal gas)': (question) => {
    const [typed] = parseInputs(question.input);
    if (typed === undefined) throw new Error('no temperature');
    const unit = unitOf(temperatures, typed.unit === '' ? question.inputUnit : typed.unit);
    const celsius = convertMeasure(typed.value, unit, unitOf(temperatures, 'degC'));
    return inExpected(valueOf(speedOfSoundMPerS(celsius)), 'm/s', speeds, question);
  },
};
