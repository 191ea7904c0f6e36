import {
  adjusterNumbers,
  answerThreadTravelBudget,
  calculatorLink,
  generations,
  threadTravelBudgetFields,
} from '../../calculators/index.ts';
import { addressWith } from '../../device/fragment.ts';
import { siteAddress } from '../../device/site-address.ts';
import { generationWords } from './bench-session/generation-words.ts';
import AnswerRows from './calculator/AnswerRows.tsx';
import AnswerSection from './calculator/AnswerSection.tsx';
import CalculatorFrame from './calculator/CalculatorFrame.tsx';
import ChoiceField from './calculator/ChoiceField.tsx';
import { useCalculator } from './calculator/use-calculator.ts';
import Warnings from './calculator/Warnings.tsx';
import AdjusterQuestions from './thread-travel-budget/AdjusterQuestions.tsx';
import HoldQuestions from './thread-travel-budget/HoldQuestions.tsx';
import IdleQuestions from './thread-travel-budget/IdleQuestions.tsx';
import ThreadQuestions from './thread-travel-budget/ThreadQuestions.tsx';
import TravelPlot from './thread-travel-budget/TravelPlot.tsx';
import TurnsTable from './thread-travel-budget/TurnsTable.tsx';

const threadFields = {
  from: 'threadFrom',
  thread: 'thread',
  turns: 'pitchTurns',
  travel: 'pitchTravel',
} as const;

export default function ThreadTravelBudget() {
  const calculator = useCalculator({
    slug: 'thread-travel-budget',
    fields: threadTravelBudgetFields,
    answer: answerThreadTravelBudget,
    link: calculatorLink(threadTravelBudgetFields),
  });
  const { form } = calculator;

  return (
    <CalculatorFrame calculator={calculator}>
      <div>
        <ChoiceField
          calculator={calculator}
          field="generation"
          label="What do the screws move?"
          options={generations.map((each) => [each, generationWords[each]] as const)}
          as="select"
        />
        <ChoiceField
          calculator={calculator}
          field="adjusters"
          label="Adjusters"
          options={adjusterNumbers.map((number) => [String(number), String(number)] as const)}
          as="select"
        />
        <ThreadQuestions
          calculator={calculator}
          label="Thread of the adjusters"
          why="No thread gauge? Measure what ten turns go: choose “Measured pitch”."
          fields={threadFields}
        />
        <ChoiceField
          calculator={calculator}
          field="showing"
          label="What did you look at?"
          options={[
            ['lengths', 'the thread that shows, in millimetres'],
            ['turns', 'turns to the end, counted'],
          ]}
          as="select"
        />
        <AdjusterQuestions calculator={calculator} />
      </div>
      <AnswerSection calculator={calculator} lead={({ lead }) => lead}>
        {(answer) => (
          <>
            <Warnings lines={answer.warnings} />
            <TravelPlot answer={answer} />
            <TurnsTable caption="In turns. After: with the plan made." turns="plan" rows={answer.rows} now />
            <h2>The level that leaves the most thread</h2>
            <p>{answer.shift?.lead ?? answer.noShift}</p>
            {answer.shift !== null && (
              <>
                <AnswerRows
                  calculator={calculator}
                  caption="The common move. Tap a figure to copy it."
                  lines={answer.shift.lines}
                />
                <TurnsTable
                  caption="In turns. After: with the plan and the common move made."
                  turns="in all"
                  rows={answer.shift.rows}
                />
              </>
            )}
            <AnswerRows calculator={calculator} caption="The screws." lines={answer.lines} />
            {answer.sessionLink !== null && (
              <p class="actions">
                <a
                  class="button first"
                  href={addressWith(siteAddress('/bench-session/'), answer.sessionLink)}
                >
                  Set up a bench session with this thread
                </a>
              </p>
            )}
          </>
        )}
      </AnswerSection>
      <div class="further">
        {form.showing === 'lengths' && <HoldQuestions calculator={calculator} />}
        {form.threadFrom === 'table' && (
          <ChoiceField
            calculator={calculator}
            field="starts"
            label="Starts"
            why="Threads side by side on one screw: look at its end. Nearly always one."
            options={[
              ['1', '1'],
              ['2', '2'],
              ['3', '3'],
            ]}
            as="select"
          />
        )}
        <IdleQuestions calculator={calculator} />
      </div>
    </CalculatorFrame>
  );
}
