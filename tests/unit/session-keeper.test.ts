import 'fake-indexeddb/auto';
import { IDBDatabase, IDBFactory, IDBObjectStore } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { isKept, sessionKeeper, type Saved, type SessionKeeper } from '../../src/device/session-keeper.ts';
import type { StoredSession } from '../../src/device/stored-session.ts';
import { answerLate, passTimeIn } from '../late-database.ts';
import { storedHead, storedReading, storedReadings } from '../stored-sessions.ts';

let told: Saved[] = [];
const keeper = (): SessionKeeper => sessionKeeper((saved) => told.push(saved));
const session = (id: string, count: number): StoredSession => ({
  head: storedHead(id),
  events: storedReadings(count),
});
const id = 'session-one';
const begin = (to: SessionKeeper, given = session(id, 0)): Promise<void> =>
  to.write(given, (store) => store.putSession(given));
/** Writes the last event of a session that has so many. */
const enter = (to: SessionKeeper, count: number): Promise<void> =>
  to.write(session(id, count), (store) => store.putEvent(id, count - 1, storedReading(99 + count)));
/** What a page that opens now finds. */
const found = async (): Promise<readonly StoredSession[]> => (await keeper().list()).sessions;

const failing = (name: string) =>
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('It does not go.', name);
  });

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
  told = [];
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

