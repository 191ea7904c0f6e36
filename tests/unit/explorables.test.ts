import { describe, expect, test } from 'vitest';
import {
  absoluteAndDepression,
  airAndIntakeExample,
  altitudeFinding,
  analyseBalance,
  answerExhaustGasInARoom,
  certain,
  commonHoursLimits,
  depressionFinding,
  effectsMmHg,
  exhaustGasInARoomFields,
  fail,
  flutterFinding,
  fourthMmHgExample,
  heightMLimits,
  initialForm,
  learnedEffect,
  learnedFinding,
  learnedTurnsLimits,
  meanOrTwoClosest,
  mostThreadLevel,
  oneScrewLinkages,
  oneScrewMinutesLimits,
  oneScrewScene,
  oneTurnExample,
  readingAtHeight,
  referenceFinding,
  references,
  roomAndExhaust,
  roomCaution,
  roomExample,
  roomFinding,
  roomNotKnown,
  spreadMmHgLimits,
  succeed,
  swingMmHgLimits,
  threadAtLevel,
  turnOneScrew,
  verdictUnderSwing,
} from '../../src/calculators/index.ts';
import { curveStripOf } from '../../src/drawing/curve-strip.ts';
import { learnedRowsOf } from '../../src/drawing/learned-rows.ts';
import { pressureBarsOf } from '../../src/drawing/pressure-bars.ts';
import { stripOf } from '../../src/drawing/strip.ts';
import { travelStripOf } from '../../src/drawing/thread-travel-strip.ts';
import { mmHg } from '../engine/invented.ts';
import { tolerances } from '../tolerances.ts';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const steps = ({ min, max, step }: { min: number; max: number; step: number }): number[] =>
  Array.from({ length: (max - min) / step + 1 }, (_, k) => min + k * step);
const inside = (place: number, [low, high]: readonly [number, number]): boolean =>
  place >= low && place <= high;

describe('turn one screw', () => {
  test('a quarter open with the speed brought back: its own falls, the others rise', () => {
    const scene = oneScrewScene('all-adjustable');
    const shown = turnOneScrew(scene, oneTurnExample);
    expect(shown.rpm).toBe(scene.engine.targetRpm);
    expect(plain(shown.said)).toBe(
      'The screw of carburettor 1 opened by 1/4 turn, the speed brought back to 2100 rpm: carburettor 1 reads 25 mmHg lower, and carburettors 2, 3 and 4 read 7 to 10 mmHg higher.',
    );
    expect(plain(shown.amount)).toBe('1/4 turn open');
    expect(plain(shown.plotWords)).toContain('carburettor 1, 212 mmHg, before 236;');
  });

  test('a screw between pairs moves two, and the throttle left alone lets the engine slow down', () => {
    const scene = oneScrewScene('paired-screws');
    expect(scene.moves).toEqual(['1', '4', '3 and 4']);
    const shown = turnOneScrew(scene, { screw: 3, minutes: -30, speedBack: false });
    expect(plain(shown.said)).toBe(
      'The screw that moves 3 and 4 closed by 1/2 turn, the throttle left alone, so that the engine runs at 1940 rpm: carburettors 3 and 4 read 48 to 53 mmHg higher, and carburettors 1 and 2 read 25 to 28 mmHg lower.',
    );
  });

  test('before a turn nothing has changed', () => {
    const scene = oneScrewScene('all-adjustable');
    for (const speedBack of [true, false]) {
      const shown = turnOneScrew(scene, { screw: 2, minutes: 0, speedBack });
      expect(shown.said).toBe('No screw has been turned yet.');
      expect(shown.amount).toBe('no turn');
      shown.depressionsPa.forEach((pa, i) =>
        expect(Math.abs(pa - scene.beforePa[i]!)).toBeLessThan(tolerances.pressureSums.absolute),
      );
    }
  });

  test.each(oneScrewLinkages)('%s: every turn stays on the scale, and no sentence is cut', (linkage) => {
    const scene = oneScrewScene(linkage);
    for (const screw of scene.moves.keys())
      for (const minutes of steps(oneScrewMinutesLimits))
        for (const speedBack of [true, false]) {
          const { plot, said } = turnOneScrew(scene, { screw: screw + 1, minutes, speedBack });
          for (const { depressionPa } of plot.marks)
            expect(inside(depressionPa, plot.scalePa), `${linkage} ${screw} ${minutes}`).toBe(true);
          expect(said).toMatch(/\.$/u);
          expect(said).not.toMatch(/NaN|undefined/u);
        }
  });
});

