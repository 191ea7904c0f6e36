import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  computeConversions,
  describeConversions,
  describeProblem,
  formatFixed,
  parseConversion,
  parseUnitConverterLink,
  pressureKinds,
  pressureUnits,
  writeUnitConverterLink,
} from '../../src/calculators/index.ts';
import type { ConversionForm, ConversionTable, Result } from '../../src/calculators/index.ts';

const answer = (form: ConversionForm): Result<ConversionTable> => {
  const question = parseConversion(form);
  const conversions = question.ok ? computeConversions(question.value) : question;
  return conversions.ok ? { ok: true, value: describeConversions(conversions.value) } : conversions;
};

const unit = fc.constantFrom(...pressureUnits);
const kind = fc.constantFrom(...pressureKinds);

describe('unit converter: laws', () => {
  it('what was typed comes back from any line of the answer', () => {
    fc.assert(
      fc.property(
        unit,
        unit,
        fc.integer({ min: 1, max: 99_999 }),
        fc.integer({ min: 0, max: 3 }),
        (from, to, scaled, decimals) => {
          const typed = formatFixed(scaled / 10 ** decimals, decimals);
          const asked = { kind: 'difference', usualUnit: 'Pa', ambientTyped: '' } as const;
          const there = answer({ ...asked, typed: `${typed} ${from.symbol}` });
          if (!there.ok) throw new Error(there.problem.kind);
          const line = there.value.lines.find(({ unitId }) => unitId === to.id);
          const text = line?.cells[0]?.copied.replace(` ${to.symbol}`, '') ?? '';
          const back = (Number(text) * to.pascals) / from.pascals;
          expect(formatFixed(back, decimals), `${typed} ${from.id} as ${text} ${to.id}`).toBe(typed);
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('a depression, its gauge pressure and its absolute pressure are one state', () => {
    fc.assert(
      fc.property(unit, fc.double({ min: 0, max: 90_000, noNaN: true }), (from, pascals) => {
        const typed = `${formatFixed(pascals / from.pascals, 6)} ${from.symbol}`;
        const question = parseConversion({
          typed,
          kind: 'depression',
          usualUnit: 'Pa',
          ambientTyped: '98 kPa',
        });
        const conversions = question.ok ? computeConversions(question.value) : question;
        if (!conversions.ok) throw new Error(conversions.problem.kind);
        for (const { unit: to, values } of conversions.value.rows) {
          const [depression = null, gauge = null, absolute = null] = values;
          if (depression === null || gauge === null || absolute === null) throw new Error(typed);
          expect(gauge.value + depression.value).toBe(0);
          expect((depression.value + absolute.value) * to.pascals).toBeCloseTo(98_000, 6);
        }
      }),
    );
  });

  it('answers or refuses in words, whatever is typed, and never throws', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.tuple(fc.double(), unit).map(([value, { symbol }]) => `${value} ${symbol}`),
      fc.constantFrom('', 'NaN', '1e309 bar', '-1e300 atm', '1e-300 Pa', '1,234 Pa', '5/0', '∞'),
    );
    fc.assert(
      fc.property(text, kind, text, (typed, asked, ambientTyped) => {
        const result = answer({ typed, kind: asked, usualUnit: 'inHg', ambientTyped });
        if (result.ok) expect(result.value.lines).toHaveLength(pressureUnits.length);
        else expect(describeProblem(result.problem)).toMatch(/^\S.*\.$/u);
      }),
      { numRuns: 500 },
    );
  });
});

describe('unit converter link: laws', () => {
  it('a link reproduces the answer', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('9 1/2 inHg', '12,5 cmHg', '12', '-0.4', '1,234 Pa', 'nonsense', '  7 kPa '),
        kind,
        unit,
        fc.constantFrom('101.325 kPa', '98', '29.5 inHg', '', '760 mmHg', 'high'),
        (typed, asked, { id }, ambientTyped) => {
          const form: ConversionForm = { typed, kind: asked, usualUnit: id, ambientTyped };
          const link = parseUnitConverterLink(writeUnitConverterLink(form));
          if (!link.ok) throw new Error(link.problem.kind);
          expect(link.value.problems).toEqual([]);
          expect(link.value.unknownKeys).toEqual([]);
          const [before, after] = [answer(form), answer(link.value.form)];
          if (before.ok) expect(after).toEqual(before);
          else expect(after).toMatchObject({ ok: false, problem: { kind: before.problem.kind } });
        },
      ),
    );
  });
});
