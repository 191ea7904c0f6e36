import { defaults } from './advisor/priors.ts';
import { checkDepression } from './check-session.ts';
import { parseNumber } from './parse-number.ts';
import { parsePressure } from './parse-pressure.ts';
import { pressureUnit } from './pressure-units.ts';
import { fail, succeed, type Result } from './result.ts';

/**
 * A reading as typed at the bench, `212`, `9 1/2 inHg` or `12,5 cmHg`, as a depression in pascals. A number without a unit
 * is in the gauge's unit. Problems: those of `parsePressure`; `negative-depression`; `depression-beyond-ambient`.
 */
export const parseReading = (
  typed: string,
  unitId: string,
  { ambientPa = defaults.ambientPa }: { readonly ambientPa?: number | undefined },
): Result<number> => {
  const parsed = parsePressure(typed, pressureUnit(unitId), 'reading');
  if (!parsed.ok) return parsed;
  const { pascals } = parsed.value;
  if (pascals < 0) return fail({ kind: 'negative-depression', field: 'reading', depressionPa: pascals });
  const problem = checkDepression('reading', pascals, ambientPa);
  return problem ? fail(problem) : succeed(pascals);
};

const minutesBehind = /min(?:utes?)?\.?\s*$/iu;
const turnsBehind = /turns?\s*$/iu;
const speedBehind = /(?:rpm|r\/min|1\/min)\s*$/iu;

/** Most that a screw is turned in one move: more is a slip of the pen. */
const largestTurns = 50;

/**
 * An amount that was really turned: `1/4`, `0.2`, `1 1/4`, or `7 min` for minutes of a clock face. Never negative: the
 * direction is chosen beside it. Problems: those of `parseNumber`; `out-of-range`.
 */
export const parseTurns = (typed: string): Result<number> => {
  const inMinutes = minutesBehind.test(typed);
  const parsed = parseNumber(typed.replace(inMinutes ? minutesBehind : turnsBehind, ''), 'turns');
  if (!parsed.ok) return 'typed' in parsed.problem ? fail({ ...parsed.problem, typed }) : parsed;
  const turns = inMinutes ? parsed.value.value / 60 : parsed.value.value;
  return turns >= 0 && turns <= largestTurns
    ? succeed(turns)
    : fail({ kind: 'out-of-range', field: 'turns', value: turns, limit: { min: 0, max: largestTurns } });
};

/** An engine speed as typed; empty means that none was read. */
export const parseSpeed = (typed: string): Result<number | undefined> => {
  if (typed.trim() === '') return succeed(undefined);
  const parsed = parseNumber(typed.replace(speedBehind, ''), 'rpm');
  if (!parsed.ok) return 'typed' in parsed.problem ? fail({ ...parsed.problem, typed }) : parsed;
  const rpm = parsed.value.value;
  return rpm >= 100 && rpm <= 20_000
    ? succeed(rpm)
    : fail({ kind: 'out-of-range', field: 'rpm', value: rpm, limit: { min: 100, max: 20_000 } });
};
