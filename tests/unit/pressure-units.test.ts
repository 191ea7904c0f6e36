import Qty from 'js-quantities';
import { describe, expect, it } from 'vitest';
import {
  convertPressure,
  findPressureUnit,
  pressureUnit,
  pressureUnits,
} from '../../src/calculators/index.ts';
import { tolerances } from '../tolerances.ts';

const relativeDifference = (first: number, second: number): number => Math.abs(first / second - 1);

describe('pressureUnits', () => {
  it('holds the units of gauges, then the rare columns, each id and symbol once', () => {
    const ids = pressureUnits.map(({ id }) => id);
    expect(ids.slice(0, 16)).toEqual([
      'Pa', 'hPa', 'kPa', 'mbar', 'bar', 'mmHg', 'Torr', 'cmHg', 'inHg',
      'mmH2O', 'cmH2O', 'inH2O', 'ftH2O', 'psi', 'atm', 'at',
    ]); // prettier-ignore
    expect(pressureUnits.slice(0, 16).every(({ rare }) => !rare)).toBe(true);
    expect(pressureUnits.slice(16).every(({ rare }) => rare)).toBe(true);
    expect(new Set(ids).size).toBe(pressureUnits.length);
    expect(new Set(pressureUnits.map(({ symbol }) => symbol)).size).toBe(pressureUnits.length);
  });

  it('gives every unit a source and a composition', () => {
    for (const { source, composition, pascals } of pressureUnits) {
      expect(source).toMatch(/\d{4}/u);
      expect(composition).toMatch(/\d/u);
      expect(pascals).toBeGreaterThan(0);
    }
  });

  it('tells what is exact from what was agreed and what was measured', () => {
    const idsOf = (asked: string) =>
      pressureUnits.filter(({ exactness, rare }) => exactness === asked && !rare).map(({ id }) => id);
    expect(idsOf('exact')).toEqual(['Pa', 'hPa', 'kPa', 'mbar', 'bar', 'Torr', 'psi', 'atm', 'at']);
    expect(idsOf('conventional')).toEqual(['mmHg', 'cmHg', 'inHg', 'mmH2O', 'cmH2O', 'inH2O', 'ftH2O']);
    expect(idsOf('measured')).toEqual([]);
  });

  it('writes the temperature of a column beside it', () => {
    expect(pressureUnit('inHg-60F')).toMatchObject({
      symbol: 'inHg (60 °F)',
      name: 'inches of mercury at 60 °F',
    });
    expect(pressureUnit('inHg')).toMatchObject({ symbol: 'inHg', name: 'inches of mercury' });
  });

  it('keeps the torr and the conventional millimetre of mercury apart, by 1.4e-7', () => {
    const apart = relativeDifference(pressureUnit('mmHg').pascals, pressureUnit('Torr').pascals);
    expect(apart).toBeGreaterThan(1.4e-7);
    expect(apart).toBeLessThan(1.5e-7);
  });
});

describe('findPressureUnit(typed)', () => {
  it('finds every unit by id, symbol, name and each alias, in any case but that of mega and milli', () => {
    let spellings = 0;
    for (const unit of pressureUnits)
      for (const spelling of [unit.id, unit.symbol, unit.name, ...unit.aliases]) {
        spellings += 1;
        expect(spelling, unit.id).toMatch(/^\S/u);
        expect(findPressureUnit(spelling)?.id, spelling).toBe(unit.id);
        expect(findPressureUnit(` ${spelling.toUpperCase()} `)?.id, spelling.toUpperCase()).toBe(unit.id);
      }
    expect(spellings).toBeGreaterThan(500);
  });

  const spellings: readonly (readonly [string, string])[] = [
    ['in Hg', 'inHg'], ['in. Hg', 'inHg'], ['In.Hg.', 'inHg'], ['″Hg', 'inHg'], ['"Hg', 'inHg'], ['” Hg', 'inHg'],
    ['inches of mercury', 'inHg'], ['inch of mercury, conventional', 'inHg'], ['mm hg', 'mmHg'], ['mm Hg', 'mmHg'],
    ['hpa', 'hPa'], ['KPA', 'kPa'], ['kgf/cm2', 'at'], ['kgf/cm²', 'at'], ['kg/cm^2', 'at'], ['torr', 'Torr'],
    ['in.wc', 'inH2O'], ['inH₂O', 'inH2O'], ["'H2O", 'ftH2O'], ['lbf/in²', 'psi'], ['㎩', 'Pa'], ['MBAR', 'mbar'],
    ['inHg (60 °F)', 'inHg-60F'], ['inch of water (39.2 degF)', 'inH2O-39.2F'], ['inHg 32°F', 'inHg-32F'],
  ]; // prettier-ignore
  for (const [typed, id] of spellings)
    it(`${typed} is ${id}`, () => expect(findPressureUnit(typed)?.id).toBe(id));

  for (const typed of [
    '',
    ' ',
    'Mbar',
    ' Mbar ',
    'MPa',
    'mPa',
    'inHg 3',
    'furlong',
    'Hg',
    '__proto__',
    'constructor',
  ])
    it(`“${typed}” is no unit`, () => expect(findPressureUnit(typed)).toBeNull());
});

