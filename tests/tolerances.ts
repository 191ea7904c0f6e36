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
  openingScale: {
    relative: 1e-9,
    reason:
      'The inverse stops at 1e-15 of the pressure ratio; close to no flow that is 1e-10 of the opening.',
  },
  openingSlope: {
    relative: 1e-6,
    reason:
      'A central difference of 1 Pa: its square is 1e-10 of the ambient pressure, its rounding 1e-11 over 1 Pa.',
  },
  smallMatrix: {
    absolute: 1e-12,
    unit: '1',
    reason: 'A dozen operations on numbers below 100, each rounded to 1e-16 of them.',
  },
  largeMatrix: {
    absolute: 1e-10,
    unit: '1',
    reason: 'Rotations of numbers up to 1,000, some hundred each rounded to 1e-13.',
  },
  estimate: {
    absolute: 1e-6,
    unit: 'Pa',
    reason: 'Hundreds of operations on depressions of 1e5 Pa and variances of 1e9 Pa², in another order.',
  },
  covariance: {
    relative: 1e-9,
    reason: 'Of the largest variance that was carried: what rounding may take from a smallest eigenvalue.',
  },
  settledReading: {
    absolute: 15,
    unit: 'Pa',
    reason: 'A tenth of a millimetre of mercury: the weight of the prior after twenty readings.',
  },
  calledDone: {
    share: 0.95,
    standardErrors: 2,
    factor: 1.5,
    reason:
      'The advice says done at a chance of 0.95: so many must be within, less the luck of a finite draw, and none beyond so many tolerances.',
  },
  linkAndForm: {
    relative: 6e-12,
    reason: 'Numbers are written with twelve significant digits: at worst 5e-12 off, and a few roundings.',
  },
  drawnPlace: {
    absolute: 0.011,
    unit: '% of the width',
    reason: 'Places are rounded to 0.01 %, so a width between two of them to 0.01 %.',
  },
  drawnPoint: {
    absolute: 0.08,
    unit: 'units of the view box',
    reason: 'Each coordinate is rounded to 0.1; half of that in two directions.',
  },
} as const;
