import { expect, it } from 'vitest';
import { once } from '../../src/calculators/once.ts';

it('makes a value when it is first asked for, and keeps it', () => {
  const made: object[] = [];
  const value = once(() => {
    made.push({});
    return made[0]!;
  });
  expect(made).toHaveLength(0);
  expect(value()).toBe(made[0]);
  expect(value()).toBe(made[0]);
  expect(made).toHaveLength(1);
});