describe('a column without a temperature', () => {
  it.each([
    ['mm of mercury', 'mmHg'],
    ['inch Hg', 'inHg'],
    ['centimeters of mercury', 'cmHg'],
    ['in WC', 'inH2O'],
    ['inches of water', 'inH2O'],
    ['mm WS', 'mmH2O'],
    ['foot of water', 'ftH2O'],
  ])('“%s” is the conventional %s', (typed, id) => {
    expect(findPressureUnit(typed)?.id).toBe(id);
    expect(findPressureUnit(`${typed} conventional`)?.id).toBe(id);
  });
});

describe('pressureUnit(id)', () => {
  it('throws for an id that this package never wrote', () => {
    expect(() => pressureUnit('furlong')).toThrow('furlong');
  });
});

describe('convertPressure(value, from, to)', () => {
  it('leaves a value in its own unit untouched', () => {
    const unit = pressureUnit('inHg');
    for (const value of [0.1 + 0.2, 0.7]) expect(convertPressure(value, unit, unit)).toBe(value);
  });

  it('every named column differs from its conventional one by less than 0.4 per cent', () => {
    const named = pressureUnits.filter(({ exactness }) => exactness === 'measured');
    expect(named).toHaveLength(9);
    for (const unit of named) {
      const conventional = pressureUnit(unit.id.split('-')[0] ?? '');
      expect(relativeDifference(unit.pascals, conventional.pascals), unit.id).toBeLessThan(0.004);
      expect(unit.pascals).toBeLessThan(conventional.pascals);
    }
  });
});

describe('pascals of a unit, against a general-purpose unit library', () => {
  const inLibrary = (name: string): number => Qty(`1 ${name}`).to('Pa').scalar;

  for (const [id, name] of [
    ['Pa', 'Pa'],
    ['hPa', 'hPa'],
    ['kPa', 'kPa'],
    ['mbar', 'mbar'],
    ['bar', 'bar'],
    ['atm', 'atm'],
  ] as const)
    // prettier-ignore
    it(`${id}: equal`, () => {
      expect(relativeDifference(pressureUnit(id).pascals, inLibrary(name))).toBeLessThan(
        tolerances.unitFactor.relative,
      );
    });

  it('Torr: the library rounds 101325/760 to 133.322368', () => {
    expect(inLibrary('torr')).toBe(133.322368);
    expect(pressureUnit('Torr').pascals.toFixed(6)).toBe('133.322368');
  });

  it('mmHg: the library gives it the value of the torr; ours is the conventional column', () => {
    expect(inLibrary('mmHg')).toBe(inLibrary('torr'));
    expect(relativeDifference(pressureUnit('mmHg').pascals, inLibrary('mmHg'))).toBeLessThan(1.5e-7);
    expect(pressureUnit('mmHg').pascals.toFixed(6)).toBe('133.322387');
  });

  it('inHg: the library takes 25.4 of its torr-like millimetres', () => {
    expect(relativeDifference(inLibrary('inHg'), 25.4 * inLibrary('mmHg'))).toBeLessThan(1e-15);
    expect(relativeDifference(pressureUnit('inHg').pascals, inLibrary('inHg'))).toBeLessThan(1.5e-7);
  });

  it('cmH2O, inH2O: the library means water at 4 °C, our named columns', () => {
    expect(pressureUnit('cmH2O-39.2F').pascals.toFixed(4)).toBe(inLibrary('cmH2O').toFixed(4));
    expect(relativeDifference(pressureUnit('inH2O-39.2F').pascals, inLibrary('inH2O'))).toBeLessThan(5e-7);
    expect(relativeDifference(pressureUnit('inH2O').pascals, inLibrary('inH2O'))).toBeLessThan(3e-5);
  });

  it('psi: the library rounds to 6894.76', () => {
    expect(inLibrary('psi')).toBe(6894.76);
    expect(pressureUnit('psi').pascals.toFixed(2)).toBe('6894.76');
  });

  it('every unit that the library knows is compared above; the others it does not know', () => {
    const known = pressureUnits
      .filter(({ rare }) => !rare)
      .map(({ id }) => id)
      .filter((id) => {
        try {
          return Number.isFinite(inLibrary(id));
        } catch {
          return false;
        }
      });
    expect(known.join()).toBe('Pa,hPa,kPa,mbar,bar,mmHg,inHg,cmH2O,inH2O,psi,atm');
  });
});
