import Qty from 'js-quantities';
import { unit as mathUnit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import {
  convertMeasure,
  densities,
  describeProblem,
  engineSpeeds,
  findMeasureUnit,
  fromSi,
  lengths,
  measureUnit,
  parseMeasure,
  speeds,
  temperatureDifferences,
  temperatures,
  threadPitches,
  torques,
  toSi,
  volumeFlows,
  volumes,
} from '../../src/calculators/index.ts';
import type { MeasureFamily } from '../../src/calculators/index.ts';
import { tolerances } from '../tolerances.ts';

const families = [
  lengths,
  torques,
  temperatures,
  temperatureDifferences,
  volumes,
  speeds,
  engineSpeeds,
  threadPitches,
  densities,
  volumeFlows,
];

const lb = '0.45359237';
const g0 = '9.80665';
const inch = '0.0254';
const foot = '0.3048';
const usGallon = '0.003785411784';
const imperialGallon = '0.00454609';

/** Factors to the SI unit again, as products over products of decimals, and what the two libraries call the unit. */
const oracles: Readonly<
  Record<string, { over?: string[]; under?: string[]; mathjs?: string; qty?: string; si?: string }>
> = {
  'length um': { over: ['0.000001'], mathjs: 'um', qty: 'um' },
  'length mm': { over: ['0.001'], mathjs: 'mm', qty: 'mm' },
  'length cm': { over: ['0.01'], mathjs: 'cm', qty: 'cm' },
  'length m': { over: ['1'], mathjs: 'm', qty: 'm' },
  'length km': { over: ['1000'], mathjs: 'km', qty: 'km' },
  'length thou': { over: ['0.0000254'], mathjs: 'mil', qty: 'mil' },
  'length in': { over: [inch], mathjs: 'in', qty: 'in' },
  'length ft': { over: [foot], mathjs: 'ft', qty: 'ft' },
  'length yd': { over: ['0.9144'], mathjs: 'yd', qty: 'yd' },
  'length mile': { over: ['1609.344'], mathjs: 'mi', qty: 'mi' },
  'torque Nm': { over: ['1'], mathjs: 'N m', qty: 'N*m' },
  'torque Ncm': { over: ['0.01'], mathjs: 'N cm', qty: 'N*cm' },
  'torque kgfm': { over: [g0], mathjs: 'kgf m' },
  'torque kgfcm': { over: [g0, '0.01'], mathjs: 'kgf cm' },
  'torque lbfft': { over: [lb, g0, foot], mathjs: 'lbf ft', qty: 'lbf*ft' },
  'torque lbfin': { over: [lb, g0, inch], mathjs: 'lbf in', qty: 'lbf*in' },
  'torque ozfin': { over: [lb, g0, inch], under: ['16'] },
  'temperature difference C': { over: ['1'], qty: 'degC' },
  'temperature difference F': { over: ['5'], under: ['9'], qty: 'degF' },
  'temperature difference K': { over: ['1'], mathjs: 'K', qty: 'degK' },
  'volume mm3': { over: ['0.001', '0.001', '0.001'], mathjs: 'mm^3', qty: 'mm3' },
  'volume cm3': { over: ['0.000001'], mathjs: 'cm^3', qty: 'cm3' },
  'volume mL': { over: ['0.000001'], mathjs: 'ml', qty: 'ml' },
  'volume L': { over: ['0.001'], mathjs: 'l', qty: 'l' },
  'volume m3': { over: ['1'], mathjs: 'm^3', qty: 'm3' },
  'volume in3': { over: ['0.000016387064'], mathjs: 'cuin', qty: 'in3' },
  'volume ft3': { over: ['0.028316846592'], mathjs: 'cuft', qty: 'ft3' },
  'volume us-floz': { over: [usGallon], under: ['128'], mathjs: 'floz', qty: 'floz' },
  'volume us-pt': { over: [usGallon], under: ['8'], qty: 'pint' },
  'volume us-qt': { over: [usGallon], under: ['4'], qty: 'quart' },
  'volume us-gal': { over: [usGallon], mathjs: 'gal', qty: 'gal' },
  'volume imp-floz': { over: [imperialGallon], under: ['160'], qty: 'floz-imp' },
  'volume imp-pt': { over: ['0.00056826125'] },
  'volume imp-qt': { over: ['0.0011365225'] },
  'volume imp-gal': { over: [imperialGallon] },
  'speed m/s': { over: ['1'], mathjs: 'm/s', qty: 'm/s' },
  'speed km/h': { over: ['1'], under: ['3.6'], mathjs: 'km/h', qty: 'km/h' },
  'speed mph': { over: ['0.44704'], mathjs: 'mi/h', qty: 'mph' },
  'speed ft/s': { over: [foot], mathjs: 'ft/s', qty: 'fps' },
  'speed kn': { over: ['1852'], under: ['3600'], qty: 'knot' },
  'engine speed rpm': { over: ['1'], under: ['60'] },
  'engine speed Hz': { over: ['1'], mathjs: 'Hz', qty: 'Hz' },
  // To thirty digits, as π is printed in any table.
  'engine speed rad/s': { over: ['0.159154943091895335768883763373'] },
  'thread pitch mm': { over: ['0.001'], mathjs: 'mm', qty: 'mm' },
  'thread pitch tpi': { over: [inch], mathjs: 'in', qty: 'in' },
  'thread pitch in': { over: [inch], mathjs: 'in', qty: 'in' },
  'density kg/m3': { over: ['1'], mathjs: 'kg/m^3', qty: 'kg/m3' },
  'density g/cm3': { over: ['1000'], mathjs: 'g/cm^3', qty: 'g/cm3' },
  'density lb/ft3': { over: [lb], under: [foot, foot, foot], mathjs: 'lbm/cuft', qty: 'lb/ft3' },
  'volume flow L/min': { over: ['0.001'], under: ['60'], mathjs: 'l/minute', qty: 'l/min' },
  'volume flow L/s': { over: ['0.001'], mathjs: 'l/s', qty: 'l/s' },
  'volume flow m3/h': { over: ['1'], under: ['3600'], mathjs: 'm^3/h', qty: 'm3/h' },
  'volume flow m3/s': { over: ['1'], mathjs: 'm^3/s', qty: 'm3/s' },
  'volume flow ft3/min': { over: [foot, foot, foot], under: ['60'], mathjs: 'cuft/minute', qty: 'ft3/min' },
};

/** The libraries' names of the SI units of the families. */
const siIn: Readonly<Record<string, readonly [string, string]>> = {
  m: ['m', 'm'],
  'N·m': ['N m', 'N*m'],
  K: ['K', 'degK'],
  'm³': ['m^3', 'm3'],
  'm/s': ['m/s', 'm/s'],
  '1/s': ['Hz', 'Hz'],
  'kg/m³': ['kg/m^3', 'kg/m3'],
  'm³/s': ['m^3/s', 'm3/s'],
};

/** These the second library rounds: to 3785.4118 mL, 29.5735297 mL, 0.514444444 m/s, 1.3558180656 N·m and so on. */
const roundedByQty = /^(?:torque lbf|volume (?:us|imp)|speed kn)/u;

function decimalProduct(factors: readonly string[]): { readonly whole: bigint; readonly decimals: number } {
  const decimals = factors.map((text) => (text.split('.')[1] ?? '').length).reduce((a, b) => a + b, 0);
  const whole = factors.map((text) => BigInt(text.replace('.', ''))).reduce((a, b) => a * b, 1n);
  return { whole, decimals };
}

/** A quotient of products in whole numbers, cut after forty decimals. */
function exactQuotient(over: readonly string[], under: readonly string[] = ['1']): number {
  const [top, bottom] = [decimalProduct(over), decimalProduct(under)];
  const shifted = (top.whole * 10n ** BigInt(40 + bottom.decimals)) / bottom.whole;
  return Number(shifted) / 10 ** (40 + top.decimals);
}

const relativeDifference = (first: number, second: number): number => Math.abs(first / second - 1);
const entries = families.flatMap((family) => family.units.map((unit) => ({ family, unit })));
const factorOf = (unit: (typeof entries)[number]['unit']): number =>
  unit.scale.kind === 'temperature' ? 1 / unit.scale.degreesPerKelvin : unit.scale.factor;

describe('tables of units', () => {
  it('hold the units of the workshop, each id and symbol once in its family', () => {
    expect(families.map(({ name, units }) => `${name}: ${units.map(({ id }) => id).join(' ')}`)).toEqual([
      'length: um mm cm m km thou in ft yd mile',
      'torque: Nm Ncm kgfm kgfcm lbfft lbfin ozfin',
      'temperature: C F K',
      'temperature difference: C F K',
      'volume: mm3 cm3 mL L m3 in3 ft3 us-floz imp-floz us-pt imp-pt us-qt imp-qt us-gal imp-gal',
      'speed: m/s km/h mph ft/s kn',
      'engine speed: rpm Hz rad/s',
      'thread pitch: mm tpi in',
      'density: kg/m3 g/cm3 lb/ft3',
      'volume flow: L/min L/s m3/h m3/s ft3/min',
    ]);
    for (const { units } of families) {
      expect(new Set(units.map(({ id }) => id)).size).toBe(units.length);
      expect(new Set(units.map(({ symbol }) => symbol)).size).toBe(units.length);
    }
  });

  it('one unit of each family is its SI unit', () => {
    for (const { name, siUnit, units } of families.filter(({ name }) => name !== 'thread pitch'))
      expect(
        units.filter((unit) => toSi(5, unit) === 5).map(({ symbol }) => symbol),
        name,
      ).toContain(siUnit === '1/s' ? 'Hz' : siUnit);
  });

  for (const { family, unit } of entries) {
    const name = `${family.name} ${unit.id}`;
    it(`${name}: composed from exact definitions, with source and composition`, () => {
      expect(unit.source).toMatch(/\d{4}/u);
      expect(unit.composition).toMatch(/^\S/u);
      expect(unit.exactness).toBe('exact');
      if (family !== temperatures) {
        const { over, under } = oracles[name] ?? {};
        expect(relativeDifference(factorOf(unit), exactQuotient(over ?? [], under))).toBeLessThan(
          tolerances.exactUnit.relative,
        );
      }
    });

    it(`${name}: every spelling finds it, in capitals too`, () => {
      for (const spelling of [unit.id, unit.symbol, unit.name, ...unit.aliases]) {
        expect(spelling, name).toMatch(/^\S/u);
        expect(findMeasureUnit(spelling, family)?.id, spelling).toBe(unit.id);
        expect(findMeasureUnit(` ${spelling.toUpperCase()} `, family)?.id, spelling).toBe(unit.id);
      }
    });
  }

  it('a share of a gallon is told as one', () => {
    const compositionOf = (id: string) => measureUnit(volumes, id).composition;
    expect(['us-gal', 'imp-gal', 'us-floz', 'imp-pt'].map(compositionOf)).toEqual([
      '231 × (0.0254 m)³',
      '4.54609 L',
      '231 × (0.0254 m)³ / 128',
      '4.54609 L / 8',
    ]);
  });

  it('every unit but the temperatures has its oracle, and no oracle is left over', () => {
    const own = entries.filter(({ family }) => family !== temperatures);
    expect(own.map(({ family, unit }) => `${family.name} ${unit.id}`).toSorted()).toEqual(
      Object.keys(oracles).toSorted(),
    );
  });
});

describe('against two unit libraries', () => {
  const compared = entries.filter(({ family }) => family !== temperatures);
  it('the first agrees on every unit that it knows', () => {
    let known = 0;
    for (const { family, unit } of compared) {
      const name = oracles[`${family.name} ${unit.id}`]?.mathjs;
      if (name === undefined) continue;
      known += 1;
      const theirs = mathUnit(1, name).toNumber(siIn[family.siUnit]?.[0] ?? '');
      expect(relativeDifference(factorOf(unit), theirs), `${unit.id} ${name}`).toBeLessThan(
        tolerances.unitFactor.relative,
      );
    }
    expect(known).toBe(42);
  });

  it('the second too, as far as it does not round', () => {
    let known = 0;
    for (const { family, unit } of compared) {
      const name = oracles[`${family.name} ${unit.id}`]?.qty;
      if (name === undefined) continue;
      known += 1;
      const theirs = Qty(`1 ${name}`).to(siIn[family.siUnit]?.[1] ?? '').scalar;
      const rounds = roundedByQty.test(`${family.name} ${unit.id}`);
      expect(relativeDifference(factorOf(unit), theirs), `${unit.id} ${name}`).toBeLessThan(
        rounds ? tolerances.roundedLibrary.relative : tolerances.unitFactor.relative,
      );
    }
    expect(known).toBe(46);
  });

  it('both agree on temperatures from absolute zero to 2000 °C', () => {
    const names = { C: ['degC', 'tempC'], F: ['degF', 'tempF'], K: ['K', 'tempK'] } as const;
    const pairs = Object.keys(names).flatMap((from) => Object.keys(names).map((to) => [from, to] as const));
    expect(pairs).toHaveLength(9);
    for (const [from, to] of pairs as (readonly [keyof typeof names, keyof typeof names])[])
      for (const kelvins of [1, 100, 255.372, 273.15, 293.15, 310.15, 373.15, 2273.15]) {
        const figure = fromSi(kelvins, measureUnit(temperatures, from));
        const ours = convertMeasure(figure, measureUnit(temperatures, from), measureUnit(temperatures, to));
        const [first, second] = [
          mathUnit(figure, names[from][0]).toNumber(names[to][0]),
          Qty(`${figure} ${names[from][1]}`).to(names[to][1]).scalar,
        ];
        expect(Math.abs(ours - first)).toBeLessThan(tolerances.temperature.absolute);
        expect(Math.abs(ours - second)).toBeLessThan(tolerances.temperature.absolute);
      }
  });
});

describe('convertMeasure(figure, from, to)', () => {
  const convert = (figure: number, family: MeasureFamily, from: string, to: string): number =>
    convertMeasure(figure, measureUnit(family, from), measureUnit(family, to));

  it('leaves a figure in its own unit untouched', () => {
    for (const figure of [0.1 + 0.2, 1.5]) expect(convert(figure, lengths, 'in', 'in')).toBe(figure);
  });

  it('a temperature and a difference of temperatures are not the same', () => {
    expect(convert(20, temperatures, 'C', 'F')).toBe(68);
    expect(convert(20, temperatureDifferences, 'C', 'F')).toBe(36);
    expect(convert(20, temperatureDifferences, 'C', 'K')).toBe(20);
    expect(convert(20, temperatures, 'C', 'K')).toBe(293.15);
  });

  it('32 °F is 0 °C and −40 is both, without the tail of a binary fraction', () => {
    expect(convert(32, temperatures, 'F', 'C')).toBe(0);
    expect(convert(-40, temperatures, 'F', 'C')).toBe(-40);
    expect(convert(212, temperatures, 'F', 'C')).toBe(100);
    expect(fromSi(293.15, measureUnit(temperatures, 'F'))).toBeCloseTo(68, 10);
    expect(toSi(68, measureUnit(temperatures, 'F'))).toBeCloseTo(293.15, 10);
  });

  it('threads per inch count the other way round', () => {
    expect(convert(26, threadPitches, 'tpi', 'mm')).toBeCloseTo(0.976923076923, 12);
    expect(convert(1, threadPitches, 'mm', 'tpi')).toBeCloseTo(25.4, 12);
    expect(convert(0.05, threadPitches, 'in', 'tpi')).toBeCloseTo(20, 12);
  });
});

describe('measureUnit(family, id)', () => {
  it('throws for an id that this package never wrote', () => {
    expect(() => measureUnit(lengths, 'furlong')).toThrow('furlong');
  });
});

describe('parseMeasure(typed, family, usualUnitId, field)', () => {
  const understood: readonly (readonly [string, MeasureFamily, string, string, number])[] = [
    ['5.5 mm', lengths, 'in', 'mm', 0.0055],
    ['5,5', lengths, 'mm', 'mm', 0.0055],
    ['9 1/2″', lengths, 'mm', 'in', 0.2413],
    ['3 µm', lengths, 'mm', 'um', 3e-6],
    ['12 ft-lb', torques, 'Nm', 'lbfft', 16.26981538],
    ['12 N·m', torques, 'Ncm', 'Nm', 12],
    ['-40°F', temperatures, 'C', 'F', 233.15],
    ['20 º C', temperatures, 'F', 'C', 293.15],
    ['20 ℃', temperatures, 'F', 'C', 293.15],
    ['0 °C', temperatures, 'F', 'C', 273.15],
    ['-273.15 °C', temperatures, 'C', 'C', 0],
    ['-459.67 °F', temperatures, 'C', 'F', 0],
    ['18 °F', temperatureDifferences, 'C', 'F', 10],
    ['125 cc', volumes, 'L', 'cm3', 125e-6],
    ['1 US gal', volumes, 'L', 'us-gal', 0.003785411784],
    ['1 gallon (UK)', volumes, 'L', 'imp-gal', 0.00454609],
    ['60 mph', speeds, 'km/h', 'mph', 26.8224],
    ['3000', engineSpeeds, 'rpm', 'rpm', 50],
    ['26 t.p.i.', threadPitches, 'mm', 'tpi', 0.0254 / 26],
    ['0.75', threadPitches, 'mm', 'mm', 0.00075],
    ['1 g/cc', densities, 'kg/m3', 'g/cm3', 1000],
    ['60 cfm', volumeFlows, 'm3/h', 'ft3/min', 0.028316846592],
  ];
  it.each(understood)('“%s”', (typed, family, usual, id, value) => {
    const parsed = parseMeasure(typed, family, usual);
    if (!parsed.ok) throw new Error(describeProblem(parsed.problem));
    expect(parsed.value.unit.id).toBe(id);
    expect(parsed.value.value).toBeCloseTo(value, 7);
    expect(parsed.value.value).toBe(toSi(parsed.value.number.value, parsed.value.unit));
    expect(parsed.value.unitTyped).toBe(/[^\d,.]/u.test(typed));
  });

  const refused: readonly (readonly [string, MeasureFamily, string, string])[] = [
    ['', lengths, 'mm', 'nothing is written here'],
    ['mm', lengths, 'mm', 'Give a number before the unit'],
    ['5 inHg', lengths, 'mm', '“inHg” is not a unit that is known here. Give one of µm, mm,'],
    ['3 mil', lengths, 'mm', '“mil” is not a unit'],
    ['1 gallon', volumes, 'L', 'US gal or imp. gal.'],
    ['1,234 mm', lengths, 'mm', 'can be read two ways'],
    ['1e309 mm', lengths, 'mm', '1e309 mm'],
    ['-273.16 °C', temperatures, 'C', 'absolute zero, −273.15 °C (−459.67 °F, 0 K); you wrote “-273.16 °C”'],
    ['-459.68', temperatures, 'F', 'absolute zero'],
    ['-1 K', temperatures, 'C', 'absolute zero'],
    ['0 TPI', threadPitches, 'mm', 'Give a thread pitch above 0; you wrote “0 TPI”.'],
    ['0', threadPitches, 'mm', 'Give a thread pitch above 0; you wrote “0”.'],
    ['-1.25 mm', threadPitches, 'mm', 'Give a thread pitch above 0'],
    ['-20 TPI', threadPitches, 'mm', 'Give a thread pitch above 0'],
    ['-1 L', volumes, 'L', 'Give a volume of at least 0; you wrote “-1 L”.'],
    ['-1', engineSpeeds, 'rpm', 'Give an engine speed of at least 0'],
    ['0', densities, 'kg/m3', 'Give a density above 0'],
    ['-1', volumeFlows, 'm3/h', 'Give a volume flow of at least 0'],
  ];
  it.each(refused)('“%s” is refused in words', (typed, family, usual, words) => {
    const parsed = parseMeasure(typed, family, usual, 'place');
    if (parsed.ok) throw new Error(`understood as ${parsed.value.value}`);
    expect(parsed.problem).toMatchObject({ field: 'place' });
    expect(describeProblem(parsed.problem)).toContain(words);
    const bare = parseMeasure(typed, family, usual);
    expect(bare.ok ? null : 'field' in bare.problem).toBe(false);
  });
});
