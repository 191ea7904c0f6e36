import { describe, expect, it } from 'vitest';
import { plainNumber } from '../../src/calculators/plain-number.ts';

type Row = readonly [
  text: string,
  value: number,
  decimals: number,
  significantDigits: number,
  mark: string | null,
  end: number,
];

const read: readonly Row[] = [
  ['0', 0, 0, 1, null, 1],
  ['9', 9, 0, 1, null, 1],
  ['007', 7, 0, 1, null, 3],
  ['200', 200, 0, 3, null, 3],
  ['12.5 mm', 12.5, 1, 3, 'point', 4],
  ['0,0120', 0.012, 4, 3, 'comma', 6],
  ['5,inHg', 5, 0, 1, 'comma', 2],
  ['1.234', 1.234, 3, 4, 'point', 5],
  ['12,34567', 12.34567, 5, 7, 'comma', 8],
  // It ends at whatever is no digit, be it next to them in the table of characters, and at a second mark.
  ['9/2', 9, 0, 1, null, 1],
  ['0:30', 0, 0, 1, null, 1],
  ['1.2.3', 1.2, 1, 2, 'point', 3],
  ['1,2.3', 1.2, 1, 2, 'comma', 3],
  // The most digits that a double holds whatever they are: below 2^53.
  ['999999999999999', 999999999999999, 0, 15, null, 15],
];

describe('plainNumber(text)', () => {
  it.each(read)('%j is %d', (text, value, decimals, significantDigits, mark, end) =>
    expect(plainNumber(text)).toStrictEqual({ number: { value, decimals, significantDigits, mark }, end }),
  );

  it.each(['', 'x', '-5', ' 5', '.5', ',5', '1,234', '1,234 mm', '1000000000000000'])(
    '%j is left to the whole grammar',
    (text) => expect(plainNumber(text)).toBeNull(),
  );
});
