import { describe, expect, test } from 'vitest';
import {
  hexagonNut,
  isoSizes,
  numberedSizeInch,
  parseThread,
  regularNuts,
  screwAdvanceMm,
  screwThreads,
  tensileStressArea,
  thinNuts,
  threadDiameters,
  threadNamed,
  threadsOf,
  threadsPerInchOfPitchMm,
  threadSystems,
  threadTables,
} from '../../src/calculators/index.ts';
import { sources } from '../../src/content/sources.ts';

describe('threadTables', () => {
  test('holds every system once, with a source of the bibliography', () => {
    expect(threadTables.map(({ system }) => system)).toEqual(threadSystems);
    expect(threadTables.map(({ heading }) => heading.split(/, | /u).at(-1))).toEqual(
      'coarse fine UNC UNF BA BSF BSW'.split(' '),
    );
    for (const { source, threads, system } of threadTables) {
      expect(sources).toHaveProperty([source]);
      expect(threads).toEqual(threadsOf(system));
    }
  });

  test('164 threads, each with a name of its own', () => {
    expect(screwThreads).toHaveLength(164);
    expect(new Set(screwThreads.map(({ name }) => name)).size).toBe(164);
  });
});

test.each(screwThreads.map((thread) => [thread.name, thread] as const))(
  '%s is a sound thread, found by its name and read as it is written',
  (name, thread) => {
    const { diameterMm, pitchMm, threadsPerInch } = thread;
    expect(threadNamed(name)).toBe(thread);
    expect(parseThread(name)).toEqual({ ok: true, value: thread });
    expect(pitchMm / diameterMm).toBeGreaterThan(0.04);
    // The coarsest are #1 UNC with 0.21 and 16BA with 0.24.
    expect(pitchMm / diameterMm).toBeLessThan(0.28);
    if (threadsPerInch !== undefined)
      expect(threadsPerInchOfPitchMm(pitchMm)).toBeCloseTo(threadsPerInch, 10);
  },
);

test.each(isoSizes.map((size) => [`M${size.diameterMm}`, size] as const))(
  '%s: fine pitches are finer than the coarse one, from the coarsest down',
  (_, { coarsePitchMm, finePitchesMm }) => {
    const pitches = [coarsePitchMm ?? Infinity, ...finePitchesMm];
    expect(pitches.length).toBeGreaterThan(1);
    expect([...pitches].sort((a, b) => b - a)).toEqual(pitches);
    expect(new Set(pitches).size).toBe(pitches.length);
  },
);

test.each([
  threadsOf('unc'),
  threadsOf('unf'),
  threadsOf('ba').toReversed(),
  threadsOf('bsf'),
  threadsOf('bsw'),
])('in an inch series, and in BA, a larger screw never has a finer pitch: %#', (...threads) => {
  for (const [position, thread] of threads.entries()) {
    const next = threads[position + 1] ?? thread;
    expect(next.diameterMm).toBeGreaterThanOrEqual(thread.diameterMm);
    expect(next.pitchMm).toBeGreaterThanOrEqual(thread.pitchMm);
  }
});

describe('against printed tables', () => {
  /** A published table of British Association threads: diameter in millimetres, pitch in millimetres. */
  const publishedBa = [
    [6, 1],
    [5.3, 0.9],
    [4.7, 0.81],
    [4.1, 0.73],
    [3.6, 0.66],
    [3.2, 0.59],
    [2.8, 0.53],
    [2.5, 0.48],
    [2.2, 0.43],
    [1.9, 0.39],
    [1.7, 0.35],
    [1.5, 0.31],
    [1.3, 0.28],
    [1.2, 0.25],
    [1, 0.23],
    [0.9, 0.21],
    [0.79, 0.19],
  ] as const;
  test('the rule of BS 93 gives its 17 sizes', () => {
    expect(threadsOf('ba').map(({ diameterMm, pitchMm }) => [diameterMm, pitchMm])).toEqual(publishedBa);
  });

  /** Basic pitch diameters of internal Unified threads, inches, as a chart of ASME B1.1 prints them. */
  test.each([
    ['#0 UNF', 0.0519],
    ['#1 UNC', 0.0629],
    ['#1 UNF', 0.064],
    ['#2 UNC', 0.0744],
    ['#2 UNF', 0.0759],
    ['#3 UNC', 0.0855],
    ['5/8 UNC', 0.566],
    ['5/8 UNF', 0.5889],
  ])('%s has a pitch diameter of %d inch', (name, inch) => {
    const { diameterMm, pitchMm } = threadNamed(name) ?? { diameterMm: NaN, pitchMm: NaN };
    expect(threadDiameters(diameterMm, pitchMm).pitchDiameter / 25.4).toBeCloseTo(inch, 4);
  });

  test('numbered sizes: 0.060 inch and 0.013 inch a number', () => {
    expect([0, 4, 10, 12].map((number) => numberedSizeInch(number).toFixed(3))).toEqual([
      '0.060',
      '0.112',
      '0.190',
      '0.216',
    ]);
  });

  /** Nominal stress areas of ISO 898-1, square millimetres, three figures. */
  test.each([
    ['M3', 5.03],
    ['M3.5', 6.78],
    ['M4', 8.78],
    ['M6', 20.1],
    ['M7', 28.9],
    ['M10', 58],
    ['M12', 84.3],
    ['M16', 157],
    ['M20', 245],
  ])('%s has a stress area of %d mm²', (name, area) => {
    const { diameterMm, pitchMm } = threadNamed(name) ?? { diameterMm: NaN, pitchMm: NaN };
    expect(Number(tensileStressArea(diameterMm, pitchMm).toPrecision(3))).toBe(area);
  });
});

