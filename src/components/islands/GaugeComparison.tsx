import {
  answerGaugeComparison,
  calculatorLink,
  gaugeComparisonFields,
  gaugeNumbers,
  pressureUnits,
} from '../../calculators/index.ts';
import { addressWith } from '../../device/fragment.ts';
import { siteAddress } from '../../device/site-address.ts';
import AnswerRows from './calculator/AnswerRows.tsx';
import AnswerSection from './calculator/AnswerSection.tsx';
import CalculatorFrame from './calculator/CalculatorFrame.tsx';
import ChoiceField from './calculator/ChoiceField.tsx';
import TextField from './calculator/TextField.tsx';
import { useCalculator } from './calculator/use-calculator.ts';
import GaugeQuestions from './gauge-comparison/GaugeQuestions.tsx';
import OffsetFigure from './gauge-comparison/OffsetFigure.tsx';

const countOptions = gaugeNumbers.slice(1).map((count) => [count, count] as const);
const referenceOptions = [
  ['mean', 'the mean of all'],
  ...gaugeNumbers.map((gauge) => [gauge, `gauge ${gauge}`] as const),
] as const;
const unitOptions = pressureUnits.map(({ id, symbol }) => [id, symbol] as const);

export default function GaugeComparison() {
  const calculator = useCalculator({
    slug: 'gauge-comparison',
    fields: gaugeComparisonFields,
    answer: answerGaugeComparison,
    link: calculatorLink(gaugeComparisonFields),
  });
  const { form } = calculator;
  const isSwap = form.way === 'abba' || form.way === 'aba';
  return (
    <CalculatorFrame calculator={calculator}>
      <div>
        <ChoiceField
          calculator={calculator}
          field="way"
          label="How they were read"
          why="Together is best: what the engine does then falls out of every round."
          options={[
            ['together', 'all at once, on a branched hose, round after round'],
            ['in-turn', 'one after the other on the same take-off'],
            ['abba', 'two exchanged: A, B, B, A'],
            ['aba', 'two exchanged: A, B, A'],
          ]}
        />
        {!isSwap && (
          <ChoiceField
            calculator={calculator}
            field="gauges"
            label="Gauges"
            options={countOptions}
            as="select"
          />
        )}
        <ChoiceField
          calculator={calculator}
          field="unit"
          label="Unit of the gauges"
          why="For every reading that is typed without its own unit."
          options={unitOptions}
          as="select"
        />
        <GaugeQuestions calculator={calculator} isSwap={isSwap} />
        <ChoiceField
          calculator={calculator}
          field="reference"
          label="Held against"
          why="For balancing, gauges need only agree. Choose one gauge where you trust it more than the rest."
          options={referenceOptions}
          as="select"
        />
        <TextField
          calculator={calculator}
          field="resolution"
          label="Finest step that you can read"
          why="Of the coarsest of them. A dial marked in tens can be read to 5."
        />
        <TextField
          calculator={calculator}
          field="flutter"
          label="Swing of the needle, each way"
          why="Of the liveliest of them, damped until it just still moves."
        />
        <TextField
          calculator={calculator}
          field="engine"
          label="Readings of the carburettors"
          why="With gauge 1 on the first carburettor, gauge 2 on the second: 1: 212, 2: 248. May stay empty."
          lines={2}
        />
      </div>
      <AnswerSection calculator={calculator} lead={({ lead }) => lead}>
        {(answer) => (
          <>
            <OffsetFigure answer={answer} />
            <AnswerRows
              calculator={calculator}
              caption={`Offset from ${answer.heldAgainst}, ± at 95 %`}
              lines={answer.offsets}
            />
            {answer.classes.length > 0 && (
              <AnswerRows
                calculator={calculator}
                caption="Permissible error by class and scale"
                lines={answer.classes}
              />
            )}
            {answer.corrected.length > 0 && (
              <AnswerRows calculator={calculator} caption="Corrected readings" lines={answer.corrected} />
            )}
            {answer.analyserKeys !== null && (
              <p class="actions">
                <a
                  class="button first"
                  href={addressWith(siteAddress('/balance-analyser/'), answer.analyserKeys)}
                >
                  Take them to the balance analyser
                </a>
              </p>
            )}
            <p class="aside">{answer.handOver}</p>
          </>
        )}
      </AnswerSection>
    </CalculatorFrame>
  );
}
