import { describe, expect, test } from 'vitest';
import { exampleSessions } from '../../src/calculators/example-sessions.ts';
import { generations } from '../../src/calculators/index.ts';
import {
  collectionSchema,
  largestCollectionBytes,
  readSessions,
  readSessionsFile,
  writeCollections,
} from '../../src/device/session-collection.ts';
import { largestRecordBytes, writeRecord } from '../../src/device/session-record.ts';
import { manyRecords, recordOf } from './invented-records.ts';

const app = 'evendraw 0.1.0';
const five = generations.map((generation) => recordOf(generation));
const [text = ''] = writeCollections(five, app);
type Body = { sessions: Record<string, unknown>[] } & Record<string, unknown>;
const changed = (change: (body: Body) => void): string => {
  const body = JSON.parse(text) as Body;
  change(body);
  return JSON.stringify(body);
};

describe('readSessions(writeCollections(records))', () => {
  test('is the records, in their order', () => {
    expect(five).toHaveLength(Object.keys(exampleSessions).length);
    expect(readSessions(text)).toEqual({ ok: true, records: five, faults: [], whole: true });
  });

  test('says its form, its version and the version of the site', () => {
    expect(text).toMatch(
      /^\{"format":"evendraw-sessions","schema":1,"app":"evendraw 0\.1\.0","sessions":\[/u,
    );
  });

  test('a file of a single session reads as one', () => {
    expect(readSessions(writeRecord(five[0]!))).toEqual({
      ok: true,
      records: [five[0]],
      faults: [],
      whole: true,
    });
  });

  test('no sessions are one file of none', () => {
    expect(writeCollections([], app).map(readSessions)).toEqual([
      { ok: true, records: [], faults: [], whole: true },
    ]);
  });

  test('more than a file may hold go into further files, each of which can be read', () => {
    const many = manyRecords(40, { notes: '–'.repeat(10_000), events: 900 });
    const files = writeCollections(many, app);
    expect(files.length).toBeGreaterThan(1);
    for (const file of files)
      expect(new TextEncoder().encode(file).length).toBeLessThan(largestCollectionBytes);
    const read = files.map(readSessions).flatMap((one) => (one.ok ? one.records : []));
    expect(read).toEqual(many);
  }, 30_000);
});

describe('readSessions(text), damaged', () => {
  test('one damaged session does not take the others with it', () => {
    const read = readSessions(changed(({ sessions }) => (sessions[1]!['name'] = 'Another')));
    expect(read).toEqual({
      ok: true,
      records: five.filter((_, k) => k !== 1),
      faults: [{ kind: 'checksum' }],
      whole: true,
    });
  });

  test.each<[string, (body: Body) => void, number]>([
    ['a session is missing', ({ sessions }) => sessions.splice(2, 1), 4],
    ['one stands there twice', ({ sessions }) => sessions.push(sessions[0]!), 6],
    ['their order is another', ({ sessions }) => sessions.reverse(), 5],
    ['the version of the site was changed', (body) => (body['app'] = 'x'), 5],
  ])('%s: those that are there are read, and it says so', (_, change, count) => {
    const read = readSessions(changed(change));
    expect(read.ok && [read.records.length, read.whole]).toEqual([count, false]);
  });

  test('what stands there instead of a session is counted as a fault', () => {
    const read = readSessions(
      changed((body) => ((body as { sessions: unknown }).sessions = [null, 1, 'x', {}])),
    );
    expect(read.ok && [read.records, read.faults.map(({ kind }) => kind)]).toEqual([
      [],
      new Array(4).fill('not-a-session'),
    ]);
  });

  test.each<[string, string, object]>([
    ['no JSON', text.slice(0, -3), { kind: 'not-json' }],
    ['an inherited key', text.replace('"app"', '"__proto__":{},"app"'), { kind: 'not-json' }],
    ['another form', changed((body) => (body['format'] = 'x')), { kind: 'not-a-session' }],
    [
      'a newer version',
      changed((body) => (body['schema'] = collectionSchema + 1)),
      { kind: 'newer', schema: collectionSchema + 1 },
    ],
    [
      'no list',
      changed((body) => Object.assign(body, { sessions: {} })),
      { kind: 'field', field: 'sessions' },
    ],
    ['a key too many', changed((body) => (body['more'] = 1)), { kind: 'field', field: 'more' }],
    [
      'more sessions than a file of ours holds',
      changed((body) => Object.assign(body, { sessions: new Array(2001).fill(0) })),
      { kind: 'field', field: 'sessions' },
    ],
    [
      'a single session, too large',
      ' '.repeat(largestRecordBytes) + writeRecord(five[0]!),
      { kind: 'too-large' },
    ],
  ])('%s is refused', (_, given, fault) => {
    expect(readSessions(given)).toEqual({ ok: false, fault });
  });
});

describe('readSessionsFile(file)', () => {
  test('reads a file of many', async () => {
    expect(await readSessionsFile(new Blob([text]))).toMatchObject({ ok: true, records: five });
  });

  test('refuses by size before it reads', async () => {
    const huge = { size: largestCollectionBytes + 1 } as Blob;
    expect(await readSessionsFile(huge)).toEqual({ ok: false, fault: { kind: 'too-large' } });
  });

  test.each(['[', '0,', '{"a":'])(
    'five million bytes of %s are refused, and nothing breaks',
    async (piece) => {
      const body = piece.repeat(4_900_000 / piece.length);
      const hostile = new Blob([`{"format":"evendraw-sessions","schema":1,"sessions":[${body}0]}`]);
      expect((await readSessionsFile(hostile)).ok).toBe(false);
    },
  );
});
