import { useState } from 'preact/hooks';
import {
  describeProblem,
  describeTurns,
  handDirection,
  parseTurns,
  type BenchSetUp,
} from '../../../calculators/index.ts';
import { PanelForm } from './PanelForm.tsx';
import { screwLabel } from './words.ts';

type Turn = { readonly screw: number; readonly turns: number };

/** Which screw was really turned, which way, how far. */
export function TurnForm({
  setUp,
  first,
  verb,
  onTake,
  onLeave,
}: {
  setUp: BenchSetUp;
  first: Turn;
  verb: string;
  onTake: (turn: Turn) => void;
  onLeave: () => void;
}) {
  const [screw, setScrew] = useState(first.screw);
  const [amount, setAmount] = useState(describeTurns(first.turns).replace('−', ''));
  const [opening, setOpening] = useState(first.turns >= 0);
  const [wrong, setWrong] = useState<string | null>(null);
  const opens = setUp.opens[screw - 1] ?? 'unknown';

  const take = (): void => {
    const parsed = parseTurns(amount);
    if (!parsed.ok) return setWrong(describeProblem(parsed.problem, { typed: amount }));
    onTake({ screw, turns: opening ? parsed.value : -parsed.value });
  };

  return (
    <PanelForm label="What was really turned" verb={verb} onTake={take} onLeave={onLeave}>
      <fieldset>
        <legend>Screw</legend>
        <div class="options">
          {setUp.screws.map((_, j) => (
            <label key={j}>
              <input
                type="radio"
                name="turned-screw"
                checked={screw === j + 1}
                onChange={() => setScrew(j + 1)}
              />{' '}
              {screwLabel(setUp, j + 1)}
            </label>
          ))}
        </div>
      </fieldset>
      <fieldset>
        <legend>Direction</legend>
        <div class="options">
          {[true, false].map((way) => (
            <label key={String(way)}>
              <input
                type="radio"
                name="turned-way"
                checked={opening === way}
                onChange={() => setOpening(way)}
              />{' '}
              {opens === 'unknown'
                ? handDirection(opens, way ? 1 : -1)
                : `${way ? 'opened' : 'closed'}, ${handDirection(opens, way ? 1 : -1)}`}
            </label>
          ))}
        </div>
      </fieldset>
      <label for="turned-amount">Amount, in turns</label>
      <p class="quiet">A fraction such as 1/4, or minutes of a clock face such as 7 min.</p>
      {wrong !== null && (
        <p class="wrong" role="alert" id="turned-wrong">
          {wrong}
        </p>
      )}
      <p class="with-unit">
        <input
          id="turned-amount"
          class="write"
          autocomplete="off"
          autocapitalize="none"
          autofocus
          value={amount}
          aria-invalid={wrong !== null}
          aria-describedby={wrong === null ? undefined : 'turned-wrong'}
          onInput={(event) => setAmount(event.currentTarget.value)}
        />
        turn
      </p>
    </PanelForm>
  );
}
