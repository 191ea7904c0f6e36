/** The computation package: its table of contents. Everything outside src/calculators imports from here. */

// Results and problems
export type { Result } from './result.ts';
export { fail, succeed } from './result.ts';
export type { Limit, Problem } from './problem.ts';
export type { ProblemWords } from './describe-problem.ts';
export { describeProblem, describeReadings } from './describe-problem.ts';

// Quantities and exact definitions
export type { AbsolutePressurePa, DepressionPa } from './quantities.ts';
export { absolutePressurePa, absoluteUnder, depressionOf, depressionPa } from './quantities.ts';
export * from './exact-definitions.ts';
export { columnDensityKgPerM3, columnPressurePa } from './column-pressure.ts';

// Units, and reading what was typed
export type { Exactness, PressureUnit } from './pressure-unit.ts';
export { pressureUnits } from './pressure-unit-table.ts';
export { convertPressure, findPressureUnit, inUnit, pascalsOf, pressureUnit } from './pressure-units.ts';
export type { MeasureFamily, MeasureName, MeasureScale, MeasureUnit } from './measure-unit.ts';
export { convertMeasure, findMeasureUnit, fromSi, measureUnit, toSi } from './measure-units.ts';
export { lengths } from './length-units.ts';
export { torques } from './torque-units.ts';
export { temperatures } from './temperature-units.ts';
export { temperatureDifferences } from './temperature-difference-units.ts';
export { volumes } from './volume-units.ts';
export { speeds } from './speed-units.ts';
export { engineSpeeds } from './engine-speed-units.ts';
export { threadPitches } from './thread-pitch-units.ts';
export { densities } from './density-units.ts';
export { volumeFlows } from './volume-flow-units.ts';
export type { ParsedNumber } from './parse-number.ts';
export { parseNumber } from './parse-number.ts';
export type { ParsedQuantity, UnitFamily } from './parse-quantity.ts';
export { parseQuantity, settleComma, unitTextOf, withoutUnit } from './parse-quantity.ts';
export type { ParsedPressure } from './parse-pressure.ts';
export { parsePressure } from './parse-pressure.ts';
export type { ParsedMeasure } from './parse-measure.ts';
export { parseMeasure } from './parse-measure.ts';

// Writing what comes out
export type { DecimalMark, NumberStyle } from './format-number.ts';
export { formatExact, formatFixed, formatSignificant, formatTrimmed } from './format-number.ts';
export { formatPressure } from './format-pressure.ts';
export { csvText } from './csv-text.ts';
export { formatInches, formatLength } from './format-length.ts';
export {
  describeClockMinutes,
  describeTurns,
  describeTurnsInWords,
  describeTurnSize,
} from './format-turns.ts';
export { formatChance } from './format-chance.ts';
export { formatRunningTime } from './format-running-time.ts';
export { numberInWords } from './number-in-words.ts';

// Forms of calculators, their links and their answers
export type { Form, FormField, FormFields, FormProblem, FormResult } from './calculator-form.ts';
export { formReader, initialForm } from './calculator-form.ts';
export type { CalculatorLink } from './calculator-link.ts';
export {
  calculatorLink,
  calculatorLinkVersion,
  parseCalculatorLink,
  writeCalculatorLink,
} from './calculator-link.ts';
export type { FormAnswer, UnsaidProblem } from './calculator-answer.ts';
export { refuse } from './calculator-answer.ts';
export type { SaidProblem } from './say-problem.ts';
export { sayProblem } from './say-problem.ts';
export type { AnswerLine } from './answer-line.ts';
export { withArticle } from './with-article.ts';

