import { mean } from './mean.ts';
import type { SessionEvent, SetUp } from './protocol.ts';

/** The round that proves the result: every carburettor read once more, locked, with nothing turned since it began. */
export type SignOffRound =
  | { readonly kind: 'broken' }
  | { readonly kind: 'under-way'; readonly carburettor: number }
  | {
      readonly kind: 'complete';
      /** Highest less lowest of the means of the round's readings. */
      readonly spreadPa: number;
      readonly within: boolean;
      /** The carburettor furthest from the middle of all: the one to read again in case of doubt. */
      readonly furthest: number;
    };

export const signOffRound = (
  setUp: SetUp,
  events: readonly SessionEvent[],
  fromEvent: number,
): SignOffRound => {
  const since = events.slice(fromEvent);
  if (since.some((event) => event.kind === 'turn')) return { kind: 'broken' };
  const means: number[] = [];
  for (let carburettor = 1; carburettor <= setUp.carburettors; carburettor++) {
    const readings = since.flatMap((event) =>
      event.kind === 'reading' && event.carburettor === carburettor ? [event.depressionPa] : [],
    );
    const [first, ...others] = readings;
    if (first === undefined) return { kind: 'under-way', carburettor };
    means.push(mean([first, ...others]));
  }
  const middle = (Math.max(...means) + Math.min(...means)) / 2;
  const distances = means.map((value) => Math.abs(value - middle));
  const spreadPa = Math.max(...means) - Math.min(...means);
  // The tail of binary fractions must not fail a set that lies exactly on its tolerance.
  const within = spreadPa <= setUp.tolerancePa * (1 + 1e-9);
  return { kind: 'complete', spreadPa, within, furthest: distances.indexOf(Math.max(...distances)) + 1 };
};
