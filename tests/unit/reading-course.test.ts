import { describe, expect, it } from 'vitest';
import { exampleSessions, nextStep, readingCourse } from '../../src/calculators/index.ts';
import { coursePlotOf } from '../../src/drawing/course-plot.ts';

const examples = Object.values(exampleSessions);

describe('readingCourse(setUp, events)', () => {
  it.each(examples)('$generation: every reading and every turn, once and in order', ({ setUp, events }) => {
    const course = readingCourse(setUp, events);
    if (!course.ok) throw new Error(course.problem.kind);
    const told = course.value.flatMap(({ turn, readings }) => [...(turn ? [turn] : []), ...readings]);
    expect(told).toEqual(events);
    expect(course.value[0]?.turn).toBeNull();
    expect(course.value.length).toBeGreaterThan(2);
  });

  it.each(examples)(
    '$generation: ends with what the advice knows, closer than it began',
    ({ setUp, events }) => {
      const course = readingCourse(setUp, events);
      const known = nextStep(setUp, events);
      if (!course.ok || !known.ok) throw new Error('an example that is not legal');
      expect(course.value.at(-1)?.depressionPa).toEqual(known.value.estimate.depressionPa);
      expect(course.value.at(-1)!.spreadPa).toBeLessThan(course.value[0]!.spreadPa / 5);
    },
  );

  it('every turn moves those that nobody turned, the other way', () => {
    const { setUp, events } = exampleSessions['all-adjustable'];
    const course = readingCourse(setUp, events);
    const [before, after] = course.ok ? course.value : [];
    expect(after?.turn).toMatchObject({ screw: 2 });
    expect(after?.turn?.turns).toBeLessThan(0);
    const change = after!.depressionPa.map((pascals, index) => pascals - before!.depressionPa[index]!);
    expect(change.map(Math.sign)).toEqual([-1, 1, -1, -1]);
  });

  it('says what is wrong with a session that is not legal', () => {
    const { setUp } = exampleSessions['all-adjustable'];
    expect(readingCourse(setUp, [{ kind: 'reading', carburettor: 9, depressionPa: 1 }])).toMatchObject({
      ok: false,
    });
  });
});

describe('coursePlotOf(moves)', () => {
  const moves = [
    { levels: [300, 340], readings: [{ carburettor: 1, level: 300 }, { carburettor: 2, level: 340 }] }, // prettier-ignore
    { levels: [330, 320], readings: [{ carburettor: 1, level: 332 }] },
    { levels: [325, 325], readings: [] },
  ];
  const plot = coursePlotOf(moves);

  it('has a line from move to move for each, and a mark for each reading', () => {
    expect(plot.lines.map(({ parts }) => parts.length)).toEqual([2, 2]);
    expect(plot.marks).toHaveLength(3);
    expect(plot.ticksX.map(({ label }) => label)).toEqual(['0', '1', '2']);
    expect(plot.lines[0]?.parts[0]?.x2).toBe(plot.lines[0]?.parts[1]?.x1);
  });

  it('puts higher readings higher, on one scale', () => {
    const [first, second, third] = plot.marks;
    expect((first!.y - third!.y) / (first!.y - second!.y)).toBeCloseTo(32 / 40, 2);
    for (const { y, x } of plot.marks) {
      expect(y).toBeGreaterThan(20);
      expect(y).toBeLessThan(plot.axisY);
      expect(x).toBeLessThan(plot.axisX2);
    }
  });

  it('draws a set that never moved', () => {
    const still = coursePlotOf([{ levels: [5, 5], readings: [] }]);
    expect(Number.isFinite(still.lines[0]!.labelY)).toBe(true);
    expect(still.ticksX).toHaveLength(1);
  });
});
