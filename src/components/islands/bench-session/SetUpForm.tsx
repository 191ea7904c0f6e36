import { useEffect, useRef, useState } from 'preact/hooks';
import {
  carburettorNumbers,
  defaultAnswers,
  describeProblem,
  formatPressure,
  membersWords,
  parseReadings,
  parseSetUp,
  pressureUnit,
  screwsOfAnswers,
  typedIn,
  type FieldProblem,
  type SetUpAnswers,
} from '../../../calculators/index.ts';
import type { StoredSession } from '../../../device/stored-session.ts';
import { siteAddress } from '../../../device/site-address.ts';
import { Choice, Field, type Wrong } from './Field.tsx';
import { GaugeTrialForm } from './GaugeTrialForm.tsx';
import { LinkageDrawing } from './LinkageDrawing.tsx';
import { newSession } from './sessions.ts';
import { ThreadQuestion } from './ThreadQuestion.tsx';
import { UnitQuestion } from './UnitQuestion.tsx';
import { generationList, generationWords } from './generation-words.ts';
import { fieldLabels, labelOf } from './set-up-words.ts';

type Props = {
  readonly first: SetUpAnswers;
  readonly firstReadings: string;
  /** Said above the form: where the answers come from. */
  readonly notice: string | null;
  readonly onChange: (answers: SetUpAnswers, readings: string) => void;
  readonly onCopyLink: (answers: SetUpAnswers, readings: string) => void;
  readonly onBegin: (session: StoredSession, answers: SetUpAnswers) => void;
  readonly onLeave: () => void;
  readonly said: string;
};

