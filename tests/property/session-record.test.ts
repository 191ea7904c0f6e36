import fc from 'fast-check';
import { expect, test } from 'vitest';
import { generations, pressureUnits, screwsOf } from '../../src/calculators/index.ts';
import type { BenchSetUp } from '../../src/calculators/index.ts';
import { isRecord, readRecord, writeRecord, type SessionRecord } from '../../src/device/session-record.ts';
import { stepOf } from '../engine/session.ts';
import { anyCharacter } from '../any-character.ts';
import { tries } from '../property-runs.ts';

/** JSON knows no minus zero. */
const between = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((value) => (value === 0 ? 0 : value));
const turnsLeft = fc.record({ closing: between(0, 5), opening: between(0, 5) });
const anyText = (maxLength: number) => fc.string({ unit: anyCharacter, maxLength });

const record: fc.Arbitrary<SessionRecord> = fc
  .tuple(fc.constantFrom(...generations), fc.constantFrom(2, 3, 4, 6))
  .chain(([generation, carburettors]) => {
    const hasFixed = generation === 'fixed-reference';
    const screws = screwsOf(generation, carburettors, hasFixed ? { fixed: 1 } : {});
    if (!screws.ok) throw new Error(screws.problem.kind);
    const count = screws.value.length;
    const each = { minLength: count, maxLength: count };
    const common = { minute: between(0, 90), typed: anyText(20) };
    const event = fc.oneof(
      fc.record(
        {
          kind: fc.constant('reading' as const),
          carburettor: fc.integer({ min: 1, max: carburettors }),
          depressionPa: between(0, 101_000),
          rpm: between(300, 9_000),
          ...common,
        },
        { requiredKeys: ['kind', 'carburettor', 'depressionPa'] },
      ),
      fc.record(
        {
          kind: fc.constant('turn' as const),
          screw: fc.integer({ min: 1, max: count }),
          turns: between(-2, 2),
          ...common,
        },
        { requiredKeys: ['kind', 'screw', 'turns'] },
      ),
    );
    const setUp: fc.Arbitrary<BenchSetUp> = fc
      .record({
        threads: fc.array(fc.option(turnsLeft), each),
        opens: fc.array(fc.constantFrom('clockwise', 'anticlockwise', 'unknown'), each),
        tolerancePa: between(1, 10_000),
        gauge: fc.record({ resolutionPa: between(1, 3_000), flutterPa: between(0, 3_000) }),
        more: fc.record(
          {
            confidence: between(0.5, 0.999),
            targetRpm: between(300, 9_000),
            lockShiftTurns: between(0, 0.2),
          },
          { requiredKeys: [] },
        ),
      })
      .map(({ threads, more, ...rest }) => ({
        carburettors,
        ...rest,
        ...more,
        ...(hasFixed ? { fixed: 1 } : {}),
        screws: screws.value.map(({ moves }, j) => {
          const left = threads[j];
          return left ? { moves, turnsLeft: left } : { moves };
        }),
      }));
    return fc.record({
      app: anyText(20),
      id: fc.uuid(),
      name: anyText(60),
      notes: anyText(200),
      startedAt: fc
        .date({ min: new Date('2000-01-01'), max: new Date('2100-01-01'), noInvalidDate: true })
        .map((date) => date.toISOString()),
      generation: fc.constant(generation),
      unit: fc.constantFrom(...pressureUnits.map(({ id }) => id)),
      setUp,
      events: fc.array(event, { maxLength: 15 }),
      signOff: fc.option(
        fc.record({
          fromEvent: fc.nat(20),
          verdict: fc.constantFrom('under-way', 'within', 'not-within'),
        }),
      ),
    });
  });

test('readRecord(writeRecord(record)) is the record, with the same next step', () => {
  fc.assert(
    fc.property(record, (given) => {
      expect(isRecord(given)).toBe(true);
      const read = readRecord(writeRecord(given));
      if (!read.ok) throw new Error(JSON.stringify(read.fault));
      expect(read.record).toEqual(given);
      expect(stepOf(read.record.setUp, read.record.events)).toEqual(stepOf(given.setUp, given.events));
    }),
    tries(10_000),
  );
});

test('one character changed in a file gives the same record or a fault, never another record', () => {
  fc.assert(
    fc.property(
      record,
      fc.nat(),
      fc.constantFrom('0', '7', 'x', ' ', '"', '-', ','),
      (given, place, character) => {
        const text = writeRecord(given);
        const at = place % text.length;
        const damaged = text.slice(0, at) + character + text.slice(at + 1);
        const read = readRecord(damaged);
        // White space, the character that stood there, or a minus before 0.
        if (read.ok) expect(JSON.parse(JSON.stringify(read.record))).toEqual(given);
        else expect(read.fault.kind).toMatch(/^(?:not-json|not-a-session|newer|field|checksum)$/u);
      },
    ),
    tries(400),
  );
});

test('any text at all is refused in words, never with an exception', () => {
  fc.assert(
    fc.property(fc.oneof(anyText(80), fc.json()), (text) => {
      const read = readRecord(text);
      expect(read.ok ? 'ok' : read.fault.kind).toMatch(/^(?:not-json|not-a-session)$/u);
    }),
    tries(300),
  );
});
