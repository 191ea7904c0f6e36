import { describe, expect, test } from 'vitest';
import {
  carryCovariance,
  choleskyFactor,
  leastSquares,
  symmetric,
  symmetricEigen,
  times,
  timesVector,
  transpose,
  type Matrix,
} from '../../src/calculators/advisor/matrix.ts';
import { seededRandom } from '../seeded-random.ts';
import { tolerances } from '../tolerances.ts';

const close = (computed: Matrix, expected: Matrix): void => {
  expect(computed.map((row) => row.length)).toEqual(expected.map((row) => row.length));
  computed.forEach((row, i) =>
    row.forEach((value, j) =>
      expect(Math.abs(value - expected[i]![j]!)).toBeLessThanOrEqual(tolerances.smallMatrix.absolute),
    ),
  );
};

/** Solved by hand in whole numbers: the rows of L are (2), (6, 1), (−8, 5, 3). */
const whole = [
  [4, 12, -16],
  [12, 37, -43],
  [-16, -43, 98],
];

describe('choleskyFactor(a)', () => {
  test('of a positive definite matrix solved by hand', () => {
    close(choleskyFactor(whole), [
      [2, 0, 0],
      [6, 1, 0],
      [-8, 5, 3],
    ]);
  });

  test('of a semi-definite matrix: the direction that is known exactly has no entries', () => {
    const factor = choleskyFactor([
      [1, 1, 2],
      [1, 1, 2],
      [2, 2, 5],
    ]);
    close(factor, [
      [1, 0, 0],
      [1, 0, 0],
      [2, 0, 1],
    ]);
    close(
      choleskyFactor([
        [0, 0],
        [0, 4],
      ]),
      [
        [0, 0],
        [0, 2],
      ],
    );
  });

  test('times its transpose is the matrix, for twenty random ones', () => {
    const random = seededRandom(7);
    for (let k = 0; k < 20; k++) {
      const root = Array.from({ length: 8 }, () => Array.from({ length: 8 }, () => random() - 0.5));
      const matrix = times(root, transpose(root));
      const factor = choleskyFactor(matrix);
      close(times(factor, transpose(factor)), matrix);
    }
  });
});

describe('symmetricEigen(a)', () => {
  const sorted = (matrix: Matrix): number[] => [...symmetricEigen(matrix).values].sort((a, b) => a - b);

  test('2 × 2, by hand: (2 1; 1 2) has 1 and 3', () => {
    close(
      [
        sorted([
          [2, 1],
          [1, 2],
        ]),
      ],
      [[1, 3]],
    );
  });

  test('second differences of length 4, by hand: 2 − 2 cos(kπ/5), with sines as vectors', () => {
    const matrix = [
      [2, -1, 0, 0],
      [-1, 2, -1, 0],
      [0, -1, 2, -1],
      [0, 0, -1, 2],
    ];
    close([sorted(matrix)], [[1, 2, 3, 4].map((k) => 2 - 2 * Math.cos((k * Math.PI) / 5))]);
  });

  test('the hard case of J. B. Rosser, C. Lanczos, M. R. Hestenes and W. Karush, Separation of close eigenvalues of a real symmetric matrix, 1951: one zero, two equal, three close', () => {
    const matrix = [
      [611, 196, -192, 407, -8, -52, -49, 29],
      [196, 899, 113, -192, -71, -43, -8, -44],
      [-192, 113, 899, 196, 61, 49, 8, 52],
      [407, -192, 196, 611, 8, 44, 59, -23],
      [-8, -71, 61, 8, 411, -599, 208, 208],
      [-52, -43, 49, 44, -599, 411, 208, 208],
      [-49, -8, 8, 59, 208, 208, 99, -911],
      [29, -44, 52, -23, 208, 208, -911, 99],
    ];
    const [outer, inner] = [10 * Math.sqrt(10405), 100 * Math.sqrt(26)];
    const expected = [-outer, 0, 510 - inner, 1000, 1000, 510 + inner, 1020, outer];
    sorted(matrix).forEach((value, k) =>
      expect(Math.abs(value - expected[k]!)).toBeLessThanOrEqual(tolerances.largeMatrix.absolute),
    );
  });

  test('the columns are orthonormal and a v is λ v', () => {
    const { values, vectors } = symmetricEigen(whole);
    close(times(transpose(vectors), vectors), [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ]);
    const product = times(whole, vectors);
    product.forEach((row, i) =>
      row.forEach((value, k) =>
        expect(Math.abs(value - values[k]! * vectors[i]![k]!)).toBeLessThanOrEqual(
          tolerances.largeMatrix.absolute,
        ),
      ),
    );
    // Trace and determinant, by hand: 139 and (2 · 1 · 3)².
    expect(values.reduce((sum, value) => sum + value, 0)).toBeCloseTo(139, 10);
    expect(values.reduce((product_, value) => product_ * value, 1)).toBeCloseTo(36, 8);
  });
});

describe('leastSquares(a, b)', () => {
  test('solves a square system, by hand', () => {
    close(
      [
        leastSquares(
          [
            [2, 1],
            [1, 3],
          ],
          [5, 10],
        ),
      ],
      [[1, 3]],
    );
  });

  test('the line through (0, 6), (1, 0), (2, 0): 5 − 3t (G. Strang, Introduction to Linear Algebra, chapter on orthogonality; from memory)', () => {
    close(
      [
        leastSquares(
          [
            [1, 0],
            [1, 1],
            [1, 2],
          ],
          [6, 0, 0],
        ),
      ],
      [[5, -3]],
    );
  });

  test('the shortest of many solutions, by hand', () => {
    close([leastSquares([[1, 1]], [2])], [[1, 1]]);
    close([leastSquares([[3, 4]], [25])], [[3, 4]]);
  });

  test('the shortest of the closest where the columns depend on each other, by hand', () => {
    // Mean of 1 and 3 is 2 = x + y; the shortest is x = y = 1.
    close(
      [
        leastSquares(
          [
            [1, 1],
            [1, 1],
          ],
          [1, 3],
        ),
      ],
      [[1, 1]],
    );
    // The third column is the sum of the others.
    close(
      [
        leastSquares(
          [
            [1, 0, 1],
            [0, 1, 1],
          ],
          [3, 0],
        ),
      ],
      [[2, -1, 1]],
    );
  });

  test('nothing where there is nothing to turn', () => {
    expect(
      leastSquares(
        [
          [0, 0],
          [0, 0],
        ],
        [1, 2],
      ),
    ).toEqual([0, 0]);
  });
});

test('carryCovariance(f, p) is F P Fᵀ, exactly symmetric', () => {
  const f = [
    [1, 2],
    [0, 1],
  ];
  const p = [
    [4, 1],
    [1, 9],
  ];
  // By hand: F P = (6 19; 1 9).
  expect(carryCovariance(f, p)).toEqual([
    [44, 19],
    [19, 9],
  ]);
  const rough = symmetric([
    [1, 0.3],
    [0.1, 1],
  ]);
  expect(rough).toEqual([
    [1, 0.2],
    [0.2, 1],
  ]);
  expect(timesVector(p, [1, -1])).toEqual([3, -8]);
});
