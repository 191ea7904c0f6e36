import type { RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import {
  describeEntryAloud,
  describeNeedle,
  describeTachometer,
  isSettled,
  playAction,
  playFor,
  playReading,
  pressVent,
  startPlay,
} from '../../../calculators/index.ts';
import type {
  Play,
  PracticeAction,
  PracticeFigures,
  PracticePace,
  PracticeRun,
} from '../../../calculators/index.ts';
import { atMost, everyFrame, watchReducedMotion } from '../../../device/animation.ts';
import { needleTransform } from '../../../drawing/practice-dial.ts';
import type { PracticeDial } from '../../../drawing/practice-dial.ts';

/** The figures follow five times a second; with reduced motion the needle is drawn anew twice a second. */
const figuresPerSecond = 5;
const calmNeedlesPerSecond = 2;

/** What is told in a status line; a new number says the same words again. */
export type Said = { readonly number: number; readonly words: string };

export interface PlayControl {
  readonly run: PracticeRun;
  readonly needle: RefObject<SVGPathElement>;
  readonly pace: PracticePace;
  readonly paused: boolean;
  readonly said: Said;
  readonly setPace: (pace: PracticePace) => void;
  readonly setPaused: (paused: boolean) => void;
  /** Does what follows from where everything stands just now. */
  readonly act: (actionOf: (play: Play) => PracticeAction) => void;
  readonly vent: () => void;
  readonly write: () => void;
  /** Tells the needle in words. */
  readonly lookAtNeedle: () => void;
  /** The run as it stands at this moment. */
  readonly runNow: () => PracticeRun;
}

/**
 * A run that goes on while it is shown. The needle is moved past the framework, at every frame; all else is drawn anew
 * five times a second. In words, the needle is told once after each action, when it has come to rest.
 */
export function usePlay(
  first: PracticeRun,
  dial: PracticeDial,
  figures: PracticeFigures,
  inWords: boolean,
): PlayControl {
  const [shown, setShown] = useState(() => startPlay(first));
  const latest = useRef<Play>(shown);
  const [pace, setPace] = useState<PracticePace>(1);
  const [paused, setPaused] = useState(false);
  const [calm, setCalm] = useState(false);
  const [said, setSaid] = useState<Said>({ number: 0, words: '' });
  const needle = useRef<SVGPathElement>(null);
  const waitsForNeedle = useRef(false);

  const say = (words: string): void => setSaid(({ number }) => ({ number: number + 1, words }));
  const needleWords = (run: PracticeRun): string =>
    `${describeNeedle(run, figures)} ${describeTachometer(run)}.`;

  useEffect(() => watchReducedMotion(setCalm), []);
  useEffect(() => {
    if (paused) return setShown(latest.current);
    const isNeedleDue = atMost(calmNeedlesPerSecond);
    const areFiguresDue = atMost(figuresPerSecond);
    return everyFrame(({ elapsedSeconds, nowSeconds }) => {
      const wasRunning = latest.current.run.state.running;
      latest.current = playFor(latest.current, elapsedSeconds, pace);
      const { run } = latest.current;
      if (!calm || isNeedleDue(nowSeconds))
        needle.current?.setAttribute('transform', needleTransform(dial, run.state.needlePa));
      if (wasRunning && !run.state.running) say('The engine has stopped.');
      if (!areFiguresDue(nowSeconds)) return;
      setShown(latest.current);
      if (!inWords || !waitsForNeedle.current || !isSettled(run)) return;
      waitsForNeedle.current = false;
      say(needleWords(run));
    });
  }, [pace, paused, calm, dial, inWords]);

  function take(play: Play): void {
    latest.current = play;
    waitsForNeedle.current = true;
    setShown(play);
    const words = describeEntryAloud(play.run.engine, play.run.entries.at(-1), figures);
    if (words !== '') say(words);
  }

  return {
    run: shown.run,
    needle,
    pace,
    paused,
    said,
    setPace,
    setPaused,
    act: (actionOf) => take(playAction(latest.current, actionOf(latest.current)).play),
    vent: () => take(pressVent(latest.current)),
    write: () => take(playReading(latest.current)),
    lookAtNeedle: () => say(needleWords(latest.current.run)),
    runNow: () => latest.current.run,
  };
}
