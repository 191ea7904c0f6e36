import { defaultAnswers, type OpeningDirection, type SetUpAnswers } from './bench-set-up.ts';
import { parseSpeed } from './bench-reading.ts';
import { formatExact } from './format-number.ts';
import { parseNumber } from './parse-number.ts';
import { parsePressure } from './parse-pressure.ts';
import { findPressureUnit, inUnit, pressureUnit } from './pressure-units.ts';
import type { Problem } from './problem.ts';
import { labelledReadings } from './reading-list.ts';

/** Version of the link's form. */
export const linkVersion = 1;

/** What a link says: the answers of the set-up, and readings as `typed-readings.ts` takes them. */
export type SessionLink = {
  readonly answers: SetUpAnswers;
  readonly readings: string;
  /** Keys that this version does not know; they are named and ignored. */
  readonly unknownKeys: readonly string[];
};

const textKeys = { g: 'generation', n: 'carburettors', fixed: 'fixed' } as const;
const pressureKeys = { res: 'resolution', fl: 'flutter', tol: 'tolerance', amb: 'ambient' } as const;
const numberKeys = { rpm: 'rpm', lock: 'lockShift', conf: 'confidence', eff: 'effect' } as const;
/** Any other letter, `u` among them, is unknown. */
const directionOfLetter: ReadonlyMap<string, OpeningDirection> = new Map([
  ['c', 'clockwise'],
  ['a', 'anticlockwise'],
]);

/**
 * The state of a link `#v=1&g=fixed-reference&n=4&fixed=2&r=212,248,251,187&u=mmHg&tol=10`. Numbers have decimal points;
 * pressures are in the unit `u`; readings of one carburettor are parted by strokes, carburettors by commas, unless they were
 * taken in another order: `r=2:248,1:212,2:252`; `212@2150` was read at that engine speed; `o` says which way opens each screw
 * (c, a, u), `t` the thread left as closing/opening, `m` the groups of paired screws as 1,4,3.4.
 * Problem: `newer-version`. Values are not checked here: they go through the form as if they had been typed.
 */
export const parseSessionLink = (
  state: Readonly<Record<string, string>>,
): { readonly ok: true; readonly value: SessionLink } | { readonly ok: false; readonly problem: Problem } => {
  const version = Number(state['v'] ?? linkVersion);
  if (version > linkVersion)
    return {
      ok: false,
      problem: { kind: 'newer-version', field: 'v', value: version, limit: { max: linkVersion } },
    };
  const unit = findPressureUnit(state['u'] ?? 'mmHg');
  const base = defaultAnswers(unit?.id ?? 'mmHg');
  const changes: Record<string, unknown> = unit ? {} : { unit: state['u'] };
  const known = { ...textKeys, ...pressureKeys, ...numberKeys };
  const unknownKeys: string[] = [];
  let readings = '';
  for (const [key, text] of Object.entries(state)) {
    if (Object.hasOwn(known, key)) changes[known[key as keyof typeof known]] = text;
    else if (key === 'r') readings = readingsOfLink(text);
    else if (key === 'o') Object.assign(changes, directionsOfLink(text));
    else if (key === 't')
      changes['thread'] = text.split(',').map((pair) => {
        const [closing, opening = ''] = pair.split('/');
        return { closing, opening };
      });
    else if (key === 'm') changes['groups'] = text.replaceAll(',', '; ').replaceAll('.', ' ');
    else if (key !== 'v' && key !== 'u') unknownKeys.push(key);
  }
  return { ok: true, value: { answers: { ...base, ...changes }, readings, unknownKeys } };
};

const readingsOfLink = (text: string): string =>
  text
    .split(',')
    .flatMap((ofOne, i) =>
      ofOne
        .split('/')
        .filter((reading) => reading.trim() !== '')
        .map((reading) => (reading.includes(':') ? reading : `${i + 1}:${reading}`)),
    )
    .map((reading) =>
      reading
        .trim()
        .replace(/\s*:\s*/u, ': ')
        .replace(/\s*@\s*/u, ' @ '),
    )
    .join('; ');