describe('sessionKeeper()', () => {
  test('says that it is saving until all is written, and only then that it is saved', async () => {
    const own = keeper();
    const writes = [begin(own), enter(own, 1), enter(own, 2)];
    expect(told).toEqual(['saving', 'saving', 'saving']);
    await Promise.all(writes);
    expect(told).toEqual(['saving', 'saving', 'saving', 'saved']);
    expect(await found()).toEqual([session(id, 2)]);
  });

  test.each([
    ['QuotaExceededError', 'full'],
    ['UnknownError', 'failed'],
  ] as const)(
    'after %s the session goes on in memory, and is written whole when that goes',
    async (name, why) => {
      const own = keeper();
      await begin(own);
      await enter(own, 1);
      failing(name);
      await enter(own, 2);
      expect(told.at(-1)).toBe(why);
      await enter(own, 3);
      expect(told.at(-1)).toBe(why);
      expect((await own.list()).sessions).toEqual([session(id, 3)]);
      expect(await own.load(id)).toEqual(session(id, 3));
      vi.restoreAllMocks();
      expect(await found()).toEqual([session(id, 1)]);
      await enter(own, 4);
      expect(told.at(-1)).toBe('saved');
      expect(await found()).toEqual([session(id, 4)]);
    },
  );

  test('tries again when asked', async () => {
    const own = keeper();
    await begin(own);
    failing('QuotaExceededError');
    await enter(own, 1);
    await own.tryAgain();
    expect(told.at(-1)).toBe('full');
    vi.restoreAllMocks();
    await own.tryAgain();
    expect(told.at(-1)).toBe('saved');
    expect(await found()).toEqual([session(id, 1)]);
  });

  test('one that could not be written is not lost while another is open', async () => {
    const own = keeper();
    failing('QuotaExceededError');
    await begin(own);
    const other = session('session-two', 2);
    await begin(own, other);
    expect((await own.list()).sessions.map(({ head }) => head.id).sort()).toEqual([id, 'session-two']);
    vi.restoreAllMocks();
    await own.tryAgain();
    expect(await found()).toHaveLength(2);
  });

  test('without a database everything stays in memory, and a deleted session is gone', async () => {
    vi.stubGlobal('indexedDB', undefined);
    const own = keeper();
    expect(await own.list()).toEqual({ sessions: [], damaged: [] });
    expect(told).toEqual(['missing']);
    await begin(own);
    await enter(own, 1);
    expect(told.filter(isKept)).toEqual([]);
    expect((await own.list()).sessions).toEqual([session(id, 1)]);
    await own.remove(id);
    expect(await own.list()).toEqual({ sessions: [], damaged: [] });
  });

  test('what cannot be removed is gone for this page, and goes for good with the next write that goes', async () => {
    const own = keeper();
    await begin(own);
    await begin(own, session('session-two', 0));
    const stuck = vi.spyOn(IDBObjectStore.prototype, 'delete').mockImplementation(() => {
      throw new DOMException('It does not go.', 'UnknownError');
    });
    await own.remove(id);
    expect(told.at(-1)).toBe('failed');
    expect((await own.list()).sessions.map(({ head }) => head.id)).toEqual(['session-two']);
    expect(await found()).toHaveLength(2);
    stuck.mockRestore();
    await own.write(session('session-two', 1), (store) =>
      store.putEvent('session-two', 0, storedReading(100)),
    );
    expect(told.at(-1)).toBe('saved');
    expect((await found()).map(({ head }) => head.id)).toEqual(['session-two']);
  });

  test('removed while an entry of it is still being written, it is gone all the same', async () => {
    const own = keeper();
    await begin(own);
    await Promise.all([enter(own, 1), own.remove(id)]);
    expect(told.at(-1)).toBe('saved');
    expect(await own.list()).toEqual({ sessions: [], damaged: [] });
    expect(await found()).toEqual([]);
  });

  test('what could not be removed can be brought back', async () => {
    const own = keeper();
    await begin(own);
    const stuck = vi.spyOn(IDBObjectStore.prototype, 'delete').mockImplementation(() => {
      throw new DOMException('It does not go.', 'UnknownError');
    });
    await own.remove(id);
    stuck.mockRestore();
    await begin(own);
    expect(told.at(-1)).toBe('saved');
    expect(await own.list()).toEqual({ sessions: [session(id, 0)], damaged: [] });
    expect(await found()).toEqual([session(id, 0)]);
  });

  test('a database that is cleared under it is said at once, and filled again with the next entry', async () => {
    const own = keeper();
    await begin(own);
    await enter(own, 1);
    await new Promise((resolve) => (indexedDB.deleteDatabase('evendraw').onsuccess = resolve));
    expect(told.at(-1)).toBe('cleared');
    expect(await own.load(id)).toEqual(session(id, 1));
    await enter(own, 2);
    expect(told.at(-1)).toBe('saved');
    expect(await found()).toEqual([session(id, 2)]);
  });

  test('goes on after a rest, as a page that is shown again', async () => {
    const own = keeper();
    await begin(own);
    own.rest();
    await enter(own, 1);
    expect(told.at(-1)).toBe('saved');
    expect(await found()).toEqual([session(id, 1)]);
  });

  describe('where the database gives no answer', () => {
    test('the session goes on in memory at once, and all is written and found when it answers', async () => {
      const before = keeper();
      await begin(before, session('session-two', 1));
      before.rest();
      const { answer, asked } = answerLate();
      const onFound = vi.fn();
      const own = sessionKeeper((saved) => told.push(saved), onFound);
      expect(await passTimeIn(() => own.list())).toEqual({ sessions: [], damaged: [] });
      expect(told.at(-1)).toBe('silent');
      await begin(own);
      await enter(own, 1);
      expect(told.at(-1)).toBe('silent');
      expect((await own.list()).sessions).toEqual([session(id, 1)]);
      expect(asked()).toBe(1);
      expect(onFound).not.toHaveBeenCalled();
      answer();
      await vi.waitFor(() => expect(onFound).toHaveBeenCalledOnce());
      expect(told.at(-1)).toBe('saved');
      expect((await own.list()).sessions).toHaveLength(2);
      expect(await found()).toHaveLength(2);
    });

    test('a page that was left meanwhile lets it go', async () => {
      const { answer } = answerLate();
      const onFound = vi.fn();
      const own = sessionKeeper((saved) => told.push(saved), onFound);
      await passTimeIn(() => own.list());
      own.rest();
      const close = vi.spyOn(IDBDatabase.prototype, 'close');
      answer();
      await vi.waitFor(() => expect(close).toHaveBeenCalledOnce());
      expect(onFound).not.toHaveBeenCalled();
      expect(told.at(-1)).toBe('silent');
    });
  });
});
