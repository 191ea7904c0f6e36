import { describe, expect, test } from 'vitest';
import {
  answerThreadTravelBudget,
  initialForm,
  threadTravelBudgetFields,
} from '../../src/calculators/index.ts';
import type { TravelMark } from '../../src/calculators/index.ts';
import { travelStripOf } from '../../src/drawing/thread-travel-strip.ts';

const mark = (part: Partial<TravelMark>): TravelMark => ({
  adjuster: 1,
  closing: 2,
  opening: 2,
  planned: 0,
  shifted: null,
  ...part,
});

describe('travelStripOf', () => {
  test('closing is left of now, opening is right of it, at one scale for all', () => {
    const { nowX, rows } = travelStripOf([
      mark({}),
      mark({ adjuster: 2, closing: 1, opening: 3, planned: 1 }),
    ]);
    const [first, second] = rows;
    if (first === undefined || second === undefined) throw new Error('two rows for two marks');
    expect(first.endX[0]).toBeLessThan(nowX);
    expect(first.plannedX).toBe(nowX);
    const turn = second.plannedX - nowX;
    expect(first.endX[1] - nowX).toBeCloseTo(2 * turn, 1);
    expect(second.endX[1] - nowX).toBeCloseTo(3 * turn, 1);
    expect(nowX - second.endX[0]).toBeCloseTo(turn, 1);
    expect(second.y).toBeGreaterThan(first.y);
  });

  test('a plan beyond an end is marked, and stays inside the drawing', () => {
    const { axisX, rows } = travelStripOf([
      mark({ planned: 5 }),
      mark({ adjuster: 2, planned: -6 }),
      mark({ adjuster: 3, planned: 2 }),
    ]);
    expect(rows.map(({ beyond }) => beyond)).toEqual([true, true, false]);
    for (const { plannedX } of rows) {
      expect(plannedX).toBeGreaterThan(axisX[0]);
      expect(plannedX).toBeLessThan(axisX[1]);
    }
  });

  test('the place after the common move, where there is one', () => {
    expect(travelStripOf([mark({})]).rows[0]?.shiftedX).toBeNull();
    const { nowX, rows } = travelStripOf([mark({ adjuster: null, shifted: 0.5 })]);
    expect(rows[0]).toMatchObject({ adjuster: null });
    expect(rows[0]?.shiftedX).toBeGreaterThan(nowX);
  });

  test('no thread at all still has a scale of a turn each way', () => {
    const { ticks, height, axisY } = travelStripOf([mark({ closing: 0, opening: 0 })]);
    expect(ticks.map(({ label }) => label)).toEqual(['−1', '−0.5', '0', '0.5', '1']);
    expect(height).toBeGreaterThan(axisY);
  });

  test('of the worked example: five screws, ticks in whole turns', () => {
    const answer = answerThreadTravelBudget(initialForm(threadTravelBudgetFields));
    if (!answer.ok) throw new Error('the worked example has an answer');
    const strip = travelStripOf(answer.answer.marks);
    expect(strip.rows.map(({ adjuster }) => adjuster)).toEqual([1, 2, 3, 4, null]);
    expect(strip.ticks.map(({ label }) => label)).toEqual(['−4', '−2', '0', '2', '4']);
  });
});
