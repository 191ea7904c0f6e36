import {
  columnHeightM,
  columnPressurePa,
  conventionalMercuryDensity,
  convertMeasure,
  densities,
  findLiquid,
  findPressureUnit,
  glycolSolutionDensity,
  inUnit,
  lengths,
  liquidDensity,
  liquidOf,
  measureUnit,
  mercuryColumnReduced,
  mercuryDensity,
  mercuryDensityOfOlderTables,
  mercuryVolumeByQuadratic,
  mercuryVolumeOfOlderTables,
  normalGravity,
  pascalsOf,
  toSi,
  waterDensity,
  waterDensityJonesHarris,
  waterDensityKell,
  waterDensityOfOlderTables,
  waterDensityTanaka,
} from '../src/calculators/index.ts';
import type { PressureUnit, Result } from '../src/calculators/index.ts';
import { computed, quoted } from './adapter.ts';
import type { Adapter, Adapters, Question } from './adapter.ts';
import { plainNumber, valueOf } from './parse-input.ts';
import { celsiusOf, densityIn, unitIn } from './quantity-in.ts';

const number = String.raw`[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?`;

/** `15.556`, `60 degF`, `15.556 (60 degF)`: the first figure counts, in its own unit or in that of the row. */
function celsius({ input, inputUnit }: Pick<Question, 'input' | 'inputUnit'>): number {
  const [, figure, unit = ''] = new RegExp(`^\\s*(${number})\\s*([^(]*)`, 'iu').exec(input) ?? [];
  if (figure === undefined) throw new Error(`no temperature in “${input}”`);
  return celsiusOf(plainNumber(figure), unit.trim() === '' ? inputUnit : unit.trim());
}

const density =
  (relation: (celsius: number) => Result<number>): Adapter =>
  (question) =>
    computed(densityIn(valueOf(relation(celsius(question))), question.expectedUnit));

/** Tables that count in grams and millilitres. */
const gramsPerMillilitre =
  (relation: (celsius: number) => Result<number>): Adapter =>
  (question) =>
    computed(densityIn(1000 * valueOf(relation(celsius(question))), question.expectedUnit));

const specificVolume =
  (relation: (celsius: number) => Result<number>): Adapter =>
  (question) => {
    if (!/^(?:mL|cm3|cm³|cc)\/g$/iu.test(question.expectedUnit))
      throw new Error(`no volume of a gram in “${question.expectedUnit}”`);
    return computed(valueOf(relation(celsius(question))));
  };

const handbookLiquid: Adapter = ({ input, expectedUnit }) => {
  const liquid = findLiquid(input);
  if (liquid === null) throw new Error(`no liquid “${input}”`);
  return computed(densityIn(valueOf(liquidDensity(liquid, 20)), expectedUnit));
};

const glycolAt70Fahrenheit: Adapter = ({ input, inputUnit, expectedUnit }) => {
  if (!/%|per cent|percent/iu.test(`${input} ${inputUnit}`)) throw new Error(`no strength in “${inputUnit}”`);
  const percent = plainNumber(input.replace('%', ''));
  return computed(densityIn(valueOf(glycolSolutionDensity(percent, celsiusOf(70, 'degF'))), expectedUnit));
};

type OnLiquid = { readonly figure: number; readonly unit: string; readonly kgPerM3: number };

/** `100 mm of water 20 degC (998.2067 kg/m3)`: a figure and a liquid, whose density stands behind it or is looked up. */
function onLiquid({ input, inputUnit }: Question): OnLiquid {
  const form = new RegExp(
    `^\\s*(${number})\\s*(\\S*)\\s+(?:of|on)\\s+(.*?)(?:\\s+(${number}\\s*(?:deg|°)\\s*[CF]))?\\s*(?:\\((${number})\\s*([^)]*)\\))?\\s*$`,
    'iu',
  );
  const [, figure, unit = '', name = '', temperature = '20 degC', typedDensity, densityUnit = ''] =
    form.exec(input) ?? [];
  if (figure === undefined) throw new Error(`no figure and liquid in “${input}”`);
  const found = { figure: plainNumber(figure), unit: unit === '' ? inputUnit : unit };
  if (typedDensity !== undefined)
    return { ...found, kgPerM3: toSi(plainNumber(typedDensity), unitIn(densities, densityUnit)) };
  const liquid = findLiquid(name);
  if (liquid === null) throw new Error(`no liquid “${name}”`);
  return {
    ...found,
    kgPerM3: valueOf(liquidDensity(liquid, celsius({ input: temperature, inputUnit: 'degC' }))),
  };
}

