import { describe, expect, test } from 'vitest';
import { exampleSessions } from '../../src/calculators/example-sessions.ts';
import {
  compareSessions,
  describeSessionComparison,
  generations,
  isSameLinkage,
  type ComparedSession,
  type SessionComparison,
  type SessionEvent,
} from '../../src/calculators/index.ts';
import { mmHg } from '../engine/invented.ts';

const { setUp } = exampleSessions['all-adjustable'];
const read = (carburettor: number, depressionMmHg: number): SessionEvent => ({
  kind: 'reading',
  carburettor,
  depressionPa: depressionMmHg * mmHg,
});
const round = (...depressions: number[]): SessionEvent[] => depressions.map((value, i) => read(i + 1, value));
const turn = (screw: number, turns: number): SessionEvent => ({ kind: 'turn', screw, turns });
const session = (...events: SessionEvent[]): ComparedSession => ({ setUp, events });
const compared = (then: ComparedSession, now: ComparedSession): SessionComparison => {
  const result = compareSessions(then, now);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
};
const told = (then: ComparedSession, now: ComparedSession) =>
  describeSessionComparison(compared(then, now), now.setUp, 'mmHg', 'point');

const level = session(...round(250, 250, 250, 250));
const turned = session(
  ...round(250, 250, 190, 250),
  turn(3, -0.4),
  read(3, 250),
  read(1, 230),
  turn(1, 0.05),
);

describe('isSameLinkage(one, other)', () => {
  test('is true of two sessions of one engine, whatever thread is left', () => {
    const bare = { ...setUp, screws: setUp.screws.map(({ moves }) => ({ moves })) };
    expect(isSameLinkage(setUp, bare)).toBe(true);
  });

  test('is false of any two generations, and of another number', () => {
    for (const [k, generation] of generations.entries())
      for (const other of generations.slice(k + 1)) {
        const [a, b] = [exampleSessions[generation].setUp, exampleSessions[other].setUp];
        const alike = JSON.stringify(a.screws) === JSON.stringify(b.screws);
        expect(isSameLinkage(a, b), `${generation}, ${other}`).toBe(alike);
      }
    const three = { ...setUp, carburettors: 3 };
    expect(isSameLinkage(setUp, three)).toBe(false);
    expect(isSameLinkage(setUp, { ...setUp, screws: setUp.screws.slice(1) })).toBe(false);
    expect(isSameLinkage({ ...setUp, screws: setUp.screws.slice(1) }, setUp)).toBe(false);
  });
});

describe('compareSessions(then, now)', () => {
  test('the first difference of each is that from the mean of all before the first turn', () => {
    const { carburettors } = compared(level, turned);
    expect(carburettors).toHaveLength(4);
    const found = carburettors.map(({ foundNowPa }) => foundNowPa! / mmHg);
    // Read once each, so that the belief before the first reading still has a little weight.
    for (const [i, expected] of [15, 15, -45, 15].entries())
      expect(Math.abs(found[i]! - expected)).toBeLessThan(2);
    expect(found.reduce((sum, value) => sum + value)).toBeCloseTo(0, 9);
  });

  test('what moved is from the end of the first to the beginning of the second', () => {
    const { carburettors } = compared(level, turned);
    for (const { moved, foundNowPa, leftThenPa } of carburettors)
      expect(moved!.pa).toBeCloseTo(foundNowPa! - leftThenPa!, 6);
    expect(carburettors.map(({ moved }) => moved!.real)).toEqual([true, true, true, true]);
    expect(compared(level, level).carburettors.map(({ moved }) => moved!.real)).toEqual(
      new Array(4).fill(false),
    );
  });

  test('a session that did not read every carburettor before its first turn says nothing of what was found', () => {
    const { carburettors } = compared(
      level,
      session(read(1, 250), turn(1, 0.1), ...round(250, 250, 250, 250)),
    );
    expect(carburettors.map(({ foundNowPa, moved }) => [foundNowPa, moved])).toEqual(
      new Array(4).fill([null, null]),
    );
    expect(carburettors.every(({ leftNowPa }) => leftNowPa !== null)).toBe(true);
    const empty = compared(session(), level).carburettors[0]!;
    expect([empty.foundThenPa, empty.leftThenPa, empty.moved]).toEqual([null, null, null]);
    const unread = compared(level, session(read(1, 250))).carburettors[0]!;
    expect([unread.foundNowPa, unread.leftNowPa, unread.moved]).toEqual([null, null, null]);
  });

  test('turns of a screw are added; an effect is there where something was read after a turn of it', () => {
    const { screws, effect } = compared(turned, session(...turned.events, turn(3, 0.15)));
    expect(screws.map(({ turnsThen }) => turnsThen)).toEqual([0.05, 0, -0.4, 0]);
    expect(screws[2]!.turnsNow).toBeCloseTo(-0.25, 12);
    expect(screws.map(({ effectThen }) => effectThen !== null)).toEqual([false, false, true, false]);
    expect(effect!.changed).toBe(false);
    expect(compared(turned, level).effect).toBeNull();
    expect(compared(level, turned).effect).toBeNull();
    expect(compared(session(...level.events, turn(1, 0.1)), turned).effect).toBeNull();
  });

  test('each is worked out from its own readings: what it was told of a turn does not count', () => {
    const toldWrong = { ...turned, setUp: { ...setUp, effectPaPerTurn: 40 * mmHg } };
    expect(compared(turned, toldWrong)).toEqual(compared(turned, turned));
  });

  test('a turn that does half of what it did is a change', () => {
    const withEffect = (effectMmHg: number): ComparedSession => {
      const events = round(250, 250, 250, 250);
      for (let k = 0; k < 6; k++) {
        const sign = k % 2 === 0 ? 1 : -1;
        // The throttle hand takes back what the screw gives: the mean stays.
        events.push(turn(1, 0.3 * sign));
        const gap = sign > 0 ? 0.3 * effectMmHg : 0;
        events.push(...round(250 - gap * 0.75, 250 + gap / 4, 250 + gap / 4, 250 + gap / 4));
      }
      return session(...events);
    };
    const { effect } = compared(withEffect(160), withEffect(80));
    expect(effect!.changed).toBe(true);
    expect(effect!.now.highestPa).toBeLessThan(effect!.then.lowestPa);
    expect(compared(withEffect(160), withEffect(160)).effect!.changed).toBe(false);
  });

  test('a session that its own check refuses is a problem', () => {
    const wrong = session(read(9, 250));
    expect(compareSessions(level, wrong)).toMatchObject({ ok: false, problem: { kind: 'index' } });
    expect(compareSessions(wrong, level)).toMatchObject({ ok: false, problem: { kind: 'index' } });
  });
});

