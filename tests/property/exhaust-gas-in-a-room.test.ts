import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  answerExhaustGasInARoom,
  averagePpm,
  carboxyhaemoglobinPercent,
  cfkEquilibriumPercent,
  cfkLinearPercent,
  cfkPeople,
  cfkPercent,
  concentrationPpm,
  exhaustGasInARoomFields,
  exposurePpmMin,
  initialForm,
  mgPerM3FromPpm,
  minutesToAverage,
  minutesToReach,
  mixedAir,
  ppmFromMgPerM3,
  sayProblem,
} from '../../src/calculators/index.ts';
import type { ExhaustGasInARoomField, MixedRoom, Result } from '../../src/calculators/index.ts';
import { tolerances } from '../tolerances.ts';

const valueOf = <Value>(result: Result<Value>): Value => {
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
};
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const room = fc.record({
  volumeM3: between(2, 1000),
  airChangesPerHour: fc.oneof(fc.constant(0), between(1e-12, 1e-3), between(0.01, 30)),
  sourceLPerMin: fc.oneof(fc.constant(0), between(0.01, 60)),
  initialPpm: fc.oneof(fc.constant(0), between(1, 5000)),
});
const minutes = between(0.01, 480);
const activity = fc.constantFrom('rest' as const, 'light work' as const);

describe('the room', () => {
  test('gas that came in less gas that went out is gas that stayed', () => {
    fc.assert(
      fc.property(room, minutes, (each: MixedRoom, t) => {
        const air = valueOf(mixedAir(each));
        const came = air.ratePpmPerMin * t;
        const went = air.clearingPerMin * exposurePpmMin(air, t);
        const stayed = concentrationPpm(air, t) - air.initialPpm;
        const size = came + went + air.initialPpm;
        expect(Math.abs(came - went - stayed)).toBeLessThanOrEqual(tolerances.massBalance.relative * size);
      }),
    );
  });

  test('an hour at once is two halves', () => {
    fc.assert(
      fc.property(room, minutes, between(0, 1), (each, t, share) => {
        const air = valueOf(mixedAir(each));
        const middle = concentrationPpm(air, t * share);
        const rest = { ...air, initialPpm: middle };
        const whole = concentrationPpm(air, t);
        const size = Math.max(whole, middle, air.initialPpm) * tolerances.massBalance.relative;
        expect(Math.abs(concentrationPpm(rest, t * (1 - share)) - whole)).toBeLessThanOrEqual(size);
        expect(
          Math.abs(
            exposurePpmMin(air, t * share) + exposurePpmMin(rest, t * (1 - share)) - exposurePpmMin(air, t),
          ),
        ).toBeLessThanOrEqual(tolerances.massBalance.relative * exposurePpmMin(air, t));
      }),
    );
  });

  test('more source, less room and less outside air never give less', () => {
    fc.assert(
      fc.property(room, minutes, between(1, 3), (each, t, factor) => {
        const at = (other: MixedRoom) => concentrationPpm(valueOf(mixedAir(other)), t);
        const here = at(each) * (1 - 1e-12);
        expect(at({ ...each, sourceLPerMin: each.sourceLPerMin * factor })).toBeGreaterThanOrEqual(here);
        expect(at({ ...each, volumeM3: each.volumeM3 / factor })).toBeGreaterThanOrEqual(here);
        expect(at({ ...each, airChangesPerHour: each.airChangesPerHour / factor })).toBeGreaterThanOrEqual(
          here,
        );
      }),
    );
  });

  test('the time to a level is the time at which it is there, and no earlier', () => {
    fc.assert(
      fc.property(room, minutes, (each, t) => {
        const air = valueOf(mixedAir(each));
        const level = concentrationPpm(air, t);
        fc.pre(level > air.initialPpm * 1.001);
        const reached = minutesToReach(air, level);
        // Close to where the air ends, rounding of the level is all that is left of the rise.
        fc.pre(reached !== null && air.clearingPerMin * t < 12);
        expect(Math.abs(concentrationPpm(air, reached!) - level)).toBeLessThanOrEqual(1e-9 * level);
        expect(concentrationPpm(air, reached! * 0.99)).toBeLessThan(level);
      }),
    );
  });

  test('a rolling average lies between nothing and the most, and reaches its level when it says', () => {
    fc.assert(
      fc.property(room, minutes, between(1, 1440), (each, t, window) => {
        const air = valueOf(mixedAir(each));
        const average = averagePpm(air, window, t);
        expect(average).toBeLessThanOrEqual(
          Math.max(concentrationPpm(air, t), air.initialPpm) * (1 + tolerances.massBalance.relative),
        );
        fc.pre(average > 1e-6);
        const reached = minutesToAverage(air, window, average * 0.999);
        expect(reached).not.toBeNull();
        expect(reached!).toBeLessThanOrEqual(t);
        const there = averagePpm(air, window, reached!);
        expect(Math.abs(there - average * 0.999)).toBeLessThanOrEqual(1e-9 * average);
      }),
    );
  });

  test('ppm and mg/m³ come back from each other', () => {
    fc.assert(
      fc.property(between(0, 1e5), between(230, 330), between(5e4, 1.2e5), (ppm, kelvins, pascals) => {
        const air = { kelvins, pascals };
        expect(valueOf(ppmFromMgPerM3(valueOf(mgPerM3FromPpm(ppm, air)), air))).toBeCloseTo(ppm, 8);
      }),
    );
  });
});

