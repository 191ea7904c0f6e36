import { crc32 } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import {
  checklistFields,
  describeProblem,
  parseCalculatorLink,
  parseChecklistLink,
  parseNumber,
  parsePressure,
  parseReadings,
  parseSessionLink,
  parseSetUp,
  pressureUnit,
  unitConverterFields,
} from '../../src/calculators/index.ts';
import { parseFragment } from '../../src/device/fragment.ts';
import { readRecord } from '../../src/device/session-record.ts';
import { slowFragment } from '../second-formula/fragment-text.ts';
import { slowNumber } from '../second-formula/typed-number.ts';
import { seededRandom } from '../seeded-random.ts';

/** Inputs a parser: 100,000, or FUZZ_RUNS. FUZZ_SEED draws others. */
const runs = Number(process.env['FUZZ_RUNS'] ?? 100_000);
const random = seededRandom(Number(process.env['FUZZ_SEED'] ?? 20261126));
const minutes = 60_000;

const below = (count: number): number => Math.floor(random() * count);
const one = <Item>(items: readonly Item[]): Item => items[below(items.length)]!;
const many = (most: number, make: () => string): string =>
  Array.from({ length: below(most + 1) }, make).join('');
const digit = (): string => String(below(10));
const some = (chance: number, make: () => string): string => (random() < chance ? make() : '');

const noise = (): string =>
  one([
    () => String.fromCharCode(below(0x10000)),
    () => String.fromCodePoint(below(0x80)),
    () => String.fromCodePoint(0x10000 + below(0x100000)),
    () => one(['\u202e', '\u2066', '\0', '\ufeff', '\u200b', '<b>', '&lt;', '__proto__', '\ud83d', '1e999']),
  ])();
/** One place changed: a character put in, taken out, doubled or replaced. */
const disturbed = (text: string, characters: () => string): string => {
  const at = below(text.length + 1);
  const to = at + below(3);
  return one([
    () => text.slice(0, at) + characters() + text.slice(at),
    () => text.slice(0, at) + text.slice(to),
    () => text.slice(0, to) + text.slice(at),
    () => text.slice(0, at) + characters() + text.slice(to),
  ])();
};
const often = (text: string, characters: () => string): string =>
  random() < 0.5 ? text : disturbed(random() < 0.7 ? text : disturbed(text, characters), characters);

const space = (): string => one([' ', ' ', '\u00a0', '\u2009', '\u202f', '\t']);
const group = (mark: string): string =>
  `${1 + below(9)}${many(2, digit)}${mark}${digit()}${digit()}${digit()}${some(0.3, () => mark + digit() + digit() + digit())}`;
const number = (): string =>
  some(0.2, () => one(['-', '−', '–', '+'])) +
  some(0.05, space) +
  one([
    () => `${digit()}${many(4, digit)}`,
    () => `${many(4, digit)}${one(['.', ','])}${many(4, digit)}`,
    () => group(one(['.', ',', ' ', "'", '’', '\u202f'])) + some(0.4, () => one(['.', ',']) + many(3, digit)),
    () => `${digit()}${many(1, digit)}${one(['/', '⁄', '∕', ' / '])}${digit()}${many(1, digit)}`,
    () => `${digit()}${one([' ', '-', '- ', '  '])}${digit()}/${digit()}${many(1, digit)}`,
    () => `${many(2, digit)}${some(0.3, space)}${one(['½', '¼', '¾', '⅓', '⅞'])}`,
    () =>
      `${digit()}${some(0.5, () => `.${digit()}`)}${one(['e', 'E'])}${one(['', '+', '-'])}${digit()}${many(3, digit)}`,
  ])();
const numberCharacters = (): string =>
  random() < 0.15 ? noise() : one([..."0123456789.,-−–+/⁄½¾eE '’\u202f"]);

const isClose = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-14 * Math.abs(b);

