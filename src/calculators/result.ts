import type { Problem } from './problem.ts';

/** What a computation returns at the edge: a value, or a problem in plain JSON. */
export type Result<Value> =
  { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly problem: Problem };

export const succeed = <Value>(value: Value): Result<Value> => ({ ok: true, value });

export const fail = (problem: Problem): { readonly ok: false; readonly problem: Problem } => ({
  ok: false,
  problem,
});
