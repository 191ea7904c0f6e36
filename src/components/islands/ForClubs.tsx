import { useEffect, useMemo, useState } from 'preact/hooks';
import {
  answerChecklists,
  checklistFields,
  checklistNumbers,
  generations,
  headingLimit,
  noteLinesLimit,
  notesLimit,
  parseChecklistLink,
  writeChecklistLink,
} from '../../calculators/index.ts';
import { generationWords } from './bench-session/generation-words.ts';
import CalculatorFrame from './calculator/CalculatorFrame.tsx';
import ChoiceField from './calculator/ChoiceField.tsx';
import TextField from './calculator/TextField.tsx';
import { useCalculator } from './calculator/use-calculator.ts';
import { checklistAddress, checklistPath, codeOf } from './checklists/address.ts';
import { QrCode } from './checklists/QrCode.tsx';

const kinds = generations.map((generation) => [generation, generationWords[generation]] as const);
const numbers = checklistNumbers.map((number) => [number, number] as const);

/** A club’s own list: what it is to say, and the link and the code that open it. */
export default function ForClubs() {
  const calculator = useCalculator({
    slug: 'for-clubs',
    fields: checklistFields,
    answer: answerChecklists,
    link: { write: writeChecklistLink, parse: parseChecklistLink },
  });
  const { form, answer, stale, copied } = calculator;
  // The server does not know the whole address, so its link is of this site and it draws no code.
  const [running, setRunning] = useState(false);
  useEffect(() => setRunning(true), []);
  const link = running ? checklistAddress(form) : checklistPath(form);
  const code = useMemo(() => (running ? codeOf(form) : null), [form, running]);

  return (
    <CalculatorFrame calculator={calculator}>
      <div class="asked">
        <ChoiceField
          calculator={calculator}
          field="generation"
          label="What do the screws move?"
          options={kinds}
        />
        <ChoiceField
          calculator={calculator}
          field="carburettors"
          label="How many carburettors?"
          options={numbers}
          as="select"
        />
        <TextField
          calculator={calculator}
          field="heading"
          label="Your heading"
          lines={2}
          why={`At most ${headingLimit} characters. Left empty, the list’s own name stands there.`}
        />
        <TextField
          calculator={calculator}
          field="notes"
          label="Your notes"
          lines={noteLinesLimit}
          why={`Plain text, at most ${notesLimit} characters in ${noteLinesLimit} lines. Anybody with the link can read it.`}
        />
      </div>
      <section class="answered flow" aria-label="Your link">
        {stale || answer === null ? (
          <div class="understood">
            <p>No link yet.</p>
            <button type="button" class="plain" onClick={calculator.lookAtProblem}>
              Go to what has to be put right
            </button>
          </div>
        ) : (
          <p class="understood">{answer.announcement}</p>
        )}
        {!stale && (
          <>
            <p class="club-link">
              <a href={link}>{link}</a>
            </p>
            <p class="actions">
              <button
                type="button"
                class="button first"
                onClick={() => calculator.copy(link, 'the link to this list')}
              >
                Copy the link
              </button>
              <button type="button" class="button" onClick={calculator.startAgain}>
                Clear the form
              </button>
            </p>
          </>
        )}
        <p class="copied aside" role="status">
          {copied.words}
        </p>
        {!stale && code && (
          <figure class="figure club-code">
            <QrCode address={code.text} label="QR code of the link" />
            <figcaption>
              {code.whole
                ? 'The same link as a code for a telephone. It also stands on the sheet.'
                : 'With so many characters the code would be too fine for a telephone. This one, and the one on the sheet, opens the list without heading and notes; the link above keeps them.'}
            </figcaption>
          </figure>
        )}
        <p class="unseen" role="status">
          {calculator.announced}
        </p>
      </section>
    </CalculatorFrame>
  );
}
