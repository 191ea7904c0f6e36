/** Fifty perturbed inputs of each computed family: the adapter against a slow second formula. */
import { Solver } from 'odex';
import { describe, expect, test } from 'vitest';
import { carbonMonoxideAdapters } from '../../truth/carbon-monoxide.ts';
import {
  equilibriumPpm,
  linearPercent,
  mgPerM3,
  nonlinearPercent,
  people,
  resistance,
  roomMinutes,
  roomPpm,
} from '../second-formula/carbon-monoxide.ts';
import { seededRandom } from '../seeded-random.ts';
import { tolerances } from '../tolerances.ts';

const random = seededRandom(20_261_125);
/** A number in an interval, evenly in its logarithm, with six digits as a row would print it. */
const between = (low: number, high: number): number =>
  Number((low * (high / low) ** random()).toPrecision(6));
const fifty = <Case>(make: () => Case): Case[] => Array.from({ length: 50 }, make);

const answer = (quantity: string, input: string, inputUnit: string, expectedUnit: string): number => {
  const { kind, values } = carbonMonoxideAdapters[quantity]!({ input, inputUnit, expectedUnit });
  expect(kind).toBe('computed');
  expect(values).toHaveLength(1);
  return values[0]!;
};

function expectClose(got: number, wanted: number, relative: number) {
  expect(Math.abs(got - wanted)).toBeLessThanOrEqual(relative * Math.abs(wanted));
}

const { massConcentration, roomSecondFormula, cfkSecondFormula, cfkOtherSolver } = tolerances;

test('ppm as mg/m³ and back, by the volume of a mole', () => {
  for (const [ppm, celsius] of fifty(() => [between(0.1, 20_000), between(1, 45)] as const)) {
    const at = `at ${celsius} degC`;
    const mg = mgPerM3(ppm, celsius);
    expectClose(
      answer('ppm to mg/m3 at 101325 Pa', `${ppm} ppm ${at}`, 'ppm', 'mg/m3'),
      mg,
      massConcentration.relative,
    );
    for (const quantity of ['mg/m3 to ppm at 101325 Pa', 'mg/m3 to ppm, published'])
      expectClose(answer(quantity, `${mg} mg/m3 ${at}`, 'mg/m3', 'ppm'), ppm, massConcentration.relative);
  }
});

const room = () => ({
  volume: between(10, 500),
  changes: random() < 0.1 ? 0 : between(0.05, 20),
  litres: between(0.5, 60),
  start: random() < 0.5 ? 0 : between(1, 2000),
});
const words = ({ volume, changes, litres, start }: ReturnType<typeof room>) =>
  `V=${volume} m3, ACH=${changes} 1/h, CO source=${litres} L/min, C0=${start} ppm`;

test('a mixed room by small steps in litres of gas', () => {
  for (const [each, minutes] of fifty(() => [room(), between(0.5, 240)] as const))
    expectClose(
      answer('well-mixed room concentration', `${words(each)}, t=${minutes} min`, '-', 'ppm'),
      roomPpm(each, minutes),
      roomSecondFormula.relative,
    );
});

test('the time to a limit by halving the time of that', () => {
  for (const [each, minutes] of fifty(() => [{ ...room(), start: 0 }, between(0.5, 60)] as const)) {
    const limit = Number(roomPpm(each, minutes).toPrecision(5));
    expectClose(
      answer('well-mixed room time to limit', `${words(each)}, limit=${limit} ppm`, '-', 'min'),
      roomMinutes(each, limit, 240),
      roomSecondFormula.relative,
    );
  }
});

test('units and order of the inputs do not matter', () => {
  const wanted = answer(
    'well-mixed room concentration',
    'V=60 m3, ACH=0.5 1/h, CO source=20 L/min, t=10 min, C0=100 ppm',
    '-',
    'ppm',
  );
  for (const input of [
    'C0=0.01 %, t=600 s, CO source=1.2 m3/h, ACH=0.5 /h, V=60000 L',
    't=0.16666666666666666 h, V=60 m3, CO source=0.3333333333333333 L/s, ACH=0.008333333333333333 1/min, C0=1e2 ppm',
  ])
    expectClose(
      answer('well-mixed room concentration', input, '-', 'ppm'),
      wanted,
      roomSecondFormula.relative,
    );
});

const exposure = () => ({
  ppm: between(5, 3000),
  minutes: between(1, 600),
  activity: random() < 0.5 ? 'rest' : 'light work',
  start: between(0.3, 12),
});

describe('carboxyhaemoglobin', () => {
  test('the resistance as two conductances in a row', () => {
    for (const [ventilation, diffusing] of fifty(() => [between(3000, 30_000), between(10, 60)] as const))
      expectClose(
        answer('CFK factor B = 1/DL + (PB-47)/VA', `DL=${diffusing}, VA=${ventilation}`, '-', 'mmHg min/mL'),
        resistance({ ventilation, diffusing, oxygen: 100 }),
        cfkSecondFormula.relative,
      );
  });

  test('the linear form by small steps in millilitres of gas', () => {
    for (const { ppm, minutes, activity, start } of fifty(exposure))
      expectClose(
        answer(
          'CFK linear solution, COHb',
          `${ppm} ppm, ${minutes} min, ${activity}, COHb0=${start} %`,
          '-',
          '% COHb',
        ),
        linearPercent(people[activity]!, ppm, minutes, start),
        cfkSecondFormula.relative,
      );
  });

  test('the nonlinear form by its implicit closed solution, and by another solver', () => {
    for (const { ppm, minutes, activity, start } of fifty(exposure)) {
      const got = answer(
        'CFK nonlinear solution, COHb',
        `${ppm} ppm, ${minutes} min, ${activity}, COHb0=${start} %`,
        '-',
        '% COHb',
      );
      const person = people[activity]!;
      expectClose(got, nonlinearPercent(person, ppm, minutes, start), cfkSecondFormula.relative);
      const b = resistance(person);
      const slope = (_: number, [y = 0]: number[]) => [
        (0.007 + ((ppm * 713) / 1e6 - (person.oxygen / 218) * (y / (1 - y))) / b) / (0.2 * 5500),
      ];
      const solver = new Solver(1);
      solver.absoluteTolerance = 1e-12;
      solver.relativeTolerance = 1e-11;
      const { y, outcome } = solver.solve(slope, 0, [start / 100], minutes);
      expect(outcome).toBe(0);
      expectClose(got / 100, y[0]!, cfkOtherSolver.relative);
    }
  });

  test('the washout in clean air, and the exposure behind the recommended limit', () => {
    for (const { minutes, activity, start } of fifty(exposure))
      expectClose(
        answer(
          'CFK nonlinear washout in clean air, COHb',
          `0 ppm, ${minutes} min, ${activity}, COHb0=${start * 5} %`,
          '-',
          '% COHb',
        ),
        nonlinearPercent(people[activity]!, 0, minutes, start * 5),
        cfkSecondFormula.relative,
      );
    for (const { ppm, minutes } of fifty(exposure))
      expectClose(
        answer('NIOSH 35 ppm 8 h basis', `${ppm} ppm, ${minutes} min`, '-', '% COHb'),
        nonlinearPercent(people['rest']!, ppm, minutes, 0.8),
        cfkSecondFormula.relative,
      );
  });

  test('the concentration of an equilibrium by halving the flow', () => {
    for (const percent of fifty(() => between(0.5, 80)))
      expectClose(
        answer('CFK equilibrium CO for a COHb level', String(percent), '% COHb', 'ppm'),
        equilibriumPpm(percent),
        cfkSecondFormula.relative,
      );
  });
});
