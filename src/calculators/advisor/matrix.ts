/** Small dense matrices, row by row. Shapes are the caller's duty. */
export type Matrix = readonly (readonly number[])[];

export const zeros = (rows: number, columns: number): number[][] =>
  Array.from({ length: rows }, () => new Array<number>(columns).fill(0));

export const dot = (a: readonly number[], b: readonly number[]): number => {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += a[k]! * b[k]!;
  return sum;
};

export const timesVector = (a: Matrix, v: readonly number[]): number[] => a.map((row) => dot(row, v));

export const transpose = (a: Matrix): number[][] => a[0]!.map((_, column) => a.map((row) => row[column]!));

export const times = (a: Matrix, b: Matrix): number[][] => {
  const columns = transpose(b);
  return a.map((row) => columns.map((column) => dot(row, column)));
};

/** F P Fᵀ, made exactly symmetric. */
export const carryCovariance = (f: Matrix, p: Matrix): number[][] =>
  symmetric(times(times(f, p), transpose(f)));

export const symmetric = (a: Matrix): number[][] =>
  a.map((row, i) => row.map((value, j) => (value + a[j]![i]!) / 2));

/**
 * Lower triangular factor L with L Lᵀ = a, for a symmetric positive semi-definite matrix.
 * A pivot lost to rounding counts as zero: that direction is then known exactly.
 */
export const choleskyFactor = (a: Matrix): number[][] => {
  const n = a.length;
  const factor = zeros(n, n);
  for (let j = 0; j < n; j++) {
    let pivot = a[j]![j]!;
    for (let k = 0; k < j; k++) pivot -= factor[j]![k]! ** 2;
    const lost = !(pivot > 1e-12 * a[j]![j]!);
    const root = lost ? 0 : Math.sqrt(pivot);
    factor[j]![j] = root;
    for (let i = j + 1; i < n; i++) {
      let value = a[i]![j]!;
      for (let k = 0; k < j; k++) value -= factor[i]![k]! * factor[j]![k]!;
      factor[i]![j] = lost ? 0 : value / root;
    }
  }
  return factor;
};

/**
 * The shortest x that brings a x closest to b (least squares, minimum norm), through the eigenvectors of aᵀa.
 * Directions below 1e-9 of the largest eigenvalue are left alone.
 */
export const leastSquares = (a: Matrix, b: readonly number[]): number[] => {
  const columns = transpose(a);
  const { values, vectors } = symmetricEigen(times(columns, a));
  const right = timesVector(columns, b);
  const largest = Math.max(...values);
  const solution = new Array<number>(columns.length).fill(0);
  values.forEach((value, k) => {
    if (!(value > 1e-9 * largest)) return;
    const along = vectors.map((row) => row[k]!);
    const share = dot(along, right) / value;
    along.forEach((entry, j) => (solution[j]! += share * entry));
  });
  return solution;
};

/** Eigenvalues and eigenvectors (columns) of a symmetric matrix, by cyclic Jacobi rotations. */
export const symmetricEigen = (given: Matrix): { values: number[]; vectors: number[][] } => {
  const n = given.length;
  const a = given.map((row) => [...row]);
  const vectors = zeros(n, n);
  for (let i = 0; i < n; i++) vectors[i]![i] = 1;
  for (let sweep = 0; sweep < 30; sweep++) {
    let rest = 0;
    for (let p = 0; p < n; p++) for (let q = p + 1; q < n; q++) rest += a[p]![q]! ** 2;
    if (rest === 0) break;
    for (let p = 0; p < n; p++) for (let q = p + 1; q < n; q++) rotate(a, vectors, p, q);
  }
  return { values: a.map((row, i) => row[i]!), vectors };
};

const rotate = (a: number[][], vectors: number[][], p: number, q: number): void => {
  const off = a[p]![q]!;
  if (off === 0) return;
  const theta = (a[q]![q]! - a[p]![p]!) / (2 * off);
  const tangent = (theta >= 0 ? 1 : -1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
  const cosine = 1 / Math.sqrt(tangent * tangent + 1);
  const sine = tangent * cosine;
  const mix = (row: number[]): void => {
    const [x, y] = [row[p]!, row[q]!];
    row[p] = cosine * x - sine * y;
    row[q] = sine * x + cosine * y;
  };
  a.forEach(mix);
  const [rowP, rowQ] = [[...a[p]!], [...a[q]!]];
  a[p] = rowP.map((x, k) => cosine * x - sine * rowQ[k]!);
  a[q] = rowP.map((x, k) => sine * x + cosine * rowQ[k]!);
  a[p]![q] = a[q]![p] = 0;
  vectors.forEach(mix);
};