describe('the level that leaves the most thread', () => {
  test('the two closest run out; three quarters further open all fit', () => {
    const most = mostThreadLevel();
    expect(most.hours).toBe(9);
    expect(threadAtLevel(0).fits).toBe(false);
    expect(plain(most.finding)).toBe(
      'Brought to the two that read closest, this set runs out of thread; 3/4 turn further open, every adjuster keeps at least 1/2 turn either way.',
    );
    expect(plain(threadAtLevel(0).said)).toBe('It does not fit: adjuster 4 lacks 1/4 turn to close.');
    expect(plain(threadAtLevel(9).said)).toBe(
      'The scarcest thread has 1/2 turn left: adjuster 1, to open. The idle-speed screw takes the speed back: 3/4 turn further shut.',
    );
    expect(plain(threadAtLevel(24).said)).toContain('adjuster 1 lacks 3/4 turn to open.');
    expect(plain(threadAtLevel(-12).said)).toContain('1 turn further open.');
    expect(threadAtLevel(0).amount).toBe('no turn');
  });

  test('the scale keeps still', () => {
    const scales = steps(commonHoursLimits).map((hours) => {
      const { ticks, nowX, rows } = travelStripOf(threadAtLevel(hours).marks);
      for (const { plannedX } of rows) expect(inside(plannedX, [0, 100])).toBe(true);
      return JSON.stringify([ticks, nowX]);
    });
    expect(new Set(scales).size).toBe(1);
  });
});

describe('flutter and the verdict', () => {
  test('is that of the balance analyser for the same readings', () => {
    const seen = new Set<string>();
    for (const swingMmHg of [0, 3, 8, 12, 20])
      for (const spreadMmHg of [0, 10, 20, 30, 40]) {
        const shown = verdictUnderSwing({ swingMmHg, spreadMmHg });
        const analysed = certain(
          analyseBalance({
            generation: 'separate-cables',
            carburettors: 4,
            readings: shown.plot.marks.map(({ number, depressionPa }) => ({
              carburettor: number,
              depressionPa,
            })),
            gauge: { resolutionPa: 2 * mmHg, flutterPa: swingMmHg * mmHg },
            tolerancePa: 20 * mmHg,
          }),
        );
        expect(shown.verdict).toBe(analysed.verdict);
        expect(Math.abs(shown.chanceWithin - analysed.chanceWithin)).toBeLessThan(tolerances.chance.absolute);
        seen.add(shown.verdict);
      }
    expect(seen).toEqual(new Set(['within', 'cannot-tell', 'outside']));
  });

  test('says what a lively needle costs', () => {
    expect(plain(flutterFinding())).toContain('is 100 % at a swing of 3 mmHg each way, and 68 % at 12 mmHg.');
    expect(plain(verdictUnderSwing({ swingMmHg: 12, spreadMmHg: 10 }).said)).toBe(
      'A swing of 12 mmHg each way, readings 10 mmHg apart: nobody can tell whether the set is within the tolerance. The chance that it is within 20 mmHg is 68 %.',
    );
  });

  test('every whisker stays on the scale', () => {
    for (const swingMmHg of steps(swingMmHgLimits))
      for (const spreadMmHg of steps(spreadMmHgLimits)) {
        const { plot } = verdictUnderSwing({ swingMmHg, spreadMmHg });
        for (const { whiskerX1, whiskerX2 } of stripOf(plot).rows)
          expect(inside(whiskerX1, [8, 72]) && inside(whiskerX2, [8, 72])).toBe(true);
      }
  });
});

describe('altitude and the reading', () => {
  test('lies between two assumptions, and is itself at the sea', () => {
    expect(plain(readingAtHeight(0).said)).toBe(
      'At sea level, in 1013 hPa of air, the gauge shows 250 mmHg.',
    );
    expect(plain(readingAtHeight(1500).said)).toBe(
      'At 1500 m, in 846 hPa of air, the same engine shows 209 mmHg with every screw untouched, and 124 mmHg once its speed has been set again.',
    );
    expect(plain(altitudeFinding())).toContain('becomes 124 to 209 mmHg at 1500 m.');
    expect(plain(readingAtHeight(0).plotWords)).toContain('down to 173 mmHg');
  });

  test('above what is drawn nothing may be left: that is no example of ours', () => {
    expect(() => readingAtHeight(4000)).toThrow(RangeError);
    expect(() => readingAtHeight(NaN)).toThrow(/not-finite/u);
  });
});

