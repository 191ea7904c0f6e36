import { balanceAnalyserFields } from '../../../calculators/index.ts';
import ChoiceField from '../calculator/ChoiceField.tsx';
import TextField from '../calculator/TextField.tsx';
import type { QuestionsProps } from './calculator.ts';

const driftWords = [
  ['ends', 'The one read first and last'],
  ['none', 'None: take no drift out'],
] as const;

/** The gauge, and what else stands between a reading and the truth. */
export default function GaugeQuestions({ calculator }: QuestionsProps) {
  const numbers = ['1', ...balanceAnalyserFields.carburettors.choices].filter(
    (number) => number <= calculator.form.carburettors || number === calculator.form.drift,
  );
  return (
    <>
      <TextField
        calculator={calculator}
        field="resolution"
        label="Finest step you can read on the gauge"
        why="5 mmHg is half the distance between marks of 10 mmHg, a guess from memory: look at yours."
      />
      <TextField
        calculator={calculator}
        field="flutter"
        label="Swing of the needle, each way"
        why="With the line damped so that the needle just still moves. 3 mmHg is a guess from memory."
      />
      <ChoiceField
        calculator={calculator}
        field="drift"
        label="Which one shows the drift?"
        why="An engine that gets warmer changes every reading. One carburettor that is read again, at the end at least, shows by how much."
        options={[...driftWords, ...numbers.map((number) => [number, number] as const)]}
        as="select"
      />
      <TextField
        calculator={calculator}
        field="speedEffect"
        label="What 100 rpm more change"
        why="For readings with a speed of their own. Read one carburettor at two speeds, and give the change with its sign, such as -5. Empty: nothing is corrected."
      />
      <TextField
        calculator={calculator}
        field="rpm"
        label="Speed that they are referred to"
        why="2100 rpm is the middle of what is common practice."
        unit="rpm"
        digits
      />
      <TextField
        calculator={calculator}
        field="offsetUncertainty"
        label="Uncertainty of each gauge’s correction"
        why="Only if every carburettor has a gauge of its own: the ± at 95 % that the gauge comparison gave. With one gauge for all, its error is the same for all: leave it empty."
      />
      <TextField
        calculator={calculator}
        field="ambient"
        label="Ambient pressure"
        why="For the ratio of openings. 101.325 kPa is the standard atmosphere at sea level. Without a unit: kPa."
      />
      <TextField
        calculator={calculator}
        field="confidence"
        label="Certainty"
        why="The chance from which the answer is “within”, and the confidence of every ±. 95 % is common in measurement."
        unit="%"
        digits
      />
    </>
  );
}
