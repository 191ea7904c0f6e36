import { widthAt95, type Bench, type SessionEvent } from '../calculators/index.ts';
import type { StripMark } from './strip.ts';

/** The marks of the strip: every carburettor that has been read, before the last turn, now, and after the step. */
export const stripMarks = (bench: Bench, events: readonly SessionEvent[]): readonly StripMark[] => {
  const { step, estimate, beforeTurnPa } = bench;
  const read = new Set(events.flatMap((event) => (event.kind === 'reading' ? [event.carburettor] : [])));
  return estimate.depressionPa.flatMap((depressionPa, i) => {
    if (!read.has(i + 1)) return [];
    const beforePa = beforeTurnPa?.[i];
    const afterPa = step.kind === 'turn' ? step.expectedDepressionPa[i] : undefined;
    return [
      {
        number: i + 1,
        depressionPa,
        halfWidthPa: widthAt95(estimate.standardUncertaintyPa[i] ?? 0),
        ...(beforePa === undefined ? {} : { beforePa }),
        ...(afterPa === undefined ? {} : { afterPa }),
      },
    ];
  });
};
