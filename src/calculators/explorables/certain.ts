import type { Result } from '../result.ts';

/** The value of a computation whose inputs are our own examples: a problem is a mistake of ours. */
export function certain<Value>(result: Result<Value>): Value {
  if (!result.ok) throw new RangeError(`an example of ours has a problem: ${result.problem.kind}`);
  return result.value;
}
