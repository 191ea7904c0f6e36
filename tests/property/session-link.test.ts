import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  defaultAnswers,
  generations,
  parseReadings,
  parseSessionLink,
  parseSetUp,
  pressureUnits,
  writeSessionLink,
} from '../../src/calculators/index.ts';
import type { SetUpAnswers, TypedReading } from '../../src/calculators/index.ts';
import { tries } from '../property-runs.ts';
import { tolerances } from '../tolerances.ts';

/** Numbers as people type them. */
const typedNumber = (max: number): fc.Arbitrary<string> =>
  fc.oneof(
    fc.integer({ min: 1, max }).map(String),
    fc.integer({ min: 1, max: max * 100 }).map((value) => String(value / 100)),
    fc.integer({ min: 1, max: max * 10 }).map((value) => String(value / 10).replace('.', ',')),
    fc.integer({ min: 1, max }).map((value) => `${value} 1/2`),
  );
const direction = fc.constantFrom('clockwise', 'anticlockwise', 'unknown');

const filledIn: fc.Arbitrary<{ readonly answers: SetUpAnswers; readonly readings: string }> = fc
  .tuple(fc.constantFrom(...generations), fc.constantFrom(2, 3, 4, 6), fc.constantFrom('mmHg', 'inHg', 'kPa'))
  .chain(([generation, carburettors, unit]) =>
    fc.record({
      answers: fc.record({
        carburettors: fc.constant(String(carburettors)),
        generation: fc.constant(generation),
        fixed: fc.oneof(
          fc.integer({ min: 1, max: carburettors }).map(String),
          fc.constant(generation === 'bypass-screws' ? '' : '1'),
        ),
        groups: fc.constant(''),
        opens: fc.oneof(direction, fc.constant('differ' as const)),
        opensEach: fc.array(direction, { minLength: carburettors - 1, maxLength: carburettors }),
        unit: fc.constant(unit),
        resolution: typedNumber(10),
        flutter: typedNumber(10),
        tolerance: typedNumber(20),
        rpm: fc.constantFrom('', '2100', '2400', '1 800'),
        thread: fc.array(
          fc.oneof(
            fc.record({ closing: typedNumber(5), opening: typedNumber(5) }),
            fc.constant({ closing: '', opening: '' }),
          ),
          { maxLength: carburettors - 1 },
        ),
        ambient: fc.constantFrom('', '95 kPa', '900 mbar'),
        lockShift: fc.constantFrom('', '0.03', '1/50'),
        confidence: fc.constantFrom('', '90', '99,9'),
        effect: fc.constantFrom('', '18000', '9500.5'),
      }),
      readings: fc
        .array(
          fc.tuple(
            fc.integer({ min: 1, max: carburettors }),
            typedNumber(unit === 'mmHg' ? 400 : 15),
            fc.constantFrom('', ' @ 2150', '@2100.5 rpm'),
          ),
          { maxLength: 8 },
        )
        .map((all) =>
          all.map(([carburettor, typed, speed]) => `${carburettor}: ${typed}${speed}`).join('; '),
        ),
    }),
  );

/** Equal but for the twelfth digit. */
const expectSame = (one: unknown, other: unknown): void => {
  if (typeof one === 'number' && typeof other === 'number')
    expect(Math.abs(one - other)).toBeLessThanOrEqual(tolerances.linkAndForm.relative * Math.abs(other));
  else if (one !== null && typeof one === 'object' && other !== null && typeof other === 'object') {
    expect(Object.keys(one).sort()).toEqual(Object.keys(other).sort());
    for (const [key, value] of Object.entries(one))
      expectSame(value, (other as Record<string, unknown>)[key]);
  } else expect(one).toBe(other);
};

test('a link that was written reproduces the set-up and the readings, through an address', () => {
  fc.assert(
    fc.property(filledIn, ({ answers, readings }) => {
      const address = new URLSearchParams(writeSessionLink(answers, readings)).toString();
      const link = parseSessionLink(Object.fromEntries(new URLSearchParams(address)));
      if (!link.ok) throw new Error(link.problem.kind);
      expect(link.value.unknownKeys).toEqual([]);
      const [given, read] = [parseSetUp(answers), parseSetUp(link.value.answers)];
      if (!given.ok || !read.ok) throw new Error(JSON.stringify([given, read]));
      expectSame(read.value, given.value);

      const { unit, setUp } = given.value;
      const [typed, again] = [
        parseReadings(readings, unit, setUp),
        parseReadings(link.value.readings, unit, setUp),
      ];
      if (!typed.ok || !again.ok) throw new Error(JSON.stringify([typed, again]));
      const short = (all: readonly TypedReading[]) => all.map(({ typed: _, ...reading }) => reading);
      expectSame(short(again.value), short(typed.value));
      // Written again it has the same keys: nothing is lost, nothing becomes a default.
      expect(Object.keys(writeSessionLink(link.value.answers, link.value.readings))).toEqual(
        Object.keys(writeSessionLink(answers, readings)),
      );
    }),
    tries(300),
  );
});

test('the defaults of every unit need no key but the version, the number and the unit', () => {
  for (const { id } of pressureUnits)
    expect(Object.keys(writeSessionLink(defaultAnswers(id), '')).filter((key) => key !== 'u')).toEqual([
      'v',
      'n',
    ]);
});

test('whatever stands in an address, the link is read or refused, and never throws', () => {
  const key = fc.oneof(
    fc.constantFrom(
      'v',
      'g',
      'n',
      'fixed',
      'r',
      'u',
      'tol',
      'res',
      'fl',
      'amb',
      'rpm',
      'o',
      't',
      'm',
      '__proto__',
    ),
    fc.string({ maxLength: 8 }),
  );
  const value = fc.oneof(
    fc.string({ maxLength: 20 }),
    fc.constantFrom('1', '2', 'c,a', '1/2,3', 'constructor', '%00'),
  );
  fc.assert(
    fc.property(fc.array(fc.tuple(key, value), { maxLength: 10 }), (pairs) => {
      const link = parseSessionLink(Object.fromEntries(pairs));
      if (!link.ok) {
        expect(link.problem.kind).toBe('newer-version');
        return;
      }
      const { answers, readings } = link.value;
      expect(JSON.parse(JSON.stringify(answers))).toEqual(answers);
      const parsed = parseSetUp(answers);
      if (parsed.ok) parseReadings(readings, parsed.value.unit, parsed.value.setUp);
      writeSessionLink(answers, readings);
    }),
    tries(400),
  );
});
