import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  absoluteAndDepression,
  effectsMmHg,
  heightMLimits,
  learnedEffect,
  meanOrTwoClosest,
  mostThreadLevel,
  oneScrewLinkages,
  oneScrewMinutesLimits,
  oneScrewScene,
  readingAtHeight,
  roomAndExhaust,
  roomExample,
  threadAtLevel,
  turnOneScrew,
  verdictUnderSwing,
} from '../../src/calculators/index.ts';
import { tries } from '../property-runs.ts';
import { tolerances } from '../tolerances.ts';

const near = tolerances.pressureSums.absolute;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('turn one screw', () => {
  test.each(oneScrewLinkages)(
    '%s: what a screw opens falls, all else rises, whatever becomes of the speed',
    (linkage) => {
      const scene = oneScrewScene(linkage);
      fc.assert(
        fc.property(
          fc.nat(scene.moves.length - 1),
          fc.integer({ min: 1, max: oneScrewMinutesLimits.max }),
          fc.constantFrom(1, -1),
          fc.boolean(),
          (screw, minutes, way, speedBack) => {
            const { depressionsPa } = turnOneScrew(scene, {
              screw: screw + 1,
              minutes: way * minutes,
              speedBack,
            });
            const { moves } = scene.engine.screws[screw]!;
            depressionsPa.forEach((pa, i) =>
              expect(Math.sign(pa - scene.beforePa[i]!)).toBe(moves[i] === 0 ? way : -way),
            );
          },
        ),
        tries(20),
      );
    },
  );
});

test('no level leaves more thread than the one that leaves the most', () => {
  const { hours, leastLeftTurns } = mostThreadLevel();
  const { absolute } = tolerances.turns;
  expect(Math.abs(threadAtLevel(hours).leastLeftTurns - leastLeftTurns)).toBeLessThan(absolute);
  fc.assert(
    fc.property(between(-24, 36), (other) => {
      expect(threadAtLevel(other).leastLeftTurns).toBeLessThanOrEqual(leastLeftTurns + absolute);
    }),
    tries(200),
  );
});

test('a livelier needle never makes a level set surer, and a wider spread never a surer one', () => {
  fc.assert(
    fc.property(between(0, 20), between(0, 20), between(0, 40), between(0, 40), (a, b, one, two) => {
      const [calm, lively] = [Math.min(a, b), Math.max(a, b)];
      const [close, wide] = [Math.min(one, two), Math.max(one, two)];
      const chance = (swingMmHg: number, spreadMmHg: number) =>
        verdictUnderSwing({ swingMmHg, spreadMmHg }).chanceWithin;
      expect(chance(lively, 0)).toBeLessThanOrEqual(chance(calm, 0) + tolerances.chance.absolute);
      expect(chance(calm, wide)).toBeLessThanOrEqual(chance(calm, close) + tolerances.chance.absolute);
    }),
    tries(100),
  );
});

test('higher up every reading is lower, and lower still once the speed has been set again', () => {
  fc.assert(
    fc.property(between(0, heightMLimits.max), between(0, heightMLimits.max), (a, b) => {
      const [low, high] = [readingAtHeight(Math.min(a, b)), readingAtHeight(Math.max(a, b))];
      expect(high.sameOpeningPa).toBeLessThanOrEqual(low.sameOpeningPa + near);
      expect(high.sameChargePa).toBeLessThanOrEqual(low.sameChargePa + near);
      expect(high.sameChargePa).toBeLessThanOrEqual(high.sameOpeningPa + near);
    }),
    tries(50),
  );
});

test('absolute pressure and depression make up the air outside', () => {
  fc.assert(
    fc.property(between(700, 1050), between(200, 1050), (ambientHPa, intakeHPa) => {
      const { ambientPa, absolutePa, depressionPa } = absoluteAndDepression({ ambientHPa, intakeHPa });
      expect(Math.abs(absolutePa + depressionPa - ambientPa)).toBeLessThan(near);
    }),
    tries(100),
  );
});

test('a larger room, more air and a leaner engine only ever put it off', () => {
  const later = (a: number | null, b: number | null) => (b ?? Infinity) >= (a ?? Infinity) - 1e-9;
  fc.assert(
    fc.property(
      between(20, 300),
      between(0, 30),
      between(1, 8),
      (volumeM3, airChangesPerHour, carbonMonoxidePercent) => {
        const here = roomAndExhaust({ volumeM3, airChangesPerHour, carbonMonoxidePercent });
        for (const eased of [
          { volumeM3: volumeM3 * 1.5, airChangesPerHour, carbonMonoxidePercent },
          { volumeM3, airChangesPerHour: airChangesPerHour + 5, carbonMonoxidePercent },
          { volumeM3, airChangesPerHour, carbonMonoxidePercent: carbonMonoxidePercent / 2 },
        ]) {
          const there = roomAndExhaust(eased);
          here.minutes.forEach((minutes, i) => expect(later(minutes, there.minutes[i]!)).toBe(true));
          expect(there.finalPpm).toBeLessThanOrEqual(here.finalPpm);
        }
      },
    ),
    tries(50),
  );
  expect(roomAndExhaust(roomExample).minutes).not.toContain(null);
});

test('the mean lies between the readings, and the two closest lie evenly about theirs', () => {
  fc.assert(
    fc.property(between(150, 350), (fourth) => {
      const { plot, levelsPa } = meanOrTwoClosest(fourth, 'mean');
      const readings = plot.marks.map(({ depressionPa }) => depressionPa);
      const off = readings.map((pa) => pa - levelsPa.mean);
      expect(Math.abs(off.reduce((sum, each) => sum + each, 0))).toBeLessThan(near);
      const fromClosest = readings.map((pa) => pa - levelsPa['closest-two']);
      const gaps = readings.flatMap((one, i) => readings.slice(i + 1).map((other) => Math.abs(one - other)));
      const evenly = fromClosest.filter((each) => Math.abs(Math.abs(each) - Math.min(...gaps) / 2) < near);
      expect(evenly.length).toBeGreaterThanOrEqual(2);
    }),
    tries(200),
  );
});

test('a reading never widens what is believed of the effect', () => {
  for (const effect of effectsMmHg) {
    const logs = learnedEffect(effect).learned.map(({ lowPa, highPa }) => Math.log(highPa / lowPa));
    logs.slice(1).forEach((each, k) => expect(each).toBeLessThanOrEqual(logs[k]! + 1e-12));
  }
});