const directionsOfLink = (text: string): Partial<SetUpAnswers> => {
  const each = text.split(',').map((letter) => directionOfLetter.get(letter) ?? 'unknown');
  return each.length === 1 ? { opens: each[0]! } : { opens: 'differ', opensEach: each };
};

/** The link's state for these answers; what stands at its default is left out. */
export const writeSessionLink = (answers: SetUpAnswers, readings: string): Record<string, string> => {
  const unit = findPressureUnit(answers.unit)?.id ?? 'mmHg';
  const base = defaultAnswers(unit);
  const state: Record<string, string> = { v: String(linkVersion) };
  const put = (key: string, value: string, usual: string): void => {
    if (value !== usual) state[key] = value;
  };
  put('g', answers.generation, '');
  state['n'] = plain(answers.carburettors);
  // An empty answer says that no screw is left alone.
  if (answers.generation === 'fixed-reference' || answers.generation === 'bypass-screws')
    state['fixed'] = plain(answers.fixed);
  if (answers.generation === 'paired-screws')
    put(
      'm',
      answers.groups
        .split(';')
        .map((group) => (group.match(/\d+/gu) ?? []).join('.'))
        .join(','),
      '',
    );
  put('r', readingsToLink(readings, unit), '');
  put('u', answers.unit, 'mmHg');
  for (const [key, field] of Object.entries(pressureKeys))
    put(key, inGaugeUnit(answers[field], unit), base[field]);
  for (const [key, field] of Object.entries(numberKeys)) put(key, plain(answers[field]), base[field]);
  // One letter alone would speak for every screw, so two at least where they differ.
  const letters =
    answers.opens === 'differ'
      ? Array.from(
          { length: Math.max(2, answers.opensEach.length) },
          (_, j) => answers.opensEach[j] ?? 'unknown',
        )
      : [answers.opens];
  put('o', letters.map((direction) => direction.slice(0, 1)).join(','), base.opens.slice(0, 1));
  const thread = answers.thread
    .map(({ closing, opening }) => `${plain(closing)}/${plain(opening)}`)
    .join(',');
  if (/\d/u.test(thread)) state['t'] = thread;
  return state;
};

const readingsToLink = (readings: string, unit: string): string => {
  const written = labelledReadings(readings).flatMap(({ carburettor, text, speedText }) => {
    if (carburettor < 1 || carburettor > 8) return [];
    const reading = parsePressure(text, pressureUnit(unit));
    const speed = parseSpeed(speedText ?? '');
    // What is not one number, such as `1,234`, would be read as two: it stays with who typed it.
    if (!reading.ok || !speed.ok) return [];
    const at = speed.value === undefined ? '' : `@${formatExact(speed.value)}`;
    return { carburettor, text: writtenInUnit(reading.value.pascals, unit) + at };
  });
  const inOrder = written.every(({ carburettor }, k) => carburettor >= (written[k - 1]?.carburettor ?? 0));
  if (!inOrder) return written.map(({ carburettor, text }) => `${carburettor}:${text}`).join(',');
  const places: string[][] = [];
  for (const { carburettor, text } of written) {
    while (places.length < carburettor) places.push([]);
    places[carburettor - 1]!.push(text);
  }
  return places.map((ofOne) => ofOne.join('/')).join(',');
};

/** A typed number with a decimal point, as far as it is one; else as typed. */
const plain = (typed: string): string => {
  const parsed = parseNumber(typed);
  return parsed.ok ? formatExact(parsed.value.value, { minus: 'hyphen' }) : typed.trim();
};

const inGaugeUnit = (typed: string, unitId: string): string => {
  const parsed = parsePressure(typed, pressureUnit(unitId));
  return parsed.ok ? writtenInUnit(parsed.value.pascals, unitId) : typed.trim();
};

const writtenInUnit = (pascals: number, unitId: string): string =>
  formatExact(inUnit(pascals, pressureUnit(unitId)), { minus: 'hyphen' });
