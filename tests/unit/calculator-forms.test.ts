import { describe, expect, it } from 'vitest';
import { accuracyClasses } from '../../src/calculators/accuracy-class.ts';
import { ambientPressureFields } from '../../src/calculators/ambient-pressure-form.ts';
import { balanceAnalyserFields } from '../../src/calculators/balance-analyser-form.ts';
import { initialForm } from '../../src/calculators/calculator-form.ts';
import type { FormField } from '../../src/calculators/calculator-form.ts';
import { checklistFields } from '../../src/calculators/checklists-form.ts';
import { exhaustGasInARoomFields } from '../../src/calculators/exhaust-gas-in-a-room-form.ts';
import { flutterAndRepeatsFields } from '../../src/calculators/flutter-and-repeats-form.ts';
import { gaugeComparisonFields } from '../../src/calculators/gauge-comparison-form.ts';
import { generations } from '../../src/calculators/linkage.ts';
import { liquidColumnFields } from '../../src/calculators/liquid-column-form.ts';
import { practiceEngineFields } from '../../src/calculators/practice-engine-form.ts';
import { pressureUnits } from '../../src/calculators/pressure-unit-table.ts';
import { threadTravelBudgetFields } from '../../src/calculators/thread-travel-budget-fields.ts';
import { unitConverterFields } from '../../src/calculators/unit-converter-form.ts';

const forms: Readonly<Record<string, Readonly<Record<string, FormField>>>> = {
  'ambient pressure': ambientPressureFields,
  'balance analyser': balanceAnalyserFields,
  checklists: checklistFields,
  'exhaust gas in a room': exhaustGasInARoomFields,
  'flutter and repeats': flutterAndRepeatsFields,
  'gauge comparison': gaugeComparisonFields,
  'liquid column': liquidColumnFields,
  'practice engine': practiceEngineFields,
  'thread-travel budget': threadTravelBudgetFields,
  'unit converter': unitConverterFields,
};

const oneTo8 = ['1', '2', '3', '4', '5', '6', '7', '8'];
const twoTo8 = oneTo8.slice(1);
const unitIds = pressureUnits.map(({ id }) => id);
const classes = ['none', ...accuracyClasses.map(String)];

describe('the fields of a form', () => {
  it.each(Object.entries(forms))(
    '%s: a choice stands at first on one of several that differ',
    (_, fields) => {
      const choices = Object.values(fields).flatMap((field) => (field.kind === 'choice' ? [field] : []));
      expect(choices.length).toBeGreaterThan(1);
      for (const { initially, choices: offered } of choices) {
        expect(offered).toContain(initially);
        expect(offered.length).toBeGreaterThan(1);
        expect(new Set(offered).size).toBe(offered.length);
        for (const one of offered) expect(one).toMatch(/^[\w/%-]/u);
      }
    },
  );

  it.each<[form: string, field: string, offered: readonly string[]]>([
    ['balance analyser', 'carburettors', twoTo8],
    ['balance analyser', 'fixed', ['none', ...oneTo8]],
    ['balance analyser', 'drift', ['ends', 'none', ...oneTo8]],
    ['balance analyser', 'generation', generations],
    ['balance analyser', 'unit', unitIds],
    ['checklists', 'carburettors', twoTo8],
    ['checklists', 'generation', generations],
    ['flutter and repeats', 'cylinders', oneTo8],
    ['flutter and repeats', 'unit', unitIds],
    ['gauge comparison', 'gauges', twoTo8],
    ['gauge comparison', 'reference', ['mean', ...oneTo8]],
    ['gauge comparison', 'unit', unitIds],
    ['gauge comparison', 'class1', classes],
    ['gauge comparison', 'class8', classes],
    ['practice engine', 'carburettors', ['2', '3', '4', '5', '6']],
    ['practice engine', 'generation', generations],
    ['thread-travel budget', 'adjusters', oneTo8],
    ['thread-travel budget', 'generation', generations],
    ['unit converter', 'usualUnit', unitIds],
  ])('%s: %s is chosen from these', (form, field, offered) =>
    expect(forms[form]?.[field]).toMatchObject({ kind: 'choice', choices: offered }),
  );

  // Lists of readings and a club's own words are longer than one number; all others are not.
  const longer: Readonly<Record<string, number>> = {
    'balance analyser readings': 2000,
    'gauge comparison engine': 2000,
    'gauge comparison swap': 400,
    ...Object.fromEntries(oneTo8.map((gauge) => [`gauge comparison readings${gauge}`, 400])),
    'checklists heading': 60,
    'checklists notes': 240,
    'checklists printed': 5,
  };
  it.each(Object.entries(forms))('%s: a text is as long as it has to be', (form, fields) => {
    expect(Object.values(fields).some(({ kind }) => kind === 'text')).toBe(true);
    for (const [name, field] of Object.entries(fields)) {
      if (field.kind !== 'text') continue;
      const longest = longer[`${form} ${name}`];
      expect(field, name).toStrictEqual({
        kind: 'text',
        initially: field.initially,
        ...(longest === undefined ? {} : { longest }),
      });
      expect(field.initially.length).toBeLessThanOrEqual(longest ?? 80);
    }
  });

  it.each<[form: string, fields: readonly string[]]>([
    ['balance analyser', ['groups', 'offsetUncertainty', 'speedEffect']],
    ['checklists', ['heading', 'notes', 'printed']],
    ['gauge comparison', ['5', '6', '7', '8'].flatMap((gauge) => [`readings${gauge}`, `span${gauge}`])],
    ['liquid column', ['reading']],
    [
      'thread-travel budget',
      ['minimum', 'nutHeight', 'idleRatio'].concat(
        ['5', '6', '7', '8'].flatMap((number) => [
          `closing${number}`,
          `opening${number}`,
          `planned${number}`,
        ]),
      ),
    ],
  ])('%s: the example leaves these empty, and no others', (form, fields) => {
    const empty = Object.entries(initialForm(forms[form]!)).filter(([, typed]) => typed === '');
    expect(empty.map(([name]) => name).toSorted()).toEqual(fields.toSorted());
  });

  it('a gauge that the example does not read has no class', () => {
    const form = initialForm(gaugeComparisonFields);
    expect([form.class1, form.class4, form.class5, form.class8]).toEqual(['2.5', '2.5', 'none', 'none']);
  });
});
