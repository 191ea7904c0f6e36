import type { SetUp } from './protocol.ts';

/** The carburettor that a screw moves most, the first among equals: the one to read after its turn. Both count from 1. */
export const mostMovedCarburettor = (setUp: SetUp, screw: number): number => {
  const shares = setUp.screws[screw - 1]!.moves.map(Math.abs);
  return shares.indexOf(Math.max(...shares)) + 1;
};
