import { readingDecimals } from '../../../calculators/index.ts';
import type { PracticeEngine, PracticeFigures } from '../../../calculators/index.ts';
import { stripOf } from '../../../drawing/strip.ts';
import { StripDrawing } from '../strip/StripDrawing.tsx';

interface Props {
  readonly engine: PracticeEngine;
  readonly figures: PracticeFigures;
  readonly depressionsPa: readonly number[];
  readonly beforePa: readonly number[];
  readonly words: string;
}

/** Where the cylinders truly stand: solid now, hollow before. */
export function TruthStrip({ engine, figures, depressionsPa, beforePa, words }: Props) {
  const strip = stripOf({
    marks: depressionsPa.map((depressionPa, i) => ({
      number: i + 1,
      depressionPa,
      halfWidthPa: 0,
      beforePa: beforePa[i] ?? depressionPa,
    })),
    tolerancePa: engine.tolerancePa,
    ...(engine.fixed === null ? {} : { reference: engine.fixed }),
    unit: figures.unit,
    decimals: readingDecimals(engine.gauge.resolutionPa, figures.unit),
    mark: figures.mark,
  });
  return <StripDrawing strip={strip} unit={figures.unit} words={words} />;
}
