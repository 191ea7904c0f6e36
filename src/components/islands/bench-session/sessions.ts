import type { ParsedSetUp, TypedReading } from '../../../calculators/index.ts';
import { newSessionId, nowText } from '../../../device/clock.ts';
import { saveFile } from '../../../device/save-file.ts';
import {
  isRecord,
  writeRecord,
  type RecordedEvent,
  type SessionRecord,
} from '../../../device/session-record.ts';
import { siteVersion } from '../../../device/site-version.ts';
import type { StoredSession } from '../../../device/stored-session.ts';

/** A new session from the set-up and the readings that were there already. */
export const newSession = (
  { generation, unit, setUp }: ParsedSetUp,
  readings: readonly TypedReading[],
): StoredSession => {
  const events: readonly RecordedEvent[] = readings.map((reading) => ({ kind: 'reading', ...reading }));
  const record = {
    app: `evendraw ${siteVersion}`,
    id: newSessionId(),
    name: '',
    notes: '',
    startedAt: nowText(),
    generation,
    unit,
    setUp,
    events,
    signOff: null,
  };
  if (!isRecord(record)) throw new Error('a set-up that its own schema refuses');
  return storedFrom(record);
};

export const storedFrom = ({ events, ...head }: SessionRecord): StoredSession => ({
  head: { ...head, timer: { gatheredMs: 0, runningSince: null } },
  events,
});

export const recordFrom = ({ head: { timer: _, ...head }, events }: StoredSession): SessionRecord => ({
  ...head,
  events: [...events],
});

/** Offers the session as a file named after its day and engine. */
export const saveSession = (session: StoredSession): void => {
  const { startedAt, name } = session.head;
  const words = name
    .toLowerCase()
    .replace(/[^a-z0-9]+/gu, '-')
    .replace(/^-+|-+$/gu, '');
  const file = ['evendraw', startedAt.slice(0, 10), words].filter(Boolean).join('-');
  saveFile(`${file}.json`, writeRecord(recordFrom(session)), 'application/json');
};
