import { describeTurnSize, formatFixed } from '../../../calculators/index.ts';
import type { RecordedEvent } from '../../../device/session-record.ts';
import { figure, screwName, type Figures } from './words.ts';

/** A line of the log. */
export const eventWords = (event: RecordedEvent, figures: Figures): string => {
  if (event.kind === 'reading') {
    const other = event.typed !== undefined && /[a-z″"]/iu.test(event.typed) ? ` (${event.typed})` : '';
    const rpm = event.rpm === undefined ? '' : ` at ${formatFixed(event.rpm, 0)} rpm`;
    return `Read carburettor ${event.carburettor}: ${figure(event.depressionPa, figures)}${other}${rpm}`;
  }
  const verb = event.turns < 0 ? 'Closed' : 'Opened';
  return `${verb} ${screwName(figures.setUp, event.screw)} by ${describeTurnSize(event.turns)}`;
};

/** A date as it is read: 25 November 2026, 14:05. */
export const dateWords = (instant: string): string =>
  new Date(instant).toLocaleString('en-GB', { dateStyle: 'long', timeStyle: 'short' });

export const verdictWords = {
  'under-way': 'sign-off round under way',
  within: 'signed off as within',
  'not-within': 'ended, not within',
} as const;
