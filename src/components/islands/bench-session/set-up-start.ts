import {
  answersOf,
  computeBench,
  defaultAnswers,
  describeProblem,
  findPressureUnit,
  formatExact,
  parseSessionLink,
  type SetUpAnswers,
} from '../../../calculators/index.ts';
import { readSetting } from '../../../device/settings.ts';
import type { StoredSession } from '../../../device/stored-session.ts';

/** What a set-up is to begin with: the answers of last time, a link, or a session on the same engine. */
export type SetUpRequest =
  | { readonly from: 'last-time' }
  | { readonly from: 'link'; readonly fragment: Readonly<Record<string, string>> }
  | { readonly from: 'session'; readonly session: StoredSession };

/** The answers that the form begins with, and where they come from. */
type SetUpStart = {
  readonly answers: SetUpAnswers;
  readonly readings: string;
  readonly notice: string | null;
};

/** The start that is asked for, or in words why a link is refused. */
export const setUpStart = (request: SetUpRequest): SetUpStart | string => {
  if (request.from === 'last-time') return { answers: rememberedAnswers(), readings: '', notice: null };
  if (request.from === 'session') return nextOnEngine(request.session);
  const link = parseSessionLink(request.fragment);
  if (!link.ok) return describeProblem(link.problem);
  const { answers, readings, unknownKeys } = link.value;
  return { answers, readings, notice: linkNotice(readings, unknownKeys) };
};

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
