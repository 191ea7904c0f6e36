import { zeroCelsiusKelvins } from './exact-definitions.ts';
import { formatFixed } from './format-number.ts';
import type { DecimalMark } from './format-number.ts';
import { formatReading } from './format-reading.ts';
import { formatRunningTime } from './format-running-time.ts';
import { describeTurnSize, describeTurns } from './format-turns.ts';
import type { Generation } from './linkage.ts';
import { numberInWords } from './number-in-words.ts';
import type { PracticeAction } from './practice/act.ts';
import { isTooHot } from './practice/act.ts';
import { tooHotK, warmK } from './practice/constants.ts';
import type { PracticeEngine } from './practice/engine.ts';
import type { Exercise, PracticeGrade } from './practice/exercise.ts';
import { lessonOf } from './practice/lessons.ts';
import type { LessonId } from './practice/lessons.ts';
import { look } from './practice/look.ts';
import type { Look } from './practice/look.ts';
import type { PracticeEntry, PracticeRun } from './practice/run.ts';
import type { EngineState } from './practice/state.ts';
import { pressureUnit } from './pressure-units.ts';
import type { TurnsLeft } from './protocol.ts';
import { isShort } from './short-of-thread.ts';
import { screwWords } from './screw-words.ts';

/** How depressions are written for this reader. */
export type PracticeFigures = { readonly unit: string; readonly mark: DecimalMark };

export const gradeWords: Readonly<Record<PracticeGrade, string>> = {
  1: 'For the first time: warm already, close together, nuts that hardly drag',
  2: 'Cold at first, twice as far apart, nuts that drag a little',
  3: 'Far apart, nuts that drag, one thread too short, a tachometer that is off',
  4: 'All of that and more, with a cable that sticks a little',
};

const linkageWords: Readonly<Record<Generation, string>> = {
  'separate-cables': 'a cable and a stop screw each',
  'all-adjustable': 'ganged, an adjuster on each',
  'fixed-reference': 'ganged, one without an adjuster',
  'paired-screws': 'ganged, screws between neighbours',
  'bypass-screws': 'an air screw each but one',
};

/** An exercise in a sentence without its full stop: `Four carburettors, ganged, an adjuster on each; grade 1, engine number 7`. */
export function describeExercise({ generation, carburettors, grade, seed }: Exercise): string {
  const count = numberInWords(carburettors);
  const made = generation === 'bypass-screws' ? 'throttle bodies' : 'carburettors';
  return `${count.charAt(0).toUpperCase()}${count.slice(1)} ${made}, ${linkageWords[generation]}; grade ${formatFixed(grade, 0)}, engine number ${formatFixed(seed, 0)}`;
}

/** A depression in the reader's unit, as fine as the gauge: `210 mmHg`. */
export const describeDepression = (
  { gauge }: PracticeEngine,
  pascals: number,
  { unit, mark }: PracticeFigures,
): string =>
  `${formatReading(pascals, unit, gauge.resolutionPa, { mark })}\u00a0${pressureUnit(unit).symbol}`;

/** The same without its unit. */
export const depressionFigure = (
  { gauge }: PracticeEngine,
  pascals: number,
  { unit, mark }: PracticeFigures,
): string => formatReading(pascals, unit, gauge.resolutionPa, { mark });

/** The needle for those who do not see it: `About 210 mmHg, swinging 8 either way.` */
export function describeNeedle({ engine, state }: PracticeRun, figures: PracticeFigures): string {
  const seen = look(engine, state);
  const about = `About ${describeDepression(engine, seen.depressionPa, figures)}`;
  if (seen.depressionPa >= engine.gauge.fullScalePa) return 'At the end of the scale.';
  if (seen.still) return `${about}, standing quite still.`;
  const swing = depressionFigure(engine, seen.flutterPa, figures);
  return /[1-9]/u.test(swing) ? `${about}, swinging ${swing} either way.` : `${about}, hardly moving.`;
}

/** `2080 rpm`. */
export const describeSpeed = (rpm: number): string => `${formatFixed(rpm, 0)}\u00a0rpm`;

export const describeTachometer = ({ engine, state }: PracticeRun): string =>
  describeSpeed(look(engine, state).rpm);

/** The engine's time since it was first started: `4:32`. */
export const describeClock = (seconds: number): string => formatRunningTime(seconds / 60);

export type Warmth = {
  readonly state: 'cold' | 'warm' | 'hot';
  readonly degrees: string;
  readonly words: string;
};

const celsius = (kelvins: number): string => `${formatFixed(kelvins - zeroCelsiusKelvins, 0)}\u00a0°C`;

/** The engine's temperature, and what it means for the work. */
export function describeWarmth(state: EngineState): Warmth {
  const degrees = celsius(state.metalK);
  if (isTooHot(state))
    return { state: 'hot', degrees, words: `Too hot, over ${celsius(tooHotK)}: fan on, or stop it.` };
  if (state.metalK < warmK)
    return {
      state: 'cold',
      degrees,
      words: `Still cold: readings drift until it is ${celsius(warmK)} warm.`,
    };
  return { state: 'warm', degrees, words: 'Warm enough to be set.' };
}

export const describeTemperature = celsius;

/** A share of a range: `24 %`. With a decimal where a press moves less than one per cent. */
export const describeShare = (share: number, decimals: 0 | 1): string =>
  `${formatFixed(share * 100, decimals)}\u00a0%`;

