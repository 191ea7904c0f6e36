import type { RunningTimer } from '../calculators/index.ts';
import type { RecordedEvent, SessionRecord } from './session-record.ts';

/** What is kept of a session beside its events. `timer` is the engine's running time. */
export type SessionHead = Omit<SessionRecord, 'events'> & { readonly timer: RunningTimer };

export type StoredSession = { readonly head: SessionHead; readonly events: readonly RecordedEvent[] };

/** A session that cannot be opened: what of it stands in the database, as it stands there. */
export type DamagedSession = { readonly id: string; readonly head: unknown; readonly events: unknown };

export type StoredSessions = {
  readonly sessions: readonly StoredSession[];
  readonly damaged: readonly DamagedSession[];
};

export const isDamaged = (one: StoredSession | DamagedSession): one is DamagedSession => 'id' in one;
export const isWhole = (one: StoredSession | DamagedSession): one is StoredSession => !isDamaged(one);

/** Whether the session was signed off, or given up. */
export const isEnded = ({ signOff }: SessionHead): boolean =>
  signOff !== null && signOff.verdict !== 'under-way';

export const newestFirst = (sessions: readonly StoredSession[]): readonly StoredSession[] =>
  [...sessions].sort((a, b) => Date.parse(b.head.startedAt) - Date.parse(a.head.startedAt));
