import { expect, test } from 'vitest';
import { pressureUnitAdapters } from '../../truth/pressure-units.ts';
import { slowAbsolute, slowConversion, slowDensity, slowUnits } from '../second-formula/pressure-units.ts';
import { seededRandom } from '../seeded-random.ts';
import { tolerances } from '../tolerances.ts';

const times = 50;
const random = seededRandom(10_396);
const decimal = (low: number, high: number, digits: number) =>
  (low + (high - low) * random()).toFixed(digits);
const anyUnit = () => slowUnits[Math.floor(random() * slowUnits.length)] ?? 'Pa';

type Asked = {
  readonly input: string;
  readonly inputUnit: string;
  readonly unit: string;
  readonly slow: number;
};

/** So many of a unit that the reading is between the two shares of an atmosphere. */
function readingIn(inputUnit: string, low: number, high: number): string {
  const perAtmosphere = slowConversion('1', 'atm', inputUnit);
  const whole = decimal(low * perAtmosphere, high * perAtmosphere, 4);
  return Number(whole) === 0 ? '0.0007' : whole;
}

const conversion = (low: number, high: number, from?: string) => (): Asked => {
  const inputUnit = from ?? anyUnit();
  const input = readingIn(inputUnit, low, high);
  const unit = anyUnit();
  return { input, inputUnit, unit, slow: slowConversion(input, inputUnit, unit) };
};

const one = (): Asked => {
  const inputUnit = anyUnit();
  const input = decimal(0.001, 20, 4);
  return { input, inputUnit, unit: 'Pa', slow: slowConversion(input, inputUnit, 'Pa') };
};

const density = (liquid: string, low: number, high: number) => (): Asked => {
  const input = decimal(low, high, 3);
  return { input, inputUnit: `Pa per in${liquid}(60F)`, unit: 'kg/m3', slow: slowDensity(input) };
};

const cases: Readonly<Record<string, () => Asked>> = {
  'unit factor to Pa': one,
  'rounded published factor': one,
  'factor from a general library': one,
  'inHg conversion, published table': conversion(0, 2, 'inHg'),
  'density behind 60 degF inHg': density('Hg', 3300, 3400),
  'density behind 60 degF inH2O': density('H2O', 240, 250),
  'vacuum reading conversion mmHg': conversion(0, 1, 'mmHg'),
  'vacuum reading conversion inHg': conversion(0, 1, 'inHg'),
  'vacuum reading conversion kPa': conversion(0, 1, 'kPa'),
  'vacuum reading conversion psi': conversion(0, 1, 'psi'),
  'vacuum reading conversion bar (gauge, signed)': conversion(-1, 2, 'bar'),
  'small difference between cylinders mmHg': conversion(-0.1, 0.1, 'mmHg'),
  'small difference between cylinders inHg': conversion(-0.1, 0.1, 'inHg'),
  'small difference between cylinders mmH2O': conversion(-0.1, 0.1, 'mmH2O'),
  'absolute pressure from vacuum at standard sea level': () => {
    const inputUnit = anyUnit();
    const input = readingIn(inputUnit, 0, 0.9);
    const unit = anyUnit();
    return { input, inputUnit: `${inputUnit} vacuum`, unit, slow: slowAbsolute(input, inputUnit, unit) };
  },
  'barometer conversion': conversion(0.5, 1.1),
};

test('every quantity has a second formula', () => {
  expect(Object.keys(cases).sort()).toEqual(Object.keys(pressureUnitAdapters).sort());
});

test.each(Object.entries(cases))(`%s, ${times} inputs`, (quantity, ask) => {
  for (let k = 0; k < times; k += 1) {
    const { input, inputUnit, unit, slow } = ask();
    const fast = pressureUnitAdapters[quantity]?.({ input, inputUnit, expectedUnit: unit }).values[0] ?? NaN;
    const share = fast === slow ? 0 : Math.abs(fast / slow - 1);
    expect(share, `${input} ${inputUnit} in ${unit}: ${fast}, second formula ${slow}`).toBeLessThanOrEqual(
      tolerances.unitFactor.relative,
    );
  }
});
