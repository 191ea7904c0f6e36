import { describe, expect, test } from 'vitest';
import { hardshipWords, study, studySchema } from '../../src/content/study.ts';
import { studyPlotOf } from '../../src/drawing/study-plot.ts';
import { cells, type Cell } from '../../study/cells.ts';
import { handPractices } from '../../study/hand-practice.ts';
import { runCell } from '../../study/run-cell.ts';
import { seedOf } from '../../study/seeds.ts';
import { bandsTogether, quantile } from '../../study/summary.ts';

const cellOf = (method: Cell['method'], generation: Cell['generation'], carburettors: number): Cell =>
  cells.find(
    (cell) =>
      cell.hardship === 'plain' &&
      cell.method === method &&
      cell.generation === generation &&
      cell.carburettors === carburettors,
  )!;

describe('runCell(cell, engines, seed)', () => {
  test.each(handPractices)('%s ends on every generation, mostly done and within', (practice) => {
    for (const generation of [
      'separate-cables',
      'all-adjustable',
      'fixed-reference',
      'paired-screws',
      'bypass-screws',
    ] as const) {
      const summary = runCell(cellOf(practice, generation, 4), 12, 7);
      expect(summary.calledDone + summary.stoppedForVisits).toBe(12);
      expect(summary.calledDone).toBeGreaterThanOrEqual(10);
      expect(summary.calledDone - summary.wronglyCalledDone).toBeGreaterThanOrEqual(8);
      // Two rounds at the end, and at least one before them.
      expect(summary.visits.median).toBeGreaterThanOrEqual(12);
    }
  });

  test('gives the same for the same seed, and something else for another', () => {
    for (const method of ['advice', 'watch'] as const) {
      const cell = cellOf(method, 'all-adjustable', 3);
      expect(runCell(cell, 8, 5)).toEqual(runCell(cell, 8, 5));
      expect(runCell(cell, 8, 6)).not.toEqual(runCell(cell, 8, 5));
    }
  });

  test('every engine has a seed of its own', () => {
    const seeds = cells.flatMap(({ hardship, generation, carburettors }) =>
      Array.from({ length: 20 }, (_, k) => seedOf(1, `${hardship}/${generation}/${carburettors}`, k)),
    );
    const places = new Set(cells.map((cell) => `${cell.hardship}/${cell.generation}/${cell.carburettors}`));
    expect(new Set(seeds).size).toBe(20 * places.size);
  });

  test('a stated chance of 0.9 and more is true nine times in ten', () => {
    const summaries = [
      cellOf('advice', 'all-adjustable', 2),
      cellOf('advice', 'fixed-reference', 3),
      cellOf('advice', 'all-adjustable', 4),
      cellOf('advice', 'paired-screws', 4),
    ].map((cell) => runCell(cell, 60, 8));
    const bands = bandsTogether(summaries);
    const surest = bands.at(-1)!;
    const sure = bands.at(-2)!;
    expect(surest.claims).toBeGreaterThanOrEqual(240);
    expect(surest.share).toBeGreaterThanOrEqual(0.9);
    expect(sure.share).toBeGreaterThanOrEqual(0.78);
  });
});

describe('quantile(values, share)', () => {
  test.each([
    [[4, 1, 3, 2], 0.5, 2],
    [[4, 1, 3, 2], 0.95, 4],
    [[7], 0.5, 7],
    [[], 0.5, 0],
  ])('%j at %d: %d', (values, share, expected) => expect(quantile(values, share)).toBe(expected));
});

