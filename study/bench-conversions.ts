import Qty from 'js-quantities';
import { all, create } from 'mathjs';
import { formatPressure } from '../src/calculators/format-pressure.ts';
import { parsePressure } from '../src/calculators/parse-pressure.ts';
import { inUnit, pressureUnit } from '../src/calculators/pressure-units.ts';
import { valueOfChecked } from '../src/calculators/value-of-checked.ts';
import { randomFrom } from '../tests/engine/random.ts';
import { quantile } from './summary.ts';

/** Those that both general-purpose libraries know. */
const unitIds = ['Pa', 'hPa', 'kPa', 'mbar', 'bar', 'mmHg', 'psi', 'atm'];
const answerUnit = 'mmHg';
const textCount = 5000;
const rounds = 15;
/** Measured for so long a round, at least. */
const roundMs = 60;

/** The least that the package may reach, as a multiple of the anchor in the same run. */
const leastOfLibrary = 10;
const leastOfTable = 0.5;

const random = randomFrom(7);
/** `5.5 kPa`, `0.25 bar`, `212 mmHg`: what a gauge shows between a twentieth and one atmosphere, no two alike. */
const texts = Array.from({ length: textCount }, () => {
  const unit = pressureUnit(unitIds[Math.floor(random.uniform(0, unitIds.length))]!);
  const value = inUnit(random.uniform(5000, 101_325), unit);
  const decimals = value > 1000 ? 0 : value > 50 ? 1 : 3;
  return `${value.toFixed(decimals)} ${unit.id}`;
});

const math = create(all!);
const factors = new Map(unitIds.map((id) => [id, pressureUnit(id).pascals]));
const usual = pressureUnit(answerUnit);
const answerFactor = factors.get(answerUnit)!;

/** The bare table: no problems, no spellings, NaN for all that is not `number space unit`. */
const byTable = (text: string): number => {
  const space = text.indexOf(' ');
  return Number(text.slice(0, space)) * factors.get(text.slice(space + 1))!;
};
const bySelf = (text: string): number => valueOfChecked(parsePressure(text, usual)).pascals;

const converters: Readonly<Record<string, (text: string) => number>> = {
  'the package': bySelf,
  'a bare table': byTable,
  'js-quantities': (text) => Qty(text).to('Pa').scalar,
  mathjs: (text) => math.unit(text).toNumber('Pa'),
};
/** The way back as well: four significant digits in another unit. */
const roundTrips: Readonly<Record<string, (text: string) => number>> = {
  'the package': (text) => formatPressure(bySelf(text), answerUnit).length,
  'a bare table': (text) => `${(byTable(text) / answerFactor).toPrecision(4)} ${answerUnit}`.length,
  'js-quantities': (text) => Qty(text).to(answerUnit).scalar.toPrecision(4).length,
  mathjs: (text) => math.unit(text).to(answerUnit).format({ precision: 4 }).length,
};

/** All that a round gives is used, so that no work can be left out. */
let sum = 0;
let at = 0;

function perSecond(convert: (text: string) => number): number {
  let count = 0;
  const start = performance.now();
  let passed = 0;
  do {
    for (let k = 0; k < 200; k += 1) {
      sum += convert(texts[at]!);
      at = at + 1 === textCount ? 0 : at + 1;
    }
    count += 200;
    passed = performance.now() - start;
  } while (passed < roundMs);
  return (1000 * count) / passed;
}

/** Medians of rounds in turn, so that what else the machine does falls on all alike. */
function speeds(candidates: Readonly<Record<string, (text: string) => number>>): ReadonlyMap<string, number> {
  const seen = new Map(Object.keys(candidates).map((name) => [name, [] as number[]]));
  for (let round = 0; round < rounds; round += 1)
    for (const [name, convert] of Object.entries(candidates)) seen.get(name)!.push(perSecond(convert));
  return new Map([...seen].map(([name, values]) => [name, quantile(values.slice(2), 0.5)]));
}

function checkAgreement(): void {
  // A library that rounds its mmHg differs in the sixth digit; more would be another unit.
  for (const text of texts)
    for (const [name, convert] of Object.entries(converters)) {
      const [value, expected] = [convert(text), byTable(text)];
      if (!(Math.abs(value / expected - 1) < 1e-5)) throw new Error(`${name}: ${text} is ${value} Pa`);
    }
}

/** Prints conversions a second beside two anchors of the same run; false if a bar is missed. */
export function benchConversions(): boolean {
  checkAgreement();
  const forth = speeds(converters);
  const back = speeds(roundTrips);
  const self = forth.get('the package')!;
  console.log(
    `Pressures a second, ${textCount} different texts like “${texts[0]}” and “${texts[1]}”, medians of rounds in turn:`,
  );
  for (const [name, speed] of forth)
    console.log(
      `${name.padEnd(14)} ${(speed / 1e6).toFixed(3).padStart(7)} million to pascals` +
        `   ${(back.get(name)! / 1e6).toFixed(3).padStart(7)} million to text in ${answerUnit}` +
        (name === 'the package'
          ? ''
          : `   the package is ${ratio(self / speed)} and ${ratio(back.get('the package')! / back.get(name)!)} times as fast`),
    );
  const ofLibrary = self / Math.max(forth.get('js-quantities')!, forth.get('mathjs')!);
  const ofTable = self / forth.get('a bare table')!;
  const kept = ofLibrary >= leastOfLibrary && ofTable >= leastOfTable && Number.isFinite(sum);
  console.log(
    `To pascals: ${ratio(ofLibrary)} of the faster library (at least ${leastOfLibrary}), ${ratio(ofTable)} of the table ` +
      `(at least ${leastOfTable}): ${kept ? 'within both bars' : 'BELOW a bar'}.\n`,
  );
  return kept;
}

const ratio = (value: number): string => (value < 10 ? value.toFixed(2) : value.toFixed(0));
