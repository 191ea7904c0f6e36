import { useEffect, useState } from 'preact/hooks';
import {
  answersOf,
  computeBench,
  defaultAnswers,
  describeProblem,
  findPressureUnit,
  formatExact,
  parseSessionLink,
  writeSessionLink,
  type SetUpAnswers,
} from '../../calculators/index.ts';
import { copyText } from '../../device/clipboard.ts';
import { decimalMark } from '../../device/decimal-mark.ts';
import { linkTo, readFragment, writeFragment } from '../../device/fragment.ts';
import { readSetting, writeSetting } from '../../device/settings.ts';
import { isEnded, type StoredSession } from '../../device/stored-session.ts';
import { BenchView } from './bench-session/BenchView.tsx';
import { ElsewhereBanner } from './bench-session/ElsewhereBanner.tsx';
import { RecordView } from './bench-session/RecordView.tsx';
import { NotSavedBanner } from './bench-session/SavedLine.tsx';
import { saveSession } from './bench-session/sessions.ts';
import { SetUpForm } from './bench-session/SetUpForm.tsx';
import { StartView } from './bench-session/StartView.tsx';
import { useBench } from './bench-session/use-bench.ts';
import { useRemoval } from './bench-session/use-removal.ts';
import type { Mark } from './bench-session/words.ts';

/** The answers that the form begins with, and where they come from. */
type SetUpStart = {
  readonly answers: SetUpAnswers;
  readonly readings: string;
  readonly notice: string | null;
};

/** The main job, from set-up to record. */
export default function BenchSession() {
  const [state, actions] = useBench();
  const [setUp, setSetUp] = useState<SetUpStart | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  const [mark, setMark] = useState<Mark>('point');

  useEffect(() => {
    setMark(decimalMark());
    const followLink = (): void => {
      const fragment = readFragment();
      if (!('g' in fragment || 'n' in fragment || 'r' in fragment || 'v' in fragment)) return;
      const link = parseSessionLink(fragment);
      setRefused(link.ok ? null : describeProblem(link.problem));
      if (!link.ok) return;
      const { answers, readings, unknownKeys } = link.value;
      actions.open(null);
      setSetUp({ answers, readings, notice: linkNotice(readings, unknownKeys) });
    };
    followLink();
    addEventListener('hashchange', followLink);
    return () => removeEventListener('hashchange', followLink);
  }, []);

  const { current } = state;
  useEffect(() => {
    if (current) scrollTo(0, 0);
  }, [current?.head.id]);
  const removal = useRemoval(actions);
  const begin = (session: StoredSession, answers: SetUpAnswers): void => {
    writeSetting('set-up', JSON.stringify(answers));
    writeFragment({}, 'push');
    setSetUp(null);
    actions.begin(session);
  };
  const copyLink = async (answers: SetUpAnswers, readings: string): Promise<void> => {
    const link = linkTo(writeSessionLink(answers, readings));
    setSaid((await copyText(link)) ? 'Link copied.' : `Copy it from here: ${link}`);
  };

  if (current) {
    const shared = { session: current, state, actions, mark, onSaveFile: () => saveSession(current) };
    const leave = (): void => actions.open(null);
    return (
      <>
        {state.elsewhere && <ElsewhereBanner onLeave={leave} />}
        <fieldset class="whole" disabled={state.elsewhere}>
          {isEnded(current.head) ? (
            <RecordView
              {...shared}
              onLeave={leave}
              onRemove={() => void removal.remove(current)}
              onAgain={() => {
                actions.open(null);
                setSetUp(nextOnEngine(current));
              }}
            />
          ) : (
            <BenchView {...shared} onLeave={leave} onEnd={() => scrollTo(0, 0)} />
          )}
        </fieldset>
      </>
    );
  }
  return (
    <>
      <NotSavedBanner saved={state.saved} onSaveFile={null} onTryAgain={actions.tryAgain} />
      {refused !== null && (
        <p class="wrong" role="alert">
          {refused}
        </p>
      )}
      {setUp ? (
        <SetUpForm
          key={setUp.notice ?? ''}
          first={setUp.answers}
          firstReadings={setUp.readings}
          notice={setUp.notice}
          said={said}
          onChange={(answers, readings) => writeFragment(writeSessionLink(answers, readings))}
          onCopyLink={(answers, readings) => void copyLink(answers, readings)}
          onBegin={begin}
          onLeave={() => {
            writeFragment({});
            setSetUp(null);
          }}
        />
      ) : (
        <StartView
          state={state}
          actions={actions}
          removal={removal}
          mark={mark}
          onSetUp={() => setSetUp({ answers: rememberedAnswers(), readings: '', notice: null })}
        />
      )}
    </>
  );
}

const linkNotice = (readings: string, unknownKeys: readonly string[]): string => {
  const ignored = unknownKeys.length === 0 ? '' : ` Not known and ignored: ${unknownKeys.join(', ')}.`;
  return readings === ''
    ? `Filled in from the link. Check it, then start.${ignored}`
    : `Filled in from the link, with the readings ${readings}. Check them, then start.${ignored}`;
};

/** What was answered last time, as far as it can be read; the learned effect belongs to one engine and is left out. */
const rememberedAnswers = (): SetUpAnswers => {
  const base = defaultAnswers('mmHg');
  try {
    const kept = JSON.parse(readSetting('set-up') ?? '{}') as Record<string, unknown>;
    const text = Object.entries(kept).filter(([key, value]) => key in base && typeof value === 'string');
    const answers = { ...base, ...Object.fromEntries(text), effect: '' };
    return findPressureUnit(answers.unit) ? answers : base;
  } catch {
    return base;
  }
};

/** The next session on the same engine begins with what this one learned. */
const nextOnEngine = ({ head, events }: StoredSession): SetUpStart => {
  const setUp = head.setUp;
  const bench = computeBench(setUp, events, null);
  const learned = bench.ok && events.some(({ kind }) => kind === 'turn');
  const answers = answersOf(head.generation, head.unit, setUp);
  return {
    answers: {
      ...answers,
      thread: [],
      effect: learned
        ? formatExact(bench.value.estimate.effectPaPerTurn, { minus: 'hyphen' })
        : answers.effect,
    },
    readings: '',
    notice: learned
      ? 'Set up as last time, with the effect of a turn that this engine showed. Count the thread again.'
      : 'Set up as last time. Count the thread again.',
  };
};
