import { exampleSessions } from '../../src/calculators/example-sessions.ts';
import type { Generation } from '../../src/calculators/index.ts';
import type { RecordedEvent, SessionRecord } from '../../src/device/session-record.ts';

/** An invented session of the handbook, as it is kept on a device. */
export const recordOf = (
  generation: Generation = 'all-adjustable',
  changes: Partial<SessionRecord> = {},
): SessionRecord => {
  const { setUp, events, fixed } = exampleSessions[generation];
  return {
    app: 'evendraw 0.1.0',
    id: `invented-${generation}`,
    name: 'The grey one',
    notes: '',
    startedAt: '2026-04-11T09:30:00+02:00',
    generation,
    unit: 'mmHg',
    setUp: {
      ...setUp,
      ...(fixed === undefined ? {} : { fixed }),
      opens: setUp.screws.map(() => 'clockwise' as const),
    },
    events: events.map((event, k) => ({ ...event, minute: k, typed: String(k) })),
    signOff: null,
    ...changes,
  };
};

/** Many sessions, with as many readings each as asked for. */
export const manyRecords = (
  count: number,
  { notes = '', events = 3 }: { notes?: string; events?: number } = {},
): SessionRecord[] =>
  Array.from({ length: count }, (_, k) => {
    const reading = (event: number): RecordedEvent => ({
      kind: 'reading',
      carburettor: (event % 4) + 1,
      depressionPa: 25_000 + event,
      minute: event,
      typed: String(event),
    });
    return recordOf('all-adjustable', {
      id: `invented-${k}`,
      notes,
      events: Array.from({ length: events }, (__, event) => reading(event)),
    });
  });
