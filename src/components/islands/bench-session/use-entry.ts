import { useRef, useState } from 'preact/hooks';
import {
  mostMovedCarburettor,
  parseReading,
  parseSpeed,
  recordedMinute,
  runningMinutes,
  type BenchStep,
  type Problem,
} from '../../../calculators/index.ts';
import { nowMs } from '../../../device/clock.ts';
import type { RecordedEvent } from '../../../device/session-record.ts';
import type { StoredSession } from '../../../device/stored-session.ts';
import type { BenchActions } from './use-bench.ts';

export type Turned = { readonly screw: number; readonly turns: number };

/** What the person does instead of the step: reads another carburettor, or has turned something else. */
type Instead = { readonly carburettor?: number; readonly turn?: Turned };

/** What is being typed, and what Record will make of it. Nothing typed is lost by an error. */
export const useEntry = ({ head, events }: StoredSession, step: BenchStep | null, actions: BenchActions) => {
  const setUp = head.setUp;
  const [typed, setTyped] = useState('');
  const [speed, setSpeed] = useState('');
  const [problem, setProblem] = useState<Problem | null>(null);
  const [speedProblem, setSpeedProblem] = useState<Problem | null>(null);
  const [instead, setInstead] = useState<Instead>({});
  const field = useRef<HTMLInputElement>(null);

  const stepTurn = step?.kind === 'turn' && instead.carburettor === undefined ? step : null;
  const turn: Turned | null = instead.turn ?? stepTurn;
  const stepRead = step?.kind === 'read' ? step.carburettor : step?.kind === 'turn' ? step.read : null;
  const carburettor = instead.carburettor ?? stepRead;

  const clear = (): void => {
    setTyped('');
    setSpeed('');
    setProblem(null);
    setSpeedProblem(null);
    setInstead({});
    field.current?.focus({ preventScroll: true });
  };

  const record = (text: string = typed): void => {
    const minute = recordedMinute(runningMinutes(head.timer, nowMs()));
    const turned: readonly RecordedEvent[] = turn
      ? [{ kind: 'turn', screw: turn.screw, turns: turn.turns, minute }]
      : [];
    if (text.trim() === '' && turn) {
      actions.record(turned);
      return clear();
    }
    const reading = parseReading(text, head.unit, setUp);
    const rpm = parseSpeed(speed);
    setProblem(reading.ok ? null : reading.problem);
    setSpeedProblem(rpm.ok ? null : rpm.problem);
    if (!reading.ok || !rpm.ok || carburettor === null) return;
    const withSpeed = rpm.value === undefined ? {} : { rpm: rpm.value };
    actions.record([
      ...turned,
      { kind: 'reading', carburettor, depressionPa: reading.value, ...withSpeed, minute, typed: text.trim() },
    ]);
    clear();
  };

  const undo = (): void => {
    setProblem(null);
    if (typed !== '') return setTyped(typed.slice(0, -1));
    setInstead({});
    actions.undo();
  };

  return {
    typed,
    speed,
    problem,
    speedProblem,
    field,
    stepTurn,
    turn,
    carburettor,
    insteadTurn: instead.turn ?? null,
    canUndo: typed !== '' || events.length > 0,
    setTyped,
    setSpeed,
    readInstead: (chosen: number) => setInstead({ carburettor: chosen }),
    turnInstead: (chosen: Turned) =>
      setInstead({ turn: chosen, carburettor: mostMovedCarburettor(setUp, chosen.screw) }),
    record,
    undo,
  };
};

export type EntryState = ReturnType<typeof useEntry>;
