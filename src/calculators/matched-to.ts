import { leastSquares } from './advisor/matrix.ts';
import type { Generation } from './linkage.ts';
import type { Screw } from './protocol.ts';

/** What the carburettors of a set are matched to. */
export type MatchedTo =
  | { readonly kind: 'carburettor'; readonly carburettor: number }
  | { readonly kind: 'closest-two'; readonly carburettors: readonly [number, number] }
  | { readonly kind: 'mean' };

/**
 * What this generation is matched to (common practice):
 * - `fixed-reference`: the carburettor that has no adjuster, because nothing else can move it;
 * - `bypass-screws`: the body whose screw is left alone, where one is; else each other, so the mean;
 * - `all-adjustable`: the two that read closest, to which the rest is brought;
 * - `separate-cables`: each other, so the mean;
 * - `paired-screws`: each other through a tree of screws, so the mean; see `screwContrasts`.
 */
export function matchedTo(
  generation: Generation,
  meansPa: readonly number[],
  fixed: number | undefined,
): MatchedTo {
  const leftAlone = generation === 'fixed-reference' || generation === 'bypass-screws' ? fixed : undefined;
  if (leftAlone !== undefined) return { kind: 'carburettor', carburettor: leftAlone };
  if (generation === 'all-adjustable') return { kind: 'closest-two', carburettors: closestTwo(meansPa) };
  return { kind: 'mean' };
}

/** The two nearest readings; among equals the lowest numbers. */
function closestTwo(meansPa: readonly number[]): [number, number] {
  let closest: [number, number] = [1, 2];
  let smallest = Infinity;
  for (const [i, one] of meansPa.entries()) {
    for (const [j, other] of meansPa.entries()) {
      const apart = Math.abs(one - other);
      if (i < j && apart < smallest) {
        smallest = apart;
        closest = [i + 1, j + 1];
      }
    }
  }
  return closest;
}

/** The weight of each carburettor's mean in the reference; they sum to 1. */
export function referenceWeights(reference: MatchedTo, carburettors: number): number[] {
  const members =
    reference.kind === 'mean'
      ? Array.from({ length: carburettors }, (_, position) => position + 1)
      : reference.kind === 'carburettor'
        ? [reference.carburettor]
        : reference.carburettors;
  return Array.from({ length: carburettors }, (_, position) =>
    members.includes(position + 1) ? 1 / members.length : 0,
  );
}

/**
 * For each screw the weights, one per carburettor, of the difference that it has to take out: positive
 * where what it moves reads higher than what it is matched to. With B the screws' columns and d the
 * readings they solve B g + c = d for g, with c common to all, because the idle-speed screw takes it
 * back. So a screw of a pair compares the two of the pair, and a screw between pairs the pairs.
 * One screw each leaves the level free: there c is the reference. Screws that are neither n − 1
 * independent nor one each get the least squares of the same equations, the smallest among equals.
 */
export function screwContrasts(screws: readonly Screw[], weights: readonly number[]): number[][] {
  const carburettors = weights.length;
  const oneEach = screws.length === carburettors && screws.every(({ moves }) => movesOne(moves));
  if (oneEach) {
    return screws.map(({ moves }) => moves.map((move, i) => move - weights[i]!));
  }
  const columns = screws.map(({ moves }) => centred(moves));
  const matrix = weights.map((_, i) => columns.map((column) => column[i]!));
  const answers = weights.map((_, i) =>
    leastSquares(matrix, centred(weights.map((__, k) => (k === i ? 1 : 0)))),
  );
  return screws.map((_, j) => answers.map((answer) => withoutRounding(answer[j]!)));
}

const movesOne = (moves: readonly number[]): boolean => moves.filter((move) => move !== 0).length === 1;

const centred = (values: readonly number[]): number[] => {
  const middle = values.reduce((total, value) => total + value, 0) / values.length;
  return values.map((value) => value - middle);
};

/** Weights are small fractions; what is below 1e-12 is the solver's rounding. */
const withoutRounding = (weight: number): number => (Math.abs(weight) < 1e-12 ? 0 : weight);
