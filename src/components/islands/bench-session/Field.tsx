import type { ComponentChildren } from 'preact';

export type Wrong = { readonly field: string; readonly words: string };

type FieldProps = {
  readonly id: string;
  readonly label: string;
  readonly why?: ComponentChildren;
  readonly suffix?: string;
  readonly value: string;
  readonly wrong: string | undefined;
  readonly numeric?: boolean;
  readonly long?: boolean;
  readonly onInput: (value: string) => void;
};

/** A question that is answered by writing; what is wrong stands above the place to write. */
export function Field({
  id,
  label,
  why,
  suffix,
  value,
  wrong,
  numeric = false,
  long = false,
  onInput,
}: FieldProps) {
  const described = [...(wrong === undefined ? [] : [`${id}-wrong`]), ...(why ? [`${id}-why`] : [])].join(
    ' ',
  );
  return (
    <div class="question">
      <label for={id}>{label}</label>
      {why && (
        <p class="why" id={`${id}-why`}>
          {why}
        </p>
      )}
      {wrong !== undefined && (
        <p class="wrong" id={`${id}-wrong`}>
          {wrong}
        </p>
      )}
      <p class="with-unit">
        <input
          id={id}
          class={long ? 'write long' : 'write'}
          inputMode={numeric ? 'numeric' : 'text'}
          autocomplete="off"
          autocapitalize="none"
          spellcheck={false}
          value={value}
          aria-invalid={wrong !== undefined}
          aria-describedby={described === '' ? undefined : described}
          onInput={(event) => onInput(event.currentTarget.value)}
        />{' '}
        {suffix}
      </p>
    </div>
  );
}

type ChoiceProps = {
  readonly id: string;
  readonly label: string;
  readonly why?: ComponentChildren;
  readonly wrong?: string | undefined;
  readonly value: string;
  readonly list?: boolean;
  readonly options: readonly {
    readonly value: string;
    readonly words: string;
    readonly drawing?: ComponentChildren;
  }[];
  readonly onChange: (value: string) => void;
};

/** A question with a few answers to choose from. */
export function Choice({ id, label, why, wrong, value, list = false, options, onChange }: ChoiceProps) {
  return (
    <fieldset
      class="question"
      id={id}
      tabIndex={-1}
      aria-describedby={wrong === undefined ? undefined : `${id}-wrong`}
    >
      <legend>{label}</legend>
      {why && <p class="why">{why}</p>}
      {wrong !== undefined && (
        <p class="wrong" id={`${id}-wrong`}>
          {wrong}
        </p>
      )}
      <div class={list ? 'options list' : 'options'}>
        {options.map((option) => (
          <label key={option.value}>
            <input
              type="radio"
              name={id}
              value={option.value}
              checked={value === option.value}
              onChange={() => onChange(option.value)}
            />{' '}
            {option.drawing}
            <span>{option.words}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
