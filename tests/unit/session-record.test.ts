import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { exampleSessions } from '../../src/calculators/example-sessions.ts';
import { generations, type BenchSetUp, type Generation } from '../../src/calculators/index.ts';
import { checksumOf } from '../../src/device/checksum.ts';
import {
  checkRecord,
  isRecord,
  largestRecordBytes,
  readRecord,
  writeRecord,
  type RecordFault,
  type SessionRecord,
} from '../../src/device/session-record.ts';
import { stepOf } from '../engine/session.ts';
import { tolerances } from '../tolerances.ts';

/** An invented session of the handbook, as it is kept on a device. */
const recordOf = (generation: Generation): SessionRecord => {
  const { setUp, events, fixed } = exampleSessions[generation];
  const bench: BenchSetUp = {
    ...setUp,
    ...(fixed === undefined ? {} : { fixed }),
    opens: setUp.screws.map((_, j) => (['clockwise', 'anticlockwise', 'unknown'] as const)[j % 3]!),
  };
  return {
    app: '0.1.0',
    id: '0f8c2a54-invented',
    name: 'The grey four, spring',
    notes: 'Cable of 3 sticks.\n“Half a turn” – said to be enough. 😀',
    startedAt: '2026-04-11T09:30:00.000Z',
    generation,
    unit: 'mmHg',
    setUp: bench,
    events: events.map((event, k) => ({ ...event, minute: k * 0.4, typed: 'as typed' })),
    signOff: { fromEvent: events.length, verdict: 'under-way' },
  };
};
const record = recordOf('fixed-reference');
const text = writeRecord(record);

const faultOf = (given: string): RecordFault | null => {
  const read = readRecord(given);
  return read.ok ? null : read.fault;
};
/** The text with a change, its checksum as it was. */
const changed = (change: (body: Record<string, unknown>) => void): string => {
  const body = JSON.parse(text) as Record<string, unknown>;
  change(body);
  return JSON.stringify(body);
};
/** A record with a change, honestly written. */
const rewritten = (changes: object): string => writeRecord({ ...record, ...changes } as SessionRecord);

