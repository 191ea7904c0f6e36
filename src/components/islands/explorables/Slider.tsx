interface Props {
  readonly id: string;
  readonly label: string;
  readonly value: number;
  /** The value as it is said, with its unit. */
  readonly text: string;
  readonly limits: { readonly min: number; readonly max: number; readonly step: number };
  readonly onChange: (value: number) => void;
}

/** A number that is moved along a scale; a screen reader hears it with its unit. */
export default function Slider({ id, label, value, text, limits, onChange }: Props) {
  return (
    <p class="slider">
      <label for={id}>{label}</label>
      <span aria-hidden="true">{text}</span>
      <input
        id={id}
        type="range"
        {...limits}
        value={value}
        autocomplete="off"
        aria-valuetext={text}
        onInput={(event) => onChange(event.currentTarget.valueAsNumber)}
      />
    </p>
  );
}
