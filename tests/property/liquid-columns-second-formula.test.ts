/** Fifty perturbed inputs of each computed family: the adapter against a slow second formula. */
import { expect, test } from 'vitest';
import { liquidColumnAdapters } from '../../truth/liquid-columns.ts';
import {
  expanding,
  glycol,
  gravity,
  heightOfColumn,
  jonesHarris,
  kell,
  mercury,
  mercuryOlder,
  mercuryVolumeOlder,
  mercuryVolumeQuadratic,
  reducedColumn,
  tanaka,
  waterOlder,
  weightOfColumn,
} from '../second-formula/liquid-columns.ts';
import { seededRandom } from '../seeded-random.ts';
import { tolerances } from '../tolerances.ts';

const random = seededRandom(20_010_301);
const between = (low: number, high: number): number => Number((low + (high - low) * random()).toFixed(4));
const fifty = <Case>(make: () => Case): Case[] => Array.from({ length: 50 }, make);

const ask = (quantity: string, input: string, inputUnit: string, expectedUnit: string): number =>
  liquidColumnAdapters[quantity]!({ input, inputUnit, expectedUnit }).values[0]!;

function expectClose(got: number, wanted: number, relative: number) {
  expect(Math.abs(got - wanted)).toBeLessThanOrEqual(relative * Math.abs(wanted));
}
const { exactPolynomial, smallSteps, normalGravity } = tolerances;

const kgPerPound = 0.45359237 / 0.3048 ** 3;
const perCubicCentimetre = (density: (t: number) => number) => (t: number) => density(t) / 1000;

test.each([
  ['water density, CIPM (Tanaka 2001)', 'kg/m3', tanaka, 0, 40],
  ['water density, published output', 'kg/m3', tanaka, 0, 40],
  ['water density, Kell 1975 (t on IPTS-68)', 'kg/m3', kell, 0, 150],
  ['water density, Jones & Harris 1992 quartic (5-40 degC, air-free)', 'kg/m3', jonesHarris, 5, 40],
  ['water density, older table', 'g/cm3', waterOlder, 0, 100],
  ['mercury density vs temperature', 'kg/m3', mercury, -38, 350],
  ['mercury density, CRC-type table', 'g/cm3', perCubicCentimetre(mercury), -38, 350],
  ['mercury density, older table', 'g/cm3', mercuryOlder, -38, 350],
  ['mercury specific volume, CRC excerpt', 'mL/g', mercuryVolumeOlder, -38, 350],
  ['mercury specific volume, CRC equation', 'mL/g', mercuryVolumeQuadratic, -38, 350],
] as const)('%s', (quantity, unit, secondFormula, low, high) => {
  for (const t of fifty(() => between(low, high)))
    expectClose(ask(quantity, String(t), 'degC', unit), secondFormula(t), exactPolynomial.relative);
});

test('water density at 60 degF, in Fahrenheit: Tanaka up to 104 °F, Kell above', () => {
  for (const fahrenheit of fifty(() => between(33, 210))) {
    const t = (fahrenheit - 32) / 1.8;
    const wanted = t <= 40 ? tanaka(Number(t.toFixed(12))) : kell(Number(t.toFixed(12)));
    expectClose(
      ask('water density at 60 degF', String(fahrenheit), 'degF', 'kg/m3'),
      wanted,
      exactPolynomial.relative,
    );
  }
});

test('ethylene glycol by the lever between two columns', () => {
  for (const percent of fifty(() => between(0, 90))) {
    const quantity = 'ethylene glycol solution density at 70 degF';
    expectClose(
      ask(quantity, String(percent), '% by volume', 'lb/ft3'),
      glycol(percent),
      exactPolynomial.relative,
    );
    expectClose(
      ask(`${quantity}, SI`, String(percent), '% by volume', 'kg/m3'),
      glycol(percent) * kgPerPound,
      exactPolynomial.relative,
    );
  }
});

test('isopropanol by growing in small steps', () => {
  for (const t of fifty(() => between(0, 60)))
    expectClose(
      ask('isopropanol density', String(t), 'degC', 'kg/m3'),
      expanding(785.5, 1.0754e-3, t),
      smallSteps.relative,
    );
});

test('the weight of a column in whole numbers, and its height by halving', () => {
  for (const [density, figure] of fifty(() => [between(500, 14_000), between(1, 2000)] as const)) {
    expectClose(
      ask('U-tube pressure rho g h', `${figure} mm of oil (${density} kg/m3)`, 'mm', 'Pa'),
      weightOfColumn(density, figure) / 1000,
      exactPolynomial.relative,
    );
    expectClose(
      ask('U-tube height h = p/(rho g)', `${figure} Pa on oil (${density} kg/m3)`, 'Pa', 'mm'),
      heightOfColumn(density, figure) * 1000,
      exactPolynomial.relative,
    );
  }
});

test('liquids that are named: their density is looked up at the temperature', () => {
  const handbook = { 'SAE 10W': 870, 'SAE 30W oil': 891, glycerin: 1260, ethanol: 789, gasoline: 680 };
  for (const [name, density] of Object.entries(handbook)) {
    expectClose(
      ask('typical liquid density 20 degC', name, 'fluid', 'kg/m3'),
      density,
      exactPolynomial.relative,
    );
    expectClose(
      ask('U-tube pressure rho g h', `1000 mm of ${name}`, 'mm', 'Pa'),
      weightOfColumn(density, 1),
      exactPolynomial.relative,
    );
  }
  for (const t of fifty(() => between(0, 40)))
    expectClose(
      ask('U-tube pressure rho g h', `1000 mm of water ${t} degC`, 'mm', 'Pa'),
      weightOfColumn(Number(tanaka(t).toFixed(12)), 1),
      exactPolynomial.relative,
    );
});

test('a mercury column reduced to 0 °C', () => {
  const quantity = 'mercury column reduced to 0 degC (column only, no scale expansion)';
  for (const [height, t] of fifty(() => [between(50, 800), between(-30, 45)] as const))
    expectClose(
      ask(quantity, `${height} mm at ${t}`, 'mm, degC', 'mmHg conv.'),
      reducedColumn(height, t),
      exactPolynomial.relative,
    );
});

test('gravity by the series of the cosine', () => {
  for (const latitude of fifty(() => between(-90, 90)))
    expectClose(
      ask('gravity at latitude (GRS80 normal gravity, sea level)', String(latitude), 'deg', 'm/s2'),
      gravity(latitude),
      normalGravity.relative,
    );
});
