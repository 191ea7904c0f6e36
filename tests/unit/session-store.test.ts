import 'fake-indexeddb/auto';
import { IDBFactory, IDBObjectStore } from 'fake-indexeddb';
import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { openSessionStore, type LostStore, type SessionStore } from '../../src/device/session-store.ts';
import { answerLate, passTimeIn } from '../late-database.ts';
import {
  storedHead as head,
  storedReading as reading,
  storedReadings as readings,
} from '../stored-sessions.ts';

const lost: LostStore[] = [];
const open = async (): Promise<SessionStore> => {
  const opened = await openSessionStore((how) => lost.push(how));
  if (!opened.ok) throw new Error(opened.why);
  return opened.store;
};
const one = 'session-one';
const two = 'session-two';

/** What a page of another make does with the same database. */
const otherPage = (version = 1): Promise<IDBDatabase> =>
  new Promise((resolve, reject) => {
    const request = indexedDB.open('evendraw', version);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error('no database'));
  });
const inOtherPage = async (work: (heads: IDBObjectStore, events: IDBObjectStore) => void): Promise<void> => {
  const database = await otherPage();
  const writing = database.transaction(['heads', 'events'], 'readwrite');
  work(writing.objectStore('heads'), writing.objectStore('events'));
  await new Promise((resolve) => (writing.oncomplete = resolve));
  database.close();
};

/** A browser of its own for every test. */
beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
  lost.length = 0;
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

