import { describe, expect, it } from 'vitest';
import {
  ambientPressureFields,
  answerAmbientPressure,
  answerBalanceAnalyser,
  answerExhaustGasInARoom,
  answerFlutterAndRepeats,
  answerGaugeComparison,
  answerLiquidColumn,
  answerThreadTravelBudget,
  answerUnitConverter,
  balanceAnalyserFields,
  exhaustGasInARoomFields,
  flutterAndRepeatsFields,
  gaugeComparisonFields,
  initialForm,
  liquidColumnFields,
  threadTravelBudgetFields,
  unitConverterExample,
} from '../../src/calculators/index.ts';
import { expectFullText } from '../full-text.ts';

type Answered = { readonly ok: true; readonly answer: object } | { readonly ok: false };
const answerOf = (answered: Answered): object => {
  if (!answered.ok) throw new Error('the example has a problem');
  return answered.answer;
};

/** The answers to the worked examples of the pages, and to some that have more to say. */
const answers: Readonly<Record<string, object>> = {
  'ambient pressure': answerOf(answerAmbientPressure(initialForm(ambientPressureFields))),
  'balance analyser': answerOf(answerBalanceAnalyser(initialForm(balanceAnalyserFields))),
  'exhaust gas in a room': answerOf(answerExhaustGasInARoom(initialForm(exhaustGasInARoomFields))),
  'flutter and repeats': answerOf(answerFlutterAndRepeats(initialForm(flutterAndRepeatsFields))),
  'gauge comparison': answerOf(answerGaugeComparison(initialForm(gaugeComparisonFields))),
  'liquid column': answerOf(answerLiquidColumn(initialForm(liquidColumnFields))),
  'thread-travel budget': answerOf(answerThreadTravelBudget(initialForm(threadTravelBudgetFields))),
  'unit converter': answerOf(answerUnitConverter(unitConverterExample)),
};

const linesIn = (value: unknown): readonly Readonly<Record<string, unknown>>[] => {
  if (typeof value !== 'object' || value === null) return [];
  const own =
    'id' in value && 'label' in value && 'text' in value ? [value as Readonly<Record<string, unknown>>] : [];
  return [...own, ...Object.values(value).flatMap(linesIn)];
};

describe('the answer to a worked example', () => {
  it.each(Object.entries(answers))('%s: no text is empty, none has a gap', (_, answer) => {
    expectFullText(answer, 5, '.noShift');
  });

  it.each(Object.entries(answers))(
    '%s: each line has an id of its own, a label and a figure',
    (_, answer) => {
      const lines = linesIn(answer);
      for (const { id, label, text, note } of lines) {
        expect(id).toMatch(/^[a-z][\w.-]*$/iu);
        expect(label, String(id)).toMatch(/^[\p{L}\d].*\S$/u);
        expect(text, String(id)).toMatch(/\d|\p{L}/u);
        if (note !== undefined) expect(note, String(id)).toMatch(/^\S.*\S$/u);
      }
      expect(new Set(lines.map(({ id }) => id)).size).toBe(lines.length);
    },
  );
});
