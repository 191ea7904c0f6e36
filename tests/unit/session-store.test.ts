import 'fake-indexeddb/auto';
import { IDBFactory, IDBObjectStore } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { exampleSessions } from '../../src/calculators/example-sessions.ts';
import { openSessionStore, type SessionHead, type SessionStore } from '../../src/device/session-store.ts';
import type { RecordedEvent } from '../../src/device/session-record.ts';

const { setUp } = exampleSessions['separate-cables'];

const head = (id: string, startedAt = '2026-04-11T09:30:00.000Z', name = id): SessionHead => ({
  app: '0.1.0',
  id,
  name,
  notes: '',
  startedAt,
  generation: 'separate-cables',
  unit: 'mmHg',
  setUp: { ...setUp, opens: ['unknown', 'unknown'] },
  signOff: null,
  timer: { gatheredMs: 0, runningSince: null },
});
const reading = (depressionPa: number): RecordedEvent => ({
  kind: 'reading',
  carburettor: 1,
  depressionPa,
  typed: String(depressionPa),
});
const readings = (count: number): RecordedEvent[] =>
  Array.from({ length: count }, (_, k) => reading(100 + k));

/** A browser of its own for every test. */
beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const inDatabase = openSessionStore;
const inMemory = (): Promise<SessionStore> => {
  vi.stubGlobal('indexedDB', undefined);
  return openSessionStore();
};

describe.each([
  ['in the database', inDatabase, true],
  ['in memory', inMemory, false],
] as const)('openSessionStore(), %s', (_, open, keeps) => {
  test('says whether it keeps', async () => {
    expect((await open()).keeps).toBe(keeps);
  });

  test('has nothing at first', async () => {
    const store = await open();
    expect(await store.list()).toEqual([]);
    expect(await store.load('nobody')).toBeNull();
  });

  test('gives back head and events in their order, also beyond ten', async () => {
    const store = await open();
    const events = readings(12);
    await store.putHead(head('one'));
    for (const [index, event] of events.entries()) await store.putEvent('one', index, event);
    expect(await store.load('one')).toEqual({ head: head('one'), events });
  });

  test('an event at a place that is taken replaces it', async () => {
    const store = await open();
    await store.putSession({ head: head('one'), events: readings(3) });
    await store.putEvent('one', 1, reading(7));
    expect((await store.load('one'))?.events).toEqual([reading(100), reading(7), reading(102)]);
  });

  test('drops the last event', async () => {
    const store = await open();
    await store.putSession({ head: head('one'), events: readings(3) });
    await store.dropEvent('one', 2);
    expect((await store.load('one'))?.events).toEqual(readings(2));
    await store.putEvent('one', 2, reading(7));
    expect((await store.load('one'))?.events).toEqual([...readings(2), reading(7)]);
  });

  test('a new head leaves the events', async () => {
    const store = await open();
    await store.putSession({ head: head('one'), events: readings(3) });
    await store.putHead(head('one', undefined, 'Another name'));
    expect(await store.load('one')).toMatchObject({ head: { name: 'Another name' }, events: readings(3) });
  });

  test('a whole session put again leaves no event of the one before', async () => {
    const store = await open();
    await store.putSession({ head: head('one'), events: readings(5) });
    await store.putSession({ head: head('one'), events: readings(2) });
    expect((await store.load('one'))?.events).toEqual(readings(2));
  });

  test('removes one session with its events, and no other', async () => {
    const store = await open();
    for (const id of ['one', 'one-b', 'two']) await store.putSession({ head: head(id), events: readings(2) });
    await store.remove('one');
    expect(await store.load('one')).toBeNull();
    expect((await store.load('one-b'))?.events).toHaveLength(2);
    await store.putHead(head('one'));
    expect((await store.load('one'))?.events).toEqual([]);
  });

  test('lists the newest first', async () => {
    const store = await open();
    const days = ['2026-04-11', '2026-06-01', '2025-12-31', '2026-05-20'];
    for (const day of days) await store.putHead(head(`of-${day}`, `${day}T10:00:00.000Z`));
    expect((await store.list()).map(({ head: { id } }) => id)).toEqual([
      'of-2026-06-01',
      'of-2026-05-20',
      'of-2026-04-11',
      'of-2025-12-31',
    ]);
  });

  test('what was loaded does not change with what is written later', async () => {
    const store = await open();
    await store.putSession({ head: head('one'), events: readings(2) });
    const [loaded, [listed]] = [await store.load('one'), await store.list()];
    await store.putEvent('one', 2, reading(7));
    await store.dropEvent('one', 0);
    expect(loaded?.events).toEqual(readings(2));
    expect(listed?.events).toEqual(readings(2));
  });
});

