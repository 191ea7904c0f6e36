import ChoiceField from '../calculator/ChoiceField.tsx';
import TextField from '../calculator/TextField.tsx';
import type { QuestionsProps } from './calculator.ts';

/** What holds the adjuster: engagement and lock nut. Only for thread that was measured, not for turns that were counted. */
export default function HoldQuestions({ calculator }: QuestionsProps) {
  const { form } = calculator;
  return (
    <>
      <div class="pairs">
        <TextField
          calculator={calculator}
          field="engagement"
          label="Thread that holds"
          why="Length of the threaded hole that the screw fills. Without a unit: millimetres. Empty: none of it may be given up."
        />
        <TextField
          calculator={calculator}
          field="minimum"
          label="Of it to keep"
          why="Empty: one diameter, common practice in light alloy. The service manual comes first."
        />
      </div>
      <div class="pairs">
        <ChoiceField
          calculator={calculator}
          field="nut"
          label="Lock nut"
          options={[
            ['thin', 'thin, ISO 4035'],
            ['regular', 'regular, ISO 4032'],
            ['measured', 'as measured'],
            ['none', 'none'],
          ]}
          as="select"
        />
        {form.nut === 'measured' && (
          <TextField calculator={calculator} field="nutHeight" label="Height of the nut" />
        )}
        {form.nut !== 'none' && (
          <ChoiceField
            calculator={calculator}
            field="nutAt"
            label="It sits"
            options={[
              ['head', 'at the head'],
              ['tip', 'at the tip'],
            ]}
            as="select"
          />
        )}
      </div>
      <ChoiceField
        calculator={calculator}
        field="comesOut"
        label="Which way does an adjuster come out of its thread?"
        options={[
          ['opening', 'when it opens the throttle'],
          ['closing', 'when it closes the throttle'],
        ]}
        as="select"
      />
    </>
  );
}
