import type { TurnsLeft } from './protocol.ts';

/** From memory: a screw with less than this left on a side, in turns, is named as short. */
export const shortOfThreadTurns = 0.3;

/** Whether a side of a screw, or with both sides given the shorter one, is short of thread. */
export const isShort = (left: Partial<TurnsLeft>): boolean =>
  Math.min(left.closing ?? Infinity, left.opening ?? Infinity) < shortOfThreadTurns;