// Unit converter
export type { ConverterQuantity } from './unit-converter-quantities.ts';
export { converterQuantities, familyOf, quantitiesOfUnit } from './unit-converter-quantities.ts';
export type { ConversionForm, UnitConverterField } from './unit-converter-form.ts';
export {
  changedConversion,
  keepTypedUnit,
  parseConversion,
  unitConverterExample,
  unitConverterFields,
  unitsOf,
  usualUnitIn,
} from './unit-converter-form.ts';
export { ambientLimit, parseAmbient } from './parse-ambient.ts';
export type { ConversionQuestion, Conversions, PressureKind } from './unit-converter.ts';
export { computeConversions, pressureKinds } from './unit-converter.ts';
export type { ConvertedValue } from './unit-converter-digits.ts';
export { convertedMeasure } from './unit-converter-digits.ts';
export type { ConversionCell, ConversionLine, ConversionTable } from './conversion-table.ts';
export { describeConversions, pressureKindChoices } from './unit-converter-words.ts';
export { answerUnitConverter } from './unit-converter-answer.ts';
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
export { isShort, shortOfThreadTurns } from './short-of-thread.ts';
export { joinedNumbers, membersWords, screwWords } from './screw-words.ts';
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
export type {
  ComparedCarburettor,
  ComparedChange,
  ComparedScrew,
  ComparedSession,
  EffectRange,
  SessionComparison,
} from './session-comparison.ts';
export { compareSessions, isSameLinkage } from './session-comparison.ts';
export type { DescribedComparison } from './session-comparison-words.ts';
export { describeSessionComparison } from './session-comparison-words.ts';
export type { TabledSession } from './sessions-csv.ts';
export { sessionsCsv } from './sessions-csv.ts';
export { mostMovedCarburettor } from './most-moved-carburettor.ts';
export { benchSessionExample } from './bench-session-example.ts';
export type { ExampleSession } from './example-sessions.ts';
export { exampleSessions } from './example-sessions.ts';
export type { CourseMove } from './reading-course.ts';
export { readingCourse } from './reading-course.ts';
export type { SeeSaw } from './see-saw.ts';
export { gapOfTurns, seeSaw, turnsOfGap } from './see-saw.ts';
export type { WorthOfADifference } from './worth-of-a-difference.ts';
export { worthOfADifference } from './worth-of-a-difference.ts';
export { airShares } from './air-shares.ts';
export type { SignOffRound } from './sign-off-round.ts';
export type { WrongWay } from './wrong-way.ts';
export { answerToTurn } from './wrong-way.ts';
export type { Moment, RunningTimer } from './running-time.ts';
export {
  heatOf,
  msInMinutes,
  ranUnwatched,
  recordedMinute,
  reopenTimer,
  runningMinutes,
  seeTimer,
  startTimer,
  stoppedTimer,
  stopTimer,
} from './running-time.ts';
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
export { changeByChancePa } from './change-by-chance.ts';
export type { Distribution } from './standard-uncertainty.ts';
export { resolutionUncertainty, rootSumOfSquares, standardUncertaintyOf } from './standard-uncertainty.ts';
export type { Bracket, BracketOrder } from './bracketed-difference.ts';
export { bracketLength, bracketsOf } from './bracketed-difference.ts';
export type { ReadingScatter, Resolving } from './readings-needed.ts';
export {
  differenceUncertainty,
  finestDifference,
  mostReadingsNeeded,
  readingsNeeded,
  resolvableDifference,
} from './readings-needed.ts';
export type { Known } from './chance-of-range.ts';
export { chanceOfRange, chanceOfRangeWithShared } from './chance-of-range.ts';

// Air: the standard atmosphere and what passes a throttle
export type { AirAtHeight, AtmosphereStandard, Height } from './standard-atmosphere.ts';
export { altimeterSetting, stationPressure } from './station-pressure.ts';
export type { CarriedReading, ReadingElsewhere } from './carried-reading.ts';
export { carryReading } from './carried-reading.ts';
export {
  atmosphereHeightLimit,
  barometricExponent,
  geometricFromGeopotential,
  geopotentialFromGeometric,
  pressureAltitude,
  standardAtmosphere,
} from './standard-atmosphere.ts';
export { criticalPressureRatio, isentropicFlowFunction, throttleAreaRatio } from './compressible-flow.ts';
export { areaOverThroat, densityOverTotal, pressureOverTotal } from './isentropic-relations.ts';
export type { ThrottleFlow } from './throttle-flow.ts';
export {
  chokedFlowFunction,
  incompressibleOverCompressible,
  throttleMassFlowKgPerS,
} from './throttle-flow.ts';
export type { ThrottlePlate } from './throttle-plate.ts';
export { throttlePlateOpenAreaM2 } from './throttle-plate.ts';
export {
  dryAirGasConstant,
  heatCapacityRatioOfAir,
  isoGasConstantOfAir,
  usGasConstantOfAir,
} from './dry-air.ts';

