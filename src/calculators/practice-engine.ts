/**
 * The practice engine: an invented engine that runs, so that the whole job can be done once before a real one does.
 * It shares no code with the advice.
 *
 * A mean-value engine: the air in each intake, the kinetic energy of the crank, the warmth of the metal, the pressure
 * in the gauge's line and the needle follow from differential equations (`practice/advance.ts`), each relation cited
 * where it stands. Deterministic: the same exercise, the same hands and the same times give the same engine.
 */
export { act, isTooHot } from './practice/act.ts';
export type { Happened, PracticeAction } from './practice/act.ts';
export { advance } from './practice/advance.ts';
export { adviceOf, benchSetUpOf } from './practice/advice.ts';
export { countedThread, countedTurns, idleThread } from './practice/counted-turns.ts';
export { practiceFaults } from './practice/engine.ts';
export type { PracticeEngine, PracticeFault } from './practice/engine.ts';
export { exerciseLimits, practiceEngineExample, practiceGrades } from './practice/exercise.ts';
export type { Exercise, PracticeGrade } from './practice/exercise.ts';
export { inventEngine } from './practice/invent.ts';
export { leakAtSpeeds, leakExample } from './practice/leak-at-speeds.ts';
export type { LeakAtSpeed } from './practice/leak-at-speeds.ts';
export { lessonIds, lessonOf, lessons } from './practice/lessons.ts';
export type { GoalPart, Lesson, LessonId } from './practice/lessons.ts';
export { look } from './practice/look.ts';
export type { Look } from './practice/look.ts';
export {
  bringSpeedBack,
  doAdvisedStep,
  readCylinder,
  setUpOf,
  turnScrew,
  warmUp,
} from './practice/operator.ts';
export type { AdvisedStep } from './practice/operator.ts';
export type { Play, PracticePace } from './practice/play.ts';
export {
  isSettled,
  mostHand,
  nudgeHand,
  nudgeTap,
  offSpeedRpm,
  playAction,
  playFor,
  playReading,
  practicePaces,
  practiceSteps,
  pressVent,
  startPlay,
  ventPressSeconds,
} from './practice/play.ts';
export type { Replay, ReplayStep } from './practice/replay.ts';
export { continueReplay, startReplay } from './practice/replay.ts';
export { reviewRun, truthAt } from './practice/review.ts';
export type { PracticeReview, PracticeTruth } from './practice/review.ts';
export { passTime, perform, sessionEventsOf, startRun, workDone, writeReading } from './practice/run.ts';
export type { PracticeEntry, PracticeRun } from './practice/run.ts';
export { firstState, rpmOf } from './practice/state.ts';
export type { Controls, EngineState } from './practice/state.ts';
export { holdingReach, leftAlone, trueDepressionsPa, trueSpreadPa } from './practice/steady.ts';
