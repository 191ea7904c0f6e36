import { describe, expect, test } from 'vitest';
import { longestNotes, mergeRecord, type Merged } from '../../src/device/merge-record.ts';
import { isRecord, type RecordedEvent, type SessionRecord } from '../../src/device/session-record.ts';
import { recordOf } from './invented-records.ts';

const note = (event: number): string => `Differs from event ${event} on.`;
const merge = (known: readonly SessionRecord[], given: SessionRecord): Merged =>
  mergeRecord(known, given, note);
/** Those that are here after a record was read. */
const after = (known: readonly SessionRecord[], given: SessionRecord): readonly SessionRecord[] => {
  const merged = merge(known, given);
  if (!('record' in merged)) return known;
  return [...known.filter(({ id }) => id !== merged.record.id), merged.record];
};

const whole = recordOf('all-adjustable', { name: 'The grey one', notes: 'Cold day.' });
const upTo = (count: number, changes: Partial<SessionRecord> = {}): SessionRecord => ({
  ...whole,
  events: whole.events.slice(0, count),
  ...changes,
});
const half = upTo(4);
/** Went on otherwise after four events. */
const other: SessionRecord = {
  ...whole,
  events: [...half.events, { kind: 'reading', carburettor: 1, depressionPa: 31_000, typed: '232' }],
};

describe('mergeRecord(known, given, note)', () => {
  test('a record that is not here is added', () => {
    expect(merge([], whole)).toEqual({ kind: 'added', record: whole });
    expect(merge([recordOf('paired-screws')], whole)).toEqual({ kind: 'added', record: whole });
  });

  test('the same record changes nothing', () => {
    expect(merge([recordOf('paired-screws'), whole], structuredClone(whole))).toMatchObject({ kind: 'same' });
  });

  test('one that goes further extends what is here', () => {
    const signOff = { fromEvent: 2, verdict: 'within' } as const;
    const given = { ...whole, unit: 'hPa' as const, signOff };
    expect(merge([half], given)).toEqual({ kind: 'extended', record: given });
  });

  test('one that is here with more events changes nothing', () => {
    expect(merge([whole], half)).toEqual({ kind: 'behind', id: whole.id });
    expect(merge([whole], upTo(0))).toEqual({ kind: 'behind', id: whole.id });
  });

  test('a name, notes or an end that are missing here come from the file; the name that is here stays', () => {
    const signOff = { fromEvent: 2, verdict: 'not-within' } as const;
    const bare = { ...whole, name: '', notes: '' };
    expect(merge([bare], { ...whole, signOff })).toEqual({ kind: 'extended', record: { ...whole, signOff } });
    expect(merge([{ ...whole, signOff }], bare)).toMatchObject({ kind: 'same' });
    expect(merge([{ ...whole, name: 'My grey one' }], whole)).toMatchObject({ kind: 'same' });
    expect(merge([upTo(4, { name: 'My grey one' })], whole)).toEqual({
      kind: 'extended',
      record: { ...whole, name: 'My grey one' },
    });
  });

  test('both notes are kept, once', () => {
    const given = { ...whole, notes: 'Wind from the west.' };
    const [joined] = after([whole], given);
    expect(joined?.notes).toBe('Cold day.\nWind from the west.');
    for (const again of [given, whole, joined!])
      expect(merge([joined!], again)).toMatchObject({ kind: 'same' });
  });

  test('notes that find no room together are kept apart', () => {
    const here = { ...whole, notes: 'a'.repeat(longestNotes) };
    const merged = merge([here], { ...whole, notes: 'b' });
    expect(merged.kind).toBe('diverged');
  });

  test('a turn whose direction was shown since is the same turn', () => {
    const turn: RecordedEvent = { kind: 'turn', screw: 1, turns: 0.125, minute: 4 };
    const reading: RecordedEvent = { kind: 'reading', carburettor: 1, depressionPa: 31_000 };
    const before = upTo(4, {
      setUp: { ...whole.setUp, opens: ['unknown', 'unknown', 'unknown', 'unknown'] },
      events: [...half.events, turn],
    });
    const shown = upTo(4, {
      setUp: { ...whole.setUp, opens: ['anticlockwise', 'unknown', 'unknown', 'unknown'] },
      events: [...half.events, { ...turn, turns: -0.125 }, reading],
    });
    expect(merge([before], shown)).toEqual({ kind: 'extended', record: shown });
    expect(merge([shown], before)).toEqual({ kind: 'behind', id: whole.id });
    const known = { ...before, setUp: whole.setUp };
    expect(merge([known], shown).kind).toBe('diverged');
  });

  test('one that went on otherwise is added beside it with a note, and here nothing changes', () => {
    const merged = merge([whole], other);
    if (merged.kind !== 'diverged') throw new Error(merged.kind);
    expect(merged.record).toMatchObject({
      ...other,
      id: expect.stringMatching(/^invented-all-adjustable-[0-9a-f]{8}$/u),
      notes: 'Differs from event 5 on.\nCold day.',
    });
    expect(isRecord(merged.record)).toBe(true);
    expect(after([whole], other)).toEqual([whole, merged.record]);
  });

  test('read again it changes nothing; what goes further on either side extends that side', () => {
    const both = after([whole], other);
    expect(both).toHaveLength(2);
    for (const again of [other, whole, half]) expect(after(both, again)).toEqual(both);
    const more: RecordedEvent = { kind: 'reading', carburettor: 2, depressionPa: 31_500 };
    const further = { ...other, events: [...other.events, more] };
    const [kept, extended, ...rest] = after(both, further);
    expect([kept, rest]).toEqual([whole, []]);
    expect(extended).toMatchObject({ id: both[1]!.id, events: further.events });
    expect(merge([kept!, extended!], further)).toMatchObject({ kind: 'same' });
  });

  test.each<[string, Partial<SessionRecord>]>([
    ['another beginning', { startedAt: '2026-04-12T09:30:00+02:00' }],
    ['another kind of linkage', { generation: 'separate-cables' }],
    [
      'other screws',
      { setUp: { ...whole.setUp, screws: whole.setUp.screws.map((s) => ({ ...s, moves: [1, 1, 0, 0] })) } },
    ],
  ])('the same id with %s is another session', (_, changes) => {
    expect(merge([half], { ...whole, ...changes }).kind).toBe('diverged');
  });

  test('an id of the greatest length leaves room for the checksum', () => {
    const id = 'i'.repeat(60);
    const merged = merge([{ ...whole, id }], { ...other, id });
    if (merged.kind !== 'diverged') throw new Error(merged.kind);
    expect(isRecord(merged.record)).toBe(true);
    expect(merge([{ ...whole, id }, merged.record], { ...other, id })).toMatchObject({ kind: 'same' });
  });

  test('whichever is read first, both ways of going on are here in the end', () => {
    const sets = [after([whole], other), after([other], whole)].map((all) =>
      all.map(({ events }) => JSON.stringify(events)).sort(),
    );
    expect(sets[0]).toEqual(sets[1]);
  });
});
