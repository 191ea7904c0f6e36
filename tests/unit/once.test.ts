import { expect, it, vi } from 'vitest';
import { once } from '../../src/calculators/once.ts';

it('makes a value when it is first asked for, and keeps it', () => {
  const make = vi.fn(() => ({}));
  const value = once(make);
  expect(make).not.toHaveBeenCalled();
  const first = value();
  expect(value()).toBe(first);
  expect(make).toHaveBeenCalledTimes(1);
});
