import { stoppedTimer, type ParsedSetUp, type TypedReading } from '../../../calculators/index.ts';
import { newSessionId, nowText } from '../../../device/clock.ts';
import { saveFile } from '../../../device/save-file.ts';
import {
  isRecord,
  writeRecord,
  type RecordedEvent,
  type SessionRecord,
} from '../../../device/session-record.ts';
import { rememberInFiles } from '../../../device/sessions-in-files.ts';
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

/** Its engine has run up to the last event. */
export const storedFrom = ({ events, ...head }: SessionRecord): StoredSession => ({
  head: { ...head, timer: stoppedTimer(events.at(-1)?.minute ?? 0) },
  events,
});

export const recordFrom = ({ head: { timer: _, ...head }, events }: StoredSession): SessionRecord => ({
  ...head,
  events: [...events],
});

/** The name of a file: the site, a day, and words. */
export const fileName = (instant: string, words: string): string => {
  const plain = words
    .toLowerCase()
    .replace(/[^a-z0-9]+/gu, '-')
    .replace(/^-+|-+$/gu, '');
  return ['evendraw', instant.slice(0, 10), plain].filter(Boolean).join('-');
};

/** Offers the session as a file named after its day and engine. */
export const saveSession = (session: StoredSession): void => {
  const { id, startedAt, name } = session.head;
  saveFile(`${fileName(startedAt, name)}.json`, writeRecord(recordFrom(session)), 'application/json');
  rememberInFiles([{ id, events: session.events.length }]);
};
