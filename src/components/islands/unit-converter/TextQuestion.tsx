import type { ComponentChildren, RefObject } from 'preact';
import { describeReadings, settleComma } from '../../../calculators/index.ts';
import type { Answer, FormField } from './use-unit-converter.ts';

interface Props {
  readonly id: FormField;
  readonly label: string;
  readonly why: string;
  readonly first: string;
  readonly answer: Answer;
  readonly field: RefObject<HTMLInputElement>;
  readonly onType: (typed: string) => void;
  /** Stands beside the field. */
  readonly children?: ComponentChildren;
  /** Ways out of the problem, beneath the field. */
  readonly cures?: ComponentChildren;
}

/** A question with one text field; a problem stands above the field, and what was typed stays in it. */
export default function TextQuestion({
  id,
  label,
  why,
  first,
  answer,
  field,
  onType,
  children,
  cures,
}: Props) {
  const problem = 'problem' in answer && answer.field === id ? answer : null;
  const ambiguous = problem?.problem.kind === 'ambiguous-number' ? problem.problem : null;
  const [grouped, decimal] = ambiguous === null ? [] : describeReadings(ambiguous.readings);
  const described = problem === null ? `${id}-why` : `${id}-wrong ${id}-why`;
  return (
    <div class="question">
      <label for={id}>{label}</label>
      <p class="why" id={`${id}-why`}>
        {why}
      </p>
      {problem !== null && (
        <p class="wrong" id={`${id}-wrong`}>
          {problem.sentence}
        </p>
      )}
      <p class="with-unit">
        <input
          class="write"
          id={id}
          ref={field}
          type="text"
          defaultValue={first}
          autocomplete="off"
          autocapitalize="none"
          autocorrect="off"
          spellcheck={false}
          enterkeyhint="done"
          aria-invalid={problem !== null}
          aria-describedby={described}
          onClick={(event) => event.currentTarget.value === first && event.currentTarget.select()}
          onInput={(event) => onType(event.currentTarget.value)}
        />
        {children}
      </p>
      {ambiguous !== null && (
        <p class="actions">
          <button
            type="button"
            class="button"
            onClick={() => onType(settleComma(ambiguous.typed, 'grouped'))}
          >
            {grouped}
          </button>
          <button
            type="button"
            class="button"
            onClick={() => onType(settleComma(ambiguous.typed, 'decimal'))}
          >
            {decimal}
          </button>
        </p>
      )}
      {cures}
    </div>
  );
}
