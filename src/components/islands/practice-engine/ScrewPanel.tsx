import {
  countedThread,
  countedTurns,
  describeCounted,
  describeThread,
  describeTurnsInWords,
  describeTurns,
  idleThread,
  membersWords,
  practiceSteps,
  screwOf,
} from '../../../calculators/index.ts';
import type { PracticeFigures } from '../../../calculators/index.ts';
import type { PlayControl } from './use-play.ts';

/** A screw by its number, or the idle-speed screw. */
export type ChosenScrew = number | 'idle';

interface Props {
  readonly control: PlayControl;
  readonly figures: PracticeFigures;
  readonly chosen: ChosenScrew;
  readonly onChoose: (screw: ChosenScrew) => void;
}

/** Screws and lock nuts, one at a time, with what was turned and what thread is left. */
export function ScrewPanel({ control, figures, chosen, onChoose }: Props) {
  const { run, act } = control;
  const { engine, state } = run;
  const { nutTight, idleTurns } = state.controls;
  const isIdle = chosen === 'idle';
  const tight = !isIdle && nutTight[chosen - 1] === true;
  const counted = isIdle ? idleTurns : (countedTurns(run)[chosen - 1] ?? 0);
  const left = isIdle ? idleThread(run) : countedThread(run)[chosen - 1];
  const name = isIdle ? 'the idle-speed screw' : screwOf(engine, chosen);
  const turn = (turns: number) =>
    act(() => (isIdle ? { kind: 'idle-screw', turns } : { kind: 'turn', screw: chosen, turns }));
  const key = (screw: ChosenScrew, label: string, before: string) => (
    <button
      key={screw}
      type="button"
      class="button"
      aria-pressed={chosen === screw}
      onClick={() => onChoose(screw)}
    >
      <span>
        <span class="unseen">{before} </span>
        {label}
      </span>{' '}
      {screw !== 'idle' && <small>{nutTight[screw - 1] === true ? 'tight' : 'loose'}</small>}
    </button>
  );
  const turns = (way: 'Close' | 'Open', signed: (size: number) => number) => (
    <div class="turn-keys" role="group" aria-label={`${way} ${name}`}>
      <span class="aside" aria-hidden="true">
        {way}
      </span>
      {practiceSteps.turns.map((size) => (
        <button
          key={size}
          type="button"
          class="button"
          aria-label={`${way} by ${describeTurnsInWords(size)}`}
          onClick={() => turn(signed(size))}
        >
          {describeTurns(size)}
        </button>
      ))}
    </div>
  );
  const thread = left && describeThread(left, figures);
  return (
    <section class="side screw-side" aria-labelledby="screw-side">
      <h2 id="screw-side">Screws</h2>
      <div class="keys many" role="group" aria-label="Screw">
        {engine.screws.map(({ moves }, j) => key(j + 1, membersWords(moves).replace(' and ', '+'), 'Screw'))}
        {key('idle', 'idle', 'Screw:')}
      </div>
      <p class="aside stand">
        {isIdle ? 'No nut' : tight ? 'Nut tight' : 'Nut loose'} · <b>{describeCounted(counted)}</b>
        {thread && (
          <span class={thread.short ? 'late' : undefined}>
            {' '}
            · {thread.short && 'short: '}left {thread.closing} to close, {thread.opening} to open
          </span>
        )}
      </p>
      {turns('Close', (size) => -size)}
      {turns('Open', (size) => size)}
      {!isIdle && (
        <div class="keys">
          {tight ? (
            <button
              type="button"
              class="button"
              onClick={() => act(() => ({ kind: 'loosen', screw: chosen }))}
            >
              Loosen the nut
            </button>
          ) : (
            <>
              <button
                type="button"
                class="button"
                onClick={() => act(() => ({ kind: 'tighten', screw: chosen, held: true }))}
              >
                Hold and tighten
              </button>
              <button
                type="button"
                class="button"
                onClick={() => act(() => ({ kind: 'tighten', screw: chosen, held: false }))}
              >
                Tighten alone
              </button>
            </>
          )}
        </div>
      )}
    </section>
  );
}