it(
  'numbers: no exception, and the value of the slow parser or its refusal',
  () => {
    const counts = { value: 0, ambiguous: 0, refused: 0 };
    for (let k = 0; k < runs; k++) {
      const text = often(number(), numberCharacters);
      const slow = slowNumber(text);
      const fast = parseNumber(text);
      const said = JSON.stringify(text);
      if (slow === 'ambiguous') {
        counts.ambiguous += 1;
        if (fast.ok || fast.problem.kind !== 'ambiguous-number') throw new Error(`${said} is ambiguous`);
      } else if (slow === null) {
        counts.refused += 1;
        if (fast.ok) throw new Error(`${said} is no number, read as ${fast.value.value}`);
        if (fast.problem.kind === 'ambiguous-number') throw new Error(`${said} is not even ambiguous`);
      } else {
        counts.value += 1;
        if (!fast.ok) throw new Error(`${said} is ${slow}, refused as ${fast.problem.kind}`);
        if (!isClose(fast.value.value, slow))
          throw new Error(`${said} is ${slow}, read as ${fast.value.value}`);
      }
    }
    expect(counts.value / runs).toBeGreaterThan(0.4);
    expect(counts.refused / runs).toBeGreaterThan(0.1);
    expect(counts.ambiguous / runs).toBeGreaterThan(0.003);
  },
  60 * minutes,
);

// Metre columns by the conventional densities 13 595.1 and 1000 kg/m³ and 9.80665 m/s² (ISO 80000-4).
const mercuryPa = 13595.1 * 9.80665;
const waterPa = 1000 * 9.80665;
const pascalsOf: Readonly<Record<string, number>> = {
  Pa: 1,
  hPa: 100,
  mbar: 100,
  kPa: 1000,
  bar: 100_000,
  mmHg: mercuryPa / 1000,
  cmHg: mercuryPa / 100,
  inHg: mercuryPa * 0.0254,
  '″Hg': mercuryPa * 0.0254,
  '" Hg': mercuryPa * 0.0254,
  'in. Hg': mercuryPa * 0.0254,
  inH2O: waterPa * 0.0254,
  cmH2O: waterPa / 100,
  psi: (0.45359237 * 9.80665) / 0.0254 ** 2,
};
const spellings = Object.keys(pascalsOf);

it(
  'units: no exception, and the pressure that a slow reading gives',
  () => {
    let read = 0;
    let refused = 0;
    for (let k = 0; k < runs; k++) {
      const isPlain = random() < 0.6;
      const numberText = isPlain ? number() : often(number(), numberCharacters);
      const spelling = one(spellings);
      const unitText = isPlain || random() < 0.5 ? spelling : disturbed(spelling, noise);
      const text = numberText + one(['', ' ', '\u00a0']) + unitText;
      const fast = parsePressure(text, pressureUnit('mmHg'));
      const said = JSON.stringify(text);
      if (!fast.ok) refused += 1;
      else {
        read += 1;
        const { pascals, unit } = fast.value;
        // Whatever part of the text was the number, it has to be one, and the unit that of our own table.
        const values = Array.from({ length: text.length }, (_, cut) => slowNumber(text.slice(0, cut + 1)));
        if (!values.some((value) => typeof value === 'number' && isCloseIn(pascals, value * unit.pascals)))
          throw new Error(`${said} is read as ${pascals} Pa`);
      }
      if (!isPlain) continue;
      const slow = slowNumber(numberText);
      if (typeof slow === 'number') {
        if (!fast.ok) throw new Error(`${said} is refused as ${fast.problem.kind}`);
        if (!isCloseIn(fast.value.pascals, slow * pascalsOf[spelling]!))
          throw new Error(`${said} is ${slow * pascalsOf[spelling]!} Pa, read as ${fast.value.pascals}`);
      } else if (fast.ok) throw new Error(`${said} has no number, read as ${fast.value.pascals} Pa`);
    }
    expect(read / runs).toBeGreaterThan(0.4);
    expect(refused / runs).toBeGreaterThan(0.1);
  },
  60 * minutes,
);
const isCloseIn = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-12 * Math.abs(b);

const keys = [
  'v',
  'q',
  'u',
  'g',
  'n',
  'r',
  'o',
  't',
  'm',
  'fixed',
  'tol',
  'res',
  'rpm',
  'amb',
  'from',
  '__proto__',
  'constructor',
  'h',
  'p',
  'l',
];
const linkValue = (): string =>
  one([
    number,
    () => `${number()} ${one(spellings)}`,
    () =>
      one([
        'all-adjustable',
        'fixed-reference',
        'paired-screws',
        'bypass-screws',
        'work',
        'tools',
        'depression',
      ]),
    () => String(below(10)),
    () => `${many(3, digit)},${many(3, digit)}/${many(3, digit)},2:${many(3, digit)}@2100`,
    () => one(['c,a,u', '1/2,,3/4', '1,4,3.4', 'mmHg', 'kPa']),
    () => many(8, noise),
  ])();