describe('the blood', () => {
  test('rises with concentration and time, and stays below its equilibrium', () => {
    fc.assert(
      fc.property(activity, between(20, 5000), between(1, 400), (who, ppm, t) => {
        const person = cfkPeople[who];
        const at = (level: number, time: number) => valueOf(cfkPercent(person, level, time, 0.8));
        const here = at(ppm, t);
        expect(at(ppm * 1.1, t)).toBeGreaterThan(here);
        expect(here).toBeLessThanOrEqual(valueOf(cfkEquilibriumPercent(person, ppm)) * (1 + 1e-6));
        expect(at(ppm, t * 1.1)).toBeGreaterThanOrEqual(here * (1 - 1e-7));
      }),
    );
  });

  test('washes out in clean air, the faster the harder the breath', () => {
    fc.assert(
      fc.property(between(2, 60), between(5, 400), (start, t) => {
        const [rest, work] = (['rest', 'light work'] as const).map((who) =>
          valueOf(cfkPercent(cfkPeople[who], 0, t, start)),
        );
        expect(rest!).toBeLessThan(start);
        expect(work!).toBeLessThan(rest!);
      }),
    );
  });

  test('an endless time ends at the equilibrium', () => {
    fc.assert(
      fc.property(activity, between(0, 2000), between(0.3, 50), (who, ppm, start) => {
        const person = cfkPeople[who];
        const end = valueOf(cfkEquilibriumPercent(person, ppm));
        expect(Math.abs(valueOf(cfkPercent(person, ppm, 1e5, start)) - end)).toBeLessThanOrEqual(1e-6);
      }),
    );
  });

  test('with little in the blood the linear form is the nonlinear one', () => {
    fc.assert(
      fc.property(activity, between(0, 1), between(0, 1), minutes, (who, ppm, start, t) => {
        const person = cfkPeople[who];
        const [linear, full] = [cfkLinearPercent, cfkPercent].map((solve) =>
          valueOf(solve(person, ppm, t, start)),
        );
        // They differ by the share of haemoglobin that is taken, here a hundredth at most.
        const most = Math.max(linear!, start);
        expect(Math.abs(linear! - full!)).toBeLessThanOrEqual((2 * most * most) / 100);
      }),
    );
  });

  test('the linear form never gives less of a rise', () => {
    fc.assert(
      fc.property(activity, between(10, 3000), minutes, (who, ppm, t) => {
        const person = cfkPeople[who];
        expect(valueOf(cfkLinearPercent(person, ppm, t, 0.2))).toBeGreaterThanOrEqual(
          valueOf(cfkPercent(person, ppm, t, 0.2)) * (1 - 1e-6),
        );
      }),
    );
  });

  test('in the air of a room it is always below what the highest concentration alone would give', () => {
    fc.assert(
      fc.property(room, activity, between(1, 240), (each, who, t) => {
        const air = valueOf(mixedAir(each));
        const most = Math.max(concentrationPpm(air, t), air.initialPpm);
        fc.pre(most < 1e5);
        const solved = valueOf(
          carboxyhaemoglobinPercent(cfkPeople[who], (time) => concentrationPpm(air, time), 0.8, [t / 2, t]),
        );
        expect(solved[1]!).toBeLessThanOrEqual(
          valueOf(cfkPercent(cfkPeople[who], most, t, 0.8)) * (1 + 1e-6),
        );
      }),
    );
  });
});

test('whatever is typed, there is an answer or a sentence for each problem', () => {
  const fields = Object.keys(exhaustGasInARoomFields) as ExhaustGasInARoomField[];
  const typed = fc.oneof(
    fc.string({ maxLength: 12 }),
    fc.double().map(String),
    fc.constantFrom('', '0', '-1', '1e308', '12,5 ft', '9 1/2 m', '∞', 'NaN', '1 L/s'),
  );
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.constantFrom(...fields), typed), { maxLength: 4 }),
      fc.constantFrom('sides', 'volume'),
      fc.constantFrom('engine', 'flow'),
      (changes, roomAs, sourceAs) => {
        const form = {
          ...initialForm(exhaustGasInARoomFields),
          ...Object.fromEntries(changes),
          roomAs,
          sourceAs,
        };
        const answered = answerExhaustGasInARoom(form);
        if (answered.ok) {
          expect(JSON.stringify(answered.answer)).not.toMatch(/NaN|Infinity|undefined/u);
          expect(answered.answer.answer.ppm.every(Number.isFinite)).toBe(true);
        } else
          for (const { field, sentence } of answered.problems.map(sayProblem)) {
            expect(fields).toContain(field);
            expect(sentence).toMatch(/\.$/u);
          }
      },
    ),
  );
});
