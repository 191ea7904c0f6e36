interface Props {
  readonly lines: readonly string[];
}

/** What a figure does not know stands beside it, every time. */
export default function NotKnown({ lines }: Props) {
  return (
    <div class="not-known">
      <h3>What this does not know</h3>
      <ul class="bullets">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}
