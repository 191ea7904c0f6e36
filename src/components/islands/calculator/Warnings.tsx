interface Props {
  readonly lines: readonly string[];
}

/** What has to be known before the answer is used: with sign and word, never by colour alone. */
export default function Warnings({ lines }: Props) {
  if (lines.length === 0) return null;
  return (
    <div class="caution">
      <svg viewBox="0 0 36 32" aria-hidden="true">
        <path class="line" d="M18 2 34.5 30.5h-33zM18 12v9M18 25.5v.1" />
      </svg>
      <div>
        {lines.map((line, position) => (
          <p key={line}>
            {position === 0 && <strong>Caution. </strong>}
            {line}
          </p>
        ))}
      </div>
    </div>
  );
}
