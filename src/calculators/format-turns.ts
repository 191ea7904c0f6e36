import { formatFixed } from './format-number.ts';

/** Fractions that a person sets by eye on a screw but that are no whole minutes of a clock face. */
const halvedQuarters = [8, 16] as const;
/** A minute of a clock face. */
const sixtieth = 60;
/** Closeness to a fraction: far below anything that can be turned, far above the tail of a binary fraction. */
const closeTurns = 1e-9;

/**
 * Turns of a screw as a person says them, without the word: `1/4`, `1 1/4`, `7/60`, `2`, `0`.
 * Eighths and sixteenths stay what they are; everything else goes to the nearest 1/60 turn, a minute of a
 * clock face, reduced. A negative amount carries the minus sign. `less than 1/60` stands for what would
 * round to nothing and is not nothing.
 */
export function describeTurns(turns: number): string {
  if (!Number.isFinite(turns)) throw new RangeError(`not a finite number of turns: ${turns}`);
  const size = Math.abs(turns);
  if (size > closeTurns && size < 0.5 / sixtieth) return 'less than 1/60';
  const denominator =
    halvedQuarters.find((parts) => Math.abs(size * parts - Math.round(size * parts)) < closeTurns) ??
    sixtieth;
  const parts = Math.round(size * denominator);
  const whole = Math.floor(parts / denominator);
  const rest = parts % denominator;
  const divisor = greatestCommonDivisor(rest, denominator);
  const fraction = rest === 0 ? '' : `${rest / divisor}/${denominator / divisor}`;
  const sign = turns < 0 && parts > 0 ? '−' : '';
  return `${sign}${[whole === 0 ? '' : String(whole), fraction].filter(Boolean).join(' ') || '0'}`;
}

/** With the word: `1/4 turn`, `1 turn`, `1 1/4 turns`, `no turn`. No-break spaces keep the amount together. */
export function describeTurnsInWords(turns: number): string {
  const amount = describeTurns(turns);
  if (amount === '0') return 'no turn';
  const oneOrLess = amount === '1' || /^−?(?:less than )?\d+\/\d+$|^−1$/u.test(amount);
  return `${amount} ${oneOrLess ? 'turn' : 'turns'}`.replaceAll(' ', '\u00a0');
}

/** The size of a turn in words, whichever way it goes. */
export const describeTurnSize = (turns: number): string => describeTurnsInWords(Math.abs(turns));

/** The same as minutes of a clock face, whole: `15 min`; 1/60 turn is one minute. */
export const describeClockMinutes = (turns: number): string =>
  `${formatFixed(Math.abs(turns) * sixtieth, 0)}\u00a0min`;

const greatestCommonDivisor = (first: number, second: number): number =>
  second === 0 ? first : greatestCommonDivisor(second, first % second);
