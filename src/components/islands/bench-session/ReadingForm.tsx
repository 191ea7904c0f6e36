import { useState } from 'preact/hooks';
import {
  describeProblem,
  formatPressure,
  parseReading,
  pressureUnit,
  type BenchSetUp,
} from '../../../calculators/index.ts';
import type { RecordedEvent } from '../../../device/session-record.ts';
import { PanelForm } from './PanelForm.tsx';

type RecordedReading = Extract<RecordedEvent, { kind: 'reading' }>;

/** A reading put right: another figure, or another carburettor. */
export function ReadingForm({
  setUp,
  unit,
  event,
  shown,
  onTake,
  onLeave,
}: {
  setUp: BenchSetUp;
  unit: string;
  event: RecordedReading;
  shown: string;
  onTake: (event: RecordedReading) => void;
  onLeave: () => void;
}) {
  const [carburettor, setCarburettor] = useState(event.carburettor);
  const [typed, setTyped] = useState(shown);
  const [wrong, setWrong] = useState<string | null>(null);

  const take = (): void => {
    if (typed === shown) return onTake({ ...event, carburettor });
    const parsed = parseReading(typed, unit, setUp);
    if (!parsed.ok)
      return setWrong(
        describeProblem(parsed.problem, {
          typed,
          formatPressure: (pascals) => formatPressure(pascals, unit),
        }),
      );
    onTake({ ...event, carburettor, depressionPa: parsed.value, typed });
  };

  return (
    <PanelForm label="The reading, put right" verb="Put it right" onTake={take} onLeave={onLeave}>
      <fieldset>
        <legend>Carburettor</legend>
        <div class="options">
          {setUp.screws[0]?.moves.map((_, i) => (
            <label key={i}>
              <input
                type="radio"
                name="read-carburettor"
                checked={carburettor === i + 1}
                onChange={() => setCarburettor(i + 1)}
              />{' '}
              {i + 1}
            </label>
          ))}
        </div>
      </fieldset>
      <label for="corrected-reading">Reading</label>
      {wrong !== null && (
        <p class="wrong" role="alert" id="corrected-wrong">
          {wrong}
        </p>
      )}
      <p class="with-unit">
        <input
          id="corrected-reading"
          class="write"
          autocomplete="off"
          autocapitalize="none"
          value={typed}
          aria-invalid={wrong !== null}
          aria-describedby={wrong === null ? undefined : 'corrected-wrong'}
          onInput={(input) => setTyped(input.currentTarget.value)}
        />
        {pressureUnit(unit).symbol}
      </p>
    </PanelForm>
  );
}