// Liquids: how dense, and what a column of them weighs
export { waterDensityTanaka } from './water-density-tanaka.ts';
export { waterDensityKell } from './water-density-kell.ts';
export { waterDensityJonesHarris } from './water-density-jones-harris.ts';
export { waterDensityOfOlderTables } from './water-density-of-older-tables.ts';
export { waterDensity } from './water-density.ts';
export { mercuryDensity } from './mercury-density.ts';
export {
  mercuryDensityOfOlderTables,
  mercuryVolumeByQuadratic,
  mercuryVolumeOfOlderTables,
} from './mercury-specific-volume.ts';
export { glycolPercents, glycolSolutionDensity } from './glycol-solution-density.ts';
export type { Liquid, LiquidDensity, LiquidHazard } from './liquid.ts';
export { findLiquid, liquidOf, liquids } from './liquids.ts';
export { handbookCelsius, liquidDensity } from './liquid-density.ts';
export type { Manometer } from './manometer.ts';
export { columnHeightM, manometerPressurePa, manometerReadingM, uprightPerReading } from './manometer.ts';
export { mercuryColumnReduced } from './mercury-column-reduced.ts';
export { normalGravity } from './normal-gravity.ts';

// What an engine draws, and what it takes to turn it
export type { EngineBreathing } from './engine-air-flow.ts';
export { engineAirFlowKgPerS } from './engine-air-flow.ts';
export { motoringFrictionPa } from './motoring-friction.ts';

// Gauges: what they promise, and a needle behind a damping tap
export {
  accuracyClasses,
  accuracyClassLimit,
  classLimitPercent,
  permissibleError,
} from './accuracy-class.ts';
export {
  amplitudeRatio,
  phaseLag,
  shareReached,
  timeConstantOfRatio,
  timeConstantOfWait,
  waitingTimeS,
} from './first-order-lag.ts';

