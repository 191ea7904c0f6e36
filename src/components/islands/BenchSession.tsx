import { useEffect, useState } from 'preact/hooks';
import { decimalMark } from '../../device/decimal-mark.ts';
import { readFragment } from '../../device/fragment.ts';
import { later } from './arriving/Later.tsx';
import { NotSavedBanner } from './bench-session/SavedLine.tsx';
import { isSessionLink } from './bench-session/session-address.ts';
import type { SetUpRequest } from './bench-session/set-up-start.ts';
import { StartView } from './bench-session/StartView.tsx';
import { useBench } from './bench-session/use-bench.ts';
import { useRemoval } from './bench-session/use-removal.ts';
import type { Mark } from './bench-session/words.ts';

const OpenSession = later(async () => (await import('./bench-session/OpenSession.tsx')).default);
const SetUp = later(async () => (await import('./bench-session/SetUp.tsx')).default);

/** In words, why there is nothing to set up; null as well where the part that knows did not arrive, which the set-up then says. */
const refusalOf = async (request: SetUpRequest): Promise<string | null> => {
  try {
    const { setUpStart } = await import('./bench-session/set-up-start.ts');
    const start = setUpStart(request);
    return typeof start === 'string' ? start : null;
  } catch {
    return null;
  }
};

/** The main job, from set-up to record. */
export default function BenchSession() {
  const [state, actions] = useBench();
  const [setUp, setSetUp] = useState<SetUpRequest | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const [mark, setMark] = useState<Mark>('point');

  useEffect(() => {
    setMark(decimalMark());
    const followLink = async (): Promise<void> => {
      const fragment = readFragment();
      if (!isSessionLink(fragment)) return;
      const request = { from: 'link', fragment } as const;
      const refusal = await refusalOf(request);
      setRefused(refusal);
      // A link that cannot be read leaves an open session as it is.
      if (refusal !== null) return;
      actions.open(null);
      setSetUp(request);
    };
    void followLink();
    addEventListener('hashchange', followLink);
    return () => removeEventListener('hashchange', followLink);
  }, []);

  const { current } = state;
  useEffect(() => {
    if (current) scrollTo(0, 0);
  }, [current?.head.id]);
  const removal = useRemoval(actions);

  if (current)
    return (
      <>
        {refused !== null && (
          <div class="errors" role="alert">
            <p>{refused} The session that is open here goes on.</p>
            <p class="actions">
              <button class="button" type="button" onClick={() => setRefused(null)}>
                Go on
              </button>
            </p>
          </div>
        )}
        <OpenSession
          session={current}
          state={state}
          actions={actions}
          mark={mark}
          onLeave={() => actions.open(null)}
          onRemove={() => void removal.remove(current)}
          onAgain={() => {
            actions.open(null);
            setSetUp({ from: 'session', session: current });
          }}
        />
      </>
    );
  return (
    <>
      <NotSavedBanner saved={state.saved} onSaveFile={null} onTryAgain={actions.tryAgain} />
      {refused !== null && (
        <p class="wrong" role="alert">
          {refused}
        </p>
      )}
      {setUp ? (
        <SetUp
          request={setUp}
          onBegin={(session) => {
            setSetUp(null);
            actions.begin(session);
          }}
          onLeave={() => setSetUp(null)}
        />
      ) : (
        <StartView
          state={state}
          actions={actions}
          removal={removal}
          mark={mark}
          onSetUp={() => setSetUp({ from: 'last-time' })}
        />
      )}
    </>
  );
}
