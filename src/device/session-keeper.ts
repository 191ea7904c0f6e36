import {
  openSessionStore,
  type LostStore,
  type NoStore,
  type OpenedStore,
  type SessionStore,
} from './session-store.ts';
import { newestFirst, type StoredSession, type StoredSessions } from './stored-session.ts';

/** Whether all that was entered is also on the device; if not, why. */
export type Saved = 'saved' | 'saving' | 'full' | 'failed' | NoStore | LostStore;

export const isKept = (saved: Saved): boolean => saved === 'saved' || saved === 'saving';

/**
 * The sessions, kept as well as the device allows: what cannot be written stays in memory, and is written whole with the
 * next entry that can be. Nothing is reported as saved before its transaction is complete.
 */
export type SessionKeeper = {
  readonly list: () => Promise<StoredSessions>;
  readonly load: (id: string) => Promise<StoredSession | null>;
  /** Takes the session as it is now, and writes it by `work`, which writes what has changed. */
  readonly write: (session: StoredSession, work: (to: SessionStore) => Promise<void>) => Promise<void>;
  /** Takes the session away; where that cannot be written it is written with the next entry that can be. */
  readonly remove: (id: string) => Promise<void>;
  /** Writes once more what could not be written. */
  readonly tryAgain: () => Promise<void>;
  /** Lets go of the database, as a page must that is left; the next call opens it again. */
  readonly rest: () => void;
};

/** `onFound`: the database, which gave no answer before, has given one; what it holds can be read. */
export const sessionKeeper = (
  report: (saved: Saved) => void,
  onFound: () => void = () => {},
): SessionKeeper => {
  let store: SessionStore | null = null;
  let late: Promise<OpenedStore> | null = null;
  let noStore: NoStore | null = null;
  let told: Saved = 'saved';
  let turn: Promise<unknown> = Promise.resolve();
  const newest = new Map<string, StoredSession>();
  const unsaved = new Set<string>();
  /** Removed here, and still in the database. */
  const gone = new Set<string>();

  const tell = (saved: Saved): void => {
    told = saved;
    report(saved);
  };
  const tellWhy = (error: unknown): void => {
    const isFull = error instanceof DOMException && error.name === 'QuotaExceededError';
    tell(noStore ?? (isFull ? 'full' : 'failed'));
  };
  const onLost = (how: LostStore): void => {
    store = null;
    for (const id of newest.keys()) unsaved.add(id);
    tell(how);
  };
  const open = async (): Promise<SessionStore> => {
    if (store) return store;
    // Each entry would have to wait for it anew.
    if (late) throw new Error('no database: silent');
    const opened = await openSessionStore(onLost);
    noStore = opened.ok ? null : opened.why;
    if (!opened.ok && opened.why === 'silent') waitFor(opened.late);
    if (!opened.ok) throw new Error(`no database: ${opened.why}`);
    store = opened.store;
    return store;
  };
  const waitFor = (answer: Promise<OpenedStore>): void => {
    late = answer;
    void answer.then((opened) => {
      if (late !== answer) return opened.ok && opened.store.close();
      late = null;
      if (opened.ok) store = opened.store;
      return save(flush).then(onFound);
    });
  };
  const flush = async (): Promise<void> => {
    const to = await open();
    for (const id of unsaved) {
      const session = newest.get(id);
      if (session) await to.putSession(session);
      unsaved.delete(id);
    }
    for (const id of gone) {
      await to.remove(id);
      gone.delete(id);
    }
  };

  /** One after the other; the last one to end says whether all is saved. */
  const next = <Given>(work: () => Promise<Given>): Promise<Given> => {
    const mine = turn.then(work);
    turn = mine.catch(() => {});
    return mine;
  };
  const save = (work: () => Promise<void>): Promise<void> => {
    if (isKept(told)) tell('saving');
    const mine = next(async () => {
      try {
        await work();
        if (turn === last) tell('saved');
      } catch (error) {
        tellWhy(error);
      }
    });
    const last = turn;
    return mine;
  };

  return {
    list: () =>
      next(async () => {
        const stored = await open()
          .then((from) => from.list())
          .catch((error: unknown): StoredSessions => {
            tellWhy(error);
            return { sessions: [], damaged: [] };
          });
        const own = [...unsaved].flatMap((id) => newest.get(id) ?? []);
        const others = stored.sessions.filter(({ head: { id } }) => !unsaved.has(id) && !gone.has(id));
        return { ...stored, sessions: newestFirst([...own, ...others]) };
      }),
    load: (id) =>
      next(async () => (unsaved.has(id) ? (newest.get(id) ?? null) : (await open()).load(id))).catch(
        () => newest.get(id) ?? null,
      ),
    write: (session, work) => {
      const { id } = session.head;
      newest.set(id, session);
      gone.delete(id);
      return save(async () => {
        try {
          if (unsaved.size + gone.size === 0) return await work(await open());
        } catch {
          // What changed cannot be written by itself; the whole may.
        }
        unsaved.add(id);
        await flush();
      });
    },
    remove: (id) => {
      newest.delete(id);
      unsaved.delete(id);
      gone.add(id);
      return save(flush);
    },
    tryAgain: () => save(flush),
    rest: () => {
      store?.close();
      store = null;
      late = null;
    },
  };
};