describe('openSessionStore()', () => {
  test('has nothing at first', async () => {
    const store = await open();
    expect(await store.list()).toEqual({ sessions: [], damaged: [] });
    expect(await store.load('nobody')).toBeNull();
  });

  test('gives back head and events in their order, also beyond ten', async () => {
    const store = await open();
    const events = readings(12);
    await store.putSession({ head: head(one), events: [] });
    for (const [index, event] of events.entries()) await store.putEvent(one, index, event);
    expect(await store.load(one)).toEqual({ head: head(one), events });
  });

  test('an event at a place that is taken replaces it', async () => {
    const store = await open();
    await store.putSession({ head: head(one), events: readings(3) });
    await store.putEvent(one, 1, reading(7));
    expect((await store.load(one))?.events).toEqual([reading(100), reading(7), reading(102)]);
  });

  test('drops the last event', async () => {
    const store = await open();
    await store.putSession({ head: head(one), events: readings(3) });
    await store.dropEvent(one, 2);
    expect((await store.load(one))?.events).toEqual(readings(2));
    await store.putEvent(one, 2, reading(7));
    expect((await store.load(one))?.events).toEqual([...readings(2), reading(7)]);
  });

  test('a new head leaves the events', async () => {
    const store = await open();
    await store.putSession({ head: head(one), events: readings(3) });
    await store.putHead(head(one, undefined, 'Another name'));
    expect(await store.load(one)).toMatchObject({ head: { name: 'Another name' }, events: readings(3) });
  });

  test('a whole session put again leaves no event of the one before', async () => {
    const store = await open();
    await store.putSession({ head: head(one), events: readings(5) });
    await store.putSession({ head: head(one), events: readings(2) });
    expect((await store.load(one))?.events).toEqual(readings(2));
  });

  test('removes one session with its events, and no other', async () => {
    const store = await open();
    for (const id of [one, `${one}-b`, two]) await store.putSession({ head: head(id), events: readings(2) });
    await store.remove(one);
    expect(await store.load(one)).toBeNull();
    expect((await store.load(`${one}-b`))?.events).toHaveLength(2);
    await store.putSession({ head: head(one), events: [] });
    expect((await store.load(one))?.events).toEqual([]);
  });

  test('lists the newest first', async () => {
    const store = await open();
    const days = ['2026-04-11', '2026-06-01', '2025-12-31', '2026-05-20'];
    for (const day of days)
      await store.putSession({ head: head(`of-${day}`, `${day}T10:00:00.000Z`), events: [] });
    expect((await store.list()).sessions.map(({ head: { id } }) => id)).toEqual([
      'of-2026-06-01',
      'of-2026-05-20',
      'of-2026-04-11',
      'of-2025-12-31',
    ]);
  });

  test('what was loaded does not change with what is written later', async () => {
    const store = await open();
    await store.putSession({ head: head(one), events: readings(2) });
    const loaded = await store.load(one);
    await store.putEvent(one, 2, reading(7));
    expect(loaded?.events).toEqual(readings(2));
  });

  test('writes each event in one transaction of its own, and keeps the promise when it is complete', async () => {
    const opened: { mode: string; durability: string; done: boolean }[] = [];
    const transaction = Reflect.get(IDBDatabase.prototype, 'transaction') as IDBDatabase['transaction'];
    const store = await open();
    await store.putSession({ head: head(one), events: [] });
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (
      this: IDBDatabase,
      ...given: Parameters<IDBDatabase['transaction']>
    ) {
      const made = transaction.apply(this, given);
      const [, mode = 'readonly', options] = given;
      const seen = { mode, durability: options?.durability ?? 'default', done: false };
      made.addEventListener('complete', () => (seen.done = true));
      opened.push(seen);
      return made;
    });
    for (const [index, event] of readings(3).entries()) {
      await store.putEvent(one, index, event);
      expect(opened).toHaveLength(index + 1);
      expect(opened[index]).toEqual({ mode: 'readwrite', durability: 'strict', done: true });
    }
    await store.dropEvent(one, 2);
    await store.putSession({ head: head(one), events: readings(9) });
    await store.putHead(head(one));
    await store.remove(one);
    expect(opened.map(({ done }) => done)).toEqual(Array(7).fill(true));
  });

  test('is there again for a page that opens later', async () => {
    await (await open()).putSession({ head: head(one), events: readings(3) });
    expect(await (await open()).load(one)).toEqual({ head: head(one), events: readings(3) });
  });

  test('a write that fails breaks its promise, and leaves what was there', async () => {
    const store = await open();
    await store.putSession({ head: head(one), events: readings(2) });
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('The disk is full.', 'QuotaExceededError');
    });
    await expect(store.putEvent(one, 2, reading(7))).rejects.toThrow('The disk is full.');
    vi.restoreAllMocks();
    expect((await store.load(one))?.events).toEqual(readings(2));
  });

  test('a change that does not follow on what is there is refused and changes nothing', async () => {
    const store = await open();
    await store.putSession({ head: head(one), events: readings(3) });
    await inOtherPage((heads, events) => {
      heads.clear();
      events.clear();
    });
    await expect(store.putEvent(one, 3, reading(7))).rejects.toThrow('not the session');
    await expect(store.putHead(head(one))).rejects.toThrow('not the session');
    await expect(store.dropEvent(one, 2)).rejects.toThrow('not the session');
    expect(await store.list()).toEqual({ sessions: [], damaged: [] });
    await store.putSession({ head: head(one), events: readings(1) });
    await expect(store.putEvent(one, 3, reading(7))).rejects.toThrow('not the session');
    expect((await store.load(one))?.events).toEqual(readings(1));
  });
});

describe('a damaged session', () => {
  const kinds: [string, (heads: IDBObjectStore, events: IDBObjectStore) => void][] = [
    ['its head has lost a field', (heads) => heads.put({ ...head(one), unit: undefined })],
    ['its head has a field that nobody knows', (heads) => heads.put({ ...head(one), colour: 'red' })],
    ['its timer is no timer', (heads) => heads.put({ ...head(one), timer: { gatheredMs: 'much' } })],
    ['its timer is missing', (heads) => heads.put({ id: one })],
    ['an event is none', (_, events) => events.put('nothing', [one, 1])],
    ['a reading is no number', (_, events) => events.put({ ...reading(7), depressionPa: NaN }, [one, 1])],
    ['its head is gone', (heads) => heads.delete(one)],
  ];
  test.each(kinds)('is told apart and left as it is: %s', async (_, damage) => {
    const store = await open();
    for (const id of [one, two]) await store.putSession({ head: head(id), events: readings(2) });
    await inOtherPage(damage);
    const { sessions, damaged } = await store.list();
    expect(sessions).toEqual([{ head: head(two), events: readings(2) }]);
    expect(damaged.map(({ id }) => id)).toEqual([one]);
    expect(damaged[0]?.events).toHaveLength(2);
    expect(await store.load(one)).toBeNull();
    expect(await store.list()).toEqual({ sessions, damaged });
  });
});