describe('readRecord(writeRecord(record))', () => {
  test.each(generations)('%s: is the record, with the same next step', (generation) => {
    const given = recordOf(generation);
    const read = readRecord(writeRecord(given));
    if (!read.ok) throw new Error(JSON.stringify(read.fault));
    expect(read.record).toEqual(given);
    expect(stepOf(read.record.setUp, read.record.events)).toEqual(stepOf(given.setUp, given.events));
  });

  test('holds what the form of the record promises, and no estimate', () => {
    expect(Object.keys(JSON.parse(text) as object)).toEqual([
      ...['format', 'schema', 'app', 'id', 'name', 'notes', 'startedAt', 'generation', 'unit'],
      ...['setUp', 'events', 'signOff', 'checksum'],
    ]);
    expect(text).toMatch(/^\{\n {2}"format": "evendraw-session",\n {2}"schema": 1,/u);
    expect(text).not.toContain('chanceWithin');
  });

  test('is the same whatever the order of the keys and the white space', () => {
    const reversed = JSON.parse(text, (_, value: unknown) =>
      value !== null && typeof value === 'object' && !Array.isArray(value)
        ? Object.fromEntries(Object.entries(value).reverse())
        : value,
    ) as object;
    const read = readRecord(JSON.stringify(reversed));
    expect(read.ok && read.record).toEqual(record);
  });

  test('keeps lone surrogates, controls and quotation marks to the letter', () => {
    const odd = { ...record, notes: 'a\ud800b\udc00"\\\u0000\u2028é', name: '\ud83d' };
    const read = readRecord(writeRecord(odd));
    expect(read.ok && read.record).toEqual(odd);
  });

  test('keeps awkward numbers: 0.1 + 0.2, a millionth, minus zero as 0', () => {
    const events = [0.1 + 0.2, 1e-6, 101_324.999].map(
      (depressionPa) => ({ kind: 'reading', carburettor: 1, depressionPa }) as const,
    );
    const read = readRecord(rewritten({ events, signOff: null }));
    expect(read.ok && read.record.events).toEqual(events);
    const zero = readRecord(rewritten({ events: [{ kind: 'turn', screw: 1, turns: -0 }] }));
    expect(zero.ok && zero.record.events[0]).toEqual({ kind: 'turn', screw: 1, turns: 0 });
  });
});

describe('readRecord(text) says what is wrong', () => {
  test('too large, before anything is read', () => {
    expect(faultOf(' '.repeat(largestRecordBytes + 1))).toEqual({ kind: 'too-large' });
    // One character less is looked at, and is no record.
    expect(faultOf(' '.repeat(largestRecordBytes))).toEqual({ kind: 'not-json' });
    expect(text.length).toBeLessThan(largestRecordBytes / 50);
  });

  test.each(['', 'hello', text.slice(0, -5), `${text}}`, '{"format":', '\ufeff' + text, 'NaN'])(
    'not JSON: %#',
    (given) => {
      expect(faultOf(given)).toEqual({ kind: 'not-json' });
    },
  );

  test.each([
    'null',
    '[]',
    '1',
    '"text"',
    '{}',
    '{"format":"other","schema":1}',
    '{"format":"evendraw-session"}',
  ])('not a session: %s', (given) => {
    expect(faultOf(given)).toEqual({ kind: 'not-a-session' });
  });

  test('newer', () => {
    expect(faultOf(changed((body) => (body['schema'] = 2)))).toEqual({ kind: 'newer', schema: 2 });
    expect(faultOf('{"format":"evendraw-session","schema":7}')).toEqual({ kind: 'newer', schema: 7 });
  });

  type Body = Record<string, never> & {
    setUp: Record<string, unknown> & { screws: { moves: unknown[] }[]; gauge: Record<string, unknown> };
    events: Record<string, unknown>[];
    signOff: Record<string, unknown>;
  };
  test.each<[string, string, (body: Body) => unknown]>([
    ['no name', 'name', (body) => Reflect.deleteProperty(body, 'name')],
    ['a name too long', 'name', (body) => Object.assign(body, { name: 'x'.repeat(201) })],
    ['notes that are a number', 'notes', (body) => Object.assign(body, { notes: 5 })],
    ['an id with a path in it', 'id', (body) => Object.assign(body, { id: '../../etc/passwd' })],
    ['no date', 'startedAt', (body) => Object.assign(body, { startedAt: 'yesterday' })],
    ['another generation', 'generation', (body) => Object.assign(body, { generation: 'steam' })],
    ['a unit that is not known', 'unit', (body) => Object.assign(body, { unit: 'furlong' })],
    ['schema 0', 'schema', (body) => Object.assign(body, { schema: 0 })],
    ['a key too many', 'estimate', (body) => Object.assign(body, { estimate: {} })],
    ['a key too many in the set-up', 'setUp.extra', (body) => Object.assign(body.setUp, { extra: 1 })],
    ['text for a tolerance', 'setUp.tolerancePa', (body) => Object.assign(body.setUp, { tolerancePa: '10' })],
    ['no gauge', 'setUp.gauge', (body) => Reflect.deleteProperty(body.setUp, 'gauge')],
    ['nine carburettors', 'setUp.carburettors', (body) => Object.assign(body.setUp, { carburettors: 9 })],
    ['null for a share', 'setUp.screws.1.moves.0', (body) => (body.setUp.screws[1]!.moves[0] = null)],
    ['an unknown direction', 'setUp.opens.0', (body) => Object.assign(body.setUp, { opens: ['up'] })],
    [
      'an event of another kind',
      'events.2.kind',
      (body) => Object.assign(body.events[2]!, { kind: 'pause' }),
    ],
    [
      'half a carburettor',
      'events.0.carburettor',
      (body) => Object.assign(body.events[0]!, { carburettor: 1.5 }),
    ],
    ['text for turns', 'events.4.turns', (body) => Object.assign(body.events[4]!, { turns: '1/4' })],
    ['events that are no list', 'events', (body) => Object.assign(body, { events: {} })],
    ['another verdict', 'signOff.verdict', (body) => Object.assign(body.signOff, { verdict: 'fine' })],
    ['a checksum of another form', 'checksum', (body) => Object.assign(body, { checksum: 'XYZ' })],
  ])('field: %s', (_, field, change) => {
    expect(faultOf(changed((body) => change(body as Body)))).toEqual({ kind: 'field', field });
  });

  test('field: 1e999 is no number', () => {
    const endless = text.replace(/"tolerancePa": [\d.]+/u, '"tolerancePa": 1e999');
    expect(endless).not.toBe(text);
    expect(faultOf(endless)).toEqual({ kind: 'field', field: 'setUp.tolerancePa' });
    expect(faultOf(text.replace(/"turns": [-\d.]+/u, '"turns": -1e999'))).toEqual({
      kind: 'field',
      field: 'events.4.turns',
    });
  });

  test.each<[string, string, object]>([
    ['a tolerance of 0', 'tolerancePa', { setUp: { ...record.setUp, tolerancePa: 0 } }],
    ['a screw without its direction', 'setUp.opens', { setUp: { ...record.setUp, opens: [] } }],
    [
      'a column too short',
      'screws.0.moves',
      { setUp: { ...record.setUp, screws: [{ moves: [1] }, ...record.setUp.screws.slice(1)] } },
    ],
    ['a screw that is not there', 'events.0.screw', { events: [{ kind: 'turn', screw: 9, turns: 0 }] }],
    [
      'a depression below 0',
      'events.0.depressionPa',
      { events: [{ kind: 'reading', carburettor: 1, depressionPa: -1 }] },
    ],
    [
      'a depression beyond the air',
      'events.0.depressionPa',
      { events: [{ kind: 'reading', carburettor: 1, depressionPa: 2e5 }] },
    ],
    ['one carburettor', 'carburettor-count', { setUp: { ...record.setUp, carburettors: 1 } }],
    ['no screws', 'no-screws', { setUp: { ...record.setUp, screws: [], opens: [] } }],
  ])('field: %s, honestly written, is refused like a form', (_, field, changes) => {
    expect(faultOf(rewritten(changes))).toEqual({ kind: 'field', field });
  });

  test('checksum: one digit of a reading, one letter of the notes, an event less, another checksum', () => {
    const damaged = [
      text.replace(
        /"depressionPa": (\d)/u,
        (_, digit: string) => `"depressionPa": ${(Number(digit) + 1) % 9 || 1}`,
      ),
      text.replace('sticks', 'stucks'),
      changed((body) => (body['events'] as unknown[]).pop()),
      changed((body) => (body['checksum'] = '00000000')),
    ];
    for (const given of damaged) {
      expect(given).not.toBe(text);
      expect(faultOf(given)).toEqual({ kind: 'checksum' });
    }
  });

  test('__proto__ and constructor are refused, and reach no object', () => {
    for (const key of ['__proto__', 'constructor', 'toString', 'prototype']) {
      const poisoned = [
        text.replace('{', `{"${key}": {"polluted": true},`),
        text.replace('"setUp": {', `"setUp": {"${key}": {"polluted": true},`),
        text.replace('"kind": "reading",', `"kind": "reading", "${key}": {"polluted": true},`),
      ];
      for (const given of poisoned) {
        expect(given).not.toBe(text);
        expect(faultOf(given)?.kind).toBe(key === 'prototype' ? 'field' : 'not-json');
        expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
      }
    }
  });
});

describe('what a hostile file may hold', () => {
  const inName = (name: string) => readRecord(rewritten({ name }));

  test.each([
    '<script>document.title = "taken"</script>',
    '<img src=x onerror=alert(1)>',
    '"><svg onload=alert(1)>',
    'javascript:alert(1)',
    '\u202egpj.exe',
    '\ud83d',
    '\u0000',
    '=1+1',
  ])('a name is text, to the letter: %j', (name) => {
    const read = inName(name);
    expect(read.ok && read.record.name).toBe(name);
  });

  test.each<[string, string]>([
    ['arrays', '['.repeat(200_000) + ']'.repeat(200_000)],
    ['objects', '{"a":'.repeat(150_000) + '1' + '}'.repeat(150_000)],
    ['arrays that do not end', '['.repeat(900_000)],
    [
      'arrays for a name',
      text.replace(/"name": "[^"]*"/u, `"name": ${'['.repeat(200_000) + ']'.repeat(200_000)}`),
    ],
    [
      'arrays for the events',
      text.replace('"events": [', `"events": [${'['.repeat(200_000) + ']'.repeat(200_000)},`),
    ],
  ])('200,000 levels of %s are refused within a second', (_, deep) => {
    const start = performance.now();
    expect(faultOf(deep)?.kind).toMatch(/^(not-json|not-a-session|field)$/u);
    expect(performance.now() - start).toBeLessThan(1000);
  });

  test.each<[string, (full: string) => string]>([
    ['numbers for events', (full) => full.replace('"events": [', `"events": [${'1,'.repeat(450_000)}`)],
    [
      'keys',
      (full) => full.replace('{', `{${Array.from({ length: 85_000 }, (_, k) => `"k${k}":0,`).join('')}`),
    ],
    ['white space', (full) => ' '.repeat(largestRecordBytes - full.length) + full],
  ])('a file as large as may be, of %s, is answered within a second', (_, fill) => {
    const full = fill(text);
    expect(full.length).toBeGreaterThan(850_000);
    const start = performance.now();
    readRecord(full);
    expect(performance.now() - start).toBeLessThan(1000);
  });
});

describe('isRecord(record) and checkRecord(record)', () => {
  test('a record of the form passes what a file passes', () => {
    expect(isRecord(record)).toBe(true);
    expect(checkRecord(record)).toBeNull();
    expect(isRecord({ ...record, name: 'x'.repeat(201) })).toBe(false);
    expect(isRecord({ ...record, setUp: { ...record.setUp, tolerancePa: -1 } })).toBe(false);
  });
});

describe('checksumOf(text)', () => {
  // The check value of CRC-32 (ISO-HDLC), of the nine digits, as catalogues of such codes give it; from memory.
  test('of 123456789 is cbf43926', () => {
    expect(checksumOf('123456789')).toBe('cbf43926');
  });

  test('of nothing is 0, with its leading zeros', () => {
    expect(checksumOf('')).toBe('00000000');
  });

  test('is that of the UTF-8 bytes', () => {
    // The same bytes as Latin letters would not be.
    expect(checksumOf('é')).not.toBe(checksumOf('e'));
    expect(checksumOf('\u00e9')).toBe(checksumOf(new TextDecoder().decode(new Uint8Array([0xc3, 0xa9]))));
  });
});

/**
 * A record of schema 1, written once and frozen: an invented session. It must open for ever, and give the step that it
 * gave when it was frozen.
 */
describe('readRecord of tests/data/session-schema-1.json', () => {
  const frozen = readFileSync(new URL('../data/session-schema-1.json', import.meta.url), 'utf8');

  test('opens, and is written again to the letter', () => {
    const read = readRecord(frozen);
    if (!read.ok) throw new Error(JSON.stringify(read.fault));
    expect(read.record).toMatchObject({
      id: 'frozen-schema-1',
      name: 'Invented four, one without a screw',
      generation: 'fixed-reference',
      unit: 'inHg',
    });
    expect(read.record.events).toHaveLength(9);
    expect(read.record.setUp.opens).toEqual(['clockwise', 'anticlockwise', 'unknown']);
    expect(writeRecord(read.record)).toBe(frozen);
    expect(checksumOf(frozen)).toBe('8c3f879c');
  });

  test('gives the step and the estimates that it gave', () => {
    const read = readRecord(frozen);
    if (!read.ok) throw new Error(JSON.stringify(read.fault));
    const { step, estimate } = stepOf(read.record.setUp, read.record.events);
    expect(step).toMatchObject({ kind: 'turn', screw: 3, turns: -0.3, read: 4 });
    expect(estimate.turnsLeft).toEqual([
      { closing: 1.3, opening: 2.2 },
      null,
      { closing: 0.5, opening: 1.5 },
    ]);
    [30764.699606275222, 32515.83240295838, 32365.17810791013, 27977.762614469506].forEach(
      (depressionPa, i) =>
        expect(Math.abs(estimate.depressionPa[i]! - depressionPa)).toBeLessThanOrEqual(
          tolerances.estimate.absolute,
        ),
    );
  });
});
