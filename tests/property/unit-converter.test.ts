import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  answerUnitConverter,
  computeConversions,
  converterQuantities,
  familyOf,
  formatFixed,
  parseConversion,
  parseUnitConverterLink,
  pressureKinds,
  pressureUnits,
  sayProblem,
  unitsOf,
  writeUnitConverterLink,
} from '../../src/calculators/index.ts';
import type { ConversionForm } from '../../src/calculators/index.ts';
import { anyCharacter } from '../any-character.ts';
import { tries } from '../property-runs.ts';

const unit = fc.constantFrom(...pressureUnits);
const kind = fc.constantFrom(...pressureKinds);
const blank = { kind: 'depression', usualUnit: '', ambient: '' };
const measured = fc.constantFrom(
  ...converterQuantities.flatMap((quantity) =>
    (familyOf(quantity)?.units ?? []).map((from) => ({ quantity, from })),
  ),
);

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
          const asked = { quantity: 'pressure', kind: 'difference', usualUnit: 'Pa', ambient: '' };
          const there = answerUnitConverter({ ...asked, typed: `${typed} ${from.symbol}` });
          if (!there.ok) throw new Error(JSON.stringify(there.problems));
          const line = there.answer.lines.find(({ unitId }) => unitId === to.id);
          const text = line?.cells[0]?.copied.replace(` ${to.symbol}`, '') ?? '';
          const back = (Number(text) * to.pascals) / from.pascals;
          expect(formatFixed(back, decimals), `${typed} ${from.id} as ${text} ${to.id}`).toBe(typed);
        },
      ),
      tries(2000),
    );
  });

  it('a depression, its gauge pressure and its absolute pressure are one state', () => {
    fc.assert(
      fc.property(unit, fc.double({ min: 0, max: 90_000, noNaN: true }), (from, pascals) => {
        const typed = `${formatFixed(pascals / from.pascals, 6)} ${from.symbol}`;
        const question = parseConversion({
          quantity: 'pressure',
          typed,
          kind: 'depression',
          usualUnit: 'Pa',
          ambient: '98 kPa',
        });
        if (!question.ok) throw new Error(question.problems[0]?.problem.kind);
        const conversions = computeConversions(question.value);
        if (!conversions.ok) throw new Error(conversions.problem.kind);
        for (const to of pressureUnits) {
          const [depression, gauge, absolute] = (['depression', 'gauge', 'absolute'] as const).map((kind) =>
            conversions.value.valueIn(to, kind),
          );
          if (!depression || !gauge || !absolute) throw new Error(typed);
          expect(gauge.value + depression.value).toBe(0);
          expect((depression.value + absolute.value) * to.pascals).toBeCloseTo(98_000, 6);
        }
      }),
    );
  });

  it('a measure comes back from any line of the answer', () => {
    fc.assert(
      fc.property(
        measured,
        fc.nat(),
        fc.integer({ min: 1, max: 99_999 }),
        ({ quantity, from }, index, typed) => {
          const family = familyOf(quantity);
          const to = family?.units[index % family.units.length];
          if (!family || !to) throw new Error(quantity);
          const there = answerUnitConverter({ ...blank, quantity, typed: `${typed} ${from.symbol}` });
          if (!there.ok) throw new Error(JSON.stringify(there.problems));
          const line = there.answer.lines.find(({ unitId }) => unitId === to.id);
          const text = line?.cells[0]?.copied.replace(` ${to.symbol}`, '') ?? '';
          const back = answerUnitConverter({ ...blank, quantity, typed: `${text} ${to.symbol}` });
          if (!back.ok) throw new Error(JSON.stringify(back.problems));
          const again = back.answer.lines.find(({ unitId }) => unitId === from.id)?.cells[0]?.copied ?? '';
          expect(formatFixed(Number.parseFloat(again), 0), `${typed} ${from.id} as ${text} ${to.id}`).toBe(
            String(typed),
          );
        },
      ),
      tries(2000),
    );
  });

  it('answers or refuses in words, whatever is typed, and never throws', () => {
    const text = fc.oneof(
      fc.string({ unit: anyCharacter }),
      fc.tuple(fc.double(), unit).map(([value, { symbol }]) => `${value} ${symbol}`),
      fc.tuple(fc.double(), measured).map(([value, { from }]) => `${value} ${from.symbol}`),
      fc.constantFrom('', 'NaN', '1e309 bar', '-1e300 atm', '1e-300 Pa', '1,234 Pa', '5/0', '∞'),
    );
    const quantities = fc.constantFrom(...converterQuantities);
    fc.assert(
      fc.property(quantities, text, kind, text, (quantity, typed, asked, ambient) => {
        const result = answerUnitConverter({ quantity, typed, kind: asked, usualUnit: 'inHg', ambient });
        if (result.ok) expect(result.answer.lines).toHaveLength(unitsOf(quantity).length);
        else
          for (const { sentence } of result.problems.map(sayProblem)) expect(sentence).toMatch(/^\S.*\.$/u);
      }),
      tries(500),
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
        fc.constantFrom(...converterQuantities),
        (typed, asked, { id }, ambient, quantity) => {
          const form: ConversionForm = { quantity, typed, kind: asked, usualUnit: id, ambient };
          const link = parseUnitConverterLink(writeUnitConverterLink(form));
          if (!link.ok) throw new Error(link.problem.kind);
          expect(link.value.problems).toEqual([]);
          expect(link.value.unknownKeys).toEqual([]);
          const [before, after] = [answerUnitConverter(form), answerUnitConverter(link.value.form)];
          const kindsOf = (each: typeof before) =>
            each.ok || each.problems.map(({ problem }) => problem.kind);
          if (before.ok) expect(after).toEqual(before);
          else expect(kindsOf(after)).toEqual(kindsOf(before));
        },
      ),
    );
  });
});
