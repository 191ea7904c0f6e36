import { describeClock, describeEntry } from '../../../calculators/index.ts';
import type { PracticeFigures, PracticeRun } from '../../../calculators/index.ts';

interface Props {
  readonly run: PracticeRun;
  readonly figures: PracticeFigures;
}

/** Everything that was done, newest first, with the engine's time. */
export function PracticeLog({ run, figures }: Props) {
  const lines = run.entries.flatMap((entry) => {
    const words = describeEntry(run.engine, entry, figures);
    return words === null ? [] : [{ clock: describeClock(entry.seconds), words }];
  });
  return (
    <section class="log" aria-labelledby="log-title">
      <h2 id="log-title">Log</h2>
      {lines.length === 0 ? (
        <p class="quiet">Nothing has been done yet.</p>
      ) : (
        <ol class="entries timed" reversed>
          {lines
            .map(({ clock, words }, index) => (
              <li key={index}>
                <span class="quiet">{clock}</span> <span>{words}</span>
              </li>
            ))
            .reverse()}
        </ol>
      )}
    </section>
  );
}
