import { formatExact } from '../calculators/index.ts';
import type { ConstantValue } from '../calculators/index.ts';

/** A value of the list of constants as it is printed: a number, a range, or the coefficients one after the other. */
export function formatConstant(value: ConstantValue): string {
  if (typeof value === 'number') return formatExact(value);
  if ('length' in value)
    return value
      .map((each) =>
        typeof each === 'number' ? formatExact(each) : each.map((one) => formatExact(one)).join(': '),
      )
      .join('; ');
  return [value.min, value.max].map((each) => (each === undefined ? '…' : formatExact(each))).join(' to ');
}
