import type { RunningTimer } from '../calculators/index.ts';
import { isRecord, type SessionRecord } from './session-record.ts';
import type { StoredSession } from './stored-session.ts';

/** What stands in the database as a session, or null where it is damaged. */
export const asStoredSession = (head: unknown, events: unknown): StoredSession | null => {
  if (typeof head !== 'object' || head === null || !('timer' in head) || !isTimer(head.timer)) return null;
  const { timer, ...rest } = head;
  const record = { ...rest, events };
  return isRecord(record) ? { head: { ...withoutEvents(record), timer }, events: record.events } : null;
};

const withoutEvents = ({ events: _, ...head }: SessionRecord): Omit<SessionRecord, 'events'> => head;

const isTimer = (given: unknown): given is RunningTimer =>
  typeof given === 'object' &&
  given !== null &&
  'gatheredMs' in given &&
  Number.isFinite(given.gatheredMs) &&
  'runningSince' in given &&
  (given.runningSince === null || Number.isFinite(given.runningSince));
