/**
 * How often a property is tried on drawn inputs: the count that it names, times PROPERTY_RUNS, 1 if that is not set.
 * PROPERTY_RUNS=10 tries the slow parser on 100,000 inputs; the mutation run takes a small part of every count.
 */
const factor = Number(process.env['PROPERTY_RUNS'] ?? 1);

export const tries = (count: number): { readonly numRuns: number } => ({
  numRuns: Math.max(1, Math.round(count * factor)),
});
