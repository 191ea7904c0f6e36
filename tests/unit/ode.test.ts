import { describe, expect, test } from 'vitest';
import { bisect, describeProblem, solveOde } from '../../src/calculators/index.ts';

const control = { absoluteError: 1e-12, relativeError: 1e-10, mostSteps: 10_000 };
const start = { time: 0, value: 1 };
const values = (solved: ReturnType<typeof solveOde>): readonly number[] => {
  if (!solved.ok) throw new Error(JSON.stringify(solved.problem));
  return solved.value;
};

describe('solveOde(slope, start, times, control)', () => {
  test('follows an exponential, and gives every time that was asked for', () => {
    const times = [0, 0.1, 0.5, 1, 1, 7];
    values(solveOde((_, y) => -y, start, times, control)).forEach((value, k) =>
      expect(value).toBeCloseTo(Math.exp(-times[k]!), 9),
    );
  });

  test('takes a slope that depends on time alone for what it is, exact to the fifth order', () => {
    expect(values(solveOde((t) => 5 * t ** 4, start, [2], control))[0]).toBeCloseTo(33, 9);
  });

  test('goes round: y = cos t has no slope of its own at 0', () => {
    expect(values(solveOde((t) => -Math.sin(t), start, [Math.PI], control))[0]).toBeCloseTo(-1, 9);
  });

  test('tightens its steps where the slope is steep', () => {
    expect(values(solveOde((_, y) => 1000 * (1 - y), { time: 0, value: 0 }, [1], control))[0]).toBeCloseTo(
      1,
      9,
    );
  });

  test('a smaller error allowed is a smaller error made', () => {
    const errorAt = (relativeError: number) =>
      Math.abs(
        values(solveOde((_, y) => y, start, [5], { ...control, relativeError }))[0]! / Math.exp(5) - 1,
      );
    expect(errorAt(1e-4)).toBeLessThan(1e-3);
    expect(errorAt(1e-10)).toBeLessThan(1e-9);
    expect(errorAt(1e-10)).toBeLessThan(errorAt(1e-4));
  });

  test('is of the fifth order: an error of 1e-5 of another takes ten times the steps', () => {
    // y = exp(sin t).
    const stepsFor = (error: number): number => {
      let calls = 0;
      const slope = (t: number, y: number): number => {
        calls += 1;
        return y * Math.cos(t);
      };
      values(solveOde(slope, start, [40], { absoluteError: 0, relativeError: error, mostSteps: 1e5 }));
      return calls / 6;
    };
    const [coarse, fine] = [stepsFor(1e-6), stepsFor(1e-11)];
    expect(fine / coarse).toBeGreaterThan(7);
    expect(fine / coarse).toBeLessThan(13);
    expect(coarse).toBeLessThan(400);
  });

  test('times that are asked for in between cost a step each and no more', () => {
    let calls = 0;
    const times = Array.from({ length: 500 }, (_, k) => (k + 1) / 100);
    const slope = (_: number, y: number): number => {
      calls += 1;
      return -y;
    };
    values(solveOde(slope, start, times, control)).forEach((value, k) =>
      expect(value).toBeCloseTo(Math.exp(-times[k]!), 9),
    );
    expect(calls / 6).toBeLessThan(510);
  });

  test('starts anywhere, and stays there where nothing is asked', () => {
    expect(values(solveOde((t) => 2 * t, { time: 3, value: 9 }, [5], control))[0]).toBeCloseTo(25, 9);
    expect(values(solveOde((_, y) => y, start, [], control))).toEqual([]);
  });

  test('gives up after its steps', () => {
    expect(solveOde((_, y) => -y, start, [1], { ...control, mostSteps: 3 })).toMatchObject({
      ok: false,
      problem: { kind: 'no-solution', steps: 3 },
    });
  });

  test('gives up before a pole, and where there is no slope', () => {
    const pole = solveOde((_, y) => y * y, start, [2], control);
    expect(pole).toMatchObject({ ok: false, problem: { kind: 'no-solution' } });
    if (!pole.ok && pole.problem.kind === 'no-solution') {
      expect(pole.problem.at).toBeCloseTo(1, 6);
      // Not because the steps were used up.
      expect(pole.problem.steps).toBeLessThan(control.mostSteps);
      expect(describeProblem(pole.problem)).toBe(
        'The sum came to no end at 1.00 minutes. Give less gas, or a shorter time.',
      );
    }
    expect(solveOde(() => NaN, start, [2], control)).toMatchObject({ problem: { at: 0 } });
  });
});

describe('bisect(rising, low, high)', () => {
  test('finds a root to the last digit', () => {
    expect(bisect((x) => x * x - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 15);
    expect(bisect((x) => x ** 3, -1, 2)).toBeLessThan(1e-100);
  });

  test('gives the end that the root is beyond', () => {
    expect(bisect(() => -1, 0, 1)).toBe(1);
    expect(bisect(() => 1, 0, 1)).toBeLessThanOrEqual(5e-324);
  });
});
