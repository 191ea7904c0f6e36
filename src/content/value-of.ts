import type { Result } from '../calculators/index.ts';

/** The value of a computation whose inputs a page chose itself: a problem is our own mistake, and fails the build. */
export function valueOf<Value>(result: Result<Value>): Value {
  if (!result.ok)
    throw new Error(`a figure of the handbook cannot be computed: ${JSON.stringify(result.problem)}`);
  return result.value;
}
