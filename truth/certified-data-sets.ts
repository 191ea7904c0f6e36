/** A first value, then two others in turn: 1,001 in all, as the sets are given by rule. */
const inTurn = (first: number, second: number, third: number): readonly number[] => [
  first,
  ...Array.from({ length: 1000 }, (_, k) => (k % 2 === 0 ? second : third)),
];

/** NIST Statistical Reference Datasets, univariate summary statistics: the sets whose readings follow a rule. */
const sets: Readonly<Record<string, readonly number[]>> = {
  numacc1: [10000001, 10000003, 10000002],
  numacc2: inTurn(1.2, 1.1, 1.3),
  numacc3: inTurn(1000000.2, 1000000.1, 1000000.3),
  numacc4: inTurn(10000000.2, 10000000.1, 10000000.3),
};

/** The readings of a set, or null for any other name. */
export const certifiedDataSet = (name: string): readonly number[] | null => sets[name.toLowerCase()] ?? null;
