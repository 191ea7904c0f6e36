/**
 * The one table of tolerances for tests that are not rows of tests/data (those carry their own).
 * `relative` has no unit; `absolute` is in the unit named.
 */
export const tolerances = {
  unitFactor: {
    relative: 1e-12,
    reason: 'Factors are products of at most four exact decimals: a few roundings of 1.1e-16 each.',
  },
  cutOffPrint: {
    absolute: 1e-7,
    unit: 'at per inHg',
    reason: 'A published table cut 0.034531554 off to 0.0345315: one unit of its last digit instead of half.',
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
  statistics: {
    relative: 1e-12,
    reason:
      'Series and continued fractions to the last digit; the exponential of a square up to 700 loses three.',
  },
  gammaRatio: {
    relative: 5e-15,
    reason:
      'A product of up to 64 roundings of 1.1e-16, which mostly cancel; the series leaves out less than 1e-16.',
  },
  chance: {
    absolute: 1e-9,
    reason: 'Tails of 1e-11 are left out, eight of them at most on either side; the rule itself is finer.',
  },
  pressureSums: {
    absolute: 1e-6,
    unit: 'Pa',
    reason: 'Sums of tens of values of 1e5 Pa, each rounded to 1.5e-11 Pa, and a small linear solution.',
  },
  flow: {
    relative: 1e-9,
    reason: 'Powers of a ratio; close to no flow a difference of 1e-6 loses six digits.',
  },
  turns: {
    absolute: 1e-9,
    unit: 'turn',
    reason: 'Quotients of millimetres; nobody turns a billionth of a turn.',
  },
  atmosphereHeight: {
    absolute: 1e-6,
    unit: 'm',
    reason: 'A logarithm of the pressure and back: 1e-16 of a scale height of 8 km, and the layers below.',
  },
} as const;