function pressureUnitOf(text: string): PressureUnit {
  const unit = findPressureUnit(text);
  if (unit === null) throw new Error(`no unit of pressure “${text}”`);
  return unit;
}

/** `300 mm at 10` in `mm, degC`: a height and a temperature, each in its own unit or in that of the row. */
const reducedColumn: Adapter = ({ input, inputUnit, expectedUnit }) => {
  const [heightUnit = '', temperatureUnit = 'degC'] = inputUnit.split(',').map((each) => each.trim());
  const [, figure, unit = '', temperature = ''] =
    new RegExp(`^\\s*(${number})\\s*(\\S*)\\s+at\\s+(.+)$`, 'iu').exec(input) ?? [];
  if (figure === undefined) throw new Error(`no height at a temperature in “${input}”`);
  const target = unitIn(lengths, expectedUnit.replace(/\s*Hg.*$/iu, ''));
  const height = convertMeasure(plainNumber(figure), unitIn(lengths, unit || heightUnit), target);
  const at = celsius({ input: temperature, inputUnit: temperatureUnit });
  return computed(valueOf(mercuryColumnReduced(height, at)));
};

export const liquidColumnAdapters: Adapters = {
  'water density, CIPM (Tanaka 2001)': density(waterDensityTanaka),
  'water density, Kell 1975 (t on IPTS-68)': density(waterDensityKell),
  'water density, Jones & Harris 1992 quartic (5-40 degC, air-free)': density(waterDensityJonesHarris),
  'water density, published output': density(waterDensityTanaka),
  'water density, older table': gramsPerMillilitre(waterDensityOfOlderTables),
  'water density at 60 degF': density(waterDensity),
  'mercury density vs temperature': density(mercuryDensity),
  'mercury density, conventional (definition of mmHg)': ({ expectedUnit }) =>
    quoted(densityIn(conventionalMercuryDensity, expectedUnit)),
  'mercury density, CRC-type table': density(mercuryDensity),
  'mercury density, older table': gramsPerMillilitre(mercuryDensityOfOlderTables),
  'mercury specific volume, CRC excerpt': specificVolume(mercuryVolumeOfOlderTables),
  'mercury specific volume, CRC equation': specificVolume(mercuryVolumeByQuadratic),
  'typical liquid density 20 degC': handbookLiquid,
  'ethylene glycol solution density at 70 degF': glycolAt70Fahrenheit,
  'ethylene glycol solution density at 70 degF, SI': glycolAt70Fahrenheit,
  'isopropanol density': density((at) => liquidDensity(liquidOf('isopropanol'), at)),
  'U-tube pressure rho g h': (question) => {
    const { figure, unit, kgPerM3 } = onLiquid(question);
    const pascals = columnPressurePa(kgPerM3, toSi(figure, unitIn(lengths, unit)));
    return computed(inUnit(pascals, pressureUnitOf(question.expectedUnit)));
  },
  'U-tube height h = p/(rho g)': (question) => {
    const { figure, unit, kgPerM3 } = onLiquid(question);
    const metres = columnHeightM(kgPerM3, pascalsOf(figure, pressureUnitOf(unit)));
    return computed(
      convertMeasure(metres, measureUnit(lengths, 'm'), unitIn(lengths, question.expectedUnit)),
    );
  },
  'mercury column reduced to 0 degC (column only, no scale expansion)': reducedColumn,
  'gravity at latitude (GRS80 normal gravity, sea level)': ({ input, inputUnit }) => {
    if (!/^(?:deg|°)/iu.test(inputUnit)) throw new Error(`no latitude in “${inputUnit}”`);
    return computed(valueOf(normalGravity(plainNumber(input))));
  },
};
