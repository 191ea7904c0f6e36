/** Types of odex 2.0.4, which ships sources that our compiler settings would refuse. */
export class Solver {
  constructor(dimension: number);
  absoluteTolerance: number | number[];
  relativeTolerance: number | number[];
  maxSteps: number;
  solve(
    derivative: (x: number, y: number[]) => number[],
    from: number,
    initial: readonly number[],
    to: number,
  ): { readonly y: number[]; readonly outcome: number };
}