describe('a database that was kept before', () => {
  /** What stood in the database of form 1 when it was first published; never to be changed. */
  const frozen = JSON.parse(
    readFileSync(new URL('../data/stored-sessions-1.json', import.meta.url), 'utf8'),
  ) as { heads: unknown[]; events: { key: [string, number]; value: unknown }[] };

  test('of form 1 opens with all its sessions', async () => {
    await open(); // makes the stores
    await inOtherPage((heads, events) => {
      for (const one of frozen.heads) heads.put(one);
      for (const { key, value } of frozen.events) events.put(value, key);
    });
    const { sessions, damaged } = await (await open()).list();
    expect(damaged).toEqual([]);
    expect(sessions.map(({ head, events }) => [head.id, events.length, head.signOff?.verdict])).toEqual([
      ['s-0102030405060708090a0b0c', 5, 'within'],
      ['s-0c0b0a090807060504030201', 2, undefined],
    ]);
    expect(sessions[0]?.head.timer).toEqual({ gatheredMs: 540_000, runningSince: null });
  });

  test('of a newer form is left untouched', async () => {
    const newer = await otherPage(99).then((database) => (database.close(), database.version));
    expect(newer).toBe(99);
    expect(await openSessionStore(() => {})).toEqual({ ok: false, why: 'newer' });
    expect((await otherPage(99)).version).toBe(99);
  });
});

describe('where the browser refuses', () => {
  test('says that there is no database', async () => {
    vi.stubGlobal('indexedDB', undefined);
    expect(await openSessionStore(() => {})).toEqual({ ok: false, why: 'missing' });
  });

  test('says that it may not be opened', async () => {
    vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(() => {
      throw new DOMException('Not in this mode.', 'SecurityError');
    });
    expect(await openSessionStore(() => {})).toEqual({ ok: false, why: 'refused' });
  });

  test.each([
    [3, true],
    [4, false],
  ])('asks again after a fault of unknown kind: after %i of them it opens: %s', async (faults, opens) => {
    const { open: openNow } = IDBFactory.prototype;
    let left = faults;
    vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(function (this: IDBFactory, ...given) {
      if (left-- > 0) throw new DOMException('Internal error.', 'UnknownError');
      return openNow.apply(this, given);
    });
    const opened = await passTimeIn(() => openSessionStore(() => {}), 1500);
    expect(opened).toMatchObject(opens ? { ok: true } : { ok: false, why: 'refused' });
  });

  test('says that it gives no answer, and gives the answer when it comes', async () => {
    const { answer } = answerLate();
    const opened = await passTimeIn(() => openSessionStore(() => {}));
    if (opened.ok || opened.why !== 'silent') throw new Error('it was not silent');
    answer();
    const answered = await opened.late;
    if (!answered.ok) throw new Error(answered.why);
    expect(await answered.store.list()).toEqual({ sessions: [], damaged: [] });
  });

  test('says when the database is cleared under it, or wanted by a newer page', async () => {
    await open();
    await new Promise((resolve) => (indexedDB.deleteDatabase('evendraw').onsuccess = resolve));
    expect(lost).toEqual(['cleared']);
    await open();
    await otherPage(2);
    expect(lost).toEqual(['cleared', 'newer']);
  });
});