describe('absolute and depression', () => {
  test('are one state, counted from two ends', () => {
    expect(plain(absoluteAndDepression(airAndIntakeExample).said)).toBe(
      '1015 hPa outside less 680 hPa in the intake: the gauge shows a depression of 335 hPa, which is 251 mmHg.',
    );
    expect(plain(absoluteAndDepression({ ambientHPa: 700, intakeHPa: 720 }).said)).toContain(
      'there is no depression',
    );
    expect(plain(depressionFinding())).toContain(
      '335 hPa on a day of 1015 hPa and 305 hPa on one of 985 hPa',
    );
  });

  test('are drawn on one scale', () => {
    const { bars, ambientX, intakeX } = pressureBarsOf(101_500, 68_000);
    expect(bars.map(({ toX }) => toX)).toEqual([intakeX, intakeX]);
    expect(bars[1]!.fromX).toBe(ambientX);
    expect(pressureBarsOf(70_000, 72_000).bars[1]!.toX).toBe(pressureBarsOf(70_000, 72_000).ambientX);
  });
});

describe('the room and the exhaust', () => {
  test('has the engine of the calculator, and is past the ceilings in no time', () => {
    const answered = answerExhaustGasInARoom(initialForm(exhaustGasInARoomFields));
    if (!answered.ok) throw new Error('the example of the calculator has a problem');
    const { carbonMonoxideLPerMin, given } = answered.answer.answer;
    const sealed = roomAndExhaust({ ...roomExample, volumeM3: given.volumeM3 });
    expect(sealed.curves.curves[0]!.points.at(-1)![1]).toBeCloseTo(answered.answer.answer.finalPpm, 6);
    expect(carbonMonoxideLPerMin).toBeGreaterThan(10);
    expect(plain(roomAndExhaust(roomExample).said)).toBe(
      'This sum has 4477 ppm after 20 min. It is past 200 ppm (NIOSH: ceiling at work) after 49 s. It is past 1200 ppm (NIOSH: immediately dangerous to life or health) after 5 min 2 s.',
    );
    expect(plain(roomFinding())).toContain('in 49 s with 0.5 changes of air an hour, and in 57 s with 20');
  });

  test('never says how long would do, and says what it does not know', () => {
    const airy = roomAndExhaust({ volumeM3: 300, airChangesPerHour: 30, carbonMonoxidePercent: 1 });
    expect(airy.minutes).toEqual([null, null]);
    expect(plain(airy.said)).toContain(
      'By this sum it never reaches 200 ppm (NIOSH: ceiling at work), which is no permission.',
    );
    for (const text of [airy.said, roomFinding(), roomAndExhaust(roomExample).said])
      expect(text).not.toMatch(/\b(?:safe|safely|harmless|allowed)\b/iu);
    expect(roomCaution).toMatch(/outdoors/u);
    expect(roomNotKnown.length).toBeGreaterThan(3);
  });

  test('no such room: that is no example of ours', () => {
    expect(() => roomAndExhaust({ ...roomExample, volumeM3: 0 })).toThrow(RangeError);
  });
});

describe('the mean or the two closest', () => {
  test('one that is far out: all four turned to the mean, two to the closest', () => {
    const shown = meanOrTwoClosest(fourthMmHgExample, 'closest-two');
    expect(shown.turned).toEqual({ mean: [1, 2, 3, 4], 'closest-two': [3, 4] });
    expect(plain(shown.said)).toBe(
      'To the mean, 234 mmHg, all four have to be turned. To the two closest, carburettors 1 and 2 at 250 mmHg, two have.',
    );
    expect(shown.rows[3]).toEqual({
      carburettor: '4',
      reading: '190',
      mean: '44 lower: close',
      'closest-two': '60 lower: close',
    });
    expect(shown.plot.marks.map(({ afterPa }) => afterPa === undefined)).toEqual([true, true, false, false]);
    expect(referenceFinding()).toContain('to the mean, all four have to be turned; to the two closest, two.');
  });

  test('counts none and one in words', () => {
    expect(plain(meanOrTwoClosest(250, 'mean').said)).toBe(
      'To the mean, 249 mmHg, none has to be turned. To the two closest, carburettors 1 and 4 at 251 mmHg, one has.',
    );
    expect(plain(meanOrTwoClosest(350, 'mean').rows[3]!.mean)).toBe('77 higher: open');
  });
});

