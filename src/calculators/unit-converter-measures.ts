import { conversionCell, conversionTable, printConverted } from './conversion-table.ts';
import type { ConversionTable } from './conversion-table.ts';
import type { ParsedMeasure } from './parse-measure.ts';
import { asTypedValue, convertedMeasure } from './unit-converter-digits.ts';
import { converterMeasures } from './unit-converter-quantities.ts';
import type { ConverterMeasureName } from './unit-converter-quantities.ts';
import { withArticle } from './with-article.ts';

/** A measure in every unit of its family, as words and digits, with the decimal mark that was typed. */
export function describeMeasure(measure: ParsedMeasure, name: ConverterMeasureName): ConversionTable {
  const { family, announced } = converterMeasures[name];
  const mark = measure.number.mark ?? 'point';
  const lines = family.units.map((unit) => ({
    unitId: unit.id,
    symbol: unit.symbol,
    unitName: unit.name,
    rare: false,
    typed: unit === measure.unit,
    get cells() {
      return [conversionCell(convertedMeasure(measure, unit), unit.symbol, mark, family.name)];
    },
  }));
  const reading = `${printConverted(asTypedValue(measure.number), { mark })} ${measure.unit.symbol}`;
  const [first = '', ...rest] = withArticle(family.name);
  const understood = `${first.toUpperCase()}${rest.join('')} of ${reading}.`;
  return conversionTable(understood, [family.name], lines, announced);
}
