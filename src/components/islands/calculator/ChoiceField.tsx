import { useMemo } from 'preact/hooks';
import QuestionWords from './QuestionWords.tsx';
import type { Announced, Calculator } from './use-calculator.ts';

interface Props<Field extends string> {
  readonly calculator: Calculator<Announced, Field>;
  readonly field: Field;
  readonly label: string;
  readonly why?: string;
  /** Each choice with its words. */
  readonly options: readonly (readonly [choice: string, words: string])[];
  /** Radio buttons for up to five or so, else a list to pull down. */
  readonly as?: 'radios' | 'select';
}

/** A question with a choice. */
export default function ChoiceField<Field extends string>({
  calculator,
  field,
  label,
  why,
  options,
  as = 'radios',
}: Props<Field>) {
  const wrong = calculator.problemOf(field);
  const { change } = calculator;
  const chosen: string = calculator.form[field];
  // Most keys change other fields.
  return useMemo(() => {
    const choose = (choice: string) => change({ [field]: choice } as Record<Field, string>);
    const whyId = why === undefined ? undefined : `${field}-why`;
    const words = <QuestionWords field={field} why={why} wrong={wrong} />;
    if (as === 'select')
      return (
        <div class="question">
          <label for={field}>{label}</label>
          {words}
          <p class="with-unit">
            <select
              class="write"
              id={field}
              name={field}
              value={chosen}
              aria-describedby={whyId}
              onChange={(event) => choose(event.currentTarget.value)}
            >
              {options.map(([choice, text]) => (
                <option key={choice} value={choice} selected={choice === chosen}>
                  {text}
                </option>
              ))}
            </select>
          </p>
        </div>
      );
    return (
      <fieldset class="question" aria-describedby={whyId}>
        <legend>{label}</legend>
        {words}
        <div class="options list">
          {options.map(([choice, text]) => (
            <label key={choice}>
              <input
                type="radio"
                name={field}
                value={choice}
                checked={chosen === choice}
                onChange={() => choose(choice)}
              />
              <span>{text}</span>
            </label>
          ))}
        </div>
      </fieldset>
    );
  }, [chosen, wrong, label, why, options, as]);
}
