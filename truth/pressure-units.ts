import {
  columnDensityKgPerM3,
  computeConversions,
  convertMeasure,
  convertPressure,
  densities,
  findMeasureUnit,
  findPressureUnit,
  lengths,
  measureUnit,
  parseConversion,
  pascalsOf,
  toSi,
  unitConverterExample,
} from '../src/calculators/index.ts';
import type { PressureKind, PressureUnit } from '../src/calculators/index.ts';
import { computed } from './adapter.ts';
import type { Adapter, Adapters, Question } from './adapter.ts';
import { plainNumber } from './parse-input.ts';

/** A unit as publications spell it; remarks such as “(BS 350)”, “abs” and “vacuum” are dropped. */
function unitOf(spelling: string): PressureUnit {
  const bare = spelling.replace(/\(BS 350\)|\b(?:abs|absolute|vac|vacuum|gauge|a|g)\.?$/giu, '');
  const unit = findPressureUnit(bare);
  if (unit === null) throw new Error(`no unit of pressure “${spelling}”`);
  return unit;
}

/** The number of a row and its unit, which stands behind it or in a column of its own. */
function reading({ input, inputUnit }: Question): { readonly value: string; readonly unit: PressureUnit } {
  const [, value = '', unit = ''] = /^\s*([+-]?[\d.]+(?:e[+-]?\d+)?)\s*(.*)$/iu.exec(input) ?? [];
  plainNumber(value);
  return { value, unit: unitOf(unit.trim() === '' ? inputUnit : unit) };
}

const factor: Adapter = (question) => {
  const { value, unit } = reading(question);
  return computed(convertPressure(plainNumber(value), unit, unitOf(question.expectedUnit)));
};

/** Through the whole converter, as a person types it. */
const converted =
  (kind: PressureKind, shown: PressureKind, ambient: string): Adapter =>
  (question) => {
    const { value, unit } = reading(question);
    const form = { ...unitConverterExample, typed: `${value} ${unit.symbol}`, kind, ambient };
    const parsed = parseConversion(form);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
    const conversions = computeConversions(parsed.value);
    if (!conversions.ok) throw new Error(JSON.stringify(conversions.problem));
    const target = unitOf(question.expectedUnit);
    const answer = conversions.value.valueIn(target, shown);
    if (!answer) throw new Error(`no ${shown} pressure in ${target.id}`);
    return computed(answer.value);
  };

/** What a reading is in another unit does not hang on the ambient pressure: the highest lets every reading pass. */
const vacuum = converted('depression', 'depression', '120 kPa');
const gauge = converted('gauge', 'gauge', '120 kPa');
const difference = converted('difference', 'difference', '');
const standard = '101325 Pa';

/** `3376.85` `Pa per inHg(60F)`: the density of the liquid that gives this at the foot of an inch of it. */
const density: Adapter = ({ input, inputUnit, expectedUnit }) => {
  const [, pressure = '', height = ''] = /^(.+?) per (mm|cm|inch|in|foot|ft|m)/u.exec(inputUnit) ?? [];
  const tall = findMeasureUnit(height, lengths);
  const target = findMeasureUnit(expectedUnit, densities);
  if (tall === null || target === null)
    throw new Error(`no density from “${inputUnit}” in “${expectedUnit}”`);
  const kgPerM3 = columnDensityKgPerM3(pascalsOf(plainNumber(input), unitOf(pressure)), toSi(1, tall));
  return computed(convertMeasure(kgPerM3, measureUnit(densities, 'kg/m3'), target));
};

export const pressureUnitAdapters: Adapters = {
  'unit factor to Pa': factor,
  'rounded published factor': factor,
  'factor from a general library': factor,
  'inHg conversion, published table': factor,
  'density behind 60 degF inHg': density,
  'density behind 60 degF inH2O': density,
  'vacuum reading conversion mmHg': vacuum,
  'vacuum reading conversion inHg': vacuum,
  'vacuum reading conversion kPa': vacuum,
  'vacuum reading conversion psi': vacuum,
  'vacuum reading conversion bar (gauge, signed)': gauge,
  'small difference between cylinders mmHg': difference,
  'small difference between cylinders inHg': difference,
  'small difference between cylinders mmH2O': difference,
  'absolute pressure from vacuum at standard sea level': converted('depression', 'absolute', standard),
  'barometer conversion': converted('absolute', 'absolute', standard),
};
