import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { atMost, everyFrame, watchReducedMotion, whenIdle } from '../../src/device/animation.ts';
import type { Frame } from '../../src/device/animation.ts';
import { drawSeed } from '../../src/device/draw-seed.ts';
import { readReachedLessons, writeReachedLesson } from '../../src/device/reached-lessons.ts';

/** A screen whose frames the test draws. */
class Screen extends EventTarget {
  visibilityState = 'visible';
  waiting = new Map<number, (nowMs: number) => void>();
  private last = 0;
  request = (draw: (nowMs: number) => void): number => {
    this.last += 1;
    this.waiting.set(this.last, draw);
    return this.last;
  };
  cancel = (request: number): void => void this.waiting.delete(request);
  drawAt(nowMs: number): void {
    const all = [...this.waiting.values()];
    this.waiting.clear();
    for (const draw of all) draw(nowMs);
  }
  show(state: string): void {
    this.visibilityState = state;
    this.dispatchEvent(new Event('visibilitychange'));
  }
}

let screen: Screen;
beforeEach(() => {
  screen = new Screen();
  vi.stubGlobal('document', screen);
  vi.stubGlobal('requestAnimationFrame', screen.request);
  vi.stubGlobal('cancelAnimationFrame', screen.cancel);
});
afterEach(() => vi.unstubAllGlobals());

describe('frames', () => {
  const frames: Frame[] = [];
  beforeEach(() => frames.splice(0));
  const elapsed = () => frames.map(({ elapsedSeconds }) => elapsedSeconds);

  test('tell what passed since the last, at most a tenth of a second', () => {
    const stop = everyFrame((frame) => frames.push(frame));
    for (const now of [1000, 1016, 1032, 3000]) screen.drawAt(now);
    expect(elapsed()).toEqual([0, 0.016, 0.016, 0.1]);
    expect(frames[3]!.nowSeconds).toBe(3);
    stop();
    screen.drawAt(3016);
    expect(frames).toHaveLength(4);
    expect(screen.waiting.size).toBe(0);
  });

  test('hidden, none is drawn, and the time away does not count', () => {
    const stop = everyFrame((frame) => frames.push(frame));
    screen.drawAt(1000);
    screen.show('hidden');
    expect(screen.waiting.size).toBe(0);
    screen.show('visible');
    screen.drawAt(9000);
    screen.drawAt(9016);
    expect(elapsed()).toEqual([0, 0, 0.016]);
    stop();
    screen.show('visible');
    expect(screen.waiting.size).toBe(0);
  });
});

test('at most so many times a second', () => {
  const isDue = atMost(5);
  expect([0, 0.1, 0.25, 0.3, 0.46].map(isDue)).toEqual([true, false, true, false, true]);
});

test('reduced motion is told now and when it changes', () => {
  const query = Object.assign(new EventTarget(), { matches: false });
  vi.stubGlobal('matchMedia', () => query);
  const told: boolean[] = [];
  const stop = watchReducedMotion((wanted) => told.push(wanted));
  query.matches = true;
  query.dispatchEvent(new Event('change'));
  stop();
  query.dispatchEvent(new Event('change'));
  expect(told).toEqual([false, true]);
});

test('idle work is done soon, and can be called off, with and without the browser’s help', () => {
  vi.useFakeTimers();
  const work = vi.fn();
  whenIdle(work);
  whenIdle(work)();
  vi.runAllTimers();
  expect(work).toHaveBeenCalledTimes(1);
  vi.useRealTimers();
  const cancel = vi.fn();
  vi.stubGlobal('requestIdleCallback', (now: () => void) => (now(), 7));
  vi.stubGlobal('cancelIdleCallback', cancel);
  whenIdle(work)();
  expect(work).toHaveBeenCalledTimes(2);
  expect(cancel).toHaveBeenCalledWith(7);
});

test('a drawn number is whole and within its limit', () => {
  const drawn = Array.from({ length: 200 }, () => Number(drawSeed(9)));
  expect(drawn.every((each) => Number.isInteger(each) && each >= 0 && each <= 9)).toBe(true);
  expect(new Set(drawn).size).toBeGreaterThan(5);
});

test('lessons that were reached are kept, in their order, and only known ones', () => {
  expect(readReachedLessons()).toEqual([]);
  writeReachedLesson('lock-nut');
  writeReachedLesson('see-saw');
  writeReachedLesson('lock-nut');
  expect(readReachedLessons()).toEqual(['see-saw', 'lock-nut']);
});
