import {
  answerLiquidColumn,
  calculatorLink,
  isRefused,
  liquidColumnFields,
  liquids,
  ownLiquid,
} from '../../calculators/index.ts';
import AnswerRows from './calculator/AnswerRows.tsx';
import AnswerSection from './calculator/AnswerSection.tsx';
import CalculatorFrame from './calculator/CalculatorFrame.tsx';
import ChoiceField from './calculator/ChoiceField.tsx';
import TextField from './calculator/TextField.tsx';
import { useCalculator } from './calculator/use-calculator.ts';
import Warnings from './calculator/Warnings.tsx';
import ColumnFigure from './liquid-column/ColumnFigure.tsx';

const liquidOptions = [
  ...liquids.map(
    (liquid) => [liquid.id, isRefused(liquid) ? `${liquid.name} (refused)` : liquid.name] as const,
  ),
  [ownLiquid, 'another liquid, by its density'] as const,
];

export default function LiquidColumn() {
  const calculator = useCalculator({
    slug: 'liquid-column',
    fields: liquidColumnFields,
    answer: answerLiquidColumn,
    link: calculatorLink(liquidColumnFields),
  });
  const { kind, sides, liquid } = calculator.form;
  return (
    <CalculatorFrame calculator={calculator}>
      <div>
        <ChoiceField
          calculator={calculator}
          field="kind"
          label="Kind of column"
          options={[
            ['u-tube', 'U-tube: two legs alike'],
            ['well', 'well-type: one upright tube out of a wide well'],
            ['inclined', 'inclined: one leaning tube out of a wide well'],
          ]}
        />
        <ChoiceField
          calculator={calculator}
          field="sides"
          label="Its two sides go to"
          why="Between two carburettors only their difference stands in the tube, which is why a short one does."
          options={[
            ['difference', 'two carburettors'],
            ['depression', 'one carburettor and the open air'],
          ]}
        />
        <ChoiceField
          calculator={calculator}
          field="liquid"
          label="Liquid"
          why="Water, if nothing speaks against it."
          options={liquidOptions}
          as="select"
        />
        {liquid === 'glycol-solution' && (
          <TextField
            calculator={calculator}
            field="strength"
            label="Ethylene glycol, by volume"
            why="Per cent. Half and half is common practice."
          />
        )}
        {liquid === ownLiquid ? (
          <TextField
            calculator={calculator}
            field="density"
            label="Density"
            why="In kg/m³, g/cm³ or lb/ft³, from its data sheet."
          />
        ) : (
          <TextField
            calculator={calculator}
            field="temperature"
            label="Temperature of the liquid"
            why="In °C or °F. Ten degrees change most liquids by less than 1 %."
          />
        )}
        {sides === 'difference' && (
          <TextField
            calculator={calculator}
            field="difference"
            label="Largest difference to show"
            why="Between two carburettors that have already been brought near each other. In any unit; mmHg if none is typed."
          />
        )}
        <TextField
          calculator={calculator}
          field="depression"
          label="Depression of one carburettor"
          why="About what a gauge shows at the speed at which you read. In any unit; mmHg if none is typed."
        />
        <TextField
          calculator={calculator}
          field="bore"
          label="Bore of the tube"
          why="Inside. 6 mm is common practice."
        />
        {kind !== 'u-tube' && (
          <TextField
            calculator={calculator}
            field="wellBore"
            label="Bore of the well"
            why="Inside. Ten times that of the tube, and its level falls by a hundredth of the rise."
          />
        )}
        {kind === 'inclined' && (
          <TextField
            calculator={calculator}
            field="angle"
            label="Angle of the tube from the level"
            why="In degrees. At 30° every millimetre of height is two of reading."
          />
        )}
        <TextField
          calculator={calculator}
          field="reading"
          label="What you read, if you have a column"
          why={
            kind === 'u-tube'
              ? 'Difference of the two levels, such as 120 mm or 4 3/4 in. Leave it empty if you have none.'
              : 'Along the tube from where it stands at rest, such as 120 mm. Leave it empty if you have none.'
          }
        />
      </div>
      <AnswerSection calculator={calculator} lead={({ verdict }) => verdict}>
        {(answer) => (
          <>
            <Warnings lines={answer.warnings} />
            <ColumnFigure answer={answer} />
            {answer.read.length > 0 && (
              <AnswerRows calculator={calculator} caption="What you read is" lines={answer.read} />
            )}
            <AnswerRows calculator={calculator} caption="What the levels show" lines={answer.levels} />
            {answer.build.length > 0 && (
              <>
                <AnswerRows calculator={calculator} caption="What it needs" lines={answer.build} />
                <p>{answer.worstCase}</p>
              </>
            )}
          </>
        )}
      </AnswerSection>
    </CalculatorFrame>
  );
}