/** Turns of a screw from where it stood at first: `1/4 opened`. */
export function describeCounted(turns: number): string {
  const amount = describeTurns(Math.abs(turns));
  if (amount === '0') return 'as found';
  return `${amount} ${turns > 0 ? 'opened' : 'closed'}`;
}

export type ThreadWords = { readonly closing: string; readonly opening: string; readonly short: boolean };

/** Thread left each way, in turns with a decimal or two. */
export const describeThread = (left: TurnsLeft, { mark }: PracticeFigures): ThreadWords => ({
  closing: formatFixed(left.closing, 2, { mark }),
  opening: formatFixed(left.opening, 2, { mark }),
  short: isShort(left),
});

/** A screw as it is called at the bench. */
export const screwOf = ({ screws }: PracticeEngine, screw: number): string =>
  screwWords(screws[screw - 1]!.moves);

/** A line of the log; null for what is no work of its own. */
export function describeEntry(
  engine: PracticeEngine,
  entry: PracticeEntry,
  figures: PracticeFigures,
): string | null {
  if (entry.kind === 'action') return describeAction(engine, entry);
  const { look: seen, cylinder, nutsTight } = entry;
  return `Read ${cylinder}: ${describeDepression(engine, seen.depressionPa, figures)} at ${describeSpeed(seen.rpm)}${seen.still ? ', needle still' : ''}${nutsTight ? '' : ', a nut loose'}`;
}

type ActionEntry = Extract<PracticeEntry, { kind: 'action' }>;

function describeAction(engine: PracticeEngine, { action, happened }: ActionEntry): string | null {
  switch (action.kind) {
    case 'hand':
      return `Throttle to ${describeShare(action.reach, 1)}`;
    case 'tap':
      return `Damping tap to ${describeShare(action.opening, 0)}`;
    case 'select':
      return action.cylinder === null ? 'Selector shut' : `Selector to ${action.cylinder}`;
    case 'vent':
      return action.open ? 'Vented the line' : null;
    case 'fan':
      return action.on ? 'Fan on' : 'Fan off';
    case 'start':
      return 'Started the engine';
    case 'stop':
      return 'Stopped the engine';
    case 'loosen':
      return `Loosened the nut of ${screwOf(engine, action.screw)}`;
    case 'tighten':
      return `Tightened the nut of ${screwOf(engine, action.screw)}, ${action.held ? 'holding the screw' : 'the screw let go'}`;
    case 'turn':
      return describeTurnMade(screwOf(engine, action.screw), action, happened);
    case 'idle-screw':
      return describeTurnMade('the idle-speed screw', action, happened);
  }
}

function describeTurnMade(
  name: string,
  { turns }: PracticeAction & { readonly turns: number },
  happened: ActionEntry['happened'],
): string {
  if (happened.nutTight) return `The nut of ${name} is tight: loosen it first`;
  const verb = turns > 0 ? 'Opened' : 'Closed';
  const end = happened.boundWhen === null ? '' : '; there its thread ends';
  return happened.turns === 0
    ? `${name.charAt(0).toUpperCase()}${name.slice(1)} is at the end of its thread`
    : `${verb} ${name} by ${describeTurnSize(happened.turns)}${end}`;
}

/** What is said aloud of an entry: controls that tell their own state are left out. */
export function describeEntryAloud(
  engine: PracticeEngine,
  entry: PracticeEntry | undefined,
  figures: PracticeFigures,
): string {
  if (entry === undefined) return '';
  const quiet = entry.kind === 'action' && ['hand', 'tap', 'select', 'fan'].includes(entry.action.kind);
  const words = quiet ? null : describeEntry(engine, entry, figures);
  if (words === null) return '';
  const left = entry.kind === 'reading' && !entry.nutsTight ? ' The bench session takes none of these.' : '';
  return `${words}.${left}`;
}

/** The last reading of each cylinder that was written down, as its key shows it; null where there is none. */
export function lastReadings(
  { engine, entries }: PracticeRun,
  figures: PracticeFigures,
): readonly (string | null)[] {
  return engine.cylinders.map((_, i) => {
    const last = entries.findLast(
      (entry): entry is Extract<PracticeEntry, { kind: 'reading' }> & { look: Look } =>
        entry.kind === 'reading' && entry.cylinder === i + 1,
    );
    return last === undefined ? null : depressionFigure(engine, last.look.depressionPa, figures);
  });
}

/** What an exercise asks for, or a lesson teaches; with the speed and the tolerance. */
export function describeTask(
  engine: PracticeEngine,
  lesson: LessonId | null,
  figures: PracticeFigures,
): string {
  const all = engine.cylinders.length === 2 ? 'both' : `all ${numberInWords(engine.cylinders.length)}`;
  const hold = `Hold ${describeSpeed(engine.targetRpm)} for every reading`;
  return lesson === null
    ? `${hold}, and bring ${all} within ${describeDepression(engine, engine.tolerancePa, figures)}.`
    : `${lessonOf(lesson).about} ${hold}.`;
}

/** How far the tachometer is off the speed of the exercise: `60 rpm too fast`; empty where it is right. */
export function describeOffSpeed(offRpm: number): string {
  const size = Math.abs(offRpm);
  if (size <= closeRpm) return '';
  return `${describeSpeed(size)} too ${offRpm > 0 ? 'fast' : 'slow'}`;
}

/** Called right within one mark of the tachometer, so that what it is itself off may come on top; from memory. */
const closeRpm = 10;
