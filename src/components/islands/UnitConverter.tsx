import { useMemo } from 'preact/hooks';
import {
  answerUnitConverter,
  changedConversion,
  converterQuantities,
  parseUnitConverterLink,
  pressureKinds,
  pressureKindChoices,
  quantitiesOfUnit,
  unitConverterExample,
  unitConverterFields,
  unitsOf,
  usualUnitIn,
  withArticle,
  writeUnitConverterLink,
} from '../../calculators/index.ts';
import type { ConverterQuantity } from '../../calculators/index.ts';
import AfterPaint from './calculator/AfterPaint.tsx';
import AnswerSection from './calculator/AnswerSection.tsx';
import CalculatorFrame from './calculator/CalculatorFrame.tsx';
import ChoiceField from './calculator/ChoiceField.tsx';
import TextField from './calculator/TextField.tsx';
import { useCalculator } from './calculator/use-calculator.ts';
import ConversionRows from './unit-converter/ConversionRows.tsx';
import { quantityWords } from './unit-converter/words.ts';

/** As many as a phone shows above its keys. */
const linesAtOnce = 5;

const quantities = converterQuantities.map((quantity) => [quantity, quantityWords[quantity].name] as const);
const kinds = pressureKinds.map((kind) => [kind, pressureKindChoices[kind]] as const);

const parts = {
  slug: 'unit-converter',
  fields: unitConverterFields,
  answer: answerUnitConverter,
  changed: changedConversion,
  link: { write: writeUnitConverterLink, parse: parseUnitConverterLink },
};

export default function UnitConverter() {
  const calculator = useCalculator(parts);
  const { form, answer, change } = calculator;
  const isPressure = form.quantity === 'pressure';
  const problem = calculator.problemOf('typed')?.problem;
  const others = problem?.kind === 'unknown-unit' ? quantitiesOfUnit(problem.unit) : [];
  const usual = usualUnitIn(form);
  const units = useMemo(
    () => (
      <select
        class="write"
        name="usualUnit"
        aria-label="Unit, if none is typed"
        value={usual}
        onChange={(event) => change({ usualUnit: event.currentTarget.value })}
      >
        {unitsOf(form.quantity).map(({ id, symbol }) => (
          <option key={id} value={id} selected={id === usual}>
            {symbol}
          </option>
        ))}
      </select>
    ),
    [form.quantity, usual],
  );
  const rows = { headings: answer?.headings ?? [], copied: calculator.copied, onCopy: calculator.copy };

  return (
    <CalculatorFrame calculator={calculator}>
      <div>
        <ChoiceField
          calculator={calculator}
          field="quantity"
          label="Quantity"
          options={quantities}
          as="select"
        />
        <TextField
          calculator={calculator}
          field="typed"
          label="Reading"
          why={`Such as ${quantityWords[form.quantity as ConverterQuantity].such} Without a unit, the one beside it is taken.`}
          example={unitConverterExample.typed}
          beside={units}
        >
          {problem?.kind === 'negative-depression' && (
            <p class="actions">
              <button type="button" class="button" onClick={() => change({ kind: 'gauge' })}>
                Read it as a signed gauge pressure
              </button>
            </p>
          )}
          {others.length > 0 && (
            <p class="actions">
              {others.map((quantity) => (
                <button key={quantity} type="button" class="button" onClick={() => change({ quantity })}>
                  Read it as {withArticle(quantityWords[quantity].name.toLowerCase())}
                </button>
              ))}
            </p>
          )}
        </TextField>

        <AnswerSection calculator={calculator} lead={({ understood }) => understood}>
          {({ lines }) => (
            <>
              <ConversionRows
                {...rows}
                caption="In every unit. Tap a figure to copy it with its unit."
                lines={lines.filter(({ rare }) => !rare)}
                columns={[0]}
                first={linesAtOnce}
              />
              {isPressure && (
                <details>
                  <summary>Columns at a named temperature</summary>
                  <AfterPaint
                    draw={() => (
                      <ConversionRows
                        {...rows}
                        caption="For an instrument that says 60 °F or 39.2 °F. Without such a mark the table above is meant."
                        lines={lines.filter(({ rare }) => rare)}
                        columns={[0]}
                      />
                    )}
                  />
                </details>
              )}
            </>
          )}
        </AnswerSection>
      </div>

      {isPressure && (
        <div>
          <ChoiceField
            calculator={calculator}
            field="kind"
            label="Counted from"
            why="A vacuum gauge shows a depression: how far the intake is below the air around the engine."
            options={kinds}
          />
          <TextField
            calculator={calculator}
            field="ambient"
            label="Ambient pressure"
            why="101.325 kPa is the standard atmosphere at sea level (source 2). A barometer’s own figure is better, not the one reduced to sea level. Without a unit: kPa."
            example={unitConverterExample.ambient}
          />
          {rows.headings.length > 1 && answer !== null && (
            <div class={calculator.stale ? 'stale' : ''}>
              <AfterPaint
                draw={() => (
                  <ConversionRows
                    {...rows}
                    caption="The same state, counted otherwise."
                    lines={answer.lines.filter(({ rare }) => !rare)}
                    columns={[1, 2]}
                  />
                )}
              />
            </div>
          )}
        </div>
      )}
    </CalculatorFrame>
  );
}
