import {
  baDiameterRuleMm,
  baPitchRuleMm,
  findMeasureUnit,
  fromSi,
  hexagonNut,
  isoSizes,
  lengths,
  parseMeasure,
  parseNumber,
  parseThread,
  pitchMmOfThreadsPerInch,
  screwAdvanceMm,
  tensileStressArea,
  threadDiameters,
  threadPitches,
  toSi,
} from '../src/calculators/index.ts';
import type { HexagonNut, NutHeight, ScrewThread, ThreadDiameters } from '../src/calculators/index.ts';
import { computed, quoted } from './adapter.ts';
import type { Adapter, Adapters, Answer, Question } from './adapter.ts';
import { plainNumber, valueOf } from './parse-input.ts';

const metresPerMillimetre = 1e-3;

const refuse = (what: string): never => {
  throw new Error(what);
};

/** A length in millimetres, in the unit asked for. */
const length = (millimetres: number, { expectedUnit }: Question): number =>
  fromSi(
    millimetres * metresPerMillimetre,
    findMeasureUnit(expectedUnit, lengths) ?? refuse(`unknown unit “${expectedUnit}”`),
  );

/** An area in square millimetres, in the unit asked for: `mm2`, `in²`. */
function area(squareMillimetres: number, { expectedUnit }: Question): number {
  const side = findMeasureUnit(expectedUnit.replace(/(?:2|²|\^2)$/u, ''), lengths);
  if (side === null || !/(?:2|²)$/u.test(expectedUnit)) return refuse(`unknown unit “${expectedUnit}”`);
  return squareMillimetres * fromSi(metresPerMillimetre, side) ** 2;
}

/** Threads in a length, `1/in`, of a pitch in millimetres. */
const threadsPer = (pitchMm: number, { expectedUnit }: Question): number => {
  const unit = /^1\//u.test(expectedUnit) ? findMeasureUnit(expectedUnit.slice(2), lengths) : null;
  if (unit === null) return refuse(`unknown unit “${expectedUnit}”`);
  return toSi(1, unit) / (pitchMm * metresPerMillimetre);
};

const thread = (text: string): ScrewThread => valueOf(parseThread(text));

/** A size that may be written with the name of its series or without it: `#4`, `1/4 UNF`. */
const sizeOf = (input: string, series: 'UNC' | 'UNF' | 'BSF' | 'BA'): ScrewThread => {
  const text = input.replace(/\(.*\)/u, '').trim();
  const named = new RegExp(series, 'iu').test(text) ? text : `${text} ${series}`;
  const found = thread(named);
  return found.system === series.toLowerCase() ? found : refuse(`no size of ${series}: “${input}”`);
};

/** Diameters of a metric thread, coarse unless its pitch is given. */
const diameter =
  (name: keyof ThreadDiameters): Adapter =>
  (question) => {
    const { diameterMm, pitchMm } = thread(question.input);
    return computed(length(threadDiameters(diameterMm, pitchMm)[name], question));
  };

const unifiedPitchDiameter =
  (series: 'UNC' | 'UNF'): Adapter =>
  (question) => {
    const { diameterMm, pitchMm } = sizeOf(question.input, series);
    return computed(length(threadDiameters(diameterMm, pitchMm).pitchDiameter, question));
  };

const tabulatedThreads =
  (series: 'UNC' | 'UNF' | 'BSF'): Adapter =>
  (question) =>
    quoted(threadsPer(sizeOf(question.input, series).pitchMm, question));

const nut =
  (height: NutHeight, measure: 'heightMaxMm' | 'heightMinMm' | 'acrossFlatsMm'): Adapter =>
  (question) => {
    const found: HexagonNut | undefined = hexagonNut(height, thread(question.input).name);
    return found === undefined
      ? refuse(`no nut for “${question.input}”`)
      : quoted(length(found[measure], question));
  };

/** All fine pitches of a size: `M10 fine`. */
function finePitchesMm(text: string): readonly number[] {
  const [, diameter] = /^M ?(\d+(?:\.\d+)?)(?: fine)?$/iu.exec(text.trim()) ?? [];
  const size = isoSizes.find(({ diameterMm }) => diameterMm === Number(diameter));
  return size?.finePitchesMm ?? refuse(`no fine pitch of “${text}”`);
}

/** `#4 UNC (40 tpi)`, `40 tpi`, `40` in 1/in, or a size of an inch series alone. */
function pitchOfCount(question: Question): Answer {
  const [, counted] = /(\d+(?:\.\d+)?)\s*tpi/iu.exec(question.input) ?? [];
  const alone = /^\d+(?:\.\d+)?$/u.test(question.input.trim()) ? question.input.trim() : undefined;
  const count = counted ?? alone;
  if (count !== undefined) return computed(length(pitchMmOfThreadsPerInch(plainNumber(count)), question));
  return computed(length(thread(question.input).pitchMm, question));
}

