import ChoiceField from '../calculator/ChoiceField.tsx';
import TextField from '../calculator/TextField.tsx';
import type { QuestionsProps } from './calculator.ts';
import ThreadQuestions from './ThreadQuestions.tsx';

const fields = {
  from: 'idleThreadFrom',
  thread: 'idleThread',
  turns: 'idlePitchTurns',
  travel: 'idlePitchTravel',
} as const;

/** The idle-speed screw, which takes back what all adjusters do together. */
export default function IdleQuestions({ calculator }: QuestionsProps) {
  return (
    <>
      <ChoiceField
        calculator={calculator}
        field="idle"
        label="Idle-speed screw"
        why="It takes back what all adjusters do together, and its thread ends too. On separate cables: the stop screw of each carburettor."
        options={[
          ['known', 'its thread is known'],
          ['unknown', 'not looked at'],
        ]}
        as="select"
      />
      {calculator.form.idle === 'known' && (
        <>
          <ThreadQuestions calculator={calculator} label="Thread of the idle-speed screw" fields={fields} />
          <div class="pairs">
            <TextField calculator={calculator} field="idleClosing" label="It shows, to close" />
            <TextField calculator={calculator} field="idleOpening" label="It shows, to open" />
          </div>
          <TextField
            calculator={calculator}
            field="idleRatio"
            label="Its turns for one turn of all adjusters"
            why="Empty: as their threads are to each other, which is right where both act on levers of the same length. Turn and see: that is better."
            digits
          />
        </>
      )}
    </>
  );
}