/** The set-up in the reader's words: two answers are needed, every other has a default that says why. */
export function SetUpForm({
  first,
  firstReadings,
  notice,
  onChange,
  onCopyLink,
  onBegin,
  onLeave,
  said,
}: Props) {
  const [answers, setAnswers] = useState(first);
  const [readings, setReadings] = useState(firstReadings);
  const [problems, setProblems] = useState<readonly Wrong[]>([]);
  const summary = useRef<HTMLDivElement>(null);
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => title.current?.focus({ preventScroll: true }), []);

  const change = (update: Partial<SetUpAnswers>): void => {
    const next = { ...answers, ...update };
    setAnswers(next);
    onChange(next, readings);
    if (problems.length > 0) setProblems(wrongsOf(next, readings));
  };
  const wrong = (field: string): string | undefined =>
    problems.find((problem) => problem.field === field)?.words;
  const text = (
    field: keyof SetUpAnswers &
      ('resolution' | 'flutter' | 'tolerance' | 'rpm' | 'ambient' | 'lockShift' | 'confidence'),
  ) => ({
    id: field,
    label: fieldLabels[field],
    value: answers[field],
    wrong: wrong(field),
    onInput: (value: string) => change({ [field]: value }),
  });

  const begin = (): void => {
    const found = wrongsOf(answers, readings);
    setProblems(found);
    const parsed = parseSetUp(answers);
    if (found.length > 0 || !parsed.ok) {
      requestAnimationFrame(() => summary.current?.focus());
      return;
    }
    const taken = parseReadings(readings, parsed.value.unit, parsed.value.setUp);
    if (taken.ok) onBegin(newSession(parsed.value, taken.value), answers);
  };

  const screws = screwsOfAnswers(answers);
  const unit = pressureUnitSymbol(answers.unit);
  const start = (
    <p class="actions">
      <button class="button first" type="submit">
        Start the session
      </button>
      <button class="button" type="button" onClick={() => onCopyLink(answers, readings)}>
        Copy the link
      </button>
      <button class="plain" type="button" onClick={onLeave}>
        Leave the set-up
      </button>
    </p>
  );

  return (
    <form
      class="flow set-up"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        begin();
      }}
    >
      <h2 ref={title} tabIndex={-1}>
        Set up the session
      </h2>
      {notice !== null && (
        <div class="hold">
          <p>{notice}</p>
          {start}
        </div>
      )}
      {problems.length > 0 && (
        <div class="errors text" role="alert" tabIndex={-1} ref={summary}>
          <p>
            <b>
              {problems.length === 1 ? 'One answer to put right' : `${problems.length} answers to put right`}
            </b>
          </p>
          <ul>
            {problems.map(({ field, words }) => (
              <li key={field}>
                <a
                  href={`#${field}`}
                  onClick={(event) => {
                    event.preventDefault();
                    document.getElementById(field)?.focus();
                  }}
                >
                  {labelOf(field)}: {words}
                </a>
              </li>
            ))}
          </ul>
        </div>
      )}
      <div>
        <Choice
          id="carburettors"
          label={fieldLabels.carburettors}
          wrong={wrong('carburettors')}
          value={answers.carburettors}
          options={['2', '3', '4', '5', '6', '7', '8'].map((count) => ({ value: count, words: count }))}
          onChange={(carburettors) => change({ carburettors })}
        />
        <Choice
          id="generation"
          label={fieldLabels.generation}
          wrong={wrong('generation')}
          why={
            <>
              Not sure? <a href={siteAddress('/which-linkage/')}>Find out in a few questions</a>. Nothing here
              is lost.
            </>
          }
          value={answers.generation}
          list
          options={generationList.map((generation) => ({
            value: generation,
            words: generationWords[generation],
            drawing: <LinkageDrawing generation={generation} />,
          }))}
          onChange={(generation) => change({ generation, thread: [] })}
        />
        {(answers.generation === 'fixed-reference' || answers.generation === 'bypass-screws') && (
          <Choice
            id="fixed"
            label={
              answers.generation === 'fixed-reference'
                ? 'Which one has no adjuster?'
                : 'Which body’s screw is left alone?'
            }
            why={
              answers.generation === 'fixed-reference'
                ? 'The others are matched to it. Counted from the left as you sit on the machine.'
                : 'The service manual names it; often its screw is seated.'
            }
            wrong={wrong('fixed')}
            value={answers.fixed}
            options={[
              ...carburettorNumbers(answers).map((number) => ({ value: `${number}`, words: `${number}` })),
              ...(answers.generation === 'bypass-screws' ? [{ value: '', words: 'none' }] : []),
            ]}
            onChange={(fixed) => change({ fixed, thread: [] })}
          />
        )}
        {answers.generation === 'paired-screws' && (
          <Field
            id="groups"
            label={fieldLabels.groups}
            why={
              <>
                Which carburettors does each screw move? Parted by semicolons, such as 1; 4; 3 4. Leave it
                empty for the usual layout{screws.length > 0 && `: ${screws.map(membersWords).join('; ')}`}.
              </>
            }
            wrong={wrong('groups')}
            value={answers.groups}
            onInput={(groups) => change({ groups, thread: [] })}
          />
        )}
        <Choice
          id="opens"
          label={fieldLabels.opens}
          why="Seen from the screwdriver. If you do not know, the first small turn will show it."
          value={answers.opens}
          options={[
            { value: 'clockwise', words: 'Clockwise' },
            { value: 'anticlockwise', words: 'Anticlockwise' },
            { value: 'unknown', words: 'I don’t know' },
            { value: 'differ', words: 'They differ' },
          ]}
          onChange={(opens) => change({ opens: opens as SetUpAnswers['opens'] })}
        />
        {answers.opens === 'differ' &&
          screws.map((moves, j) => (
            <Choice
              key={j}
              id={`opens-${j}`}
              label={`Screw of ${membersWords(moves)}`}
              value={answers.opensEach[j] ?? 'unknown'}
              options={[
                { value: 'clockwise', words: 'Clockwise' },
                { value: 'anticlockwise', words: 'Anticlockwise' },
                { value: 'unknown', words: 'I don’t know' },
              ]}
              onChange={(chosen) =>
                change({
                  opensEach: screws.map((_, k) =>
                    k === j ? (chosen as 'clockwise') : (answers.opensEach[k] ?? 'unknown'),
                  ),
                })
              }
            />
          ))}
        <UnitQuestion
          value={answers.unit}
          wrong={wrong('unit')}
          onChange={(chosen) => {
            const { resolution, flutter, tolerance } = defaultAnswers(chosen);
            change({ unit: chosen, resolution, flutter, tolerance });
          }}
        />
        <Field
          {...text('resolution')}
          suffix={unit}
          why="Half a division, if the needle is steady enough. From memory: 5 is usual on a dial marked in tens of mmHg."
        />
        <Field
          {...text('flutter')}
          suffix={unit}
          why="Damp it until it only just still moves, then say how far it swings to either side. Told too small, one set in eight is called done that is not (simulation). No tachometer: give at least 6 mmHg."
        />
        <GaugeTrialForm unit={answers.unit} onTake={change} />
        <Field
          {...text('tolerance')}
          suffix={`${unit}, highest less lowest`}
          why="Your service manual’s figure comes first. 10 mmHg is what such a gauge can settle; 5 is not (simulation)."
        />
        <Field
          {...text('rpm')}
          suffix="rpm"
          numeric
          why="Well above idle, so that the needle is steady. 2000 to 2500 is common practice. Leave it empty without a tachometer."
        />
        <ThreadQuestion
          screws={screws}
          thread={answers.thread}
          wrong={wrong}
          onChange={(thread) => change({ thread })}
        />
        <Field
          id="readings"
          label={fieldLabels.readings}
          why="Engine already read? In order, parted by semicolons: 212; 248; 251; 187. A label before a colon names the carburettor: 4: 187. Otherwise leave it empty."
          long
          value={readings}
          wrong={wrong('readings')}
          onInput={(value) => {
            setReadings(value);
            onChange(answers, value);
          }}
        />
        <details class="question">
          <summary>Ambient pressure, lock nut, certainty</summary>
          <Field
            {...text('ambient')}
            suffix={unit}
            why="Of the air around the engine. Empty: 101325 Pa, the standard atmosphere at sea level (ISO 2533)."
          />
          <Field
            {...text('lockShift')}
            suffix="turn"
            why="How far the screw slips when its nut is nipped. Empty: 0.02 turn (simulation). Does it read the same before and after locking? If not, raise it."
          />
          <Field
            {...text('confidence')}
            suffix="%"
            why="How sure before the set is called balanced. Empty: 95."
          />
        </details>
      </div>
      {start}
      <p class="aside" role="status">
        {said === '' ? 'Your answers are kept on this device. Next time only what changed is asked.' : said}
      </p>
    </form>
  );
}

const pressureUnitSymbol = (id: string): string => {
  try {
    return pressureUnit(id).symbol;
  } catch {
    return '';
  }
};

/** Every problem of the form, in its words. */
const wrongsOf = (answers: SetUpAnswers, readings: string): readonly Wrong[] => {
  const parsed = parseSetUp(answers);
  if (!parsed.ok)
    return parsed.problems.map((found) => ({ field: found.field, words: wordsOf(found, answers) }));
  const taken = parseReadings(readings, parsed.value.unit, parsed.value.setUp);
  const inUnit = (pascals: number): string => formatPressure(pascals, parsed.value.unit);
  return taken.ok
    ? []
    : [{ field: 'readings', words: describeProblem(taken.problem, { formatPressure: inUnit }) }];
};

const wordsOf = ({ field, problem }: FieldProblem, answers: SetUpAnswers): string => {
  if (field === 'generation' && problem.kind === 'empty') return 'choose one; nothing is chosen yet.';
  const typed = typedIn(answers, field);
  const unit = pressureUnitSymbol(answers.unit) === '' ? 'mmHg' : answers.unit;
  return describeProblem(problem, {
    ...(typed === undefined ? {} : { typed }),
    formatPressure: (pascals) => formatPressure(pascals, unit),
  });
};
