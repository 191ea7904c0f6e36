import { exampleSessions } from '../src/calculators/example-sessions.ts';
import type { RecordedEvent } from '../src/device/session-record.ts';
import type { SessionHead } from '../src/device/stored-session.ts';

const { setUp } = exampleSessions['separate-cables'];

/** An invented session as it is kept. */
export const storedHead = (id: string, startedAt = '2026-04-11T09:30:00.000Z', name = id): SessionHead => ({
  app: '0.1.0',
  id,
  name,
  notes: '',
  startedAt,
  generation: 'separate-cables',
  unit: 'mmHg',
  setUp: { ...setUp, opens: setUp.screws.map(() => 'unknown' as const) },
  signOff: null,
  timer: { gatheredMs: 0, runningSince: null },
});

export const storedReading = (depressionPa: number): RecordedEvent => ({
  kind: 'reading',
  carburettor: 1,
  depressionPa,
  typed: String(depressionPa),
});

export const storedReadings = (count: number): RecordedEvent[] =>
  Array.from({ length: count }, (_, k) => storedReading(100 + k));
