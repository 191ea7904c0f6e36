import type { HandbookPage } from './pages.ts';

const number = String.raw`[−-]?\d+(?:[\d\s,]*\d)?(?:\.[\d\s]*\d)?(?:\s?\/\s?\d+)?`;

/** Units as they are written in running text; the longer of two with the same beginning comes first. */
const units = [
  'mmHg|inHg|cmHg|mmH2O|cmH2O|inH2O|Torr|hPa|kPa|Pa|mbar|bar|psi|atm|kgf/cm²',
  'rpm|kHz|Hz|°[CF]?|ppm|per cent|%',
  'mg/m³|kg/m³|g/cm³|g/mL|m/s²|m/s|km/h|mph|m³/h|N·?m|lbf?·?ft',
  'km|cm|mm|µm|m[²³]?|litres?|m[lL]|cc|inch(?:es)?|feet|foot|cubic feet|ft|kg|g',
  'kW|hp|horsepower|dB|V|W',
  'hours?|minutes?|seconds?|days?|weeks?|years?|mins?|h|s',
  '(?:of an? )?turns?|degrees?|changes of air',
].join('|');

const figure = new RegExp(
  String.raw`(?<![\p{L}\d.,#=/])${number}(?:\s(?:to|or|and)\s${number}|\s?[–-]\s?${number})?[\s-]?(?:${units})(?![\p{L}\d²³])`,
  'gu',
);

/** Figures with a unit, as they stand in a text: `2000 to 2500 rpm`, `1/4 turn`. */
export const figuresIn = (text: string): string[] =>
  [...text.matchAll(figure)].map(([found]) => found.replace(/\s+/gu, ' ').trim());

const wrapped = /<(Value|Quoted)\b((?:[^>"]|"[^"]*")*)>(.*?)<\/\1>/gsu;

/** What stands inside the components that give a figure its origin. */
export const givenFigures = (body: string) =>
  [...body.matchAll(wrapped)].map(([, component, properties = '', slot = '']) => ({
    component: component as 'Value' | 'Quoted',
    source: /source="([^"]+)"/u.exec(properties)?.[1],
    slot: slot.replace(/\s+/gu, ' ').trim(),
  }));

/** Figures with a unit that say neither who computed them nor who gave them. */
export function bareFigures({ body, front }: Pick<HandbookPage, 'body' | 'front'>): string[] {
  const given = givenFigures(body);
  const inBody = figuresIn(
    body
      .replace(/^import\s.*?;$/gmsu, '')
      .replace(/\$\$.*?\$\$/gsu, '')
      .replace(wrapped, ' '),
  );
  // The front matter cannot hold a component: what it says is given its origin where the body says it again.
  const again = given.map(({ slot }) => slot).join('\n');
  const inFront = ['title', 'description', 'answer']
    .flatMap((key) => figuresIn(front.get(key) ?? ''))
    .filter((found) => !again.includes(found));
  // A computed figure is an expression without a figure typed into it.
  const typed = given
    .filter(({ component }) => component === 'Value')
    .filter(({ slot }) => !/^\{.*\}$/su.test(slot) || figuresIn(slot).length > 0)
    .map(({ slot }) => slot);
  return [...inBody, ...inFront, ...typed];
}
