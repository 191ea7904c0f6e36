import { conversionTable } from './conversion-table.ts';
import type { ConversionTable } from './conversion-table.ts';
import { measureUnit } from './measure-units.ts';
import type { ParsedMeasure } from './parse-measure.ts';
import { convertedMeasure } from './unit-converter-digits.ts';
import { converterMeasures } from './unit-converter-quantities.ts';
import type { ConverterMeasureName } from './unit-converter-quantities.ts';
import { withArticle } from './with-article.ts';

/** A measure in every unit of its family, as words and digits, with the decimal mark that was typed. */
export function describeMeasure(measure: ParsedMeasure, name: ConverterMeasureName): ConversionTable {
  const { family, said } = converterMeasures[name];
  return conversionTable({
    units: family.units,
    unitOf: (id) => measureUnit(family, id),
    typed: measure.unit,
    said,
    headings: [family.name],
    valueIn: (unit) => convertedMeasure(measure, unit),
    mark: measure.number.mark ?? 'point',
    understood: (reading, answer) => `A${withArticle(family.name).slice(1)} of ${reading} is ${answer}.`,
  });
}
