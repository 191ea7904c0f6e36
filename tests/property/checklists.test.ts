import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  answerChecklists,
  checklistFields,
  checklistKinds,
  checklistNumbers,
  describeProblem,
  generations,
  headingLimit,
  initialForm,
  noteLinesLimit,
  notesLimit,
  parseChecklistLink,
  plainLine,
  plainLines,
  writeChecklistLink,
} from '../../src/calculators/index.ts';
import type { ChecklistForm } from '../../src/calculators/index.ts';
import { qrModules } from '../../src/device/qr-code.ts';
import { readQr } from '../second-formula/qr-reader.ts';
import { anyCharacter } from '../any-character.ts';
import { tries } from '../property-runs.ts';

/** Any text, halves of characters, controls and signs of direction among it. */
const anyText = fc.oneof(
  fc.string({ unit: anyCharacter, maxLength: 300 }),
  fc.string({
    unit: fc.integer({ min: 0, max: 0xffff }).map((code) => String.fromCharCode(code)),
    maxLength: 80,
  }),
  fc.string({
    unit: fc.constantFrom(
      'a',
      ' ',
      '\n',
      '\r',
      '\u202E',
      '\u2066',
      '\u200D',
      '\u0301',
      '\uD83D',
      '\uDE00',
      '<',
      '&',
      '\0',
    ),
    maxLength: 80,
  }),
);
const words = (longest: number) => fc.string({ unit: 'grapheme', maxLength: longest });
const filledIn: fc.Arbitrary<ChecklistForm> = fc.record({
  list: fc.constantFrom(...checklistKinds),
  generation: fc.constantFrom(...generations),
  carburettors: fc.constantFrom(...checklistNumbers),
  heading: words(headingLimit),
  notes: words(notesLimit),
  printed: fc.constantFrom('', '1.0', '0.9'),
});
/** As a browser carries it. */
const throughAnAddress = (record: Readonly<Record<string, string>>) =>
  Object.fromEntries(new URLSearchParams(new URLSearchParams(record).toString()));

test('plain text is plain: the second time changes nothing, and nothing hidden is left', () => {
  fc.assert(
    fc.property(anyText, (text) => {
      const line = plainLine(text);
      expect(plainLine(line)).toBe(line);
      expect(line).not.toMatch(
        /[\p{Cc}\p{Zl}\p{Zp}\p{Cs}\u061C\u200B\u200E\u200F\u202A-\u202E\u2066-\u2069\uFEFF]/u,
      );
      expect(line).not.toMatch(/^\s|\s$|\s\s/u);
      const lines = plainLines(text, noteLinesLimit);
      expect(lines.length).toBeLessThanOrEqual(noteLinesLimit);
      expect(plainLines(lines.join('\n'), noteLinesLimit)).toEqual(lines);
    }),
    tries(2000),
  );
});

test('a link opens the list that it was made of, words and all', () => {
  fc.assert(
    fc.property(filledIn, (form) => {
      const here = answerChecklists(form);
      const parsed = parseChecklistLink(throughAnAddress(writeChecklistLink(form)));
      // NFC may lengthen a text beyond its limit; both ends then say so.
      expect(parsed.ok && parsed.value.problems.length > 0).toBe(!here.ok);
      if (!here.ok || !parsed.ok) return;
      expect(parsed.value.unknownKeys).toEqual([]);
      expect(answerChecklists(parsed.value.form)).toEqual(here);
      expect(writeChecklistLink(parsed.value.form)).toEqual(writeChecklistLink(form));
    }),
    tries(500),
  );
});

test('whatever a link holds, a list opens or a sentence says why not', () => {
  const key = fc.oneof(
    fc.constantFrom('v', 'l', 'g', 'n', 'h', 't', 'p', '__proto__', 'generation'),
    anyText,
  );
  const value = fc.oneof(anyText, fc.constantFrom('1', '4', '-1', '1e9', 'NaN', 'all-adjustable', 'tools'));
  fc.assert(
    fc.property(fc.array(fc.tuple(key, value), { maxLength: 9 }), (entries) => {
      const parsed = parseChecklistLink(Object.fromEntries(entries));
      if (!parsed.ok) {
        expect(describeProblem(parsed.problem)).toMatch(/^\p{Lu}.*\.$/su);
        return;
      }
      for (const problem of parsed.value.problems) expect(describeProblem(problem)).toMatch(/\.$/su);
      const answered = answerChecklists(parsed.value.form);
      if (!answered.ok)
        throw new Error(`a form of a link has a problem: ${JSON.stringify(answered.problems)}`);
      expect(answered.answer.heading.length).toBeGreaterThan(0);
      expect(answered.answer.notes.join('\n').length).toBeLessThanOrEqual(notesLimit);
      expect(answered.answer.columns.flat()).toHaveLength(3);
    }),
    tries(2000),
  );
});

test('a link of defaults is the shortest that names a list', () => {
  expect(Object.keys(writeChecklistLink(initialForm(checklistFields)))).toEqual(['v', 'g', 'n']);
});

test('every code of an address is read back', () => {
  const address = fc.string({
    unit: fc.constantFrom(...'abcXYZ019%&=#+-./'.split('')),
    minLength: 1,
    maxLength: 500,
  });
  fc.assert(
    fc.property(address, (text) => {
      const code = `x${text}`; // never digits alone, which are packed otherwise
      fc.pre(/[a-z#&=]/u.test(text));
      expect(readQr(qrModules(code))).toBe(code);
    }),
    tries(60),
  );
});