describe('describeSessionComparison(comparison, setUp, unit, mark)', () => {
  test('writes differences with their sign, and what is not known as a dash', () => {
    const words = told(level, turned);
    expect(words.unit).toBe('mmHg');
    expect(words.carburettors.map(({ name }) => name)).toEqual(['1', '2', '3', '4']);
    expect(words.carburettors[2]).toMatchObject({
      found: { then: '0', now: expect.stringMatching(/^−4\d$/u) as string },
      left: { then: '0' },
      moved: expect.stringMatching(/^−4\d ± \d+$/u) as string,
    });
    expect(words.carburettors[0]!.found.now).toMatch(/^\+1\d$/u);
    expect(words.screws.map(({ name }) => name)).toEqual(['1', '2', '3', '4']);
    expect(words.screws.map(({ turns }) => turns.now)).toEqual(['+1/20', '0', '−2/5', '0']);
    expect(words.screws[2]!.effect).toEqual({
      then: '–',
      now: expect.stringMatching(/^\d+ \(\d+–\d+\)$/u) as string,
    });
  });

  test('a screw between neighbours is called by those that it moves; the mark is the reader’s', () => {
    const pairs = exampleSessions['paired-screws'];
    const inBar = { ...pairs.setUp, gauge: { resolutionPa: 10, flutterPa: 100 } };
    const one = { setUp: inBar, events: pairs.events };
    const words = describeSessionComparison(compared(one, one), inBar, 'hPa', 'comma');
    expect(words.screws.map(({ name }) => name)).toContain('3 and 4');
    expect(words.unit).toBe('hPa');
    expect(words.carburettors[0]!.found.now).toMatch(/^[+−]\d+,\d$/u);
  });

  test.each<[string, ComparedSession, ComparedSession, RegExp, RegExp]>([
    ['nothing', level, level, /^Between the two nothing moved/u, /^One of them turned no screw/u],
    [
      'one',
      level,
      session(...round(250, 250, 214, 250), ...round(250, 250, 214, 250)),
      /^Between the two, carburettors 1, 2, 3 and 4 moved .*: \+9\smmHg, \+9\smmHg, −27\smmHg, \+9\smmHg against/u,
      /^One of them/u,
    ],
    [
      'not known',
      session(read(1, 250)),
      turned,
      /^What moved between the two is not known/u,
      /^One of them/u,
    ],
    [
      'a turn',
      turned,
      turned,
      /^Between the two/u,
      /^One turn of a screw did about \d+ \(\d+–\d+\)\smmHg then, and .* no more than chance\.$/u,
    ],
  ])('says in sentences what moved and what a turn did: %s', (_, then, now, moved, effect) => {
    const { sentences } = told(then, now);
    expect(sentences).toHaveLength(2);
    expect(sentences[0]).toMatch(moved);
    expect(sentences[1]).toMatch(effect);
  });

  test('one that moved alone, and an effect that changed', () => {
    const known = { pa: -30 * mmHg, widthPa: 5 * mmHg, real: true };
    const none = { pa: 2 * mmHg, widthPa: 5 * mmHg, real: false };
    const carburettor = { foundThenPa: 0, leftThenPa: 0, foundNowPa: 0, leftNowPa: 0 };
    const range = (value: number) => ({
      paPerTurn: value * mmHg,
      lowestPa: (value - 10) * mmHg,
      highestPa: (value + 10) * mmHg,
    });
    const { sentences } = describeSessionComparison(
      {
        carburettors: [none, known, none, none].map((moved) => ({ ...carburettor, moved })),
        screws: [],
        effect: { then: range(140), now: range(70), changed: true },
      },
      setUp,
      'mmHg',
      'point',
    );
    expect(sentences).toEqual([
      'Between the two, carburettor\u00a02 moved by more than the readings can tell: −30\u00a0mmHg against the mean of all.',
      'One turn of a screw did about 140 (130–150)\u00a0mmHg then, and 70 (60–80) now. That is more than chance: a screw was changed, a thread is worn, or the throttles are dirty.',
    ]);
  });
});
