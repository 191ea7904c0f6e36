import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { RecordedEvent } from './session-record.ts';
import {
  isDamaged,
  isWhole,
  newestFirst,
  type DamagedSession,
  type SessionHead,
  type StoredSession,
  type StoredSessions,
} from './stored-session.ts';

/**
 * Sessions in the browser's own database. Every promise is kept only when the transaction is complete. A write that does
 * not follow on what stands there is refused: something else has changed the session, or it was cleared.
 */
export type SessionStore = {
  readonly list: () => Promise<StoredSessions>;
  readonly load: (id: string) => Promise<StoredSession | null>;
  readonly putHead: (head: SessionHead) => Promise<void>;
  /** Writes one event at its place; one transaction. */
  readonly putEvent: (id: string, index: number, event: RecordedEvent) => Promise<void>;
  readonly dropEvent: (id: string, index: number) => Promise<void>;
  readonly putSession: (session: StoredSession) => Promise<void>;
  readonly remove: (id: string) => Promise<void>;
  readonly close: () => void;
};

/**
 * Why nothing can be kept: no database in this browser, a refusal, one that a newer version of the site has made, or one
 * that gives no answer.
 */
export type NoStore = 'missing' | 'refused' | 'newer' | 'silent';
/** How an open database was lost: it was cleared, or a newer version of the site wants it. */
export type LostStore = 'cleared' | 'newer';

type AnsweredStore =
  | { readonly ok: true; readonly store: SessionStore }
  | { readonly ok: false; readonly why: Exclude<NoStore, 'silent'> };

export type OpenedStore =
  | AnsweredStore
  /** The answer may still come. */
  | { readonly ok: false; readonly why: 'silent'; readonly late: Promise<AnsweredStore> };

interface BenchSchema extends DBSchema {
  heads: { key: string; value: SessionHead };
  events: { key: [string, number]; value: RecordedEvent };
}

/** How long an answer is waited for: our choice. Some browsers give none for a while after they were ended by force. */
export const longestOpeningMs = 5000;
/** How often a browser is asked that cannot say why it failed, and the wait between: our choice. */
const mostTries = 4;
const betweenTriesMs = 500;

/** Version of the database's form. A newer one is left untouched. */
export const databaseVersion = 1;

export const openSessionStore = (onLost: (how: LostStore) => void): Promise<OpenedStore> => {
  const late = openWhenItAnswers(onLost);
  return new Promise((resolve) => {
    const waiting = setTimeout(() => resolve({ ok: false, why: 'silent', late }), longestOpeningMs);
    void late.then((answered) => {
      clearTimeout(waiting);
      resolve(answered);
    });
  });
};

const openWhenItAnswers = async (onLost: (how: LostStore) => void, tries = 1): Promise<AnsweredStore> => {
  if (!('indexedDB' in globalThis) || !globalThis.indexedDB) return { ok: false, why: 'missing' };
  try {
    const database = await openDB<BenchSchema>('evendraw', databaseVersion, {
      upgrade: (made) => {
        made.createObjectStore('heads', { keyPath: 'id' });
        made.createObjectStore('events');
      },
      blocking: (_, wanted) => {
        database.close();
        onLost(wanted === null ? 'cleared' : 'newer');
      },
      terminated: () => onLost('cleared'),
    });
    return { ok: true, store: databaseStore(database) };
  } catch (error) {
    const name = error instanceof DOMException ? error.name : '';
    if (name !== 'UnknownError' || tries === mostTries)
      return { ok: false, why: name === 'VersionError' ? 'newer' : 'refused' };
    await new Promise((resolve) => setTimeout(resolve, betweenTriesMs));
    return openWhenItAnswers(onLost, tries + 1);
  }
};

const eventsOf = (id: string): IDBKeyRange => IDBKeyRange.bound([id, 0], [id, Infinity]);
const strict = { durability: 'strict' } as const;

const databaseStore = (database: IDBPDatabase<BenchSchema>): SessionStore => {
  const begin = () => {
    const writing = database.transaction(['heads', 'events'], 'readwrite', strict);
    return {
      heads: writing.objectStore('heads'),
      events: writing.objectStore('events'),
      done: writing.done,
      abort: () => writing.abort(),
    };
  };

  const read = async (ids?: readonly string[]): Promise<readonly (StoredSession | DamagedSession)[]> => {
    const reading = database.transaction(['heads', 'events']);
    const heads = reading.objectStore('heads');
    const events = reading.objectStore('events');
    const keys = ids ?? [...(await heads.getAllKeys()), ...(await events.getAllKeys()).map(([id]) => id)];
    const found = await Promise.all(
      [...new Set(keys)].map(async (id) => ({
        id,
        head: await heads.get(id),
        events: await events.getAll(eventsOf(id)),
      })),
    );
    if (found.length === 0) return [];
    const { asStoredSession } = await import('./checked-session.ts');
    return found.map((one) => asStoredSession(one.head, one.events) ?? one);
  };

  /** One transaction that goes on only if the session is there with at least so many events; else nothing is changed. */
  const change = async (
    id: string,
    least: number,
    work: (to: ReturnType<typeof begin>) => Promise<unknown>,
  ): Promise<void> => {
    const to = begin();
    const [known, count] = await Promise.all([to.heads.getKey(id), to.events.count(eventsOf(id))]);
    if (known !== undefined && count >= least) await Promise.all([work(to), to.done]);
    else {
      to.abort();
      await to.done.catch(() => {});
      throw new Error('What stands in the database is not the session that is written.');
    }
  };

  return {
    load: async (id) => (await read([id])).find(isWhole) ?? null,
    list: async () => {
      const found = await read();
      return {
        sessions: newestFirst(found.filter(isWhole)),
        damaged: found.filter(isDamaged),
      };
    },
    putHead: (head) => change(head.id, 0, (to) => to.heads.put(head)),
    putEvent: (id, index, event) => change(id, index, (to) => to.events.put(event, [id, index])),
    dropEvent: (id, index) => change(id, index, (to) => to.events.delete([id, index])),
    putSession: async ({ head, events }) => {
      const to = begin();
      await Promise.all([
        to.heads.put(head),
        to.events.delete(eventsOf(head.id)),
        ...events.map((event, index) => to.events.put(event, [head.id, index])),
        to.done,
      ]);
    },
    remove: async (id) => {
      const to = begin();
      await Promise.all([to.heads.delete(id), to.events.delete(eventsOf(id)), to.done]);
    },
    close: () => database.close(),
  };
};
