interface Props {
  readonly lines: readonly string[];
}

/** What a figure does not know stands beside it, every time. */
export default function NotKnown({ lines }: Props) {
  return (
    <div class="not-known">
      <p>
        <strong>What this does not know</strong>
      </p>
      <ul class="bullets">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}