const encoded = (text: string): string =>
  random() < 0.7 ? new URLSearchParams({ k: text }).toString().slice(2) : text;
const wholeSession = (): string =>
  `g=all-adjustable&n=${2 + below(5)}&o=${one(['c', 'a', 'u'])}&u=${one(['mmHg', 'inHg', 'kPa'])}&r=${many(3, digit)},${many(3, digit)}`;
const fragment = (): string =>
  often(
    [
      ...(random() < 0.4 ? [wholeSession()] : []),
      `v=${one(['1', '1', '1', '1', '2', '1.5', '', 'x'])}`,
      ...Array.from({ length: 1 + below(5) }, () => `${one(keys)}=${encoded(linkValue())}`),
    ].join('&'),
    () => one([noise, () => one(['%', '%f', '%ff', '%C3', '%e2%82', '&', '=', '+', '%00', '%ED%A0%80'])])(),
  );

/** As a browser gives it: what is not ASCII is encoded, line ends are gone. */
const asInAddress = (text: string): string => new URL(`https://a.example/#${text}`).hash.slice(1);

describe('fragments', () => {
  it(
    'no exception, and the keys and values of the slow decoder',
    () => {
      let changedSomething = 0;
      for (let k = 0; k < runs; k++) {
        const text = asInAddress(fragment());
        const slow = slowFragment(text);
        const fast = parseFragment(text);
        const said = JSON.stringify(text);
        if (Object.keys(fast).length !== slow.size)
          throw new Error(`${said}: ${Object.keys(fast).length} keys`);
        for (const [key, value] of slow)
          if (!Object.hasOwn(fast, key) || Reflect.getOwnPropertyDescriptor(fast, key)!.value !== value)
            throw new Error(`${said}: ${key} is ${JSON.stringify(value)}`);

        const converter = parseCalculatorLink(unitConverterFields, fast);
        if (converter.ok)
          for (const [field, { initially }] of Object.entries(unitConverterFields)) {
            const given = Object.hasOwn(fast, field) ? slow.get(field) : undefined;
            const read = (converter.value.form as Record<string, string>)[field];
            if (read !== initially && read !== given) throw new Error(`${said}: ${field} is ${read}`);
          }

        const session = parseSessionLink(fast);
        if (!session.ok) continue;
        const setUp = parseSetUp(session.value.answers);
        parseReadings(session.value.readings, 'mmHg', { carburettors: 4 });
        if (setUp.ok) changedSomething += 1;
      }
      expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
      expect(changedSomething / runs).toBeGreaterThan(0.02);
    },
    60 * minutes,
  );
});

