/** The computation package: its table of contents. Everything outside src/calculators imports from here. */

// Results and problems
export type { Result } from './result.ts';
export { fail, succeed } from './result.ts';
export type { Limit, Problem } from './problem.ts';
export type { ProblemWords } from './describe-problem.ts';
export { describeProblem, describeReadings } from './describe-problem.ts';

// Quantities and exact definitions
export type { AbsolutePressurePa, DepressionPa, PressureDifferencePa, Turns } from './quantities.ts';
export {
  absolutePressurePa,
  absoluteUnder,
  depressionOf,
  depressionPa,
  pressureDifferencePa,
  turns,
} from './quantities.ts';
export * from './exact-definitions.ts';
export { columnDensityKgPerM3, columnPressurePa } from './column-pressure.ts';

// Units, and reading what was typed
export type { Exactness, PressureUnit } from './pressure-unit.ts';
export { pressureUnits } from './pressure-unit-table.ts';
export { convertPressure, findPressureUnit, inUnit, pascalsOf, pressureUnit } from './pressure-units.ts';
export type { ParsedNumber } from './parse-number.ts';
export { parseNumber } from './parse-number.ts';
export type { ParsedQuantity, UnitFamily } from './parse-quantity.ts';
export { parseQuantity, settleComma, withoutUnit } from './parse-quantity.ts';
export type { ParsedPressure } from './parse-pressure.ts';
export { parsePressure } from './parse-pressure.ts';

// Writing what comes out
export type { DecimalMark, NumberStyle } from './format-number.ts';
export { formatExact, formatFixed, formatSignificant, formatTrimmed } from './format-number.ts';
export { formatPressure } from './format-pressure.ts';
export {
  describeClockMinutes,
  describeTurns,
  describeTurnsInWords,
  describeTurnSize,
} from './format-turns.ts';
export { formatChance } from './format-chance.ts';
export { formatRunningTime } from './format-running-time.ts';
export { numberInWords } from './number-in-words.ts';

// Unit converter
export type {
  ConversionForm,
  ConversionQuestion,
  ConversionRow,
  Conversions,
  PressureKind,
} from './unit-converter.ts';
export { computeConversions, pressureKinds, unitConverterExample } from './unit-converter.ts';
export type { ConvertedValue } from './unit-converter-digits.ts';
export { ambientLimit, parseAmbient, parseConversion } from './unit-converter-form.ts';
export type { ConversionCell, ConversionLine, ConversionTable } from './unit-converter-words.ts';
export { describeConversions, pressureKindWords } from './unit-converter-words.ts';
export type { UnitConverterLink } from './unit-converter-link.ts';
export {
  parseUnitConverterLink,
  unitConverterLinkVersion,
  writeUnitConverterLink,
} from './unit-converter-link.ts';

// Sets of carburettors and the session protocol
export type { Generation, LinkageOptions } from './linkage.ts';
export { generations, hasFreeCommonMove, screwsOf } from './linkage.ts';
export type {
  Estimate,
  Gauge,
  NextStep,
  ReadingEvent,
  ReadReason,
  Screw,
  SessionEvent,
  SetUp,
  Step,
  TurnEvent,
  TurnsLeft,
} from './protocol.ts';
export { carburettorLimit, checkSession, confidenceLimit } from './check-session.ts';
export { nextStep } from './next-step.ts';

// Bench session
export { benchDefaults, roundInUnit } from './bench-defaults.ts';
export type {
  BenchSetUp,
  FieldProblem,
  OpeningDirection,
  ParsedSetUp,
  SetUpAnswers,
  SetUpField,
} from './bench-set-up.ts';
export {
  answersOf,
  carburettorNumbers,
  defaultAnswers,
  parseSetUp,
  screwsOfAnswers,
  typedIn,
} from './bench-set-up.ts';
export { isShort } from './short-of-thread.ts';
export { formatReading, readingDecimals } from './format-reading.ts';
export {
  clockwiseTurns,
  handDirection,
  opposite,
  reversedTurn,
  settleDirection,
} from './opening-direction.ts';
export { parseReading, parseSpeed, parseTurns } from './bench-reading.ts';
export type { GaugeTrial, GaugeTrialField, GaugeTrialTyped } from './gauge-trial.ts';
export { computeGaugeTrial, describeGaugeTrial } from './gauge-trial.ts';
export type { TypedReading } from './typed-readings.ts';
export { parseReadings } from './typed-readings.ts';
export type { SessionLink } from './session-link.ts';
export { parseSessionLink, writeSessionLink } from './session-link.ts';
export type { Bench, BenchStep } from './bench-session.ts';
export { computeBench, expectedAfterTurn } from './bench-session.ts';
export { mostMovedCarburettor } from './most-moved-carburettor.ts';
export { benchSessionExample } from './bench-session-example.ts';
export type { ExampleSession } from './example-sessions.ts';
export { exampleSessions } from './example-sessions.ts';
export type { SignOffRound } from './sign-off-round.ts';
export type { WrongWay } from './wrong-way.ts';
export { answerToTurn } from './wrong-way.ts';
export type { RunningTimer } from './running-time.ts';
export { heatOf, recordedMinute, runningMinutes, startTimer, stopTimer } from './running-time.ts';
export { widthAt95 } from './width-at-95.ts';

// Statistics
export type { AtLeastOne } from './mean.ts';
export { mean } from './mean.ts';
export type { AtLeastTwo } from './sample-standard-deviation.ts';
export { sampleStandardDeviation } from './sample-standard-deviation.ts';
export { normalCdf, normalQuantile } from './normal.ts';
export { studentTCdf } from './student-t.ts';
export { studentTQuantile } from './student-t-quantile.ts';
export type { Uncertainty } from './reading-uncertainty.ts';
export { combine, meanUncertainty, readingStandardUncertaintyPa } from './reading-uncertainty.ts';
export type { Known } from './chance-of-range.ts';
export { chanceOfRange, chanceOfRangeWithShared } from './chance-of-range.ts';

// Air: the standard atmosphere and what passes a throttle
export type { AirAtHeight, AtmosphereStandard, Height } from './standard-atmosphere.ts';
export {
  atmosphereHeightLimit,
  barometricExponent,
  geometricFromGeopotential,
  geopotentialFromGeometric,
  pressureAltitude,
  standardAtmosphere,
} from './standard-atmosphere.ts';
export {
  criticalPressureRatio,
  heatCapacityRatioOfAir,
  isentropicFlowFunction,
  throttleAreaRatio,
} from './compressible-flow.ts';

// Engine speed and sound
export {
  firingFrequencyHz,
  firingIntervalDegrees,
  fourStrokeCycleDegrees,
  rpmOfFiringFrequency,
} from './firing-frequency.ts';
export { speedOfSoundMPerS } from './speed-of-sound.ts';

// Balance analyser
export type {
  BalanceAnalysis,
  BalanceReadings,
  CarburettorBalance,
  Difference,
  ScrewBalance,
} from './balance-analysis.ts';
export type { Drift, OrderedReading, SpeedCorrection } from './correct-readings.ts';
export type { MatchedTo } from './matched-to.ts';
export { analyseBalance, balanceAnalyserExample } from './balance-analyser.ts';

// Thread-travel budget
export type { MetricThread } from './screw-threads.ts';
export { metricThreads } from './screw-threads.ts';
export type {
  AdjusterBudget,
  AdjusterThread,
  CommonMove,
  IdleScrew,
  RunningOut,
  ThreadShowing,
  ThreadTravel,
  ThreadTravelBudget,
} from './thread-travel.ts';
export { threadTravelBudget, threadTravelBudgetExample } from './thread-travel-budget.ts';
