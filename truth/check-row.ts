import type { Adapters, Answer } from './adapter.ts';
import { allowedDifference, expectedNumber } from './data-rows.ts';
import type { DataRow } from './data-rows.ts';

/** What became of a row. `kind` and `got` are null where nothing was answered; `why` says then why not. */
export type RowOutcome = {
  readonly outcome: 'passed' | 'failed' | 'unknown';
  readonly kind: Answer['kind'] | null;
  /** The answer nearest to the expected value, in the row's `expected_unit`. */
  readonly got: number | null;
  /** Distance to the expected value as a share of what the row allows; up to 1 passes. */
  readonly shareOfTolerance: number | null;
  readonly why: string | null;
};

const none = { kind: null, got: null, shareOfTolerance: null } as const;

/** Sends a row through the adapter of its quantity, which sees input and units, and compares. */
export function checkRow(row: DataRow, adapters: Adapters): RowOutcome {
  const adapter = Object.hasOwn(adapters, row.quantity) ? adapters[row.quantity] : undefined;
  if (adapter === undefined) return { outcome: 'unknown', ...none, why: 'no adapter for this quantity' };
  try {
    const { input, inputUnit, expectedUnit } = row;
    const { kind, values } = adapter({ input, inputUnit, expectedUnit });
    const expected = expectedNumber(row);
    const distance = (value: number) => Math.abs(value - expected);
    const [got] = values.filter(Number.isFinite).toSorted((a, b) => distance(a) - distance(b));
    if (got === undefined) return { outcome: 'failed', ...none, kind, why: 'no finite answer' };
    const allowed = allowedDifference(row);
    const passed = distance(got) <= allowed;
    const shareOfTolerance = distance(got) === 0 ? 0 : distance(got) / allowed;
    return { outcome: passed ? 'passed' : 'failed', kind, got, shareOfTolerance, why: null };
  } catch (error) {
    return { outcome: 'failed', ...none, why: error instanceof Error ? error.message : String(error) };
  }
}
