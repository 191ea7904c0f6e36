/**
 * The one table of tolerances for tests that are not rows of tests/data (those carry their own).
 * `relative` has no unit; `absolute` is in the unit named.
 */
export const tolerances = {
  unitFactor: {
    relative: 1e-12,
    reason: 'Factors are products of at most four exact decimals: a few roundings of 1.1e-16 each.',
  },
  comparedRanges: {
    share: 0.88,
    reason:
      'Ranges of 95 % on 80 invented engines: four of an engine share its luck, so the scatter is that of some 80, 2.4 % each way, three times.',
  },
  exactUnit: {
    relative: 1e-15,
    reason:
      'A product of at most four decimals against the same in whole numbers: some roundings of 1.1e-16.',
  },
  roundedLibrary: {
    relative: 2e-7,
    reason: 'A unit library that keeps seven to ten digits of a factor.',
  },
  roundedPressureUnit: {
    relative: 3e-6,
    reason:
      'Unit libraries that keep six digits of the millimetre of mercury (133.322 Pa) or of the psi (6894.76 Pa).',
  },
  temperature: {
    absolute: 1e-9,
    unit: 'K',
    reason:
      'Sums of some hundreds of kelvins, each rounded to 6e-14 K, and what a library takes by way of 0 K.',
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
  smallTurn: {
    relative: 0.02,
    reason: 'The tangent of the opening scale against its curve, over 3 mmHg at 300 mmHg.',
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
  sumKept: {
    relative: 1e-14,
    reason: 'Sums of a few depressions, each rounded to 1.1e-16 of itself, found by steps that end there.',
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
  secondThreadFormula: {
    relative: 1e-11,
    reason: 'Ten thousand small steps and 24 doublings of a polygon, each rounded to 1e-16 of the whole.',
  },
  twoSignificantFigures: {
    relative: 0.05,
    reason: 'The standard rounds to two significant figures: at worst half of 1 in 10.',
  },
  wholeNumbers: {
    relative: 1e-13,
    reason:
      'Against whole numbers of 1e-40, or a count of a thousand events: some hundred roundings of 1.1e-16.',
  },
  averagedShares: {
    relative: 1e-6,
    reason:
      'An average over 20,000 even shares: where the inverse has a root at its end, 20,000^-1.5 is missed.',
  },
  smallFit: {
    absolute: 1e-10,
    unit: 'units of the readings',
    reason: 'Three equations with sums of four readings up to 300, eliminated in doubles.',
  },
  quadratureQuantile: {
    relative: 1e-11,
    reason:
      'Sixty halvings of an angle are 1e-18 of it; the rule itself is good to 1e-13, the tails take two digits.',
  },
  deviationBesideMillions: {
    relative: 1e-9,
    reason: 'Readings of 1e6 are stored to 1.2e-10, beside deviations of 3.',
  },
  manyShares: { relative: 1e-12, reason: '720 sums, each rounded to 1.1e-16 of 720 at most.' },
  polygon: {
    relative: 2e-12,
    reason: 'A polygon of a million sides is shorter than its circle by π²/6 of 1e-12.',
  },
  molarGasConstant: {
    relative: 1e-8,
    reason:
      'The gas constant of air is printed with eight digits, and follows from molar constants with seven.',
  },
  ownInverse: {
    relative: 1e-11,
    reason: 'A logarithm of what is left: 1e-4 of the way takes four of sixteen digits.',
  },
  integratedLag: {
    absolute: 1e-9,
    unit: 'of the swing',
    reason: 'An integrator asked for 1e-11 a step, over some tens of steps.',
  },
  linkAndForm: {
    relative: 6e-12,
    reason: 'Numbers are written with twelve significant digits: at worst 5e-12 off, and a few roundings.',
  },
  massConcentration: {
    relative: 1e-9,
    reason: 'The molar volume of the second formula is printed with ten digits.',
  },
  roomSecondFormula: {
    relative: 1e-7,
    reason: 'Steps of the fourth order in 1/200 of the time: 1e-10 of a clearing of 20 an hour over an hour.',
  },
  cfkSecondFormula: {
    relative: 1e-7,
    reason:
      'The solver holds a billionth a step, over some tens of steps; the closed solution loses three digits near its end.',
  },
  cfkOtherSolver: {
    relative: 1e-6,
    reason: 'Two adaptive solvers, each with its own control of the error of a step.',
  },
  massBalance: {
    relative: 1e-9,
    reason: 'Exponentials and their integral to 1e-14, of which a difference may lose four digits.',
  },
  ledger: {
    relative: 1e-9,
    reason: 'Running totals of some 100,000 steps, each rounded to 1.1e-16 of a total.',
  },
  exactPolynomial: {
    relative: 1e-14,
    reason:
      'A polynomial of at most six terms against the same in whole numbers: some tens of roundings of 1.1e-16.',
  },
  smallSteps: {
    relative: 1e-10,
    reason:
      'An expansion of up to 5 % in 10,000 steps of the midpoint rule: below 1e-12, and 10,000 roundings.',
  },
  atmosphereIntegral: {
    relative: 1e-11,
    reason:
      'Simpson’s rule with 400 steps a layer: below 1e-14, and up to 3,000 roundings of 1.1e-16 under an exponential.',
  },
  normalGravity: {
    relative: 1e-14,
    reason: 'A cosine by its series up to 2π, and a subtraction that loses two digits of a five-thousandth.',
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