describe('how the effect of a turn is learned', () => {
  test.each(effectsMmHg)('at %i mmHg a turn: the range narrows around it, turn by turn', (effectMmHg) => {
    const { learned, truePa } = learnedEffect(effectMmHg);
    expect(learned.length).toBe(learnedTurnsLimits.max + 1);
    for (const { lowPa, likelyPa, highPa } of learned) {
      expect(inside(truePa, [lowPa, highPa])).toBe(true);
      expect(likelyPa ** 2).toBeCloseTo(lowPa * highPa, 3);
    }
    const widths = learned.map(({ lowPa, highPa }) => highPa / lowPa);
    expect(widths).toEqual(widths.toSorted((a, b) => b - a));
    expect(widths.at(-1)).toBeLessThan(widths[0]! / 5);
  });

  test('is told in words, up to where no turn is needed any more', () => {
    expect(plain(learnedFinding())).toContain(
      'It starts at 43 to 454 mmHg a turn; one small turn that has been read narrows that to 62 to 150 mmHg.',
    );
    const { learned } = learnedEffect(140);
    expect(plain(learned[0]!.said)).toContain('Before any turn the effect is a guess, about 140 mmHg a turn');
    expect(plain(learned[1]!.said)).toContain('After one turn, the last of 1/4 turn,');
    expect(plain(learned.at(-1)!.said)).toContain('No turn is needed any more.');
    expect(plain(learned[1]!.plotWords)).toMatch(
      /^Believed effect of a turn: after 0, 43 to 454 mmHg; after 1, /u,
    );
  });

  test('each row has its place, also those that are still to come', () => {
    const effect = learnedEffect(70);
    const all = learnedRowsOf(effect, 5, 6);
    expect(all.rows).toHaveLength(6);
    for (const { lowX, highX } of all.rows)
      expect(inside(lowX, all.axisX) && inside(highX, all.axisX)).toBe(true);
    const first = learnedRowsOf(effect, 0, 6);
    expect([first.height, first.trueX, first.rows.length]).toEqual([all.height, all.trueX, 1]);
  });
});

describe('curves', () => {
  test.each([
    ['linear', readingAtHeight(heightMLimits.max).curves],
    ['logarithmic', roomAndExhaust({ volumeM3: 20, airChangesPerHour: 0, carbonMonoxidePercent: 8 }).curves],
  ] as const)('on a %s axis stay in their frame', (_, curves) => {
    const strip = curveStripOf(curves);
    const { frame } = strip;
    for (const { path, atY } of strip.curves) {
      expect(path).not.toMatch(/NaN|-|Infinity/u);
      if (atY !== null) expect(inside(atY, [frame.y, frame.y + frame.height])).toBe(true);
    }
    for (const { at } of strip.ticksX) expect(inside(at, [frame.x, frame.x + frame.width])).toBe(true);
    for (const { y } of strip.levels) expect(inside(y, [frame.y, frame.y + frame.height])).toBe(true);
    expect(strip.ticksY.length).toBeGreaterThan(2);
  });

  test('a scale that keeps still puts the tolerance where it is told', () => {
    for (const reference of references) {
      const { plot, levelsPa } = meanOrTwoClosest(200, reference);
      const low = stripOf({ ...plot, marks: plot.marks.slice(0, 1) });
      expect(stripOf(plot).bandMiddleX).toBe(low.bandMiddleX);
      expect(stripOf(plot).ticks).toEqual(low.ticks);
      expect(plot.middlePa).toBe(levelsPa[reference]);
    }
  });
});

test('an example of ours with a problem is our own mistake', () => {
  expect(certain(succeed(7))).toBe(7);
  expect(() => certain(fail({ kind: 'not-finite', field: 'x' }))).toThrow('not-finite');
});
