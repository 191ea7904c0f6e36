import type { Result } from '../src/calculators/index.ts';

/** One input of a row: `V=60 m3`, `4 cylinders`, `class 1.6`, `rest`. */
export type Input = {
  /** What stands before the number: `V` of `V=60 m3`, `class` of `class 1.6`; else empty. */
  readonly name: string;
  /** NaN where the part is words alone. */
  readonly value: number;
  /** What stands behind the number: a unit or words. */
  readonly unit: string;
  readonly text: string;
};

const number = String.raw`[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?`;
const part = new RegExp(`^(?:(.*?)\\s*(?:=|\\s)\\s*)?(${number})\\s*(.*)$`, 'iu');

/** A number that is written plainly; throws on anything else, so that no row passes as NaN. */
export function plainNumber(text: string): number {
  if (!new RegExp(`^${number}$`, 'iu').test(text.trim())) throw new Error(`not a number: “${text}”`);
  return Number(text);
}

/** The inputs of a row, one for each part between commas. */
export const parseInputs = (input: string): readonly Input[] =>
  input
    .split(',')
    .map((each) => each.trim())
    .filter((each) => each !== '')
    .map((text) => {
      const [, name = '', value, unit = ''] = part.exec(text) ?? [];
      return value === undefined
        ? { name: '', value: NaN, unit: '', text }
        : { name: name.trim(), value: Number(value), unit: unit.trim(), text };
    });

/** The input of a name; throws if there is none. */
export function inputNamed(inputs: readonly Input[], name: string): Input {
  const found = inputs.find((input) => input.name.toLowerCase() === name.toLowerCase());
  if (found === undefined) throw new Error(`no ${name} in “${inputs.map(({ text }) => text).join(', ')}”`);
  return found;
}

/** The number whose unit is as asked for, as in “4 cylinders, 1100 rpm”; throws if there is none. */
export function numberIn(inputs: readonly Input[], unit: RegExp): number {
  const found = inputs.find((input) => Number.isFinite(input.value) && unit.test(input.unit));
  if (found === undefined)
    throw new Error(`no ${unit.source} in “${inputs.map(({ text }) => text).join(', ')}”`);
  return found.value;
}

/** The value of a result that a row's input must allow. */
export function valueOf<Value>(result: Result<Value>): Value {
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
}
