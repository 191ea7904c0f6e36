import {
  answerGaugeComparison,
  formatTrimmed,
  gaugeComparisonFields,
  initialForm,
  type GaugeForm,
} from '../../calculators/index.ts';

/** Invented: two gauges exchanged, as in the example of the calculator, while the engine drifts. */
const form: GaugeForm = { ...initialForm(gaugeComparisonFields), way: 'abba', reference: '1' };
const answered = answerGaugeComparison(form);
if (!answered.ok) throw new Error('the example of the gauges has a problem');
const { answer } = answered;
const figure = (id: string): string => {
  const line = [...answer.offsets, ...answer.classes, ...answer.corrected].find((each) => each.id === id);
  if (line === undefined) throw new Error(`no figure “${id}”`);
  return line.text;
};
const [a1 = '', b1 = '', b2 = '', a2 = ''] = form.swap.split('; ');
const withUnit = (reading: string): string => `${reading}\u00a0${form.unit}`;

export const gauges = {
  a1: withUnit(a1),
  b1: withUnit(b1),
  b2: withUnit(b2),
  a2: withUnit(a2),
  drift: withUnit(formatTrimmed(Number(a2) - Number(a1), 1)),
  offset: figure('offset-2'),
  accuracyClass: form.class2,
  permitted: figure('class-2'),
  read: withUnit(/2: ([\d.]+)/u.exec(form.engine)?.[1] ?? ''),
  corrected: figure('corrected-2'),
} as const;
