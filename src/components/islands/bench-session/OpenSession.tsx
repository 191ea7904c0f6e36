import { isEnded, type StoredSession } from '../../../device/stored-session.ts';
import { BenchView } from './BenchView.tsx';
import { ElsewhereBanner } from './ElsewhereBanner.tsx';
import { RecordView } from './RecordView.tsx';
import { saveSession } from './sessions.ts';
import type { BenchActions, BenchState } from './use-bench.ts';
import type { Mark } from './words.ts';

interface Props {
  readonly session: StoredSession;
  readonly state: BenchState;
  readonly actions: BenchActions;
  readonly mark: Mark;
  readonly onLeave: () => void;
  readonly onRemove: () => void;
  readonly onAgain: () => void;
}

/** The session that is open: at the bench while it goes on, as a record once it has ended. */
export default function OpenSession({ onLeave, onRemove, onAgain, ...given }: Props) {
  const { session, state } = given;
  const shared = { ...given, onLeave, onSaveFile: () => saveSession(session) };
  return (
    <>
      {state.elsewhere && <ElsewhereBanner onLeave={onLeave} />}
      <fieldset class="whole" disabled={state.elsewhere}>
        {isEnded(session.head) ? (
          <RecordView {...shared} onRemove={onRemove} onAgain={onAgain} />
        ) : (
          <BenchView {...shared} onEnd={() => scrollTo(0, 0)} />
        )}
      </fieldset>
    </>
  );
}
