import {
  answerFlutterAndRepeats,
  calculatorLink,
  flutterAndRepeatsFields,
  pressureUnits,
} from '../../calculators/index.ts';
import AnswerRows from './calculator/AnswerRows.tsx';
import AnswerSection from './calculator/AnswerSection.tsx';
import CalculatorFrame from './calculator/CalculatorFrame.tsx';
import ChoiceField from './calculator/ChoiceField.tsx';
import TextField from './calculator/TextField.tsx';
import { useCalculator } from './calculator/use-calculator.ts';
import Warnings from './calculator/Warnings.tsx';
import RippleFigure from './flutter-and-repeats/RippleFigure.tsx';

const cylinderOptions = flutterAndRepeatsFields.cylinders.choices.map((count) => [count, count] as const);
const unitOptions = pressureUnits.map(({ id, symbol }) => [id, symbol] as const);

export default function FlutterAndRepeats() {
  const calculator = useCalculator({
    slug: 'flutter-and-repeats',
    fields: flutterAndRepeatsFields,
    answer: answerFlutterAndRepeats,
    link: calculatorLink(flutterAndRepeatsFields),
  });
  const settling = calculator.form.dampingKind === 'settling';
  return (
    <CalculatorFrame calculator={calculator}>
      <div>
        <ChoiceField
          calculator={calculator}
          field="cylinders"
          label="Cylinders of the engine"
          why="A four-stroke engine. The gauge is on the take-off of one of them."
          options={cylinderOptions}
          as="select"
        />
        <TextField
          calculator={calculator}
          field="rpm"
          label="Engine speed"
          why="The speed at which you read: 2000 to 2500 rpm is common practice."
          unit="rpm"
          digits
        />
        <ChoiceField
          calculator={calculator}
          field="unit"
          label="Unit of the gauge"
          why="For every pressure here that is typed without its own unit."
          options={unitOptions}
          as="select"
        />
        <TextField
          calculator={calculator}
          field="flutter"
          label="Swing with the tap open, each way"
          why="Half of highest less lowest. Open the tap only as far as the gauge can bear."
        />
        <TextField
          calculator={calculator}
          field="damping"
          label={settling ? 'Time to settle, as damped' : 'Time constant, as damped'}
          why={
            settling
              ? 'From opening the line until the needle has come to rest, within a hundredth of its way. Seconds, or 400 ms.'
              : 'Until the needle has gone 63 % of its way. Seconds, or 400 ms.'
          }
        />
        <ChoiceField
          calculator={calculator}
          field="dampingKind"
          label="That time is"
          options={[
            ['settling', 'the time to settle'],
            ['time-constant', 'the time constant'],
          ]}
        />
        <TextField
          calculator={calculator}
          field="resolution"
          label="Finest step that you can read"
          why="A dial marked in tens can be read to 5."
        />
        <ChoiceField
          calculator={calculator}
          field="distribution"
          label="How you read a moving needle"
          options={[
            ['rectangular', 'somewhere in its swing: any place as likely'],
            ['triangular', 'the middle of its swing, by eye'],
            ['u-shaped', 'one glance, wherever it is just then'],
          ]}
        />
        <TextField
          calculator={calculator}
          field="readings"
          label="Readings of each carburettor"
          why="Two or more: one alone does not show how far readings scatter."
          digits
        />
        <TextField
          calculator={calculator}
          field="difference"
          label="Difference to tell apart"
          why="The smallest that matters to you, such as half of your tolerance."
        />
      </div>
      <AnswerSection calculator={calculator} lead={({ move }) => move}>
        {(answer) => (
          <>
            <p>{answer.verdict}</p>
            <Warnings lines={answer.warnings} />
            <RippleFigure answer={answer} />
            <AnswerRows calculator={calculator} caption="The needle" lines={answer.needle} />
            <AnswerRows
              calculator={calculator}
              caption="The wait after opening the line"
              lines={answer.waits}
            />
            <AnswerRows
              calculator={calculator}
              caption="One reading: its standard uncertainty"
              lines={answer.uncertainties}
            />
            <AnswerRows
              calculator={calculator}
              caption="Several readings: what they tell apart, at 95 %"
              lines={answer.readings}
            />
          </>
        )}
      </AnswerSection>
    </CalculatorFrame>
  );
}
