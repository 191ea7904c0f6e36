import { parseReading, parseSpeed } from './bench-reading.ts';
import { labelledReadings } from './reading-list.ts';
import { fail, succeed, type Result } from './result.ts';

export type TypedReading = {
  readonly carburettor: number;
  readonly typed: string;
  readonly depressionPa: number;
  readonly rpm?: number;
};

/** Most readings that are taken over at once: eight of each of eight carburettors. */
const mostReadings = 64;

/**
 * Readings that somebody has already: `212; 248; 251; 187`, or with their carburettors, `1: 212, 4: 187`. Parted by
 * semicolons, line ends, or commas before a space; so a decimal comma stays one. Without a label they count on from the one
 * before. `4: 187 @ 2150` was read at that engine speed. Problems: those of `parseReading` and `parseSpeed`; `empty` for an
 * `@` without a speed; `index` for a carburettor that the set does not have; `too-many-readings`.
 */
export const parseReadings = (
  typed: string,
  unitId: string,
  setUp: { readonly carburettors: number; readonly ambientPa?: number | undefined },
): Result<readonly TypedReading[]> => {
  const listed = labelledReadings(typed);
  if (listed.length > mostReadings)
    return fail({
      kind: 'too-many-readings',
      field: 'readings',
      value: listed.length,
      limit: { max: mostReadings },
    });
  const readings: TypedReading[] = [];
  for (const { carburettor, text, speedText } of listed) {
    if (carburettor < 1 || carburettor > setUp.carburettors)
      return fail({
        kind: 'index',
        field: 'readings',
        value: carburettor,
        limit: { min: 1, max: setUp.carburettors },
      });
    const reading = parseReading(text, unitId, setUp);
    if (!reading.ok) return reading;
    const speed = parseSpeed(speedText ?? '');
    if (!speed.ok) return speed;
    if (speedText === '') return fail({ kind: 'empty', field: 'rpm' });
    readings.push({
      carburettor,
      typed: text,
      depressionPa: reading.value,
      ...(speed.value !== undefined && { rpm: speed.value }),
    });
  }
  return succeed(readings);
};
