import { formatFixed } from '../format-number.ts';
import { margins } from '../advisor/priors.ts';
import { describeTurnSize } from '../format-turns.ts';
import type { SteadyEngine } from '../practice/engine.ts';
import { holdingReach, leftAlone, trueDepressionsPa } from '../practice/steady.ts';
import { joinedNumbers, membersWords, screwWords } from '../screw-words.ts';
import type { DrawnReadings } from './drawn-readings.ts';
import { mmHgNumber, mmHgPa, mmHgWords } from './mmhg.ts';
import { engineShowing } from './one-screw-engine.ts';

/** Two kinds of linkage, invented: what the gauges show before, in mmHg, and which carburettors each screw moves. */
const oneScrewExercises = {
  'all-adjustable': {
    showsMmHg: [235, 271, 237, 211],
    moves: [
      [1, 0, 0, 0],
      [0, 1, 0, 0],
      [0, 0, 1, 0],
      [0, 0, 0, 1],
    ],
  },
  'paired-screws': {
    showsMmHg: [278, 232, 228, 241],
    moves: [
      [1, 0, 0, 0],
      [0, 0, 0, 1],
      [0, 0, 1, 1],
    ],
  },
} as const;

export type OneScrewLinkage = keyof typeof oneScrewExercises;
export const oneScrewLinkages = Object.keys(oneScrewExercises) as OneScrewLinkage[];

/** The slider goes by minutes of a clock face, so many either way. */
export const oneScrewMinutesLimits = { min: -30, max: 30, step: 5 } as const;

/** An engine as it stands, before a screw is turned. */
export type OneScrewScene = {
  readonly engine: SteadyEngine;
  readonly reach: number;
  readonly beforePa: readonly number[];
  /** What each screw moves: `1`, `3 and 4`. */
  readonly moves: readonly string[];
};

export type OneTurn = {
  /** From 1. */
  readonly screw: number;
  /** Minutes of a clock face; positive opens. */
  readonly minutes: number;
  /** Whether the hand brings the speed back, or leaves the throttle alone. */
  readonly speedBack: boolean;
};

export const oneTurnExample: OneTurn = { screw: 1, minutes: 15, speedBack: true };

export type OneScrewShown = DrawnReadings & {
  readonly rpm: number;
  readonly depressionsPa: readonly number[];
  readonly amount: string;
};

/** The engine of a linkage, the same every time. */
export function oneScrewScene(linkage: OneScrewLinkage): OneScrewScene {
  const { showsMmHg, moves } = oneScrewExercises[linkage];
  const engine = engineShowing(showsMmHg, moves);
  const untouched = settingsOf(engine, () => 0);
  return {
    engine,
    reach: holdingReach(engine, untouched),
    beforePa: trueDepressionsPa(engine, untouched),
    moves: moves.map(membersWords),
  };
}

const settingsOf = (engine: SteadyEngine, turnsOf: (screw: number) => number) => ({
  idleTurns: 0,
  screwTurns: engine.screws.map((_, j) => turnsOf(j + 1)),
});

/** What every gauge shows after one screw was turned: computed by the practice engine, which knows nothing of the advice. */
export function turnOneScrew(scene: OneScrewScene, { screw, minutes, speedBack }: OneTurn): OneScrewShown {
  const { engine, reach, beforePa } = scene;
  const turns = minutes * margins.turnStep;
  const turned = settingsOf(engine, (each) => (each === screw ? turns : 0));
  const { rpm, depressionsPa } = speedBack
    ? { rpm: engine.targetRpm, depressionsPa: trueDepressionsPa(engine, turned) }
    : leftAlone(engine, turned, reach);
  const amount = `${describeTurnSize(turns)}${turns === 0 ? '' : turns > 0 ? ' open' : ' shut'}`;
  const speed = `${formatFixed(rpm / 10, 0)}0\u00a0rpm`;
  const changesPa = depressionsPa.map((pa, i) => pa - beforePa[i]!);
  const moved = engine.screws[screw - 1]!.moves;
  const group = (isMoved: boolean): string => {
    const members = changesPa.flatMap((_, i) => ((moved[i] !== 0) === isMoved ? [i] : []));
    const sizes = members.map((i) => Math.abs(changesPa[i]!));
    const [least, most] = [Math.min(...sizes), Math.max(...sizes)].map(mmHgNumber);
    const [noun, verb] = members.length === 1 ? ['carburettor', 'reads'] : ['carburettors', 'read'];
    const way = changesPa[members[0]!]! < 0 ? 'lower' : 'higher';
    return `${noun}\u00a0${joinedNumbers(members.map((i) => i + 1))} ${verb} ${least === most ? '' : `${least} to `}${mmHgWords(Math.max(...sizes))} ${way}`;
  };
  const hand = speedBack
    ? `the speed brought back to ${speed}`
    : `the throttle left alone, so that the engine runs at ${speed}`;
  return {
    rpm,
    depressionsPa,
    amount,
    said:
      turns === 0
        ? 'No screw has been turned yet.'
        : `${sentenceCase(screwWords(moved))} ${turns > 0 ? 'opened' : 'closed'} by ${describeTurnSize(turns)}, ${hand}: ${group(true)}, and ${group(false)}.`,
    plot: {
      marks: depressionsPa.map((depressionPa, i) => ({
        number: i + 1,
        depressionPa,
        halfWidthPa: 0,
        beforePa: beforePa[i]!,
      })),
      tolerancePa: 20 * mmHgPa,
      unit: 'mmHg',
      decimals: 0,
      mark: 'point',
      scalePa: widestPa(beforePa),
    },
    plotWords: `Depression: ${depressionsPa.map((pa, i) => `carburettor ${i + 1}, ${mmHgWords(pa)}, before ${mmHgNumber(beforePa[i]!)}`).join('; ')}.`,
  };
}

/** The scale keeps still while a screw is turned: as far beyond the readings as half a turn can bring them. */
const widestPa = (beforePa: readonly number[]): readonly [number, number] => {
  const [low, high] = [Math.min(...beforePa), Math.max(...beforePa)];
  return [low * 0.75, high * 1.35];
};

const sentenceCase = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