it(
  'links of checklists: no exception, plain text, and the choices or their first values',
  () => {
    let read = 0;
    let worded = 0;
    const hidden = /[\p{Cc}\p{Cs}\u061c\u200b\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/u;
    for (let k = 0; k < runs; k++) {
      const text = asInAddress(
        fragment() +
          some(0.7, () => `&h=${encoded(often('Spring evening', noise))}`) +
          some(
            0.5,
            () => `&t=${encoded(many(12, () => one([noise, () => one(['a', ' ', '\n', '\r\n', 'é'])])()))}`,
          ),
      );
      const slow = slowFragment(text);
      const parsed = parseChecklistLink(parseFragment(text));
      const said = JSON.stringify(text);
      if (!parsed.ok) {
        if (!(Number(slow.get('v')) > 1)) throw new Error(`${said} is refused as ${parsed.problem.kind}`);
        continue;
      }
      read += 1;
      const { form, problems } = parsed.value;
      for (const problem of problems)
        if (describeProblem(problem) === '') throw new Error(`${said}: no words`);
      for (const [key, field] of [
        ['l', 'list'],
        ['g', 'generation'],
        ['n', 'carburettors'],
      ] as const) {
        const choices: readonly string[] = checklistFields[field].choices;
        const given = slow.get(key) ?? '';
        const expected = choices.includes(given) ? given : checklistFields[field].initially;
        if (form[field] !== expected) throw new Error(`${said}: ${field} is ${form[field]}`);
      }
      if (hidden.test(form.heading) || form.notes.split('\n').some((line) => hidden.test(line)))
        throw new Error(`${said}: something hidden is left`);
      if (form.heading.length > 60 || form.notes.length > 240) throw new Error(`${said}: too long`);
      // No letter that was not given: the words are a part of what came.
      const letters = (slow.get('h') ?? '').normalize('NFC');
      for (const letter of form.heading.replaceAll(' ', ''))
        if (!letters.includes(letter))
          throw new Error(`${said}: U+${letter.codePointAt(0)!.toString(16)} was not given`);
      if (form.heading !== '') worded += 1;
    }
    expect(read / runs).toBeGreaterThan(0.5);
    expect(worded / runs).toBeGreaterThan(0.3);
  },
  60 * minutes,
);

describe('imported files', () => {
  /** An invented pair, as small as a session can be. */
  const plain = {
    format: 'evendraw-session',
    schema: 1,
    app: '0.1.0',
    id: 'invented-pair',
    name: 'Invented pair',
    notes: '',
    startedAt: '2026-04-11T09:30:00.000Z',
    generation: 'separate-cables',
    unit: 'mmHg',
    setUp: {
      carburettors: 2,
      screws: [{ moves: [1, 0], turnsLeft: { closing: 1.5, opening: 2 } }, { moves: [0, 1] }],
      tolerancePa: 1333,
      gauge: { resolutionPa: 666, flutterPa: 400 },
      opens: ['clockwise', 'unknown'],
    },
    events: [
      { kind: 'reading', carburettor: 1, depressionPa: 30_000, minute: 1, typed: '225' },
      { kind: 'turn', screw: 2, turns: 0.25 },
    ],
    signOff: null,
  };
  const plainText = JSON.stringify(plain);
  /** Another way to the same text: keys sorted on the way in. */
  const sorted = (value: unknown): unknown =>
    Array.isArray(value)
      ? value.map(sorted)
      : value !== null && typeof value === 'object'
        ? Object.fromEntries(
            Object.keys(value)
              .sort()
              .map((key) => [key, sorted((value as Record<string, unknown>)[key])]),
          )
        : value;
  const checksum = (body: object): string =>
    crc32(JSON.stringify(sorted(body)))
      .toString(16)
      .padStart(8, '0');
  const value = (): unknown =>
    one<() => unknown>([
      () => random() * 10 ** below(6),
      () => below(9),
      () => -below(9),
      () => null,
      () => many(12, noise),
      () => [],
      () => ({}),
      () => ({ closing: 1, opening: below(3) }),
      () => '2026-04-11T09:30:00.000Z',
      () => 1e300,
      () => true,
    ])();
  /** Changes one place of a copy. */
  const changed = (): Record<string, unknown> => {
    const body = JSON.parse(plainText) as Record<string, unknown>;
    let place: unknown = body;
    for (;;) {
      const names = Object.keys(place as object);
      const name = one(names.length === 0 ? ['extra'] : names);
      const inside = (place as Record<string, unknown>)[name];
      if (inside !== null && typeof inside === 'object' && random() < 0.8) place = inside;
      else {
        const what = random();
        if (what < 0.65) (place as Record<string, unknown>)[name] = value();
        else if (what < 0.8 && typeof inside === 'number')
          (place as Record<string, unknown>)[name] = inside * random();
        else if (what < 0.9) Reflect.deleteProperty(place as object, name);
        else (place as Record<string, unknown>)[one(['extra', 'toJSON', 'minute', 'typed'])] = value();
        return body;
      }
    }
  };

  it(
    'no exception; what is taken has the right checksum by another program, and is what stood there',
    () => {
      let taken = 0;
      let refused = 0;
      for (let k = 0; k < runs; k++) {
        const kind = random();
        const body = kind < 0.3 ? { ...plain, notes: many(9, noise), name: many(5, noise) } : changed();
        const honest = JSON.stringify({ ...body, checksum: random() < 0.9 ? checksum(body) : '00000000' });
        const text =
          kind > 0.8 ? disturbed(honest, () => one([noise, () => one([...'{}[]",:0-e'])])()) : honest;
        const read = readRecord(text);
        if (!read.ok) {
          refused += 1;
          continue;
        }
        taken += 1;
        const { checksum: written, ...stood } = JSON.parse(text) as Record<string, unknown>;
        if (checksum(stood) !== written) throw new Error(`taken in spite of its checksum: ${text}`);
        const again = { format: 'evendraw-session', schema: 1, ...read.record };
        if (JSON.stringify(sorted(again)) !== JSON.stringify(sorted(stood)))
          throw new Error(`read as something else: ${text}`);
      }
      expect(taken / runs).toBeGreaterThan(0.2);
      expect(refused / runs).toBeGreaterThan(0.2);
      expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
    },
    60 * minutes,
  );
});