// Engine speed and sound
export {
  firingFrequencyHz,
  firingIntervalDegrees,
  firingIntervalS,
  fourStrokeCycleDegrees,
  intakeFrequencyHz,
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
export type { MoreReadings } from './more-readings.ts';
export { analyseBalance } from './balance-analyser.ts';
export type { BalanceAnalyserField, BalanceAnalyserForm } from './balance-analyser-form.ts';
export { balanceAnalyserFields } from './balance-analyser-form.ts';
export type { BalanceQuestion } from './parse-balance-analyser.ts';
export { parseBalanceAnalyser } from './parse-balance-analyser.ts';
export type { DescribedBalance } from './balance-analyser-words.ts';
export { describeBalance } from './balance-analyser-words.ts';
export { answerBalanceAnalyser } from './balance-analyser-answer.ts';

// Differential equations and roots
export type { OdeControl, OdeStart } from './ode.ts';
export { solveOde } from './ode.ts';
export { bisect } from './bisect.ts';

// Carbon monoxide: in air, from an engine, in a room, in the blood, and what is published about it
export { avogadroPerMol, boltzmannJPerK, molarGasConstant } from './molar-gas-constant.ts';
export type { AirState } from './carbon-monoxide-concentration.ts';
export {
  carbonMonoxideGPerMol,
  mgPerM3FromPpm,
  mgPerM3PerPpm,
  ppmFromMgPerM3,
} from './carbon-monoxide-concentration.ts';
export type { RichExhaust } from './rich-exhaust.ts';
export { richestShare, richExhaust } from './rich-exhaust.ts';
export type { EngineGas, RunningEngine } from './engine-carbon-monoxide.ts';
export { engineCarbonMonoxide } from './engine-carbon-monoxide.ts';
export type { MixedAir, MixedRoom } from './mixed-room.ts';
export { concentrationPpm, exposurePpmMin, minutesToReach, mixedAir, steadyPpm } from './mixed-room.ts';
export { averagePpm, minutesToAverage } from './mixed-room-average.ts';
export type { Activity, CfkPerson } from './cfk-person.ts';
export { cfkPeople, cfkResistance } from './cfk-person.ts';
export { cfkEquilibriumPercent, cfkEquilibriumPpm, cfkLinearPercent } from './coburn-forster-kane.ts';
export type { CfkConstant } from './coburn-forster-kane-constants.ts';
export { cfkConstants } from './coburn-forster-kane-constants.ts';
export { restingPersonOfOpenCode, standardDryMl } from './cfk-at-pressure.ts';
export { carboxyhaemoglobinPercent, cfkPercent } from './carboxyhaemoglobin.ts';
export type { CarbonMonoxideLimit } from './carbon-monoxide-limits.ts';
export {
  carbonMonoxideLimits,
  findLimits,
  limitPpm,
  whoCarboxyhaemoglobinPercent,
} from './carbon-monoxide-limits.ts';
export type { AlarmPoint } from './carbon-monoxide-alarms.ts';
export { alarmPoints } from './carbon-monoxide-alarms.ts';

// Exhaust gas in a room
export { formatDuration } from './format-duration.ts';
export type { ExhaustGasInARoomField } from './exhaust-gas-in-a-room-form.ts';
export { exhaustGasInARoomFields } from './exhaust-gas-in-a-room-form.ts';
export { parseExhaustGasInARoom } from './parse-exhaust-gas-in-a-room.ts';
export type { ExhaustGasAnswer, ExhaustGasGiven, GasSource, LimitPassed } from './exhaust-gas-in-a-room.ts';
export { computeExhaustGasInARoom, mostPpm } from './exhaust-gas-in-a-room.ts';
export type { BloodLine, ExhaustGasWords } from './exhaust-gas-in-a-room-words.ts';
export { describeExhaustGasInARoom } from './exhaust-gas-in-a-room-words.ts';
export type { LimitLine } from './exhaust-gas-limit-words.ts';
export { overWords, valueWords } from './exhaust-gas-limit-words.ts';
export { notKnown, runOutdoors } from './exhaust-gas-cautions.ts';
export { answerExhaustGasInARoom } from './exhaust-gas-in-a-room-answer.ts';

// Screw threads and nuts
export type { ScrewThread, ThreadSystem, ThreadTable } from './screw-thread.ts';
export { threadSystems } from './screw-thread.ts';
export type { IsoSize } from './threads-iso.ts';
export { isoSizes } from './threads-iso.ts';
export { numberedSizeInch } from './threads-unified.ts';
export { baDiameterRuleMm, baPitchRuleMm } from './threads-ba.ts';
export { screwThreads, threadNamed, threadsOf, threadTables } from './thread-tables.ts';
export { parseThread } from './parse-thread.ts';
export {
  millimetresPerInch,
  pitchMmOfThreadsPerInch,
  screwAdvanceMm,
  threadsPerInchOfPitchMm,
} from './thread-pitch.ts';
export type { ThreadDiameters } from './thread-profile.ts';
export { tensileStressArea, threadDiameters } from './thread-profile.ts';
export type { HexagonNut, NutHeight } from './hexagon-nuts.ts';
export { hexagonNut, regularNuts, thinNuts } from './hexagon-nuts.ts';

// Thread-travel budget
export type {
  AdjusterBudget,
  AdjusterThread,
  CommonMove,
  IdleScrew,
  LockNut,
  NutRoom,
  RunningOut,
  ThreadShowing,
  ThreadTravel,
  ThreadTravelBudget,
} from './thread-travel.ts';
export { threadTravelBudget } from './thread-travel-budget.ts';
export type { ThreadTravelBudgetField } from './thread-travel-budget-fields.ts';
export { adjusterNumbers, threadTravelBudgetFields } from './thread-travel-budget-fields.ts';
export type { ThreadTravelQuestion } from './thread-travel-budget-form.ts';
export { minimumEngagementDiameters, parseThreadTravelBudget } from './thread-travel-budget-form.ts';
export type { AdjusterRow, SideCell } from './adjuster-rows.ts';
export type { DescribedCommonMove } from './common-move-words.ts';
export type { DescribedThreadTravel, TravelMark } from './thread-travel-budget-words.ts';
export { describeThreadTravelBudget } from './thread-travel-budget-words.ts';
export { answerThreadTravelBudget } from './thread-travel-budget-answer.ts';

// Flutter and repeats
export type { RippleSample } from './damped-ripple.ts';
export { dampedRipple } from './damped-ripple.ts';
export type { FlutterAnswer, FlutterQuestion, TapPosition } from './flutter-and-repeats.ts';
export {
  computeFlutterAndRepeats,
  flutterConfidence,
  flutterPower,
  settledShare,
} from './flutter-and-repeats.ts';
export type { FlutterField, FlutterTyped } from './flutter-and-repeats-form.ts';
export {
  flutterAndRepeatsFields,
  flutterLimits,
  parseFlutterAndRepeats,
} from './flutter-and-repeats-form.ts';
export type { FlutterDescribed } from './flutter-and-repeats-words.ts';
export { answerFlutterAndRepeats, describeFlutterAndRepeats } from './flutter-and-repeats-words.ts';
export { parseSeconds } from './parse-seconds.ts';

// Gauge comparison
export type { GaugeReadings } from './gauge-offset.ts';
export type { GaugeComparison, GaugeOffset, GaugeQuestion } from './gauge-comparison.ts';
export { compareGauges, gaugeCountLimit } from './gauge-comparison.ts';
export type { ComparisonWay, GaugeField, GaugeForm, GaugeNumber } from './gauge-comparison-form.ts';
export { comparisonWays, gaugeComparisonFields, gaugeNumbers } from './gauge-comparison-form.ts';
export type { GaugeTyped } from './parse-gauge-comparison.ts';
export { parseGaugeComparison } from './parse-gauge-comparison.ts';
export { parseSpan } from './parse-span.ts';
export type { GaugeDescribed } from './gauge-comparison-words.ts';
export { answerGaugeComparison, describeGaugeComparison } from './gauge-comparison-words.ts';

// Liquid column
export type { ColumnAnswer, ColumnQuestion, ColumnSides } from './liquid-column.ts';
export {
  bendM,
  catchFactor,
  columnMargin,
  computeLiquidColumn,
  leastLevelM,
  tallestLegM,
  wellFactor,
} from './liquid-column.ts';
export type { LiquidColumnField } from './liquid-column-form.ts';
export { columnLimits, liquidColumnFields, ownLiquid } from './liquid-column-form.ts';
export type { ColumnTyped } from './parse-liquid-column.ts';
export { parseLiquidColumn } from './parse-liquid-column.ts';
export { isRefused } from './liquid-column-warnings.ts';
export type { LiquidColumnDescribed } from './liquid-column-words.ts';
export { describeLiquidColumn } from './liquid-column-words.ts';
export { answerLiquidColumn } from './liquid-column-answer.ts';

// Ambient pressure
export type { AmbientAnswer, AmbientPlace, AmbientQuestion } from './ambient-pressure.ts';
export { ambientPressure, computeAmbientPressure } from './ambient-pressure.ts';
export type { AmbientPressureField } from './ambient-pressure-form.ts';
export { ambientPressureFields, ambientPressureLimits } from './ambient-pressure-form.ts';
export type { AmbientTyped } from './parse-ambient-pressure.ts';
export { parseAmbientPressure } from './parse-ambient-pressure.ts';
export type { AmbientPressureDescribed } from './ambient-pressure-words.ts';
export { describeAmbientPressure } from './ambient-pressure-words.ts';
export { answerAmbientPressure } from './ambient-pressure-answer.ts';

// Checklists
export type { ChecklistBlock, ChecklistLine, ChecklistPart } from './checklist-block.ts';
export { blockLengthLimit, linesOf } from './checklist-block.ts';
export type { Checklist, ChecklistChoice, ChecklistRecord } from './checklists.ts';
export { checklist, checklistDate, checklistVersion } from './checklists.ts';
export type { ChecklistField, ChecklistForm, ChecklistKind } from './checklists-form.ts';
export {
  checklistFields,
  checklistKinds,
  checklistNumbers,
  headingLimit,
  noteLinesLimit,
  notesLimit,
} from './checklists-form.ts';
export {
  checklistCode,
  codeLengthLimit,
  isChecklistLink,
  namesChecklist,
  parseChecklistLink,
  writeChecklistLink,
} from './checklists-link.ts';
export type { ChecklistTyped, DescribedChecklist } from './checklists-words.ts';
export { answerChecklists, checklistTitle, describeChecklist, parseChecklists } from './checklists-words.ts';
export { plainLine, plainLines } from './plain-text.ts';

// Every constant, with its origin
export type { Constant, ConstantGroup, ConstantOrigin, ConstantValue } from './constants/constant.ts';
export { constantOrigins } from './constants/constant.ts';
export { constantGroups } from './constants.ts';
export type { ConstantTable } from './constants/tables.ts';
export { constantTables } from './constants/tables.ts';

// Practice engine
export * from './practice-engine.ts';
export type { PracticeEngineField } from './practice-engine-form.ts';
export { parsePracticeEngine, practiceEngineFields } from './practice-engine-form.ts';
export type { DescribedExercise } from './practice-engine-answer.ts';
export { answerPracticeEngine, describeLesson } from './practice-engine-answer.ts';
export type { PracticeFigures, ThreadWords, Warmth } from './practice-engine-words.ts';
export {
  depressionFigure,
  describeClock,
  describeCounted,
  describeDepression,
  describeEntry,
  describeEntryAloud,
  describeExercise,
  describeNeedle,
  describeOffSpeed,
  describeShare,
  describeSpeed,
  describeTachometer,
  describeTask,
  describeTemperature,
  describeThread,
  describeWarmth,
  gradeWords,
  lastReadings,
  screwOf,
} from './practice-engine-words.ts';
export type { NamedFault } from './practice-engine-faults.ts';
export { describeNaming, faultWords } from './practice-engine-faults.ts';
export type {
  DescribedReplayStep,
  DescribedReview,
  ReviewLine,
  TruthRow,
} from './practice-engine-review-words.ts';
export { describeReplay, describeReplayStep, describeReview } from './practice-engine-review-words.ts';

// Explorables of the handbook
export { certain } from './explorables/certain.ts';
export { mmHgPa } from './explorables/mmhg.ts';
export type { DrawnReadings } from './explorables/drawn-readings.ts';
export type { Curves } from './explorables/curves.ts';
export type { OneScrewLinkage, OneTurn } from './explorables/turn-one-screw.ts';
export {
  oneScrewLinkages,
  oneScrewMinutesLimits,
  oneScrewScene,
  oneTurnExample,
  turnOneScrew,
} from './explorables/turn-one-screw.ts';
export { commonHoursLimits, mostThreadLevel, threadAtLevel } from './explorables/most-thread-level.ts';
export {
  flutterFinding,
  spreadMmHgLimits,
  swingMmHgLimits,
  toldSwingExample,
  verdictUnderSwing,
} from './explorables/flutter-and-verdict.ts';
export {
  altitudeFinding,
  heightMExample,
  heightMLimits,
  readingAtHeight,
} from './explorables/altitude-and-reading.ts';
export type { AbsoluteAndDepressionShown } from './explorables/absolute-and-depression.ts';
export {
  absoluteAndDepression,
  airAndIntakeExample,
  ambientHPaLimits,
  depressionFinding,
  intakeHPaLimits,
} from './explorables/absolute-and-depression.ts';
export {
  airChangesLimits,
  carbonMonoxidePercentLimits,
  roomAndExhaust,
  roomCaution,
  roomEngineExample,
  roomExample,
  roomFinding,
  roomM3Limits,
  roomNotKnown,
} from './explorables/room-and-exhaust.ts';
export type { ReferenceChosen } from './explorables/mean-or-two-closest.ts';
export {
  fourthMmHgExample,
  fourthMmHgLimits,
  meanOrTwoClosest,
  referenceFinding,
  references,
} from './explorables/mean-or-two-closest.ts';
export type { EffectMmHg, LearnedEffect } from './explorables/learned-effect.ts';
export {
  effectMmHgExample,
  effectsMmHg,
  learnedEffect,
  learnedFinding,
  learnedTurnsLimits,
} from './explorables/learned-effect.ts';
