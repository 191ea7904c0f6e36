import { expect, it } from 'vitest';
import { fail, succeed } from '../../src/calculators/result.ts';
import { valueOfChecked } from '../../src/calculators/value-of-checked.ts';

it('valueOfChecked(result) is the value, and a problem after all checks is our own mistake, named', () => {
  expect(valueOfChecked(succeed(5))).toBe(5);
  expect(() => valueOfChecked(fail({ kind: 'no-screws' }))).toThrow(
    'a problem after all checks: {"kind":"no-screws"}',
  );
});
