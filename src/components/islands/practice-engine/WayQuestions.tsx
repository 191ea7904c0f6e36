/** How the work is shown; kept from one exercise to the next. */
export interface WaysToWork {
  readonly inWords: boolean;
  readonly beside: boolean;
}

interface Props {
  readonly ways: WaysToWork;
  readonly onWays: (ways: WaysToWork) => void;
}

const questions = [
  ['beside', 'With the bench session beside it: it says what to read and turn next'],
  ['inWords', 'The needle in words, for a screen reader or a still screen'],
] as const;

/** Asked before the engine starts, and to be changed at any time. */
export function WayQuestions({ ways, onWays }: Props) {
  return (
    <div class="options list">
      {questions.map(([way, words]) => (
        <label key={way}>
          <input
            type="checkbox"
            checked={ways[way]}
            onChange={(event) => onWays({ ...ways, [way]: event.currentTarget.checked })}
          />
          <span>{words}</span>
        </label>
      ))}
    </div>
  );
}
