interface Props<Value extends string | number | boolean> {
  /** Name of the group: unique in the page. */
  readonly name: string;
  readonly legend: string;
  readonly value: Value;
  readonly options: readonly (readonly [value: Value, words: string])[];
  readonly onChange: (value: Value) => void;
}

/** One of a few, side by side where there is room. */
export default function Choice<Value extends string | number | boolean>({
  name,
  legend,
  value,
  options,
  onChange,
}: Props<Value>) {
  return (
    <fieldset class="choice">
      <legend>{legend}</legend>
      <div class="options">
        {options.map(([each, words]) => (
          <label key={words}>
            <input
              type="radio"
              name={name}
              value={String(each)}
              checked={each === value}
              onChange={() => onChange(each)}
            />
            <span>{words}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
