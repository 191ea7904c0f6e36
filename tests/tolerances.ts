/**
 * The one table of tolerances for tests that are not rows of tests/data (those carry their own).
 * `relative` has no unit; `absolute` is in the unit named.
 */
export const tolerances = {
  unitFactor: {
    relative: 1e-12,
    reason: 'Factors are products of at most four exact decimals: a few roundings of 1.1e-16 each.',
  },
  unitRoundTrip: {
    relative: 1e-14,
    reason: 'One multiplication and one division each way.',
  },
  differenceOfPressures: {
    absolute: 1e-9,
    unit: 'Pa',
    reason: 'Ambient (1e5 Pa) less a reading: one rounding of 1.5e-11 Pa, and that of the factors.',
  },
} as const;
