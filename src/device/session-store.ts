import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { RecordedEvent, SessionRecord } from './session-record.ts';

import type { RunningTimer } from '../calculators/index.ts';

/** What is kept of a session beside its events. `timer` is the engine's running time. */
export type SessionHead = Omit<SessionRecord, 'events'> & { readonly timer: RunningTimer };

export type StoredSession = { readonly head: SessionHead; readonly events: readonly RecordedEvent[] };

/** Sessions on this device. Every promise is kept only when the transaction is complete. */
export type SessionStore = {
  /** False where the browser keeps nothing: the session then lives as long as the page. */
  readonly keeps: boolean;
  readonly list: () => Promise<readonly StoredSession[]>;
  readonly load: (id: string) => Promise<StoredSession | null>;
  readonly putHead: (head: SessionHead) => Promise<void>;
  /** Writes one event at its place; one transaction. */
  readonly putEvent: (id: string, index: number, event: RecordedEvent) => Promise<void>;
  readonly dropEvent: (id: string, index: number) => Promise<void>;
  readonly putSession: (session: StoredSession) => Promise<void>;
  readonly remove: (id: string) => Promise<void>;
};

interface BenchSchema extends DBSchema {
  heads: { key: string; value: SessionHead };
  events: { key: [string, number]; value: RecordedEvent };
}

/** The browser's own database, or memory where there is none or it refuses. */
export const openSessionStore = async (): Promise<SessionStore> => {
  try {
    return databaseStore(
      await openDB<BenchSchema>('evendraw', 1, {
        upgrade: (database) => {
          database.createObjectStore('heads', { keyPath: 'id' });
          database.createObjectStore('events');
        },
      }),
    );
  } catch {
    return memoryStore();
  }
};

const eventsOf = (id: string): IDBKeyRange => IDBKeyRange.bound([id, 0], [id, Infinity]);
const strict = { durability: 'strict' } as const;

const databaseStore = (database: IDBPDatabase<BenchSchema>): SessionStore => {
  const load = async (id: string): Promise<StoredSession | null> => {
    const reading = database.transaction(['heads', 'events']);
    const head = await reading.objectStore('heads').get(id);
    return head ? { head, events: await reading.objectStore('events').getAll(eventsOf(id)) } : null;
  };
  return {
    keeps: true,
    load,
    list: async () => {
      const sessions = await Promise.all((await database.getAllKeys('heads')).map(load));
      return newestFirst(sessions.filter((session) => session !== null));
    },
    putHead: async (head) => {
      const writing = database.transaction('heads', 'readwrite', strict);
      await Promise.all([writing.store.put(head), writing.done]);
    },
    putEvent: async (id, index, event) => {
      const writing = database.transaction('events', 'readwrite', strict);
      await Promise.all([writing.store.put(event, [id, index]), writing.done]);
    },
    dropEvent: async (id, index) => {
      const writing = database.transaction('events', 'readwrite', strict);
      await Promise.all([writing.store.delete([id, index]), writing.done]);
    },
    putSession: async ({ head, events }) => {
      const writing = database.transaction(['heads', 'events'], 'readwrite', strict);
      const eventStore = writing.objectStore('events');
      await Promise.all([
        writing.objectStore('heads').put(head),
        eventStore.delete(eventsOf(head.id)),
        ...events.map((event, index) => eventStore.put(event, [head.id, index])),
        writing.done,
      ]);
    },
    remove: async (id) => {
      const writing = database.transaction(['heads', 'events'], 'readwrite', strict);
      await Promise.all([
        writing.objectStore('heads').delete(id),
        writing.objectStore('events').delete(eventsOf(id)),
        writing.done,
      ]);
    },
  };
};

const memoryStore = (): SessionStore => {
  const sessions = new Map<string, { head: SessionHead; events: RecordedEvent[] }>();
  return {
    keeps: false,
    load: async (id) => {
      const session = sessions.get(id);
      return session ? asItStands(session) : null;
    },
    list: async () => newestFirst([...sessions.values()].map(asItStands)),
    putHead: async (head) => {
      sessions.set(head.id, { head, events: sessions.get(head.id)?.events ?? [] });
    },
    putEvent: async (id, index, event) => {
      const events = sessions.get(id)?.events;
      if (events) events[index] = event;
    },
    dropEvent: async (id, index) => {
      sessions.get(id)?.events.splice(index, 1);
    },
    putSession: async ({ head, events }) => {
      sessions.set(head.id, { head, events: [...events] });
    },
    remove: async (id) => {
      sessions.delete(id);
    },
  };
};

/** A copy that later writes do not reach, as a database gives one. */
const asItStands = ({ head, events }: StoredSession): StoredSession => ({ head, events: [...events] });

const newestFirst = (sessions: readonly StoredSession[]): readonly StoredSession[] =>
  [...sessions].sort((a, b) => Date.parse(b.head.startedAt) - Date.parse(a.head.startedAt));