const partsOfATurn: Readonly<Record<string, number>> = {
  turn: 1,
  turns: 1,
  rev: 1,
  revolution: 1,
  revolutions: 1,
  deg: 1 / 360,
  degree: 1 / 360,
  degrees: 1 / 360,
  '°': 1 / 360,
  rad: 1 / (2 * Math.PI),
  min: 1 / 60,
};

/** `1/8 turn of M5 coarse`, `90 deg of M6`, `3/4 turn of #10 UNF`, `2 turns of 1.25 mm pitch`, `45° of 26 tpi`. */
function advance(question: Question): Answer {
  const [, amountText, unit, of = ''] =
    /^(.+?)\s*([a-z°]*)\s+of\s+(.+)$/iu.exec(question.input.trim()) ??
    refuse(`no “of” in “${question.input}”`);
  const part = partsOfATurn[(unit === '' ? question.inputUnit : (unit ?? '')).toLowerCase()];
  if (part === undefined) return refuse(`no part of a turn in “${question.input}”`);
  const turns = valueOf(parseNumber(amountText ?? '')).value * part;
  const values = pitchesOf(of).map((pitchMm) => length(screwAdvanceMm(pitchMm, turns), question));
  return { kind: 'computed', values };
}

/** The pitch of a thread by its name, or as such: `1.25 mm pitch`, `pitch 26 tpi`. A fine size may have several. */
function pitchesOf(text: string): readonly number[] {
  const bare = text.replace(/\b(?:a )?pitch(?: of)?\b/iu, '').trim();
  if (/ fine$/iu.test(bare)) return finePitchesMm(bare);
  const named = parseThread(bare);
  return [
    named.ok
      ? named.value.pitchMm
      : valueOf(parseMeasure(bare, threadPitches, 'mm')).value / metresPerMillimetre,
  ];
}

const baNumber = ({ input }: Question): number => {
  const number = plainNumber(input.replace(/\s*BA\s*/iu, ''));
  return Number.isInteger(number) && number >= 0 ? number : refuse(`no BA number: “${input}”`);
};

/** Screw threads and nuts: every quantity of `4-screw-threads.csv`. */
export const screwThreadAdapters: Adapters = {
  'ISO coarse pitch': (question) => quoted(length(thread(question.input).pitchMm, question)),
  'ISO fine pitch option': (question) =>
    quoted(...finePitchesMm(question.input).map((pitchMm) => length(pitchMm, question))),
  'ISO 724 pitch diameter d2': diameter('pitchDiameter'),
  'ISO 724 minor diameter d1 = D1': diameter('minorDiameter'),
  'tensile stress area': (question) => {
    const { diameterMm, pitchMm } = thread(question.input);
    return computed(area(tensileStressArea(diameterMm, pitchMm), question));
  },
  'published pitch diameter': diameter('pitchDiameter'),
  'published nut minor diameter D1': diameter('minorDiameter'),
  'published screw root diameter d3 = d - 1.22687 P': diameter('rootDiameter'),
  'published fine thread pitch diameter': diameter('pitchDiameter'),
  'published fine thread minor diameter': diameter('minorDiameter'),
  'ISO 4032 nut height max': nut('regular', 'heightMaxMm'),
  'ISO 4032 nut height min': nut('regular', 'heightMinMm'),
  'ISO 4032 width across flats (nominal)': nut('regular', 'acrossFlatsMm'),
  'ISO 4035 thin nut height max': nut('thin', 'heightMaxMm'),
  'ISO 4035 thin nut height min': nut('thin', 'heightMinMm'),
  'UNC threads per inch': tabulatedThreads('UNC'),
  'UNC basic pitch diameter': unifiedPitchDiameter('UNC'),
  'UNF threads per inch': tabulatedThreads('UNF'),
  'UNF basic pitch diameter': unifiedPitchDiameter('UNF'),
  'pitch from threads per inch': pitchOfCount,
  'BA major diameter': (question) => computed(length(sizeOf(question.input, 'BA').diameterMm, question)),
  'BA pitch': (question) => computed(length(sizeOf(question.input, 'BA').pitchMm, question)),
  'BA threads per inch': (question) => computed(threadsPer(sizeOf(question.input, 'BA').pitchMm, question)),
  'BA design rule p = 0.9^n': (question) => computed(length(baPitchRuleMm(baNumber(question)), question)),
  'BA design rule D = 6 p^1.2': (question) =>
    computed(length(baDiameterRuleMm(baNumber(question)), question)),
  'BSF threads per inch': tabulatedThreads('BSF'),
  'screw advance per turn fraction': advance,
};
