import { describe, expect, test } from 'vitest';
import { generations, screwsOf } from '../../src/calculators/linkage.ts';
import type { Generation, LinkageOptions } from '../../src/calculators/linkage.ts';

const columns = (generation: Generation, carburettors: number, options?: LinkageOptions) => {
  const result = screwsOf(generation, carburettors, options);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value.map((screw) => screw.moves.join(''));
};

const problem = (generation: Generation, carburettors: number, options?: LinkageOptions) => {
  const result = screwsOf(generation, carburettors, options);
  return result.ok ? undefined : result.problem;
};

test('generations lists five linkages', () => {
  expect(generations).toEqual([
    'separate-cables',
    'all-adjustable',
    'fixed-reference',
    'paired-screws',
    'bypass-screws',
  ]);
});

describe('screwsOf(generation, carburettors) gives one column a screw', () => {
  test.each(['separate-cables', 'all-adjustable', 'bypass-screws'] as const)(
    '%s: the identity',
    (generation) => {
      expect(columns(generation, 2)).toEqual(['10', '01']);
      expect(columns(generation, 4)).toEqual(['1000', '0100', '0010', '0001']);
      expect(columns(generation, 8)).toHaveLength(8);
    },
  );

  test('separate-cables and all-adjustable have a screw on every carburettor, whatever `fixed` says', () => {
    expect(columns('separate-cables', 3, { fixed: 2 })).toEqual(['100', '010', '001']);
    expect(columns('all-adjustable', 3, { fixed: 2 })).toEqual(['100', '010', '001']);
  });

  test.each(['fixed-reference', 'bypass-screws'] as const)(
    '%s: the identity without column `fixed`',
    (generation) => {
      expect(columns(generation, 4, { fixed: 1 })).toEqual(['0100', '0010', '0001']);
      expect(columns(generation, 4, { fixed: 2 })).toEqual(['1000', '0010', '0001']);
      expect(columns(generation, 4, { fixed: 4 })).toEqual(['1000', '0100', '0010']);
      expect(columns(generation, 2, { fixed: 2 })).toEqual(['10']);
    },
  );

  test('paired-screws: the usual groups of two, three, four and six', () => {
    expect(columns('paired-screws', 2)).toEqual(['10']);
    expect(columns('paired-screws', 3)).toEqual(['100', '001']);
    expect(columns('paired-screws', 4)).toEqual(['1000', '0001', '0011']);
    expect(columns('paired-screws', 6)).toEqual(['100000', '001000', '000001', '110000', '000011']);
  });

  test('paired-screws: groups that are told replace the usual ones', () => {
    expect(columns('paired-screws', 4, { groups: [[1, 2], [1], [3]] })).toEqual(['1100', '1000', '0010']);
    expect(columns('paired-screws', 5, { groups: [[1], [2], [4], [5]] })).toEqual([
      '10000',
      '01000',
      '00010',
      '00001',
    ]);
  });
});

describe('screwsOf(…, { thread }) gives the thread in the order of the screws', () => {
  test('fixed-reference: three screws of four carburettors', () => {
    const thread = [{ closing: 1, opening: 2 }, null, { closing: 0, opening: 3.5 }];
    expect(screwsOf('fixed-reference', 4, { fixed: 2, thread })).toEqual({
      ok: true,
      value: [
        { moves: [1, 0, 0, 0], turnsLeft: { closing: 1, opening: 2 } },
        { moves: [0, 0, 1, 0] },
        { moves: [0, 0, 0, 1], turnsLeft: { closing: 0, opening: 3.5 } },
      ],
    });
  });

  test('the result is plain JSON', () => {
    const result = screwsOf('paired-screws', 4, { thread: [null, null, { closing: 1, opening: 1 }] });
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });
});

describe('screwsOf(…) names what is wrong', () => {
  const limit = { min: 2, max: 8 };
  test.each([0, 1, 9, 3.5, -4, NaN, Infinity])('carburettor-count: %d carburettors', (value) => {
    for (const generation of generations) {
      expect(problem(generation, value, { fixed: 1 })).toEqual({ kind: 'carburettor-count', value, limit });
    }
  });

  test('fixed-needed: fixed-reference alone needs `fixed`', () => {
    expect(problem('fixed-reference', 4)).toEqual({ kind: 'fixed-needed' });
    expect(problem('bypass-screws', 4)).toBeUndefined();
  });

  test.each([5, 7, 8])('groups-needed: paired screws of %d carburettors', (value) => {
    expect(problem('paired-screws', value)).toEqual({ kind: 'groups-needed', value });
  });

  test.each([0, 5, -1, 1.5, NaN])('index: carburettor %d of four', (value) => {
    const index = { kind: 'index', value, limit: { min: 1, max: 4 } };
    expect(problem('fixed-reference', 4, { fixed: value })).toEqual({ ...index, field: 'fixed' });
    expect(problem('bypass-screws', 4, { fixed: value })).toEqual({ ...index, field: 'fixed' });
    expect(problem('paired-screws', 4, { groups: [[1], [2, value]] })).toEqual({
      ...index,
      field: 'groups.1',
    });
  });

  test('no-screws and column-length: empty groups', () => {
    expect(problem('paired-screws', 4, { groups: [] })).toEqual({ kind: 'no-screws' });
    expect(problem('paired-screws', 4, { groups: [[1], []] })).toEqual({
      kind: 'column-length',
      field: 'groups.1',
      value: 0,
      limit: { min: 1, max: 4 },
    });
  });

  test('column-length: thread of another number than the screws', () => {
    const limitOfThree = { kind: 'column-length', field: 'thread', limit: { min: 3, max: 3 } };
    expect(problem('fixed-reference', 4, { fixed: 1, thread: [null, null, null, null] })).toEqual({
      ...limitOfThree,
      value: 4,
    });
    expect(problem('paired-screws', 4, { thread: [] })).toEqual({ ...limitOfThree, value: 0 });
  });

  test('not-finite and out-of-range: thread', () => {
    const side = (closing: number, opening: number) =>
      problem('all-adjustable', 2, { thread: [null, { closing, opening }] });
    expect(side(NaN, 1)).toEqual({ kind: 'not-finite', field: 'thread.1.closing' });
    expect(side(1, Infinity)).toEqual({ kind: 'not-finite', field: 'thread.1.opening' });
    expect(side(1, -0.1)).toEqual({
      kind: 'out-of-range',
      field: 'thread.1.opening',
      value: -0.1,
      limit: { min: 0 },
    });
    expect(side(0, 0)).toBeUndefined();
  });
});