describe('openSessionStore(), in the database', () => {
  test('writes each event in one transaction of its own, and keeps the promise when it is complete', async () => {
    const opened: { stores: string[]; mode: string; durability: string; done: boolean }[] = [];
    const transaction = Reflect.get(IDBDatabase.prototype, 'transaction') as IDBDatabase['transaction'];
    const store = await openSessionStore();
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (
      this: IDBDatabase,
      ...given: Parameters<IDBDatabase['transaction']>
    ) {
      const made = transaction.apply(this, given);
      const [names, mode = 'readonly', options] = given;
      const seen = {
        stores: [names].flat() as string[],
        mode,
        durability: options?.durability ?? 'default',
        done: false,
      };
      made.addEventListener('complete', () => (seen.done = true));
      opened.push(seen);
      return made;
    });
    for (const [index, event] of readings(3).entries()) {
      await store.putEvent('one', index, event);
      expect(opened).toHaveLength(index + 1);
      expect(opened[index]).toEqual({
        stores: ['events'],
        mode: 'readwrite',
        durability: 'strict',
        done: true,
      });
    }
    await store.dropEvent('one', 2);
    await store.putSession({ head: head('one'), events: readings(9) });
    await store.remove('one');
    expect(opened.map(({ stores, done }) => [stores.join(), done])).toEqual([
      ['events', true],
      ['events', true],
      ['events', true],
      ['events', true],
      ['heads,events', true],
      ['heads,events', true],
    ]);
  });

  test('is there again for a page that opens later', async () => {
    await (await openSessionStore()).putSession({ head: head('one'), events: readings(3) });
    expect(await (await openSessionStore()).load('one')).toEqual({ head: head('one'), events: readings(3) });
  });

  test('a write that fails breaks its promise, and leaves what was there', async () => {
    const store = await openSessionStore();
    await store.putSession({ head: head('one'), events: readings(2) });
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('The disk is full.', 'QuotaExceededError');
    });
    await expect(store.putEvent('one', 2, reading(7))).rejects.toThrow('The disk is full.');
    vi.restoreAllMocks();
    expect((await store.load('one'))?.events).toEqual(readings(2));
  });
});

describe('openSessionStore(), where the browser refuses', () => {
  test('falls back to memory when opening fails', async () => {
    vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(() => {
      throw new DOMException('Not in this mode.', 'SecurityError');
    });
    const store = await openSessionStore();
    expect(store.keeps).toBe(false);
    await store.putSession({ head: head('one'), events: readings(1) });
    expect((await store.load('one'))?.events).toEqual(readings(1));
  });

  test('falls back to memory when the request for it fails', async () => {
    // A database of a later version cannot be opened with an older page.
    const later = indexedDB.open('evendraw', 99);
    await new Promise((resolve) => (later.onsuccess = resolve));
    later.result.close();
    expect((await openSessionStore()).keeps).toBe(false);
  });

  test('two stores in memory know nothing of each other', async () => {
    const [one, other] = [await inMemory(), await inMemory()];
    await one.putHead(head('one'));
    expect(await other.list()).toEqual([]);
  });
});