describe('the committed study', () => {
  test('fits its schema, and another does not', () => {
    expect(studySchema.safeParse(study).success).toBe(true);
    expect(studySchema.safeParse({ ...study, engines: 0 }).success).toBe(false);
    expect(studySchema.safeParse({ ...study, more: 1 }).success).toBe(false);
  });

  test('holds every cell with the engines and the seed of its command', () => {
    expect(study.command).toBe(`npm run study -- --engines ${study.engines} --seed ${study.seed}`);
    expect(
      study.cells.map(({ method, generation, carburettors, hardship, tolerancePa, engines }) => ({
        method,
        generation,
        carburettors,
        hardship,
        tolerancePa,
        engines,
      })),
    ).toEqual(
      cells.map(({ method, generation, carburettors, hardship, tolerancePa }) => ({
        method,
        generation,
        carburettors,
        hardship,
        tolerancePa,
        engines: study.engines,
      })),
    );
  });

  test.each([
    ['advice', 'all-adjustable', 2],
    ['proportional', 'fixed-reference', 2],
  ] as const)('is what the study computes: %s, %s, %d', (method, generation, carburettors) => {
    const cell = cellOf(method, generation, carburettors);
    const { claimBands: _, ...summary } = runCell(cell, study.engines, study.seed);
    expect(study.cells[cells.indexOf(cell)]).toEqual(summary);
  });

  test('has counts that belong together', () => {
    for (const cell of study.cells) {
      expect(cell.calledDone + cell.stoppedForThread + cell.stoppedForVisits).toBe(cell.engines);
      expect(cell.wronglyCalledDone).toBeLessThanOrEqual(cell.calledDone);
      expect(cell.visits.most95).toBeGreaterThanOrEqual(cell.visits.median);
    }
    for (const { claims, within } of study.calibration) expect(within).toBeLessThanOrEqual(claims);
  });

  test('has words for every hardship', () => {
    const named = new Set(study.cells.map(({ hardship }) => hardship));
    named.delete('plain');
    expect(Object.keys(hardshipWords).sort()).toEqual([...named].sort());
  });

  test('bears out the answer of its page', () => {
    const plain = study.cells.filter(({ hardship }) => hardship === 'plain');
    const pairs = plain
      .filter(({ method }) => method === 'advice')
      .flatMap((advice) =>
        plain
          .filter(
            ({ method, generation, carburettors }) =>
              method !== 'advice' && generation === advice.generation && carburettors === advice.carburettors,
          )
          .map((hand) => ({ advice, hand })),
      );
    expect(pairs).toHaveLength(3 * plain.filter(({ method }) => method === 'advice').length);
    for (const { advice, hand } of pairs)
      expect(advice.visits.median / hand.visits.median).toBeLessThanOrEqual(0.45);
    const wrongOf = (isAdvice: boolean): number => {
      const four = plain.filter(
        ({ method, carburettors }) => carburettors >= 4 && (method === 'advice') === isAdvice,
      );
      const done = four.reduce((sum, { calledDone }) => sum + calledDone, 0);
      return four.reduce((sum, { wronglyCalledDone }) => sum + wronglyCalledDone, 0) / done;
    };
    expect(wrongOf(true)).toBeLessThan(wrongOf(false));
  });
});

describe('studyPlotOf(groups)', () => {
  const mark = (median: number, most95: number) => ({
    name: 'a',
    median,
    most95,
    note: '1 %',
    first: false,
  });
  const plot = studyPlotOf([
    { name: 'two', marks: [mark(10, 20), mark(40, 80)] },
    { name: 'three', marks: [mark(0, 100)] },
  ]);

  test('puts looks on one scale from 0', () => {
    const [first, second, third] = plot.rows;
    const width = plot.axisX2 - plot.axisX1;
    expect(third!.x1).toBe(plot.axisX1);
    expect(third!.x2).toBe(plot.axisX2);
    expect(first!.x1).toBeCloseTo(plot.axisX1 + 0.1 * width, 2);
    expect(second!.x2).toBeCloseTo(plot.axisX1 + 0.8 * width, 2);
  });

  test('sets the rows below each other and the axis below them all', () => {
    const places = plot.rows.map(({ y }) => y);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(new Set(places).size).toBe(3);
    expect(plot.axisY).toBeGreaterThan(Math.max(...places));
    expect(plot.height).toBeGreaterThan(plot.axisY);
    expect(plot.groups[1]!.y).toBeGreaterThan(places[1]!);
    expect(plot.ticks.map(({ label }) => label)).toEqual(['0', '50', '100']);
  });
});
