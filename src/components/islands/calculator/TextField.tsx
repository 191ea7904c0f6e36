import type { ComponentChildren } from 'preact';
import { useMemo } from 'preact/hooks';
import { settleComma } from '../../../calculators/index.ts';
import QuestionWords from './QuestionWords.tsx';
import type { Announced, Calculator } from './use-calculator.ts';

interface Props<Field extends string> {
  readonly calculator: Calculator<Announced, Field>;
  readonly field: Field;
  readonly label: string;
  /** Why it is asked, and what is taken where nothing is known; a question without it reads as a line of a form. */
  readonly why?: string;
  /** Lines of a field for a list; one line if left out. */
  readonly lines?: number;
  /** A keypad without minus sign and letters; only for what is never negative and has no unit. */
  readonly digits?: boolean;
  /** Stands beside the field: a unit that is always meant. */
  readonly unit?: string;
  /** Stands beside the field: a unit that can be chosen. */
  readonly beside?: ComponentChildren;
  /** The example: a click selects it, so that typing replaces it. */
  readonly example?: string;
  /** Ways out of a problem, beneath the field. */
  readonly children?: ComponentChildren;
}

/** A question with one text field; a problem stands above the field, and what was typed stays in it. */
export default function TextField<Field extends string>({
  calculator,
  field,
  label,
  why,
  lines,
  digits = false,
  unit,
  beside,
  example,
  children,
}: Props<Field>) {
  const wrong = calculator.problemOf(field);
  const { change } = calculator;
  const typed: string = calculator.form[field];
  // Most keys change other fields.
  return useMemo(() => {
    const comma = wrong?.problem.kind === 'ambiguous-number' ? wrong.problem : null;
    const described = [wrong && `${field}-wrong`, why !== undefined && `${field}-why`]
      .filter(Boolean)
      .join(' ');
    const type = (text: string) => change({ [field]: text } as Record<Field, string>);
    const shared = {
      id: field,
      name: field,
      value: typed,
      autocomplete: 'off',
      autocapitalize: 'none',
      spellcheck: false,
      'aria-invalid': wrong !== undefined,
      ...(described !== '' && { 'aria-describedby': described }),
    } as const;
    return (
      <div class="question">
        <label for={field}>{label}</label>
        <QuestionWords field={field} why={why} wrong={wrong} />
        <p class="with-unit">
          {lines === undefined ? (
            <input
              {...shared}
              class="write"
              type="text"
              enterkeyhint="done"
              {...(digits && { inputMode: 'decimal' as const })}
              data-example={example}
              onClick={({ currentTarget }) => currentTarget.value === example && currentTarget.select()}
              onInput={(event) => type(event.currentTarget.value)}
            />
          ) : (
            <textarea
              {...shared}
              class="write long"
              rows={lines}
              onInput={(event) => type(event.currentTarget.value)}
            />
          )}
          {unit !== undefined && <span class="unit">{unit}</span>}
          {beside}
        </p>
        {comma && (
          <p class="actions">
            {(['grouped', 'decimal'] as const).map((meant, position) => (
              <button
                key={meant}
                type="button"
                class="button"
                onClick={() => type(typed.replace(comma.typed, settleComma(comma.typed, meant)))}
              >
                {wrong?.readings?.[position]}
              </button>
            ))}
          </p>
        )}
        {children}
      </div>
    );
  }, [typed, wrong, label, why, lines, digits, unit, beside, example, children]);
}
