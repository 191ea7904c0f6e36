import {
  answerThreadTravelBudget,
  formatPressure,
  formatTrimmed,
  gapOfTurns,
  hexagonNut,
  initialForm,
  minimumEngagementDiameters,
  screwAdvanceMm,
  threadNamed,
  threadTravelBudgetFields,
} from '../../calculators/index.ts';
import { constantValue } from '../../components/constant-in-words.ts';

const thread = (name: string) => {
  const found = threadNamed(name);
  if (found === undefined) throw new Error(`no thread “${name}”`);
  return found;
};
const millimetres = (value: number): string => `${formatTrimmed(value, 3)}\u00a0mm`;
const travel = (name: string, turns: number): string =>
  millimetres(screwAdvanceMm(thread(name).pitchMm, turns));
const thinNut = (name: string): number => {
  const nut = hexagonNut('thin', name);
  if (nut === undefined) throw new Error(`no nut “${name}”`);
  return nut.heightMaxMm;
};

/** A usual adjuster, and a thread of another system that looks like it. */
const usual = 'M5';
const alike = '2BA';

export const threads = {
  usual,
  alike,
  pitch: travel(usual, 1),
  diameter: millimetres(thread(usual).diameterMm),
  alikePitch: travel(alike, 1),
  alikeDiameter: millimetres(thread(alike).diameterMm),
  quarter: travel(usual, 1 / 4),
  minute: travel(usual, 1 / 60),
  finePitch: travel('M5x0.5', 1),
  fineQuarter: travel('M5x0.5', 1 / 4),
  minimumEngagement: millimetres(minimumEngagementDiameters * thread(usual).diameterMm),
  nut: millimetres(thinNut(usual)),
  /** What a clock minute does to a reading, with the effect that the advice begins with. */
  minuteOfReading: formatPressure(gapOfTurns(1 / 60, constantValue('priors.effectPaPerTurn')), 'mmHg', 2),
} as const;

/** The example of the calculator without its plan: four adjusters, as they are found. */
const form = {
  ...initialForm(threadTravelBudgetFields),
  planned1: '0',
  planned2: '0',
  planned3: '0',
  planned4: '0',
};
const answered = answerThreadTravelBudget(form);
if (!answered.ok || answered.answer.shift === null)
  throw new Error('the example of the thread has a problem');
const { answer } = answered;
const fourth = answer.rows.find(({ adjuster }) => adjuster === 4);
const second = answer.rows.find(({ adjuster }) => adjuster === 2);
if (fourth === undefined || second === undefined) throw new Error('the example has four adjusters');

const shiftLine = (id: string): string => {
  const line = answer.shift?.lines.find((each) => each.id === id);
  if (line === undefined) throw new Error(`no figure “${id}”`);
  return line.text;
};

export const shortThread = {
  answer,
  opens: fourth.now.opening.text,
  closes: second.now.closing.text,
  all: shiftLine('all'),
  idle: shiftLine('idle'),
  least: shiftLine('least'),
} as const;
