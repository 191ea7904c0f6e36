import type { FormFields } from './calculator-form.ts';

const text = (initially: string) => ({ kind: 'text', initially }) as const;

const choice = <Choice extends string>(...choices: readonly [Choice, ...Choice[]]) =>
  ({ kind: 'choice', initially: choices[0], choices }) as const;

/** The worked example, invented: one engine with four cylinders on its stand, in a small garage with its door shut. */
export const exhaustGasInARoomFields = {
  roomAs: choice('sides', 'volume'),
  length: text('6 m'),
  width: text('3 m'),
  height: text('2.4 m'),
  volume: text('43 m3'),
  airChanges: text('0.5'),
  sourceAs: choice('engine', 'flow'),
  displacement: text('750 cm3'),
  speed: text('2000 rpm'),
  cycle: choice('four-stroke', 'two-stroke'),
  filling: text('30'),
  carbonMonoxide: text('5'),
  flow: text('11 L/min'),
  temperature: text('20 °C'),
  running: text('20'),
  initial: text('0'),
  activity: choice('light work', 'rest'),
  scale: choice('logarithmic', 'linear'),
} as const satisfies FormFields<string>;

export type ExhaustGasInARoomField = keyof typeof exhaustGasInARoomFields;
