interface Props {
  readonly label: string;
  readonly value: number;
  /** As it is read. */
  readonly words: string;
  readonly most: number;
  readonly step: number;
  readonly onSet: (value: number) => void;
  /** Buttons left and right of the range, from the outside in: what each does, and its sign. */
  readonly less: readonly Nudge[];
  readonly more: readonly Nudge[];
}

export interface Nudge {
  readonly sign: string;
  readonly words: string;
  readonly press: () => void;
}

/** A control that can be dragged, or moved in small steps. */
export function NudgeRow({ label, value, words, most, step, onSet, less, more }: Props) {
  const button = ({ sign, words: does, press }: Nudge) => (
    <button key={sign} type="button" class="button" aria-label={does} onClick={press}>
      {sign}
    </button>
  );
  return (
    <div class="nudges" role="group" aria-label={label}>
      <span class="aside" aria-hidden="true">
        {label}
        <br />
        <b>{words}</b>
      </span>
      {less.map(button)}
      <input
        type="range"
        min={0}
        max={most}
        step={step}
        value={value}
        aria-label={label}
        aria-valuetext={words}
        onInput={(event) => onSet(event.currentTarget.valueAsNumber)}
      />
      {more.map(button)}
    </div>
  );
}
