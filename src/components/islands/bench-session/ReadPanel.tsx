/** Which carburettor is read instead of the one that was asked for. */
export function ReadPanel({
  carburettors,
  onTake,
}: {
  carburettors: readonly number[];
  onTake: (chosen: number) => void;
}) {
  return (
    <div class="panel" role="group" aria-label="Which carburettor is read">
      <p>Which carburettor do you read?</p>
      <p class="entry-choice">
        {carburettors.map((number) => (
          <button key={number} class="key" type="button" onClick={() => onTake(number)}>
            {number}
          </button>
        ))}
      </p>
    </div>
  );
}
