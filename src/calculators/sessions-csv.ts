import type { BenchSetUp } from './bench-set-up.ts';
import { csvText } from './csv-text.ts';
import { formatExact } from './format-number.ts';
import { inUnit, pressureUnit } from './pressure-units.ts';
import type { SessionEvent } from './protocol.ts';
import { membersWords } from './screw-words.ts';

/** A session as far as it goes into a table. */
export type TabledSession = {
  readonly id: string;
  readonly name: string;
  /** ISO 8601, with the offset from universal time. */
  readonly startedAt: string;
  readonly unit: string;
  readonly setUp: BenchSetUp;
  readonly events: readonly (SessionEvent & { readonly typed?: string })[];
  readonly signOff: { readonly verdict: string } | null;
};

const number = (value: number | undefined): string =>
  value === undefined ? '' : formatExact(value, { minus: 'hyphen' });

/**
 * Sessions for a spreadsheet, one event a row, as comma-separated text; numbers have a point. Depressions stand in pascals
 * and, if all sessions have one unit, in that.
 */
export const sessionsCsv = (sessions: readonly TabledSession[]): string => {
  const [unit, ...others] = new Set(sessions.map((session) => session.unit));
  const shared = unit === undefined || others.length > 0 ? null : pressureUnit(unit);
  const head = [
    ...['session', 'engine', 'started (ISO 8601)', 'outcome', 'event', 'engine running (min)', 'kind'],
    ...['carburettor', 'screw', 'screw moves', 'turns (+ opens)', 'depression (Pa)'],
    ...(shared ? [`depression (${shared.symbol})`] : []),
    ...['engine speed (rpm)', 'as typed'],
  ];
  const rowOf = (session: TabledSession, event: TabledSession['events'][number], k: number): string[] => {
    const isTurn = event.kind === 'turn';
    return [
      ...[session.id, session.name, session.startedAt, session.signOff?.verdict ?? 'open'],
      ...[number(k + 1), number(event.minute), event.kind],
      isTurn ? '' : number(event.carburettor),
      ...(isTurn
        ? [number(event.screw), membersWords(session.setUp.screws[event.screw - 1]?.moves ?? [])]
        : ['', '']),
      isTurn ? number(event.turns) : '',
      isTurn ? '' : number(event.depressionPa),
      ...(shared ? [isTurn ? '' : number(inUnit(event.depressionPa, shared))] : []),
      isTurn ? '' : number(event.rpm),
      event.typed ?? '',
    ];
  };
  return csvText([
    head,
    ...sessions.flatMap((session) => session.events.map((event, k) => rowOf(session, event, k))),
  ]);
};
