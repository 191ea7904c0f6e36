import { formatFixed } from '../format-number.ts';
import { margins } from '../advisor/priors.ts';
import { describeTurnSize } from '../format-turns.ts';
import { inventEngine } from '../practice/invent.ts';
import type { PracticeEngine } from '../practice/engine.ts';
import { firstState } from '../practice/state.ts';
import { holdingReach, leftAlone, trueDepressionsPa } from '../practice/steady.ts';
import { pressureFigures } from '../pressure-figures.ts';
import { joinedNumbers, membersWords, screwWords } from '../screw-words.ts';
import { certain } from './certain.ts';
import type { DrawnReadings } from './drawn-readings.ts';

/** Two kinds of linkage, each an invented engine of the practice engine. */
const oneScrewExercises = {
  'all-adjustable': { generation: 'all-adjustable', carburettors: 4, grade: 1, seed: 4, fault: null },
  'paired-screws': { generation: 'paired-screws', carburettors: 4, grade: 1, seed: 3, fault: null },
} as const;

export type OneScrewLinkage = keyof typeof oneScrewExercises;
export const oneScrewLinkages = Object.keys(oneScrewExercises) as OneScrewLinkage[];

/** The slider goes by minutes of a clock face, so many either way. */
export const oneScrewMinutesLimits = { min: -30, max: 30, step: 5 } as const;

/** An engine as it stands, before a screw is turned. */
export type OneScrewScene = {
  readonly engine: PracticeEngine;
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
  const engine = certain(inventEngine(oneScrewExercises[linkage]));
  const { controls } = firstState(engine, 0);
  return {
    engine,
    reach: holdingReach(engine, controls),
    beforePa: trueDepressionsPa(engine, controls),
    moves: engine.screws.map(({ moves }) => membersWords(moves)),
  };
}

/** What every gauge shows after one screw was turned: computed by the practice engine, which knows nothing of the advice. */
export function turnOneScrew(scene: OneScrewScene, { screw, minutes, speedBack }: OneTurn): OneScrewShown {
  const { engine, reach, beforePa } = scene;
  const turns = minutes * margins.turnStep;
  const { controls } = firstState(engine, 0);
  const turned = {
    ...controls,
    screwTurns: controls.screwTurns.map((_, j) => (j === screw - 1 ? turns : 0)),
  };
  const { rpm, depressionsPa } = speedBack
    ? { rpm: engine.targetRpm, depressionsPa: trueDepressionsPa(engine, turned) }
    : leftAlone(engine, turned, reach);
  const figures = pressureFigures('mmHg', 0, 'point');
  const amount = `${describeTurnSize(turns)}${turns === 0 ? '' : turns > 0 ? ' open' : ' shut'}`;
  const speed = `${formatFixed(rpm / 10, 0)}0\u00a0rpm`;
  const changesPa = depressionsPa.map((pa, i) => pa - beforePa[i]!);
  const moved = engine.screws[screw - 1]!.moves;
  const group = (isMoved: boolean): string => {
    const members = changesPa.flatMap((_, i) => ((moved[i] !== 0) === isMoved ? [i] : []));
    const sizes = members.map((i) => Math.abs(changesPa[i]!));
    const [least, most] = [Math.min(...sizes), Math.max(...sizes)].map(figures.number);
    const [noun, verb] = members.length === 1 ? ['carburettor', 'reads'] : ['carburettors', 'read'];
    const way = changesPa[members[0]!]! < 0 ? 'lower' : 'higher';
    return `${noun}\u00a0${joinedNumbers(members.map((i) => i + 1))} ${verb} ${least === most ? '' : `${least} to `}${figures.withUnit(Math.max(...sizes))} ${way}`;
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
      tolerancePa: engine.tolerancePa,
      unit: 'mmHg',
      decimals: 0,
      mark: 'point',
      scalePa: widestPa(beforePa),
    },
    plotWords: `Depression: ${depressionsPa.map((pa, i) => `carburettor ${i + 1}, ${figures.withUnit(pa)}, before ${figures.number(beforePa[i]!)}`).join('; ')}.`,
  };
}

/** The scale keeps still while a screw is turned: as far beyond the readings as half a turn can bring them. */
const widestPa = (beforePa: readonly number[]): readonly [number, number] => {
  const [low, high] = [Math.min(...beforePa), Math.max(...beforePa)];
  return [low * 0.7, high * 1.45];
};

const sentenceCase = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