describe('parseThread', () => {
  test.each([
    ['m5', 'M5'],
    [' M 5 coarse ', 'M5'],
    ['M8 x 1.25', 'M8'],
    ['M10 X 1,25', 'M10x1.25'],
    ['m4,5×0,75 mm', 'M4.5'],
    ['M9x0.6', 'M9x0.6'],
    ['M5.25 x 0.5', 'M5.25x0.5'],
    ['M24x10', 'M24x10'],
    ['M8  x  1.25', 'M8'],
    ['# 10 unf', '#10 UNF'],
    ['#10-32 UNF', '#10 UNF'],
    ['1/4-20 UNC', '1/4 UNC'],
    ['1/4″ BSF', '1/4 BSF'],
    ['1 in UNC', '1 UNC'],
    ['3/16BSW', '3/16 BSW'],
    ['2 ba', '2BA'],
    ['BA 04', '4BA'],
    ['BA4', '4BA'],
  ])('“%s” is %s', (typed, name) => {
    expect(parseThread(typed)).toMatchObject({ ok: true, value: { name } });
  });

  test('a metric pair that no table holds is taken as it is written', () => {
    expect(parseThread('M9x0.6')).toEqual({
      ok: true,
      value: { system: 'iso-fine', name: 'M9x0.6', diameterMm: 9, pitchMm: 0.6 },
    });
  });

  test.each([
    '',
    'M5.2',
    'M5x0',
    'M5x6',
    'five',
    '#11 UNC',
    '#11-24 UNF',
    'M5x5',
    '11 UNC',
    '#10-24 UNF',
    '1 1/4 BSF',
    '17BA',
    '1/4',
    'xM5',
    'M5!',
    'x2BA',
    '2BAx',
    'a1/4 UNC',
    '1/4 UNCs',
  ])('“%s” is no thread', (typed) => {
    expect(parseThread(typed)).toMatchObject({ ok: false, problem: { kind: 'unknown-thread', typed } });
    expect(parseThread(typed, 'thread')).toMatchObject({ problem: { field: 'thread' } });
    expect(parseThread(typed)).not.toHaveProperty('problem.field');
  });
});

describe('hexagonNut', () => {
  test.each(regularNuts.map((nut, position) => [nut.size, nut, thinNuts[position]] as const))(
    '%s: the thin nut is lower, for the same spanner',
    (size, regular, thin) => {
      expect(hexagonNut('regular', size)).toBe(regular);
      expect(hexagonNut('thin', `${size}x0.5`)).toBe(thin);
      expect(thin?.size).toBe(size);
      expect(thin?.acrossFlatsMm).toBe(regular.acrossFlatsMm);
      expect(thin?.heightMaxMm).toBeLessThan(regular.heightMinMm);
      for (const nut of [regular, thin]) {
        expect(nut?.heightMinMm).toBeGreaterThan(0);
        expect(nut?.heightMinMm).toBeLessThan(nut?.heightMaxMm ?? 0);
      }
    },
  );

  test('there is none for an inch thread, nor for a size that the standards leave out', () => {
    expect(hexagonNut('thin', '1/4 UNF')).toBeUndefined();
    expect(hexagonNut('thin', 'M7')).toBeUndefined();
  });
});

test('screwAdvanceMm: pitch, times turns, times starts', () => {
  expect(screwAdvanceMm(0.8, 0.5)).toBe(0.4);
  expect(screwAdvanceMm(0.75, 2, 3)).toBe(4.5);
});
