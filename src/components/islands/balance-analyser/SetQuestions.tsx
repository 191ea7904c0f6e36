import { balanceAnalyserFields, generations, pressureUnits } from '../../../calculators/index.ts';
import { generationWords } from '../bench-session/generation-words.ts';
import ChoiceField from '../calculator/ChoiceField.tsx';
import TextField from '../calculator/TextField.tsx';
import type { QuestionsProps } from './calculator.ts';

const noneWords = {
  'fixed-reference': 'Not chosen yet',
  'bypass-screws': 'None: match all to each other',
} as const;

/** The readings, and the set that they were taken from. */
export default function SetQuestions({ calculator }: QuestionsProps) {
  const { form } = calculator;
  const { generation } = form;
  // A number beyond the set stays on offer while it is chosen, so that the field shows what is wrong.
  const members = balanceAnalyserFields.carburettors.choices.filter(
    (number) => number <= form.carburettors || number === form.fixed,
  );
  return (
    <>
      <TextField
        calculator={calculator}
        field="readings"
        label="Readings, in the order you took them"
        why="2: 248 is carburettor 2. A comma and a space, or a new line, between readings. Several of each are welcome. With an engine speed: 1: 212 @ 2150."
        lines={3}
      />
      <div class="pairs">
        <ChoiceField
          calculator={calculator}
          field="unit"
          label="Unit of the gauge"
          options={pressureUnits.map(({ id, symbol }) => [id, symbol] as const)}
          as="select"
        />
        <TextField calculator={calculator} field="tolerance" label="All within" />
      </div>
      <ChoiceField
        calculator={calculator}
        field="generation"
        label="What do the screws move?"
        options={generations.map((each) => [each, generationWords[each]] as const)}
        as="select"
      />
      <div class="pairs">
        <ChoiceField
          calculator={calculator}
          field="carburettors"
          label="Carburettors"
          options={balanceAnalyserFields.carburettors.choices.map((number) => [number, number] as const)}
          as="select"
        />
        {(generation === 'fixed-reference' || generation === 'bypass-screws') && (
          <ChoiceField
            calculator={calculator}
            field="fixed"
            label="Which one is left alone?"
            options={[
              ['none', noneWords[generation]],
              ...['1', ...members].map((number) => [number, number] as const),
            ]}
            as="select"
          />
        )}
      </div>
      {generation === 'paired-screws' && (
        <TextField
          calculator={calculator}
          field="groups"
          label="Groups of carburettors, one for each screw"
          why="1; 4; 3 4 means: one screw moves 1, one moves 4, one moves 3 and 4 together. Empty: the usual layout of that number."
        />
      )}
    </>
  );
}
