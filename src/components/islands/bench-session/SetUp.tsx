import { useEffect, useMemo, useState } from 'preact/hooks';
import { writeSessionLink, type SetUpAnswers } from '../../../calculators/index.ts';
import { copyText } from '../../../device/clipboard.ts';
import { linkTo, writeFragment } from '../../../device/fragment.ts';
import { writeSetting } from '../../../device/settings.ts';
import type { StoredSession } from '../../../device/stored-session.ts';
import { setUpStart, type SetUpRequest } from './set-up-start.ts';
import { SetUpForm } from './SetUpForm.tsx';

interface Props {
  readonly request: SetUpRequest;
  readonly onBegin: (session: StoredSession) => void;
  readonly onLeave: () => void;
}

/** The set-up of a session; the address follows it, and opens the same anywhere. */
export default function SetUp({ request, onBegin, onLeave }: Props) {
  const start = useMemo(() => setUpStart(request), [request]);
  const [said, setSaid] = useState('');
  // The bench is at hand before the engine runs.
  useEffect(() => void import('./OpenSession.tsx').catch(() => undefined), []);
  if (typeof start === 'string') return null;

  const copyLink = async (answers: SetUpAnswers, readings: string): Promise<void> => {
    const link = linkTo(writeSessionLink(answers, readings));
    setSaid((await copyText(link)) ? 'Link copied.' : `Copy it from here: ${link}`);
  };
  return (
    <SetUpForm
      key={start.notice ?? ''}
      first={start.answers}
      firstReadings={start.readings}
      notice={start.notice}
      said={said}
      onChange={(answers, readings) => writeFragment(writeSessionLink(answers, readings))}
      onCopyLink={(answers, readings) => void copyLink(answers, readings)}
      onBegin={(session, answers) => {
        writeSetting('set-up', JSON.stringify(answers));
        writeFragment({}, 'push');
        onBegin(session);
      }}
      onLeave={() => {
        writeFragment({});
        onLeave();
      }}
    />
  );
}
