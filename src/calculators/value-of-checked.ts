import type { Result } from './result.ts';

/** The value of a result whose inputs were checked before; throws if it has a problem, which is our own mistake. */
export function valueOfChecked<Value>(result: Result<Value>): Value {
  if (!result.ok) throw new Error(`a problem after all checks: ${JSON.stringify(result.problem)}`);
  return result.value;
}
