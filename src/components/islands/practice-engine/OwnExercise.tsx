import {
  exerciseLimits,
  gradeWords,
  practiceEngineFields,
  practiceGrades,
} from '../../../calculators/index.ts';
import type { DescribedExercise, PracticeEngineField } from '../../../calculators/index.ts';
import { drawSeed } from '../../../device/draw-seed.ts';
import { generationList, generationWords } from '../bench-session/generation-words.ts';
import ChoiceField from '../calculator/ChoiceField.tsx';
import TextField from '../calculator/TextField.tsx';
import type { Calculator } from '../calculator/use-calculator.ts';

interface Props {
  readonly calculator: Calculator<DescribedExercise, PracticeEngineField>;
}

const generationOptions = generationList.map((id) => [id, generationWords[id]] as const);
const countOptions = practiceEngineFields.carburettors.choices.map((count) => [count, count] as const);
const gradeOptions = practiceGrades.map((grade) => [`${grade}`, `${grade}: ${gradeWords[grade]}`] as const);

/** An exercise of one's own: which engine, how hard, and whether something is wrong with it. */
export function OwnExercise({ calculator }: Props) {
  return (
    <>
      <ChoiceField
        calculator={calculator}
        field="generation"
        label="Kind of linkage"
        options={generationOptions}
        as="select"
      />
      <ChoiceField
        calculator={calculator}
        field="carburettors"
        label="Carburettors"
        options={countOptions}
        as="select"
      />
      <ChoiceField calculator={calculator} field="grade" label="Grade" options={gradeOptions} />
      <TextField
        calculator={calculator}
        field="seed"
        label="Number of the engine"
        why="The same number gives the same engine everywhere, so a club can set one for all."
        digits
      >
        <p class="actions">
          <button
            type="button"
            class="button"
            onClick={() => calculator.change({ seed: drawSeed(exerciseLimits.seed.max) })}
          >
            Another engine
          </button>
        </p>
      </TextField>
      <ChoiceField
        calculator={calculator}
        field="fault"
        label="A fault to find"
        options={[
          ['none', 'None: only the balance'],
          ['hidden', 'Perhaps one, and I am not told which'],
        ]}
      />
    </>
  );
}
