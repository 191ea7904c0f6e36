import { useState } from 'preact/hooks';
import type { RecordedEvent } from '../../../device/session-record.ts';
import { ReadingForm } from './ReadingForm.tsx';
import { TurnForm } from './TurnForm.tsx';
import { eventWords } from './record-words.ts';
import { figure, type Figures } from './words.ts';

/** Everything that was done, newest first. Every line can be put right; the last can be undone. */
export function Log({
  events,
  figures,
  onUndo,
  onCorrect,
}: {
  events: readonly RecordedEvent[];
  figures: Figures;
  onUndo: () => void;
  onCorrect: (index: number, event: RecordedEvent) => void;
}) {
  const [open, setOpen] = useState<number | null>(null);
  const close = (): void => setOpen(null);
  if (events.length === 0) return <p class="quiet">Nothing has been read or turned yet.</p>;
  const lines = events.map((event, index) => {
    const number = index + 1;
    const take = (corrected: RecordedEvent): void => {
      onCorrect(index, corrected);
      close();
    };
    return (
      <li key={index}>
        <span class="quiet">{number}</span> <span>{eventWords(event, figures)}</span>{' '}
        <span>
          {number === events.length && (
            <button class="plain" type="button" onClick={onUndo}>
              Undo<span class="unseen"> event {number}</span>
            </button>
          )}{' '}
          <button
            class="plain"
            type="button"
            aria-expanded={open === index}
            onClick={() => setOpen(open === index ? null : index)}
          >
            Correct<span class="unseen"> event {number}</span>
          </button>
        </span>
        {open === index && event.kind === 'reading' && (
          <ReadingForm
            setUp={figures.setUp}
            unit={figures.unit}
            event={event}
            shown={event.typed ?? figure(event.depressionPa, figures)}
            onTake={take}
            onLeave={close}
          />
        )}
        {open === index && event.kind === 'turn' && (
          <TurnForm
            setUp={figures.setUp}
            first={event}
            verb="Put it right"
            onTake={(turn) => take({ ...event, ...turn })}
            onLeave={close}
          />
        )}
      </li>
    );
  });
  return (
    <ol class="entries" reversed>
      {lines.reverse()}
    </ol>
  );
}
